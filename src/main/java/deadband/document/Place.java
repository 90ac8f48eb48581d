package deadband.document;

/**
 * A place in a text as people count it.
 *
 * @param line counted from 1
 * @param column counted from 1 in characters (Unicode code points), however many bytes each takes
 * @param offset the same place in the Java string
 */
public record Place(int line, int column, int offset) implements Comparable<Place> {

  @Override
  public int compareTo(Place other) {
    return Integer.compare(offset, other.offset);
  }

  @Override
  public String toString() {
    return "line " + line + ", column " + column;
  }
}
