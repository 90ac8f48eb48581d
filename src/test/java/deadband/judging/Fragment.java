package deadband.judging;

import deadband.document.Document;
import deadband.document.Literal;
import deadband.document.Node;
import deadband.reading.JsonReading;
import java.util.List;
import java.util.stream.Stream;

/** Whether a JSON value holds all of a fragment: members by name, list elements in any place. */
public final class Fragment {

  private Fragment() {}

  public static Node parse(String json) {
    JsonReading reading = JsonReading.ofText("fragment", "{ \"value\": " + json + " }");
    if (reading instanceof JsonReading.Read read && read.problems().isEmpty()) {
      Document document = read.document();
      return document.root().get("value").orElseThrow();
    }
    throw new IllegalArgumentException("not JSON: " + json);
  }

  static boolean isIn(Node fragment, Node whole) {
    return missing(fragment, whole).isEmpty();
  }

  /** What of the fragment the whole lacks or holds otherwise; a line each, with its place. */
  static List<String> missing(Node fragment, Node whole) {
    return missing("", fragment, whole).toList();
  }

  private static Stream<String> missing(String place, Node fragment, Node whole) {
    if (fragment instanceof Node.Section wanted && whole instanceof Node.Section given) {
      return wanted.members().stream()
          .flatMap(
              member -> {
                String name = place.isEmpty() ? member.name() : place + "." + member.name();
                return given
                    .get(member.name())
                    .map(value -> missing(name, member.value(), value))
                    .orElseGet(() -> Stream.of(name + " is not there"));
              });
    }
    if (fragment instanceof Node.Sequence wanted && whole instanceof Node.Sequence given) {
      return wanted.items().stream()
          .filter(item -> given.items().stream().noneMatch(other -> isIn(item, other)))
          .map(item -> place + " has none such: " + Literal.of(item).json());
    }
    return fragment.same(whole)
        ? Stream.empty()
        : Stream.of(place + ": " + shown(whole) + " instead of " + shown(fragment));
  }

  private static String shown(Node node) {
    return Literal.of(node).json();
  }
}
