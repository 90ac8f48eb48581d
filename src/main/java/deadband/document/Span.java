package deadband.document;

/**
 * A stretch of a text.
 *
 * @param start offset of its first character
 * @param end offset after its last character; equal to start where the stretch is a point
 */
public record Span(int start, int end) {

  public Span {
    if (start < 0 || end < start) {
      throw new IllegalArgumentException("a span from " + start + " to " + end);
    }
  }

  /** The point before the character at an offset. */
  public static Span at(int offset) {
    return new Span(offset, offset);
  }

  public int length() {
    return end - start;
  }

  public boolean isEmpty() {
    return start == end;
  }

  public boolean contains(int offset) {
    return start <= offset && offset < end;
  }
}
