package deadband.paste;

import deadband.document.Pointer;
import java.util.HashMap;
import java.util.Map;

/** The ranges in which values usually lie, as {@code values.txt} has them: common practice. */
final class UsualRanges {

  private static final Map<String, Range> ALL = all();

  private UsualRanges() {}

  /** The range in which a value usually lies. */
  record Range(double least, double most) {
    static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    boolean holds(double value) {
      return least <= value && value <= most;
    }
  }

  /** The usual range of a value; any where none is known. */
  static Range of(Pointer pointer) {
    return ALL.getOrDefault(pointer.toString(), Range.ANY);
  }

  // every check of a setup file asks for these, so that they are read without the rest
  private static Map<String, Range> all() {
    Map<String, Range> all = new HashMap<>();
    for (String line : WordLists.lines("values.txt")) {
      int open = line.indexOf(" [");
      int close = line.indexOf("]:", open);
      if (open > 0 && close > 0 && line.indexOf(':') > open) {
        int dots = line.indexOf("..", open);
        double least = Double.parseDouble(line.substring(open + 2, dots));
        double most = Double.parseDouble(line.substring(dots + 2, close));
        int name = line.charAt(open - 1) == '!' ? open - 1 : open;
        all.put(line.substring(0, name), new Range(least, most));
      }
    }
    return all;
  }
}
