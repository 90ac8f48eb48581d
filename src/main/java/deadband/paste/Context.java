package deadband.paste;

import deadband.document.Pointer;
import java.util.List;

/**
 * What the text around a label says about where it belongs.
 *
 * @param nearby sections of the value read just before, in the same line
 * @param heading sections that the heading above names
 * @param strange whether the heading above names something that is not known
 */
record Context(List<Pointer> nearby, List<Pointer> heading, boolean strange) {

  static final Context NONE = new Context(List.of(), List.of(), false);

  boolean hasHeading() {
    return strange || !heading.isEmpty();
  }

  static boolean within(Pointer pointer, List<Pointer> sections) {
    return sections.stream().anyMatch(pointer::startsWith);
  }

  boolean holds(Pointer pointer) {
    return within(pointer, nearby) || within(pointer, heading);
  }

  /** Every section that may be left unsaid. */
  List<Pointer> sections() {
    return java.util.stream.Stream.concat(nearby.stream(), heading.stream()).toList();
  }
}
