package deadband.document;

import java.util.Comparator;
import java.util.List;

/** A stretch of text to be written over; stretches of one change do not overlap. */
record Splice(Span span, String put) {

  static Splice cut(int start, int end) {
    return new Splice(new Span(start, end), "");
  }

  static Splice put(int at, String text) {
    return new Splice(Span.at(at), text);
  }

  static String one(String text, Span span, String put) {
    return text.substring(0, span.start()) + put + text.substring(span.end());
  }

  /** Makes all changes at once; those at one place in the order given. */
  static String all(String text, List<Splice> splices) {
    List<Splice> ordered =
        splices.stream().sorted(Comparator.comparingInt(splice -> splice.span().start())).toList();
    StringBuilder out = new StringBuilder(text.length() + 64);
    int done = 0;
    for (Splice splice : ordered) {
      out.append(text, done, splice.span().start()).append(splice.put());
      done = splice.span().end();
    }
    return out.append(text, done, text.length()).toString();
  }
}
