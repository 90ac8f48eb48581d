package deadband.reading;

import deadband.document.Gap;

/**
 * The line a walk has come to. Goes forward only, so that a walk along one long line stays cheap.
 */
final class Line {

  private final String text;
  private int at;
  private int start;
  private int ink;

  Line(String text) {
    this.text = text;
    this.ink = inkFrom(0);
  }

  /** Goes on to the line that holds a place at or after the last one. */
  void moveTo(int offset) {
    int before = start;
    for (; at < offset; at++) {
      start = Gap.isLineEnd(text.charAt(at)) ? at + 1 : start;
    }
    ink = start == before ? ink : inkFrom(start);
  }

  /** Blanks before the first ink. */
  int indent() {
    return ink - start;
  }

  /** Whether the first ink is at that place. */
  boolean startsWith(int offset) {
    return ink == offset;
  }

  private int inkFrom(int from) {
    int ink = from;
    while (ink < text.length() && Gap.isBlank(text.charAt(ink))) {
      ink++;
    }
    return ink;
  }
}
