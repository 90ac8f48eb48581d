package deadband.paste;

import deadband.document.Document;
import deadband.document.Member;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Source;
import deadband.document.Span;
import deadband.paste.Pasted.Understood;
import deadband.setup.Choice;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The values of a pasted text, put together as a setup file has them. */
final class SetupTree {

  private final Source source;
  private final Map<String, Object> root = new LinkedHashMap<>();
  private final Map<String, Integer> outlets = new LinkedHashMap<>();

  SetupTree(Source source) {
    this.source = source;
  }

  /** Puts a value in its place; an outlet gets its place in the list. */
  Understood add(Understood one) {
    Pointer pointer = placed(one);
    Node nothing = new Node.Nothing(one.span());
    put(pointer, one.value().map(value -> node(value, one.span())).orElse(nothing));
    return new Understood(one.line(), one.text(), pointer, one.value(), one.unit(), one.span());
  }

  private Pointer placed(Understood one) {
    List<String> tokens = one.pointer().tokens();
    int list = tokens.indexOf("outlets");
    if (list < 0 || tokens.size() <= list + 1 || tokens.get(list + 1).matches("\\d+")) {
      return one.pointer();
    }
    String kind = tokens.get(list + 1);
    Pointer outlet = Pointer.root();
    for (String token : tokens.subList(0, list + 1)) {
      outlet = outlet.child(token);
    }
    int index = outlets.computeIfAbsent(outlet + kind, key -> outlets.size());
    outlet = outlet.child(index);
    put(outlet.child("at"), new Node.Text(one.span(), kind));
    return tokens.size() > list + 2 ? outlet.child(tokens.get(list + 2)) : outlet.child("at");
  }

  @SuppressWarnings("unchecked")
  private void put(Pointer pointer, Node node) {
    Map<String, Object> at = root;
    for (String token : pointer.parent().orElseThrow().tokens()) {
      at =
          (Map<String, Object>)
              at.computeIfAbsent(token, key -> new LinkedHashMap<String, Object>());
    }
    at.putIfAbsent(pointer.last(), node);
  }

  private static Node node(Object value, Span span) {
    if (value instanceof Double number) {
      String literal = BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
      return new Node.Numeral(span, literal, number);
    }
    if (value instanceof Boolean truth) {
      return new Node.Truth(span, truth);
    }
    if (value instanceof List<?> items) {
      return new Node.Sequence(span, items.stream().map(item -> node(item, span)).toList());
    }
    return new Node.Text(span, value instanceof Choice choice ? choice.word() : value.toString());
  }

  Document document() {
    return Document.of(source, section(root));
  }

  private static Node.Section section(Map<String, Object> members) {
    List<Member> list = new ArrayList<>();
    Span span = Span.at(0);
    for (Map.Entry<String, Object> member : members.entrySet()) {
      Node node = built(member.getValue());
      span = list.isEmpty() ? node.span() : span;
      list.add(new Member(node.span(), member.getKey(), node));
    }
    return new Node.Section(span, list);
  }

  @SuppressWarnings("unchecked")
  private static Node built(Object value) {
    if (value instanceof Node node) {
      return node;
    }
    Map<String, Object> members = (Map<String, Object>) value;
    boolean list =
        !members.isEmpty() && members.keySet().stream().allMatch(name -> name.matches("\\d+"));
    Node.Section section = section(members);
    return list
        ? new Node.Sequence(section.span(), section.members().stream().map(Member::value).toList())
        : section;
  }
}
