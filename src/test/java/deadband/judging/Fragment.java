package deadband.judging;

import deadband.document.Document;
import deadband.document.Node;
import deadband.reading.JsonReading;

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
    if (fragment instanceof Node.Section wanted && whole instanceof Node.Section given) {
      return wanted.members().stream()
          .allMatch(
              member -> given.get(member.name()).filter(v -> isIn(member.value(), v)).isPresent());
    }
    if (fragment instanceof Node.Sequence wanted && whole instanceof Node.Sequence given) {
      return wanted.items().stream()
          .allMatch(item -> given.items().stream().anyMatch(other -> isIn(item, other)));
    }
    return fragment.same(whole);
  }
}
