package deadband.reading;

import deadband.document.Document;
import deadband.document.Gap;
import deadband.document.Literal;
import deadband.document.Member;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/**
 * Builds the located values of a text, by the grammar of RFC 8259 with comments and trailing
 * commas. What is not written so is reported, and reading goes on with what was most likely meant.
 */
final class JsonParser extends Cursor {

  private static final String SECTION = "one section: { … }";
  private static final String VALUE = "a value, or null where it is not known";
  private static final String NOTHING_MORE = "nothing but comments after the closing }";

  /** A number longer than this says nothing a setup needs, and costs much to calculate with. */
  private static final int MOST_DIGITS = 100;

  private final List<Bracket> outdented = new ArrayList<>();
  private @Nullable Bracket around;
  private @Nullable Bracket unclosed;
  private boolean separated;

  private JsonParser(Source source) {
    super(source);
  }

  static JsonReading read(Source source) {
    return new JsonParser(source).file();
  }

  // ---- the file

  private JsonReading file() {
    Node root = root();
    List<Problem> problems = problems().listed();
    return root instanceof Node.Section section && !isGuessed()
        ? new JsonReading.Read(Document.of(source, section), problems)
        : new JsonReading.Unreadable(source.name(), problems);
  }

  private @Nullable Node root() {
    int start = at;
    blanks();
    while (isAny("}]")) {
      problem(null, here(), Kind.BRACKET_TOO_MANY, SECTION);
      guess();
      moveTo(at + 1);
      blanks();
    }
    if (isEnd()) {
      empty(start);
      return null;
    }
    Node root = is('{') ? section() : other();
    notClosed();
    afterEnd();
    return root;
  }

  private void empty(int start) {
    if (!isGuessed()) {
      boolean blank = Gap.isBlank(text, start, text.length());
      String what = blank ? "no text" : "only blanks and comments";
      problem(Problem.of(source, Kind.EMPTY, what, SECTION));
    }
  }

  /** A file that does not begin with a section. */
  private @Nullable Node other() {
    guess();
    boolean members = isMember(at);
    boolean json = isAny("[\"-0123456789") || members || isWord();
    problem(null, rest(), json ? Kind.NOT_A_SECTION : Kind.NOT_JSON, SECTION);
    if (members) {
      members(enter('}'));
      unclosed = null;
    } else if (is('[')) {
      value(false);
    } else {
      stop();
    }
    return null;
  }

  /** What follows the end: where it is more members, a bracket was closed too early. */
  private void afterEnd() {
    int end = at;
    boolean extra = false;
    for (blanks(); !isEnd(); blanks()) {
      int next = is(',') ? Gap.next(text, at + 1) : at;
      if (isAny("}]")) {
        problem(null, here(), Kind.BRACKET_TOO_MANY, "nothing: every bracket is closed already");
        extra = true;
        moveTo(at + 1);
      } else if (!extra || !isMember(next)) {
        Problem after = Problem.of(source, Kind.TEXT_AFTER_END, excerpt(rest()), NOTHING_MORE);
        problem(after.at(rest()).earlier(new Span(Math.max(0, end - 1), end)));
        extra = isMember(next);
        moveTo(extra ? at : text.length());
      } else {
        at = next;
        members(enter('}'));
        unclosed = null;
        extra = false;
        end = at;
      }
      guess();
    }
  }

  // ---- sections and lists

  /** A section or list that is being read. */
  private static final class Bracket {

    final @Nullable Bracket around;
    final int depth;
    final int start;
    final char closer;
    final List<Member> members = new ArrayList<>();
    final List<Node> items = new ArrayList<>();
    boolean eitherCloser;
    boolean isOver;
    @Nullable Pointer pointer;
    Span nameSpan;
    @Nullable String name;

    Bracket(@Nullable Bracket around, int start, char closer) {
      this.around = around;
      this.depth = around == null ? 1 : around.depth + 1;
      this.start = start;
      this.closer = closer;
      this.nameSpan = Span.at(start);
    }

    boolean isList() {
      return closer == ']';
    }

    Pointer pointer() {
      if (pointer == null) {
        return around == null ? Pointer.root() : around.inside();
      }
      return pointer;
    }

    /** Keeps its place for later, when what is around has gone on. */
    Bracket kept() {
      pointer = pointer();
      return this;
    }

    /** Where the value stands that is read next. */
    Pointer inside() {
      if (isList()) {
        return pointer().child(items.size());
      }
      return name == null ? pointer() : pointer().child(name);
    }
  }

  private Bracket enter(char closer) {
    Bracket bracket = new Bracket(around, at, closer);
    around = bracket;
    if (bracket.depth > JsonReading.MOST_DEEP) {
      String found = "more than " + JsonReading.MOST_DEEP + " brackets inside each other";
      problem(null, here(), Kind.TOO_DEEP, found, "a setup has about six");
      stop();
    }
    return bracket;
  }

  private Node section() {
    Bracket bracket = enter('}');
    moveTo(at + 1);
    members(bracket);
    return new Node.Section(new Span(bracket.start, at), bracket.members);
  }

  private void members(Bracket section) {
    for (boolean open = true; open && !section.isOver; ) {
      section.name = null;
      blanks();
      if (is('"')) {
        name(section);
        member(section);
      } else {
        open = isEnd() ? isOpenAtEnd(section) : isAny("}]") ? !closes(section) : oddName(section);
      }
    }
    around = section.around;
    repeatedNames(section);
  }

  private void name(Bracket section) {
    int start = at;
    String name = quoted(true);
    named(section, new Span(start, at), name);
  }

  private static void named(Bracket section, Span span, String name) {
    section.name = name;
    section.nameSpan = span;
  }

  /** What follows a name. */
  private void member(Bracket section) {
    blanks();
    if (is(':')) {
      at++;
    } else if (!oddColon(section)) {
      if (!section.isOver) {
        separator(section, at);
      }
      return;
    }
    blanks();
    Node value = value(true);
    int end = at;
    blanks();
    if (value instanceof Node.Text first && is(':') && isOpenerMissing(section)) {
      value = notOpened(first);
      end = at;
    }
    if (value != null) {
      section.members.add(new Member(section.nameSpan, String.valueOf(section.name), value));
    }
    separator(section, end);
  }

  private void repeatedNames(Bracket section) {
    Map<String, Span> seen = new HashMap<>(2 * section.members.size());
    for (Member member : section.members) {
      Span first = seen.putIfAbsent(member.name(), member.nameSpan());
      if (first != null) {
        Span span = member.nameSpan();
        problem(
            Problem.of(source, Kind.NAME_TWICE, excerpt(span), "each name once in a section")
                .at(section.pointer().child(member.name()), span)
                .earlier(first));
      }
    }
  }

  private Node list() {
    Bracket list = enter(']');
    moveTo(at + 1);
    return items(list);
  }

  private Node items(Bracket list) {
    for (boolean open = true; open; ) {
      blanks();
      if (isEnd()) {
        open = isOpenAtEnd(list);
      } else if (isAny("}]")) {
        open = !closes(list);
      } else if (is(',')) {
        problem(list.pointer(), here(), Kind.COMMA_TOO_MANY, "one comma between two items");
        moveTo(at + 1);
      } else {
        int start = at;
        Node item = value(false);
        int end = at;
        blanks();
        if (item instanceof Node.Text name && is(':')) {
          if (!isOpenerMissing(list)) {
            if (list.items.isEmpty()) {
              return notList(list, name);
            }
            open = false;
            endedBefore(list, start);
            continue;
          }
          item = notOpened(name);
          end = at;
        }
        if (item != null) {
          list.items.add(item);
        }
        separator(list, end);
      }
    }
    around = list.around;
    return new Node.Sequence(new Span(list.start, at), list.items);
  }

  private @Nullable Node value(boolean named) {
    if (isEnd()) {
      return null;
    }
    return switch (text.charAt(at)) {
      case '{' -> section();
      case '[' -> list();
      case '"' -> text();
      case '-', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9' -> number(named);
      case 't', 'f', 'n' -> isWord() ? word() : oddValue(named);
      default -> oddValue(named);
    };
  }

  /** A comma, or the bracket that closes. */
  private void separator(Bracket bracket, int end) {
    blanks();
    if (separated) {
      separated = false;
    } else if (is(',')) {
      at++;
    } else if (!isEnd() && !is(bracket.closer)) {
      oddSeparator(bracket, end);
    }
  }

  // ---- values

  private Node text() {
    int start = at;
    String value = quoted(false);
    return new Node.Text(new Span(start, Math.max(start, at)), value);
  }

  private String quoted(boolean name) {
    int start = at;
    for (int i = start + 1; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        at = i + 1;
        String value = text.substring(start + 1, i);
        return endsWell() ? value : glued(start, value, name);
      }
      if (c == '\\' || c < ' ') {
        break;
      }
    }
    QuotedText quoted = QuotedText.read(text, start, this::problem);
    if (isStopped() || !quoted.isClosed()) {
      return isStopped() ? quoted.value() : notClosed(quoted.close(), name);
    }
    at = quoted.close() + 1;
    return endsWell() ? quoted.value() : glued(start, quoted.value(), name);
  }

  /** Whether what follows a closing quote at once may follow one. */
  private boolean endsWell() {
    char c = isEnd() ? ',' : text.charAt(at);
    boolean mark = c == ':' || c == ',' || c <= ' ' || c == '}' || c == ']' || c == '/';
    return mark || (c == '"' && !text.startsWith("\"\"", at));
  }

  private Node number(boolean named) {
    int end = Figures.end(text, at);
    if (end == at || !isAlone(end, named)) {
      SyntaxError error = MalformedNumber.error(text, at, named);
      if (error != null) {
        return meant(error);
      }
    }
    Span span = new Span(at, end);
    at = end;
    return numeral(span, source.slice(span));
  }

  /** Whether nothing after a number may be meant as part of it. */
  private boolean isAlone(int end, boolean named) {
    boolean comma = text.startsWith(",", end);
    boolean decimals = comma && end + 1 < text.length() && Figures.isDigit(text.charAt(end + 1));
    return !(named && decimals) && BareWord.endsValue(text, end);
  }

  private Node numeral(Span span, String literal) {
    double value = Double.parseDouble(literal);
    if (literal.length() > MOST_DIGITS) {
      odd(span, Kind.NUMBER_TOO_LONG, literal);
    } else if (!Double.isFinite(value)) {
      odd(span, Kind.NOT_FINITE, literal);
    } else if (value == 0 && Figures.isOtherThanZero(literal)) {
      odd(span, Kind.TOO_SMALL_A_NUMBER, literal);
    }
    return new Node.Numeral(span, literal, value);
  }

  private void odd(Span span, Kind kind, String literal) {
    problem(inside(), span, kind, Source.shortened(literal), "a number of ordinary size");
  }

  private @Nullable Node word() {
    String word = is('t') ? "true" : is('f') ? "false" : "null";
    Span span = new Span(at, at + word.length());
    at = span.end();
    return leaf(word, span);
  }

  private boolean isWord() {
    return isWord("true") || isWord("false") || isWord("null");
  }

  private boolean isWord(String word) {
    int end = at + word.length();
    return text.startsWith(word, at)
        && (end >= text.length() || !Character.isJavaIdentifierPart(text.charAt(end)));
  }

  /** The value a literal of JSON stands for, null where it is none. */
  private @Nullable Node leaf(String json, Span span) {
    if (json.startsWith("\"")) {
      QuotedText quoted = QuotedText.read(json, 0, error -> {});
      return quoted.close() == json.length() - 1 ? new Node.Text(span, quoted.value()) : null;
    }
    if (!json.isEmpty() && Figures.end(json, 0) == json.length()) {
      return numeral(span, json);
    }
    return switch (json) {
      case "true", "false" -> new Node.Truth(span, json.equals("true"));
      case "null" -> new Node.Nothing(span);
      case BareWord.FINITE -> new Node.Numeral(span, excerpt(span), Double.NaN);
      default -> null;
    };
  }

  // ---- what is not written as JSON wants it: names and separators

  /** What stands where a name in double quotes belongs; false where the section ends before it. */
  private boolean oddName(Bracket section) {
    if (is(',')) {
      problem(section.pointer(), here(), Kind.COMMA_TOO_MANY, "one comma between two values");
      moveTo(at + 1);
      return true;
    }
    if (isForeignQuote()) {
      int start = at;
      Node.Text name = foreignQuotes(section.pointer(), true);
      named(section, new Span(start, at), name.value());
      member(section);
      return true;
    }
    if (isWordStart() || isAny("-0123456789")) {
      bareName(section);
      member(section);
      return true;
    }
    return nameless(section);
  }

  private void bareName(Bracket section) {
    Matcher bare = bareName(at);
    boolean colon = bare.lookingAt();
    Span span = colon ? new Span(at, bare.end()) : piece();
    String name = colon ? bare.group(1) : source.slice(span);
    named(section, span, name);
    problem(section.inside(), span, Kind.NAME_NOT_QUOTED, Literal.of(name).json());
    moveTo(span.end());
  }

  private boolean nameless(Bracket section) {
    if (is('{') && section.around != null && section.around.isList() && isCloserMissing(section)) {
      guess();
      notClosed(section, "{", "} before it");
      separated = true;
      return false;
    }
    if (isAny("{[") && isCloserMissing(section)) {
      guess();
      problem(section.pointer(), here(), Kind.BRACKET_TOO_MANY, "nothing, or a name before it");
      moveTo(at + 1);
      return true;
    }
    if (isAny("{[") && isList(section, at)) {
      if (!section.isOver) {
        separator(section, at);
      }
      return true;
    }
    if (isAny("{[:")) {
      String right = "a name in double quotes and a colon before it";
      problem(section.pointer(), here(), Kind.NAME_MISSING, right);
      guess();
      moveTo(is(':') ? at + 1 : at);
      blanks();
      value(true);
    } else {
      problem(section.pointer(), here(), Kind.NOT_JSON, "a name in double quotes, or }");
      skip(here().end());
    }
    separator(section, at);
    return true;
  }

  /** What stands where a colon belongs; false where no value is to be read. */
  private boolean oddColon(Bracket section) {
    Span name = section.nameSpan;
    if (is('=')) {
      problem(section.inside(), here(), Kind.EQUALS_SIGN, ":");
      moveTo(text.startsWith("=>", at) || text.startsWith("==", at) ? at + 2 : at + 1);
      return true;
    }
    if (isEnd()) {
      return false;
    }
    if (isAny(",]") && isList(section, name.start())) {
      return false;
    }
    if (isAny(",;}]") || isMember(at)) {
      problem(section.inside(), name, Kind.VALUE_MISSING, VALUE);
      guess();
      separated = !isAny(",;}]");
      return false;
    }
    boolean piece = isPiece();
    Span there = piece ? Span.at(name.end()) : here();
    String found = excerpt(piece ? piece() : there);
    problem(section.inside(), there, Kind.COLON_MISSING, found, ": before it");
    if (!piece) {
      skip(here().end());
    }
    return piece;
  }

  private void oddSeparator(Bracket bracket, int end) {
    if (is(';')) {
      problem(bracket.inside(), here(), Kind.SEMICOLON, ",");
      moveTo(at + 1);
    } else if (isAny("}]")) {
      return;
    } else if (isNext(bracket, end)) {
      problem(bracket.pointer(), Span.at(end), Kind.COMMA_MISSING, excerpt(piece()), ", before it");
    } else {
      String right = ", or " + bracket.closer;
      problem(bracket.inside(), isPiece() ? piece() : here(), Kind.TEXT_AFTER_VALUE, right);
      skip(isAny("{[") ? at : piece().end());
      separator(bracket, at);
    }
  }

  /** Whether the next item or member stands here, so that only the comma is missing. */
  private boolean isNext(Bracket bracket, int end) {
    boolean ownLine = Gap.lineEnd(text, end) < at;
    return isPiece() ? bracket.isList() || ownLine || isMember(at) : ownLine && is(':');
  }

  // ---- values

  private @Nullable Node oddValue(boolean named) {
    if (isAny(",;}]")) {
      Span there = named && around != null ? around.nameSpan : here();
      problem(inside(), there, Kind.VALUE_MISSING, VALUE);
      guess();
      passStray();
      return null;
    }
    if (isForeignQuote()) {
      return foreignQuotes(inside(), false);
    }
    if (isWordStart()) {
      return meant(BareWord.error(text, at));
    }
    if (startsNumber()) {
      SyntaxError error = MalformedNumber.error(text, at, named);
      return error == null ? null : meant(error);
    }
    if (isAny("=:")) {
      problem(inside(), here(), is(':') ? Kind.COLON_TOO_MANY : Kind.EQUALS_SIGN, "one colon");
      moveTo(at + 1);
      blanks();
      return value(named);
    }
    problem(inside(), piece(), Kind.NOT_JSON, VALUE);
    skip(piece().end());
    return null;
  }

  /** Passes a closing bracket that closes nothing: what was missing before it is reported. */
  private void passStray() {
    Bracket bracket = around;
    while (bracket != null && !is(bracket.closer)) {
      bracket = bracket.around;
    }
    at = bracket == null && isAny("}]") ? at + 1 : at;
  }

  /** Reports an error in a value, and goes on with the value that was meant. */
  private Node meant(SyntaxError error) {
    problem(error);
    Span span = new Span(error.start(), error.end());
    Node meant = leaf(error.right(), span);
    moveTo(error.end());
    boolean either = error.kind() == Kind.COMMA_AMBIGUOUS || error.kind() == Kind.RANGE_WRITTEN;
    if (meant == null && !either) {
      guess();
    }
    return meant == null ? new Node.Nothing(span) : meant;
  }

  private Node.Text foreignQuotes(Pointer where, boolean name) {
    int start = at;
    int line = Gap.lineEnd(text, start);
    int close = start + 1;
    while (close < line && !isForeignClose(close, name)) {
      close++;
    }
    int end = close < line ? close : contentEnd(start, line);
    if (close == line) {
      guess();
    }
    Span span = new Span(start, close < line ? close + 1 : end);
    String value = text.substring(Math.min(start + 1, end), end);
    problem(where, span, QuotedText.kindOf(text.charAt(start)), Literal.of(value).json());
    moveTo(span.end());
    return new Node.Text(span, value);
  }

  /** Whether a quote ends a text: an apostrophe inside it does not. */
  private boolean isForeignClose(int i, boolean name) {
    boolean quote = text.charAt(i) == '"' || QuotedText.isForeign(text.charAt(i));
    int next = Gap.next(text, i + 1);
    boolean colon = text.startsWith(":", next) || text.startsWith("=", next);
    return quote && (name ? colon : BareWord.endsValue(text, i + 1));
  }

  /** A text that no quote on its line closes. */
  private String notClosed(int line, boolean name) {
    int start = at;
    int close = name ? -1 : closeOnOtherLine(line);
    if (close >= 0) {
      String value = text.substring(start + 1, close).replaceAll("\\s*[\\n\\r]\\s*", " ");
      problem(
          inside(),
          new Span(start, line),
          Kind.TEXT_OVER_LINES,
          "the text on one line: " + Source.shortened(value));
      moveTo(close + 1);
      return value;
    }
    int colon = name ? text.indexOf(':', start) : -1;
    return cutOff(contentEnd(start, colon > start + 1 && colon < line ? colon : line));
  }

  /** The text that begins here ends there, without its quote. */
  private String cutOff(int end) {
    int start = at;
    char last = text.charAt(end - 1);
    Kind kind = end - 1 > start ? QuotedText.kindOf(last) : Kind.QUOTE_NOT_CLOSED;
    int inner = kind == Kind.QUOTE_NOT_CLOSED ? end : end - 1;
    String value = text.substring(Math.min(start + 1, inner), inner);
    problem(inside(), new Span(start, end), kind, "\"" + Source.shortened(value) + "\"");
    guess();
    moveTo(end);
    return value;
  }

  /** The quote that closes a text on a later line, where the lines between are no JSON; or −1. */
  private int closeOnOtherLine(int line) {
    int next = Gap.next(text, line);
    if (next == text.length() || "\"{}[],".indexOf(text.charAt(next)) >= 0 || isMember(next)) {
      return -1;
    }
    int close = text.indexOf('"', next);
    return close >= 0 && BareWord.endsValue(text, close + 1) ? close : -1;
  }

  /** Where a text without its closing quote ends: before the comma and brackets after it. */
  private int contentEnd(int start, int limit) {
    int end = limit;
    while (end > start + 1 && " \t,;}]\\".indexOf(text.charAt(end - 1)) >= 0) {
      end--;
    }
    Bracket bracket = around;
    for (int i = end; i < limit; i++) {
      if ("}]".indexOf(text.charAt(i)) >= 0) {
        if (bracket == null || bracket.closer != text.charAt(i)) {
          // not one of ours: the text itself ends in a bracket
          return i + 1;
        }
        bracket = bracket.around;
      }
    }
    return Math.max(end, start + 1);
  }

  /** A quote inside a text, or one missing before: goes back to where the text really ends. */
  private String glued(int start, String value, boolean name) {
    int quote = at - 1;
    int line = Gap.lineEnd(text, at);
    String inside = text.substring(start + 1, quote).stripTrailing();
    int colon = name ? text.indexOf(':', start) : -1;
    boolean early = colon > start + 1 && colon < quote;
    if (isWordStart() && (early || inside.endsWith(",") || inside.endsWith(":"))) {
      at = start;
      return cutOff(contentEnd(start, early ? colon : quote));
    }
    int close = at;
    while (close < line && !(text.charAt(close) == '"' && isForeignClose(close, name))) {
      close++;
    }
    return close == line || !isPiece() ? value : quoteInside(new Span(start, close + 1), quote);
  }

  private String quoteInside(Span whole, int quote) {
    String value = text.substring(whole.start() + 1, whole.end() - 1);
    String right = "\"" + value.replaceAll("(?<!\\\\)\"", "\\\\\"") + "\"";
    Span inner = new Span(quote, quote + 1);
    problem(inside(), inner, Kind.QUOTE_INSIDE, excerpt(whole), Source.shortened(right));
    moveTo(whole.end());
    return value;
  }

  // ---- brackets

  /** Whether the closing bracket here ends a section or list. */
  private boolean closes(Bracket bracket) {
    if (is(bracket.closer) || bracket.eitherCloser) {
      if (isOutdented(at, bracket.start)) {
        outdented.add(bracket.kept());
      }
      at++;
      return true;
    }
    int closers = closersAfter(at + 1);
    guess();
    if (closers >= bracket.depth) {
      problem(bracket.pointer(), here(), Kind.BRACKET_TOO_MANY, "nothing, or " + bracket.closer);
      moveTo(at + 1);
      blanks();
      moveTo(is(',') ? at + 1 : at);
      return false;
    }
    boolean outer = closers < bracket.depth - 1 && isOpen(bracket.around, text.charAt(at));
    String right = bracket.closer + (outer ? " before it" : "");
    Problem mismatched = Problem.of(source, Kind.BRACKET_MISMATCHED, excerpt(here()), right);
    problem(mismatched.at(bracket.pointer(), here()).earlier(opened(bracket)));
    moveTo(outer ? at : at + 1);
    return true;
  }

  private static boolean isOpen(@Nullable Bracket bracket, char closer) {
    Bracket outer = bracket;
    while (outer != null && outer.closer != closer) {
      outer = outer.around;
    }
    return outer != null;
  }

  private boolean isCloserMissing(Bracket bracket) {
    return closersAfter(at) < bracket.depth;
  }

  private boolean isOpenerMissing(Bracket bracket) {
    return closersAfter(at) > bracket.depth;
  }

  /** A section without its opening bracket: its first name was read as a text. */
  private Node notOpened(Node.Text first) {
    problem(inside(), first.span(), Kind.BRACKET_NOT_OPENED, "{ before it");
    return section(new Bracket(around, first.span().start(), '}'), first);
  }

  /** A section in the brackets of a list. */
  private Node notList(Bracket list, Node.Text first) {
    problem(
        list.pointer(),
        opened(list),
        Kind.BRACKETS_OF_OTHER_KIND,
        "{ … } around names and their values");
    Bracket section = new Bracket(list.around, list.start, '}');
    section.eitherCloser = true;
    return section(section, first);
  }

  /** Whether items of a list stand in a section; if so, reads them. */
  private boolean isList(Bracket section, int item) {
    boolean empty = section.members.isEmpty();
    boolean items = isAny("{[") || areTexts(item);
    if (empty ? section.around == null || !items : !isOpenerMissing(section)) {
      return false;
    }
    Bracket list = new Bracket(empty ? section.around : section, item, ']');
    if (empty) {
      String right = "[ … ] around values without names";
      problem(section.pointer(), opened(section), Kind.BRACKETS_OF_OTHER_KIND, right);
      list.eitherCloser = true;
      section.isOver = true;
    } else {
      // the first item was read as the value of the last name
      Member last = section.members.get(section.members.size() - 1);
      named(section, last.nameSpan(), last.name());
      problem(section.inside(), last.value().span(), Kind.BRACKET_NOT_OPENED, "[ before it");
    }
    guess();
    moveTo(item);
    around = list;
    items(list);
    return true;
  }

  /** Whether only texts parted by commas stand before the next closing bracket. */
  private boolean areTexts(int from) {
    int next = from;
    while (text.startsWith("\"", next)) {
      int comma = Gap.next(text, Math.min(text.length(), QuotedText.close(text, next) + 1));
      next = text.startsWith(",", comma) ? Gap.next(text, comma + 1) : comma;
    }
    return next < text.length() && "}]".indexOf(text.charAt(next)) >= 0;
  }

  private static Span opened(Bracket bracket) {
    return new Span(bracket.start, bracket.start + 1);
  }

  private Node section(Bracket section, Node.Text first) {
    guess();
    around = section;
    named(section, first.span(), first.value());
    member(section);
    members(section);
    return new Node.Section(new Span(section.start, Math.max(section.start, at)), section.members);
  }

  /** Ends a list before a name, which only the section around it can hold. */
  private void endedBefore(Bracket list, int name) {
    moveTo(name);
    guess();
    notClosed(list, excerpt(piece()), "] before it");
    separated = true;
  }

  /** Keeps the innermost bracket that is open at the end; false, since nothing follows. */
  private boolean isOpenAtEnd(Bracket bracket) {
    unclosed = unclosed == null ? bracket.kept() : unclosed;
    return false;
  }

  /**
   * Reports what is open at the end. Where an inner bracket seems to be closed by that of an outer
   * one, going by how far the lines are indented, it is that.
   */
  private void notClosed() {
    Bracket open = unclosed;
    if (open == null || isStopped()) {
      return;
    }
    guess();
    String end = "the end of the file at " + source.place(text.length());
    int left = open.depth;
    for (Bracket bracket : outdented.subList(0, Math.min(left, outdented.size()))) {
      notClosed(bracket, end, bracket.closer + " before it");
      left--;
    }
    StringBuilder closers = new StringBuilder();
    for (Bracket bracket = open; bracket != null && left > 0; bracket = bracket.around, left--) {
      closers.append(bracket.closer);
    }
    if (!closers.isEmpty()) {
      notClosed(open, end, closers + " before it");
    }
  }

  private void notClosed(Bracket bracket, String found, String right) {
    problem(bracket.pointer(), opened(bracket), Kind.BRACKET_NOT_CLOSED, found, right);
  }

  // ---- going on

  /** Goes on to where a value or name may begin: after a comma, before a bracket, on a new line. */
  private void skip(int from) {
    guess();
    separated = false;
    moveTo(from);
    while (!isEnd() && !isAny(",;}]")) {
      if (isAny("{[")) {
        value(false);
      } else if (Gap.isLineEnd(text.charAt(at))) {
        blanks();
        separated = !isAny(",;}]");
        return;
      } else {
        int after = is('"') ? piece().end() : Gap.afterComment(text, at);
        at = Math.max(at + 1, after);
      }
    }
  }

  private void problem(SyntaxError error) {
    problem(inside(), new Span(error.start(), error.end()), error.kind(), error.right());
  }

  /** Where the value stands that is read, or the section in which a name is read. */
  private Pointer inside() {
    return around == null ? Pointer.root() : around.inside();
  }

  private String excerpt(Span span) {
    return source.excerpt(span);
  }
}
