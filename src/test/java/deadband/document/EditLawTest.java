package deadband.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Laws of edits, on random documents in random layouts: reading the edited text gives the changed
 * document, no comment is lost, and no other byte is touched.
 */
class EditLawTest {

  private static final int ROUNDS = 4_000;
  private static final Object NOTHING = "nothing told";
  private static final Object NO_PLACE = "no place";
  private static final String[] GAPS = {
    "",
    "",
    " ",
    "  ",
    "\n",
    "\r\n",
    "\n  ",
    "\n\t",
    " /* c */ ",
    " // c\n",
    "\n  // c\n  ",
    "/**/",
    " /* , } */",
    "//\n",
    "\n\n    "
  };

  @Test
  void settingGivesTheChangedDocument() {
    Random random = new Random(20_260_501);
    for (int i = 0; i < ROUNDS; i++) {
      Document before = Documents.read(file(random));
      Pointer pointer = random.nextBoolean() ? anyOf(before, random) : near(before, random);
      Literal value = value(random);
      Edit edit = Edit.set(before, pointer, value);
      if (!canHold(before, pointer)) {
        continue;
      }
      Document after = Documents.read(before.with(edit));
      assertThat(plain(after.root()))
          .as("%s in %s gives %s", edit, before.text(), after.text())
          .isEqualTo(set(plain(before.root()), pointer.tokens(), plain(value)));
      if (edit instanceof Edit.Insert && !holdsNull(before, pointer)) {
        assertThat(isInside(before.text(), after.text())).as(after.text()).isTrue();
      }
    }
  }

  @Test
  void removingGivesTheChangedDocument() {
    Random random = new Random(20_260_502);
    for (int i = 0; i < ROUNDS; i++) {
      Document before = Documents.read(file(random));
      Pointer pointer = anyOf(before, random);
      if (pointer.isRoot()) {
        continue;
      }
      String text = before.without(pointer);
      Document after = Documents.read(text);
      assertThat(plain(after.root()))
          .as("without %s in %s gives %s", pointer, before.text(), text)
          .isEqualTo(remove(plain(before.root()), pointer.tokens()));
      assertThat(isInside(text, before.text())).as(text).isTrue();
      Span gone = removed(before, pointer);
      int inside = comments(before.source().slice(gone));
      assertThat(comments(text)).as(text).isEqualTo(comments(before.text()) - inside);
    }
  }

  @Test
  void insertingAndRemovingComesBackToTheSame() {
    Random random = new Random(20_260_503);
    for (int i = 0; i < ROUNDS / 4; i++) {
      Document before = Documents.read(file(random));
      Pointer pointer = Pointer.root().child("new name");
      Document with = Documents.read(before.with(pointer, value(random)));
      assertThat(Documents.read(with.without(pointer)).same(before)).isTrue();
    }
  }

  // ---- random files

  private static String file(Random random) {
    return gap(random) + section(random, 3) + gap(random);
  }

  private static String node(Random random, int depth) {
    return switch (random.nextInt(depth > 0 ? 8 : 5)) {
      case 0 -> String.valueOf(random.nextInt(100) / 10.0);
      case 1 -> "\"x, // y } \\\" 🔥\"";
      case 2 -> "true";
      case 3 -> "null";
      case 4 -> "\"\"";
      case 5 -> list(random, depth - 1);
      default -> section(random, depth - 1);
    };
  }

  private static String section(Random random, int depth) {
    List<String> members = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      String name = "\"n" + i + (random.nextInt(9) == 0 ? "/é" : "") + "\"";
      members.add(name + gap(random) + ":" + gap(random) + node(random, depth));
    }
    return inBrackets(random, "{", members, "}");
  }

  private static String list(Random random, int depth) {
    List<String> items = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      items.add(node(random, depth));
    }
    return inBrackets(random, "[", items, "]");
  }

  private static String inBrackets(Random random, String open, List<String> inside, String close) {
    StringBuilder text = new StringBuilder(open);
    for (int i = 0; i < inside.size(); i++) {
      boolean comma = i + 1 < inside.size() || random.nextInt(4) == 0;
      text.append(gap(random)).append(inside.get(i)).append(gap(random)).append(comma ? "," : "");
    }
    return text.append(gap(random)).append(close).toString();
  }

  private static String gap(Random random) {
    return GAPS[random.nextInt(GAPS.length)];
  }

  private static Literal value(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> Literal.of(random.nextInt(1000) / 100.0);
      case 1 -> Literal.of("é\"\n");
      case 2 -> Literal.section(Map.of("k", Literal.of(1L)));
      default -> Literal.list(List.of(Literal.of(true)));
    };
  }

  // ---- where

  private static Pointer anyOf(Document document, Random random) {
    List<Pointer> all = new ArrayList<>();
    collect(document.root(), Pointer.root(), all);
    return all.get(random.nextInt(all.size()));
  }

  private static void collect(Node node, Pointer at, List<Pointer> into) {
    into.add(at);
    if (node instanceof Node.Section section) {
      section.members().forEach(m -> collect(m.value(), at.child(m.name()), into));
    }
    if (node instanceof Node.Sequence sequence) {
      for (int i = 0; i < sequence.items().size(); i++) {
        collect(sequence.items().get(i), at.child(i), into);
      }
    }
  }

  private static Pointer near(Document document, Random random) {
    Pointer at = anyOf(document, random);
    for (int i = 1 + random.nextInt(2); i > 0; i--) {
      at = random.nextInt(3) == 0 ? at.child(random.nextInt(3)) : at.child("new/" + i);
    }
    return at;
  }

  /** Whether a value can stand there, judged by the values alone. */
  private static boolean canHold(Document document, Pointer pointer) {
    if (pointer.isRoot()) {
      return false;
    }
    Object at = plain(document.root());
    for (String token : pointer.tokens()) {
      boolean index = token.matches("0|[1-9][0-9]*");
      if (NOTHING.equals(at)) {
        // what is missing becomes a list where an index follows, and begins with item 0
        at = index && !token.equals("0") ? NO_PLACE : NOTHING;
      } else if (at instanceof Map<?, ?> map) {
        at = map.containsKey(token) ? held(map, token) : NOTHING;
      } else if (at instanceof List<?> list && index && Integer.parseInt(token) <= list.size()) {
        int i = Integer.parseInt(token);
        at = i < list.size() ? list.get(i) : NOTHING;
      } else {
        return false;
      }
      if (NO_PLACE.equals(at)) {
        return false;
      }
    }
    return true;
  }

  private static Object held(Map<?, ?> map, String token) {
    return Objects.requireNonNull(map.get(token));
  }

  private static boolean holdsNull(Document document, Pointer pointer) {
    Pointer nearest = document.nearest(pointer);
    return document.find(nearest).orElseThrow() instanceof Node.Nothing;
  }

  private static Span removed(Document document, Pointer pointer) {
    return document
        .member(pointer)
        .map(Member::span)
        .orElseGet(() -> document.find(pointer).orElseThrow().span());
  }

  // ---- the same changes on plain maps and lists

  private static Object plain(Node node) {
    if (node instanceof Node.Section section) {
      Map<String, Object> map = new LinkedHashMap<>();
      section.members().forEach(m -> map.put(m.name(), plain(m.value())));
      return map;
    }
    if (node instanceof Node.Sequence sequence) {
      List<Object> list = new ArrayList<>();
      sequence.items().forEach(item -> list.add(plain(item)));
      return list;
    }
    if (node instanceof Node.Text text) {
      return "text " + text.value();
    }
    if (node instanceof Node.Numeral numeral) {
      return numeral.value();
    }
    return node instanceof Node.Truth truth ? (Object) truth.value() : NOTHING;
  }

  private static Object plain(Literal value) {
    return plain(Documents.read("{ \"v\": " + value.json() + " }").root().get("v").orElseThrow());
  }

  private static Object set(Object at, List<String> tokens, Object value) {
    if (tokens.isEmpty()) {
      return value;
    }
    String token = tokens.get(0);
    List<String> rest = tokens.subList(1, tokens.size());
    boolean list = at instanceof List<?> || (NOTHING.equals(at) && token.equals("0"));
    return list ? setInList(at, token, rest, value) : setInMap(at, token, rest, value);
  }

  private static Object setInList(Object at, String token, List<String> rest, Object value) {
    List<Object> list = new ArrayList<>();
    if (at instanceof List<?> old) {
      list.addAll(old);
    }
    int index = Integer.parseInt(token);
    if (index < list.size()) {
      list.set(index, set(list.get(index), rest, value));
    } else {
      list.add(set(NOTHING, rest, value));
    }
    return list;
  }

  private static Object setInMap(Object at, String token, List<String> rest, Object value) {
    Map<String, Object> map = new LinkedHashMap<>();
    if (at instanceof Map<?, ?> old) {
      old.forEach((name, held) -> map.put((String) name, held));
    }
    map.put(token, set(map.getOrDefault(token, NOTHING), rest, value));
    return map;
  }

  private static Object remove(Object at, List<String> tokens) {
    String token = tokens.get(0);
    List<String> rest = tokens.subList(1, tokens.size());
    if (at instanceof List<?> old) {
      List<Object> list = new ArrayList<>(old);
      int index = Integer.parseInt(token);
      Object held = list.remove(index);
      if (!rest.isEmpty()) {
        list.add(index, remove(held, rest));
      }
      return list;
    }
    Map<String, Object> map = new LinkedHashMap<>();
    ((Map<?, ?>) at).forEach((name, held) -> map.put((String) name, held));
    Object held = Objects.requireNonNull(map.remove(token));
    if (!rest.isEmpty()) {
      map.put(token, remove(held, rest));
    }
    return map;
  }

  // ---- bytes

  /** Whether one text is the other with some characters left out. */
  private static boolean isInside(String less, String more) {
    int at = 0;
    for (int i = 0; i < more.length() && at < less.length(); i++) {
      at += more.charAt(i) == less.charAt(at) ? 1 : 0;
    }
    return at == less.length();
  }

  /** How many comments a text has; the random texts in quotes hold two slashes each. */
  private static int comments(String text) {
    int count = 0;
    for (int at = 0; at < text.length(); ) {
      char c = text.charAt(at);
      if (c == '"') {
        at++;
        while (text.charAt(at) != '"') {
          at += text.charAt(at) == '\\' ? 2 : 1;
        }
      }
      int after = Gap.afterComment(text, at);
      count += after > at ? 1 : 0;
      at = Math.max(after, at + 1);
    }
    return count;
  }
}
