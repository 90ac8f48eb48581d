package deadband.reading;

import deadband.document.Document;
import deadband.document.Member;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Span;
import deadband.paste.Pasted;
import deadband.paste.Pasted.Ambiguous;
import deadband.paste.Pasted.NotUnderstood;
import deadband.paste.Pasted.Understood;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The JSON of a text together with what the lines around it say. Where both say the same value
 * differently, neither is taken.
 */
final class PastedAround {

  private final Document json;
  private final Set<Pointer> taken = new HashSet<>();
  private final Set<Pointer> doubted = new HashSet<>();
  private final List<Understood> understood = new ArrayList<>();
  private final List<NotUnderstood> notUnderstood;
  private final List<Ambiguous> ambiguous;
  private final Pasted around;

  private PastedAround(Document json, Pasted around) {
    this.json = json;
    this.around = around;
    this.notUnderstood = new ArrayList<>(around.notUnderstood());
    this.ambiguous = new ArrayList<>(around.ambiguous());
  }

  static PastedAround of(Document json, Pasted around) {
    PastedAround both = new PastedAround(json, around);
    around.understood().forEach(both::add);
    return both;
  }

  SetupReading read(List<Problem> problems) {
    return SetupReading.of(new JsonReading.Read(document(), problems), pasted());
  }

  /** Leaves out names of the JSON that are not known here, and lists them. */
  PastedAround without(List<Problem> names) {
    for (Problem name : names) {
      Pointer pointer = name.pointer();
      Span span = name.span();
      if (pointer != null && span != null) {
        int end = json.find(pointer).map(node -> node.span().end()).orElse(span.end());
        String text = json.source().excerpt(new Span(span.start(), end));
        notUnderstood.add(new NotUnderstood(json.place(span.start()).line(), text));
        doubted.add(pointer);
      }
    }
    return this;
  }

  private void add(Understood one) {
    Optional<Node> said = json.find(one.pointer()).filter(node -> !(node instanceof Node.Nothing));
    Node node = around.document().find(one.pointer()).orElseThrow();
    if (said.isPresent() && said.get().same(node)) {
      understood.add(one);
    } else if (said.isPresent()) {
      doubted.add(one.pointer());
      ambiguous.add(new Ambiguous(one.line(), one.text(), choices(one, said.get(), node)));
    } else if (isClosed(one.pointer())) {
      notUnderstood.add(new NotUnderstood(one.line(), one.text()));
    } else {
      taken.add(one.pointer());
      understood.add(one);
    }
  }

  /** Whether the JSON has the list the value is in, or says that its part is not fitted. */
  private boolean isClosed(Pointer pointer) {
    for (Pointer at = pointer; !at.isRoot(); at = at.parent().orElseThrow()) {
      Optional<Node> node = json.find(at);
      boolean list = node.filter(Node.Sequence.class::isInstance).isPresent();
      boolean absent =
          json.find(at.child("fitted"))
              .filter(fitted -> fitted.same(new Node.Truth(fitted.span(), false)))
              .isPresent();
      if (list || absent) {
        return true;
      }
    }
    return false;
  }

  private List<String> choices(Understood one, Node said, Node node) {
    return List.of(choice(one, said, json), choice(one, node, around.document()));
  }

  private static String choice(Understood one, Node node, Document document) {
    String value = document.source().excerpt(node.span());
    if (node instanceof Node.Numeral number) {
      value = number.literal() + " " + one.unit();
    } else if (node instanceof Node.Truth truth) {
      value = String.valueOf(truth.value());
    }
    return (one.pointer().dotted() + " " + value).strip()
        + " (line "
        + document.place(node.span().start()).line()
        + ")";
  }

  Document document() {
    return Document.of(
        json.source(), merged(json.root(), around.document().root(), Pointer.root()));
  }

  private Node.Section merged(Node.Section one, Node.Section other, Pointer at) {
    List<Member> members = new ArrayList<>();
    for (Member member : one.members()) {
      Pointer pointer = at.child(member.name());
      if (taken.contains(pointer) || doubted.contains(pointer)) {
        continue;
      }
      Node value = member.value();
      if (value instanceof Node.Section section) {
        Node.Section nothing = new Node.Section(section.span(), List.of());
        Node more = other.get(member.name()).orElse(nothing);
        value = merged(section, more instanceof Node.Section there ? there : nothing, pointer);
      }
      members.add(new Member(member.nameSpan(), member.name(), value));
    }
    for (Member member : other.members()) {
      Pointer pointer = at.child(member.name());
      boolean said = members.stream().anyMatch(before -> before.name().equals(member.name()));
      if (!said && taken.stream().anyMatch(place -> place.startsWith(pointer))) {
        members.add(member);
      }
    }
    return new Node.Section(one.span(), members);
  }

  Pasted pasted() {
    notUnderstood.sort(Comparator.comparingInt(NotUnderstood::line));
    ambiguous.sort(Comparator.comparingInt(Ambiguous::line));
    return new Pasted(
        document(),
        List.copyOf(understood),
        List.copyOf(notUnderstood),
        List.copyOf(ambiguous),
        around.otherLines(),
        true);
  }
}
