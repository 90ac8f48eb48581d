package deadband.reading;

import deadband.document.Gap;
import deadband.document.Literal;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Finds the first place at which a text is not JSON, and says in plain words what was found there
 * and what would be right.
 *
 * <p>Walks the text once more, by the grammar of RFC 8259 with comments and trailing commas. It is
 * asked only after the parser has refused the text, so it may take its time; the parser's own
 * message is not used.
 */
final class Mistake {

  private static final String SECTION = "one section: { … }";
  private static final String VALUE = "a value, or null where it is not known";

  private final Source source;
  private final String text;
  private final Deque<Bracket> open = new ArrayDeque<>();
  private final Line line;
  private int at;
  private Pointer here = Pointer.root();
  private @Nullable Bracket suspect;
  private @Nullable Problem found;

  /** A bracket that was opened. */
  private record Bracket(Pointer pointer, int start, char closer, int indent) {}

  private Mistake(Source source) {
    this.source = source;
    this.text = source.text();
    this.line = new Line(text);
    this.at = text.indexOf(Source.MARK) == 0 ? 1 : 0;
  }

  /**
   * The first mistake in a text that the parser refused.
   *
   * @param refused offset at which it did, in case this walk finds nothing wrong
   */
  static Problem in(Source source, int refused) {
    Problem first = first(source);
    if (first != null) {
      return first;
    }
    Span there = Span.at(Math.min(refused, source.text().length()));
    return Problem.of(source, Kind.NOT_JSON, "what no rule of JSON allows", "JSON").at(there);
  }

  /** The first mistake of a text, null where it has none. */
  static @Nullable Problem first(Source source) {
    Mistake walk = new Mistake(source);
    walk.file();
    return walk.found;
  }

  // ---- the file

  private void file() {
    if (!blanks()) {
      return;
    }
    if (isEnd()) {
      String what = isAllBlank() ? "no text" : "only comments";
      fail(Problem.of(source, Kind.EMPTY, what, SECTION));
    } else if (!is('{')) {
      beginning();
    } else if (section(Pointer.root()) && blanks() && !isEnd()) {
      afterEnd();
    }
  }

  private boolean isAllBlank() {
    return Gap.isBlank(text, text.indexOf(Source.MARK) == 0 ? 1 : 0, text.length());
  }

  private void beginning() {
    if (is('}') || is(']')) {
      fail(Kind.BRACKET_TOO_MANY, letter(), SECTION);
      return;
    }
    boolean known = isWordStart() && WordSlip.of(text, at) == null;
    boolean json = is('"') || is('[') || startsNumber() || known;
    fail(rest(), json ? Kind.NOT_A_SECTION : Kind.NOT_JSON, SECTION);
  }

  private void afterEnd() {
    here = Pointer.root();
    if (is('}') || is(']')) {
      fail(Kind.BRACKET_TOO_MANY, letter(), "nothing: every bracket is closed already");
    } else {
      fail(rest(), Kind.TEXT_AFTER_END, "nothing but comments after the closing }");
    }
  }

  // ---- sections and lists; each method says whether to go on

  private boolean value(Pointer pointer, boolean named) {
    here = pointer;
    if (isEnd()) {
      return failAtEnd();
    }
    if (is(',') || is('}') || is(']')) {
      return fail(Kind.VALUE_MISSING, letter(), VALUE);
    }
    if (is('{')) {
      return section(pointer);
    }
    if (is('[')) {
      return list(pointer);
    }
    return is('"') ? quoted() : startsNumber() ? number(named) : word();
  }

  private boolean section(Pointer pointer) {
    if (!enter(pointer, '}')) {
      return false;
    }
    while (blanks()) {
      if (is('}')) {
        return leave();
      }
      here = pointer;
      if (!member(pointer) || !separator(pointer)) {
        return false;
      }
    }
    return false;
  }

  private boolean list(Pointer pointer) {
    if (!enter(pointer, ']')) {
      return false;
    }
    for (int i = 0; blanks(); i++) {
      if (is(']')) {
        return leave();
      }
      if (!item(pointer, i) || !separator(pointer)) {
        return false;
      }
    }
    return false;
  }

  private boolean item(Pointer list, int index) {
    here = list;
    if (is(',')) {
      return fail(Kind.COMMA_TOO_MANY, ",", "one comma between two items");
    }
    return is('}') ? mismatched() : value(list.child(index), false);
  }

  private boolean member(Pointer pointer) {
    if (!is('"')) {
      return noName();
    }
    int start = at;
    if (!quoted() || !wholeCharacters(start)) {
      return false;
    }
    Span name = new Span(start, at);
    Pointer child = pointer.child(nameIn(name));
    return blanks() && colon(name, child) && blanks() && value(child, true);
  }

  private String nameIn(Span quoted) {
    // escapes may stay as they are written: this pointer is only shown
    return text.substring(quoted.start() + 1, quoted.end() - 1);
  }

  private boolean colon(Span name, Pointer child) {
    if (is(':')) {
      at++;
      return true;
    }
    if (isEnd()) {
      return failAtEnd();
    }
    if (is('=')) {
      here = child;
      return fail(Kind.EQUALS_SIGN, "=", ":");
    }
    return noColon(name, child);
  }

  private boolean noColon(Span name, Pointer child) {
    if (nameIn(name).indexOf(':') >= 0) {
      return fail(name, Kind.QUOTE_NOT_CLOSED, "\" at the end of the name");
    }
    here = child;
    boolean nothing = is(',') || is('}') || is(']');
    return nothing
        ? fail(name, Kind.VALUE_MISSING, "a colon and " + VALUE)
        : fail(Span.at(name.end()), Kind.COLON_MISSING, piece(), ": before it");
  }

  /** What stands where a name in double quotes belongs. */
  private boolean noName() {
    if (isEnd()) {
      return failAtEnd();
    }
    if (is(']')) {
      return mismatched();
    }
    if (is(',')) {
      return fail(Kind.COMMA_TOO_MANY, ",", "one comma between two values");
    }
    if (QuoteSlip.isForeign(text.charAt(at))) {
      return fail(QuoteSlip.foreign(text, at));
    }
    if (isWordStart() || startsNumber()) {
      return bareName();
    }
    boolean value = is('{') || is('[') || is(':');
    return value
        ? fail(Kind.NAME_MISSING, letter(), "a name in double quotes and a colon before it")
        : fail(Kind.NOT_JSON, letter(), "a name in double quotes, or }");
  }

  private boolean bareName() {
    int end = at;
    while (end < text.length() && isNamePart(text.charAt(end))) {
      end++;
    }
    Span name = new Span(at, Math.max(end, at + 1));
    here = here.child(source.slice(name));
    return fail(name, Kind.NAME_NOT_QUOTED, Literal.of(source.slice(name)).json());
  }

  private static boolean isNamePart(char c) {
    return Character.isLetterOrDigit(c) || c == '_' || c == '-' || c == '.' || c == '$';
  }

  /** A comma, or the bracket that closes; what else stands there is named. */
  private boolean separator(Pointer around) {
    int end = at;
    char last = text.charAt(end - 1);
    if (!blanks()) {
      return false;
    }
    if (is(',')) {
      at++;
      return true;
    }
    Bracket bracket = open.getFirst();
    return (!isEnd() && is(bracket.closer)) || noSeparator(around, end, last);
  }

  private boolean noSeparator(Pointer around, int end, char last) {
    if (isEnd()) {
      return failAtEnd();
    }
    if (is('}') || is(']')) {
      here = around;
      return mismatched();
    }
    if (is(';')) {
      return fail(Kind.SEMICOLON, ";", ",");
    }
    if (last == '"' && at == end && !is('"') && isPiece()) {
      return strayQuote(end);
    }
    if (isPiece()) {
      String piece = piece();
      here = around;
      return fail(Span.at(end), Kind.COMMA_MISSING, piece, ", before it");
    }
    return fail(Kind.NOT_JSON, letter(), ", or " + open.getFirst().closer);
  }

  /**
   * A word right after a closing quote: the quote was meant as ink, or one before it is missing.
   */
  private boolean strayQuote(int end) {
    int start = openingQuote(end - 1);
    String inside = text.substring(start + 1, end - 1).stripTrailing();
    if (inside.endsWith(",") || inside.endsWith(":")) {
      Span span = new Span(start, end);
      return fail(span, Kind.QUOTE_NOT_CLOSED, "\" at the end of the text");
    }
    return fail(new Span(end - 1, end), Kind.QUOTE_INSIDE, "\"" + piece(), "\\\" inside a text");
  }

  private int openingQuote(int close) {
    int quote = text.lastIndexOf('"', close - 1);
    while (quote > 0 && text.charAt(quote - 1) == '\\') {
      quote = text.lastIndexOf('"', quote - 1);
    }
    return Math.max(quote, 0);
  }

  // ---- brackets

  private boolean enter(Pointer pointer, char closer) {
    // the parser never goes deeper without refusing
    if (open.size() > JsonReading.MOST_DEEP) {
      return false;
    }
    line.moveTo(at);
    open.push(new Bracket(pointer, at, closer, line.indent()));
    at++;
    return true;
  }

  private boolean leave() {
    Bracket bracket = open.pop();
    line.moveTo(at);
    boolean outdented = line.startsWith(at) && line.indent() < bracket.indent;
    if (outdented && suspect == null) {
      suspect = bracket;
    }
    at++;
    return true;
  }

  private boolean mismatched() {
    Bracket bracket = open.getFirst();
    Problem problem =
        problem(one(), Kind.BRACKET_MISMATCHED, letter(), String.valueOf(bracket.closer));
    return fail(problem.earlier(new Span(bracket.start, bracket.start + 1)));
  }

  private boolean failAtEnd() {
    return fail(notClosed());
  }

  /**
   * The bracket that is not closed. Where an inner one seems to be closed by the bracket of an
   * outer one, going by how far the lines are indented, it is that.
   */
  private Problem notClosed() {
    Bracket bracket = suspect != null ? suspect : open.getFirst();
    String end = "the end of the file at " + source.place(text.length());
    return Problem.of(source, Kind.BRACKET_NOT_CLOSED, end, bracket.closer + " before it")
        .at(bracket.pointer, new Span(bracket.start, bracket.start + 1));
  }

  // ---- values

  private boolean quoted() {
    QuoteSlip.Found slip = QuoteSlip.within(text, at);
    if (slip != null) {
      return fail(slip);
    }
    at = Quotes.close(text, at) + 1;
    return true;
  }

  private boolean wholeCharacters(int start) {
    QuoteSlip.Found slip = QuoteSlip.halfCharacter(text, start, at - 1);
    return slip == null || fail(slip);
  }

  private boolean number(boolean named) {
    Slip slip = NumberSlip.of(text, at, named);
    if (slip != null) {
      return fail(slip);
    }
    int run = NumberSlip.runEnd(text, at);
    at = Figures.isWord(text.substring(at, run)) ? run : Figures.end(text, at);
    return true;
  }

  private boolean word() {
    char c = text.charAt(at);
    if (QuoteSlip.isForeign(c)) {
      return fail(QuoteSlip.foreign(text, at));
    }
    if (isWordStart()) {
      return knownWord();
    }
    if (c == '=') {
      return fail(Kind.EQUALS_SIGN, "=", "a colon alone");
    }
    return signed(c) || fail(pieceSpan(), Kind.NOT_JSON, VALUE);
  }

  private boolean knownWord() {
    Slip slip = WordSlip.of(text, at);
    if (slip != null) {
      return fail(slip);
    }
    while (at < text.length() && Character.isJavaIdentifierPart(text.charAt(at))) {
      at++;
    }
    return true;
  }

  /** A number with a sign that JSON does not know, if that is what stands here. */
  private boolean signed(char c) {
    int next = at + 1;
    boolean digit = next < text.length() && Figures.isDigit(text.charAt(next));
    int end = NumberSlip.runEnd(text, next);
    String size = text.substring(Math.min(next, end), end);
    if (digit && c == '+') {
      fail(new Slip(Kind.PLUS_SIGN, end, size));
    } else if (digit && "−–—‒".indexOf(c) >= 0) {
      fail(new Slip(Kind.LONG_MINUS, end, "-" + size));
    }
    return false;
  }

  // ---- blanks and comments

  /** Goes on to the next ink; false where what stands between is wrong. */
  private boolean blanks() {
    while (!isEnd()) {
      int after = Gap.isBlank(text.charAt(at)) ? at + 1 : Gap.afterComment(text, at);
      if (after == at) {
        return ink(text.charAt(at));
      }
      if (isOpenComment(after)) {
        return fail(new Slip(Kind.COMMENT_NOT_CLOSED, at + 2, "*/ at the end of the comment"));
      }
      at = after;
    }
    return true;
  }

  private boolean isOpenComment(int after) {
    boolean closed = after - at >= 4 && text.startsWith("*/", after - 2);
    return text.startsWith("/*", at) && !closed;
  }

  private boolean ink(char c) {
    if (c == '#') {
      return fail(rest(), Kind.COMMENT_BY_HASH, "// before a comment");
    }
    if (isStrangeBlank(c)) {
      String name = Character.getName(c);
      String number = "U+" + Integer.toHexString(0x10000 | c).substring(1);
      String found = number + (name == null ? "" : " " + name);
      return fail(Kind.STRANGE_BLANK, found.toUpperCase(Locale.ROOT), "an ordinary space");
    }
    return true;
  }

  private static boolean isStrangeBlank(char c) {
    return Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || c == '\u0085'
        || Character.getType(c) == Character.FORMAT;
  }

  // ---- what stands here

  private boolean isEnd() {
    return at >= text.length();
  }

  private boolean is(char c) {
    return at < text.length() && text.charAt(at) == c;
  }

  private boolean startsNumber() {
    if (isEnd()) {
      return false;
    }
    char c = text.charAt(at);
    char next = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
    return Figures.isDigit(c)
        || c == '-'
        || (c == '.' && Figures.isDigit(next))
        || (c == '+' && next == 'I');
  }

  private boolean isWordStart() {
    return !isEnd() && (Character.isLetter(text.codePointAt(at)) || is('_') || is('$'));
  }

  /** Whether what stands here could be meant as a name or a value. */
  private boolean isPiece() {
    boolean bracket = is('{') || is('[');
    boolean quote = is('"') || (!isEnd() && QuoteSlip.isForeign(text.charAt(at)));
    return bracket || quote || isWordStart() || startsNumber();
  }

  private String piece() {
    return source.excerpt(pieceSpan());
  }

  private Span pieceSpan() {
    int end =
        is('"')
            ? Math.min(Quotes.close(text, at) + 1, Gap.lineEnd(text, at))
            : NumberSlip.runEnd(text, at);
    return new Span(at, Math.max(end, one().end()));
  }

  private String letter() {
    return source.excerpt(one());
  }

  private Span one() {
    return new Span(at, isEnd() ? at : text.offsetByCodePoints(at, 1));
  }

  /** From here to the end of the line, blanks at its end left out. */
  private Span rest() {
    int end = Gap.lineEnd(text, at);
    while (end > at && Gap.isBlank(text.charAt(end - 1))) {
      end--;
    }
    return new Span(at, end);
  }

  // ---- saying it

  private boolean fail(Kind kind, String what, String right) {
    return fail(problem(one(), kind, what, right));
  }

  private boolean fail(Slip slip) {
    return fail(new Span(at, slip.end()), slip.kind(), slip.right());
  }

  private boolean fail(QuoteSlip.Found found) {
    Slip slip = found.slip();
    return fail(new Span(found.start(), slip.end()), slip.kind(), slip.right());
  }

  private boolean fail(Span span, Kind kind, String right) {
    return fail(problem(span, kind, source.excerpt(span), right));
  }

  private boolean fail(Span span, Kind kind, String what, String right) {
    return fail(problem(span, kind, what, right));
  }

  /** Keeps the first mistake; false, so that the walk ends. */
  private boolean fail(Problem problem) {
    found = found == null ? problem : found;
    return false;
  }

  private Problem problem(Span span, Kind kind, String what, String right) {
    return Problem.of(source, kind, what, right).at(here, span);
  }
}
