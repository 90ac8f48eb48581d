package deadband.reading;

import deadband.document.Gap;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A text and the place reading has come to: what stands there, and what is wrong so far. */
abstract class Cursor {

  /** A file with more than this is not a setup with mistakes in it. */
  private static final int MOST_PROBLEMS = 500;

  /** Farther from the start of its line than this, a bracket's indentation says nothing. */
  private static final int FAR = 200;

  /** A name without quotes, or without one of them, of one word or more. */
  private static final Pattern BARE_NAME =
      Pattern.compile("([\\p{L}\\p{N}_$.-]+(?:\\h+[\\p{L}\\p{N}_$.-]+){0,5}+)\"?+(?=\\h*+[:=])");

  final Source source;
  final String text;
  int at;
  private final Problems problems;
  private boolean guessed;
  private boolean stopped;
  private int counted = -1;
  private int closers;

  Cursor(Source source) {
    this.source = source;
    this.text = source.text();
    this.at = text.indexOf(Source.MARK) == 0 ? 1 : 0;
    this.problems = new Problems(source, MOST_PROBLEMS);
  }

  /** Goes on there, unless reading has stopped. */
  final void moveTo(int offset) {
    at = stopped ? at : Math.min(offset, text.length());
  }

  // ---- what stands here

  final boolean isEnd() {
    return at >= text.length();
  }

  final boolean is(char c) {
    return at < text.length() && text.charAt(at) == c;
  }

  final boolean isAny(String chars) {
    return at < text.length() && chars.indexOf(text.charAt(at)) >= 0;
  }

  final boolean isWordStart() {
    return !isEnd() && (Character.isLetter(text.codePointAt(at)) || isAny("_$?"));
  }

  final boolean startsNumber() {
    boolean digit = at + 1 < text.length() && Figures.isDigit(text.charAt(at + 1));
    return isAny("0123456789-+") || (digit && isAny(".−–—‒"));
  }

  final boolean isForeignQuote() {
    return !isEnd() && QuotedText.isForeign(text.charAt(at));
  }

  /** Whether what stands here could be meant as a name or a value. */
  final boolean isPiece() {
    return isAny("{[\"") || isForeignQuote() || isWordStart() || startsNumber();
  }

  /** Whether a name and a colon stand at a place, be they written as JSON wants them or not. */
  final boolean isMember(int from) {
    int end = nameEnd(from);
    int next = Gap.next(text, end);
    return end > from && (text.startsWith(":", next) || text.startsWith("=", next));
  }

  private int nameEnd(int from) {
    if (text.startsWith("\"", from)) {
      int close = QuotedText.close(text, from);
      return text.startsWith("\"", close) ? close + 1 : from;
    }
    Matcher bare = bareName(from);
    return bare.lookingAt() ? bare.end() : from;
  }

  final Matcher bareName(int from) {
    return BARE_NAME.matcher(text).region(from, Math.min(text.length(), from + FAR));
  }

  final Span here() {
    return new Span(at, isEnd() ? at : text.offsetByCodePoints(at, 1));
  }

  /** What was meant as one name or value. */
  final Span piece() {
    int end =
        is('"')
            ? Math.min(QuotedText.close(text, at) + 1, Gap.lineEnd(text, at))
            : MalformedNumber.runEnd(text, at);
    return new Span(at, Math.max(end, here().end()));
  }

  /** From here to the end of the line, blanks at its end left out. */
  final Span rest() {
    int end = Gap.lineEnd(text, at);
    while (end > at && Gap.isBlank(text.charAt(end - 1))) {
      end--;
    }
    return new Span(at, end);
  }

  // ---- blanks and comments

  /** Goes on to the next ink. */
  final void blanks() {
    for (; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c != ' ' && c != '\n' && c != '\r' && c != '\t') {
        if ((c >= ' ' && c <= '~' && c != '/' && c != '#') || !gap(c)) {
          return;
        }
        // back on the last character of the gap, which the loop passes
        at--;
      }
    }
  }

  /** Passes a comment, or a blank that JSON does not know. */
  private boolean gap(char c) {
    int start = at;
    if (c == '#') {
      problem(null, rest(), Kind.COMMENT_BY_HASH, "// before a comment");
      moveTo(Gap.lineEnd(text, start));
    } else if (isStrangeBlank(c)) {
      strangeBlanks();
    } else if (c == '/') {
      comment();
    }
    return at > start;
  }

  private void comment() {
    int after = Gap.afterComment(text, at);
    boolean block = text.startsWith("/*", at);
    if (block && !(after - at >= 4 && text.startsWith("*/", after - 2))) {
      problem(null, new Span(at, at + 2), Kind.COMMENT_NOT_CLOSED, "*/ at the end of the comment");
      stop();
    } else {
      at = after;
    }
  }

  private void strangeBlanks() {
    char c = text.charAt(at);
    int end = at + 1;
    while (end < text.length() && text.charAt(end) == c) {
      end++;
    }
    String name = Character.getName(c);
    String number = "U+" + Integer.toHexString(0x10000 | c).substring(1);
    String found = (number + (name == null ? "" : " " + name)).toUpperCase(Locale.ROOT);
    problem(null, new Span(at, end), Kind.STRANGE_BLANK, found, "an ordinary space");
    moveTo(end);
  }

  private static boolean isStrangeBlank(char c) {
    return Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || c == '\u0085'
        || Character.getType(c) == Character.FORMAT;
  }

  // ---- the rest of the text, for guesses at what was meant

  /** Closing brackets less opening ones from a place on, texts and comments left out. */
  final int closersAfter(int from) {
    if (counted < 0) {
      counted = text.length();
    }
    closers += from < counted ? closers(from, counted) : -closers(counted, from);
    counted = from;
    return closers;
  }

  private int closers(int from, int until) {
    int closers = 0;
    for (int i = from; i < until; i++) {
      switch (text.charAt(i)) {
        case '{', '[' -> closers--;
        case '}', ']' -> closers++;
        case '"' -> {
          int close = QuotedText.close(text, i);
          // a quote that is not closed may stand anywhere
          i = text.startsWith("\"", close) ? close : i;
        }
        case '/' -> i = Math.max(i, Gap.afterComment(text, i) - 1);
        default -> {}
      }
    }
    return closers;
  }

  /** Whether a bracket begins its line, farther out than the line of an earlier one. */
  final boolean isOutdented(int close, int open) {
    int blanks = 0;
    while (blanks < FAR && isInlineBlank(close - 1 - blanks)) {
      blanks++;
    }
    int before = close - 1 - blanks;
    return before >= 0 && Gap.isLineEnd(text.charAt(before)) && blanks < indent(open);
  }

  private boolean isInlineBlank(int i) {
    return i >= 0 && (text.charAt(i) == ' ' || text.charAt(i) == '\t');
  }

  /** Blanks at the start of a line; none where that start is far off. */
  private int indent(int offset) {
    int start = offset;
    while (start > 0 && !Gap.isLineEnd(text.charAt(start - 1))) {
      start--;
      if (offset - start > FAR) {
        return 0;
      }
    }
    int ink = start;
    while (isInlineBlank(ink)) {
      ink++;
    }
    return ink - start;
  }

  // ---- what is wrong

  final void problem(@Nullable Pointer where, Span span, Kind kind, String right) {
    problem(where, span, kind, source.excerpt(span), right);
  }

  final void problem(@Nullable Pointer where, Span span, Kind kind, String found, String right) {
    Problem problem = Problem.of(source, kind, found, right);
    problem(where == null ? problem.at(span) : problem.at(where, span));
  }

  final void problem(Problem problem) {
    problems.add(problem);
    if (problems.isFull()) {
      stop();
    }
  }

  /** What follows is left unread. */
  final void stop() {
    at = text.length();
    stopped = true;
    guess();
  }

  final boolean isStopped() {
    return stopped;
  }

  /** From here on what was meant is not sure, and what follows from it is not to be judged. */
  final void guess() {
    guessed = true;
  }

  final boolean isGuessed() {
    return guessed;
  }

  final Problems problems() {
    return problems;
  }
}
