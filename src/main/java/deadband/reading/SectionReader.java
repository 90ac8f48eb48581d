package deadband.reading;

import deadband.document.Document;
import deadband.document.Gap;
import deadband.document.Member;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.core.util.JsonRecyclerPools;

/** Builds the located values of a text from its tokens. */
final class SectionReader {

  /** A number longer than this says nothing a setup needs, and costs much to reckon with. */
  private static final int MOST_DIGITS = 100;

  /** A file with more than this is not a setup with slips. */
  private static final int MOST_PROBLEMS = 100;

  private static final JsonFactory FACTORY = factory();

  private final Source source;
  private final String text;
  private final int shift;
  private final List<Problem> problems = new ArrayList<>();
  private final Deque<Open> open = new ArrayDeque<>();
  private Node.@Nullable Section root;

  private SectionReader(Source source) {
    this.source = source;
    this.text = source.text();
    this.shift = text.indexOf(Source.MARK) == 0 ? 1 : 0;
  }

  static JsonReading read(Source source) {
    return beginsWithSection(source.text())
        ? new SectionReader(source).read()
        : new JsonReading.Unreadable(source.name(), List.of(Mistake.in(source, 0)));
  }

  private static boolean beginsWithSection(String text) {
    return text.startsWith("{", Gap.next(text, text.indexOf(Source.MARK) == 0 ? 1 : 0));
  }

  private static JsonFactory factory() {
    // Lengths are bounded by the file's; the table of names would refuse a file made to collide.
    StreamReadConstraints bounds =
        StreamReadConstraints.builder()
            .maxNameLength(JsonReading.MOST_BYTES)
            .maxNumberLength(JsonReading.MOST_BYTES)
            .build();
    return JsonFactory.builder()
        .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
        .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
        .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
        .disable(TokenStreamFactory.Feature.CANONICALIZE_PROPERTY_NAMES)
        .streamReadConstraints(bounds)
        // a file or a few are read: keeping buffers would cost more than it saves
        .recyclerPool(JsonRecyclerPools.nonRecyclingPool())
        .build();
  }

  private JsonReading read() {
    char[] chars = new char[text.length() - shift];
    text.getChars(shift, text.length(), chars, 0);
    try (JsonParser parser =
        FACTORY.createParser(ObjectReadContext.empty(), chars, 0, chars.length)) {
      return walk(parser);
    } catch (JacksonException e) {
      return unreadable(Mistake.in(source, shift + offset(e)));
    }
  }

  private JsonReading walk(JsonParser parser) {
    for (JsonToken token; (token = parser.nextToken()) != null; ) {
      if (root != null) {
        return unreadable(Mistake.in(source, start(parser)));
      }
      take(token, parser);
      if (open.size() > JsonReading.MOST_DEEP) {
        return unreadable(tooDeep(start(parser)));
      }
      if (problems.size() > MOST_PROBLEMS) {
        return unreadable(tooMany(start(parser)));
      }
    }
    return root == null
        ? unreadable(Mistake.in(source, text.length()))
        : new JsonReading.Read(Document.of(source, root), ordered());
  }

  private void take(JsonToken token, JsonParser parser) {
    switch (token) {
      case START_OBJECT -> open.push(new OpenSection(pointer(), start(parser)));
      case START_ARRAY -> open.push(new OpenSequence(pointer(), start(parser)));
      case END_OBJECT, END_ARRAY -> close(open.pop().closed(end(parser)));
      case PROPERTY_NAME -> name(parser.currentName(), start(parser));
      default -> put(leaf(token, parser));
    }
  }

  private Node leaf(JsonToken token, JsonParser parser) {
    int start = start(parser);
    return switch (token) {
      case VALUE_STRING -> text(parser.getString(), new Span(start, end(parser)));
      case VALUE_TRUE -> new Node.Truth(new Span(start, start + 4), true);
      case VALUE_FALSE -> new Node.Truth(new Span(start, start + 5), false);
      case VALUE_NULL -> new Node.Nothing(new Span(start, start + 4));
      default -> number(parser.getString(), start);
    };
  }

  private Node text(String value, Span span) {
    checkWhole(value, span);
    return new Node.Text(span, value);
  }

  private Node number(String literal, int start) {
    Span span = new Span(start, start + literal.length());
    double value = Figures.value(literal);
    Kind kind = kindOfWrong(literal, value);
    if (kind != null) {
      problems.add(
          Problem.of(source, kind, Source.shortened(literal), "a number of ordinary size")
              .at(pointer(), span));
    }
    return new Node.Numeral(span, literal, value);
  }

  private static @Nullable Kind kindOfWrong(String literal, double value) {
    if (!Double.isFinite(value)) {
      return Kind.NOT_FINITE;
    }
    if (value == 0 && Figures.isOtherThanZero(literal)) {
      return Kind.TOO_SMALL_A_NUMBER;
    }
    return literal.length() > MOST_DIGITS ? Kind.NUMBER_TOO_LONG : null;
  }

  private void name(String name, int start) {
    Span span = new Span(start, Quotes.close(text, start) + 1);
    OpenSection section = (OpenSection) open.getFirst();
    section.name = name;
    section.nameSpan = span;
    checkWhole(name, span);
    Span first = section.seen.putIfAbsent(name, span);
    if (first != null) {
      problems.add(
          Problem.of(source, Kind.NAME_TWICE, source.excerpt(span), "each name once in a section")
              .at(pointer(), span)
              .earlier(first));
    }
  }

  private void checkWhole(String value, Span span) {
    if (Quotes.hasHalfCharacter(value)) {
      problems.add(
          Problem.of(source, Kind.HALF_CHARACTER, source.excerpt(span), "the character itself")
              .at(pointer(), span));
    }
  }

  private void close(Node node) {
    if (open.isEmpty()) {
      root = (Node.Section) node;
    } else {
      put(node);
    }
  }

  private void put(Node node) {
    open.getFirst().put(node);
  }

  /** Where the value stands that is read next. */
  private Pointer pointer() {
    Open around = open.peek();
    return around == null ? Pointer.root() : around.next();
  }

  private int start(JsonParser parser) {
    return shift + (int) parser.currentTokenLocation().getCharOffset();
  }

  private int end(JsonParser parser) {
    return shift + (int) parser.currentLocation().getCharOffset();
  }

  private static int offset(JacksonException e) {
    return e.getLocation() == null ? 0 : (int) Math.max(0, e.getLocation().getCharOffset());
  }

  private Problem tooDeep(int start) {
    return Problem.of(
            source,
            Kind.TOO_DEEP,
            "more than " + JsonReading.MOST_DEEP + " brackets inside each other",
            "a setup has about six")
        .at(new Span(start, start + 1));
  }

  private Problem tooMany(int start) {
    return Problem.of(
            source,
            Kind.TOO_MANY,
            "more than " + MOST_PROBLEMS,
            "mend these first, then read again")
        .at(Span.at(start));
  }

  private JsonReading unreadable(Problem last) {
    List<Problem> all = ordered();
    all.add(last);
    return new JsonReading.Unreadable(source.name(), all);
  }

  private List<Problem> ordered() {
    List<Problem> ordered = new ArrayList<>(problems);
    // most files have none, and the comparator costs time at the start of a run
    if (ordered.size() > 1) {
      ordered.sort(Problem.inOrder());
    }
    return ordered;
  }

  /** A section or list whose closing bracket is still to come. */
  private abstract static class Open {

    final Pointer pointer;
    final int start;

    Open(Pointer pointer, int start) {
      this.pointer = pointer;
      this.start = start;
    }

    abstract Pointer next();

    abstract void put(Node node);

    abstract Node closed(int end);
  }

  private static final class OpenSection extends Open {

    private final List<Member> members = new ArrayList<>();
    private final Map<String, Span> seen = new HashMap<>();
    private String name = "";
    private Span nameSpan;

    OpenSection(Pointer pointer, int start) {
      super(pointer, start);
      this.nameSpan = Span.at(start);
    }

    @Override
    Pointer next() {
      return pointer.child(name);
    }

    @Override
    void put(Node node) {
      members.add(new Member(nameSpan, name, node));
    }

    @Override
    Node closed(int end) {
      return new Node.Section(new Span(start, end), members);
    }
  }

  private static final class OpenSequence extends Open {

    private final List<Node> items = new ArrayList<>();

    OpenSequence(Pointer pointer, int start) {
      super(pointer, start);
    }

    @Override
    Pointer next() {
      return pointer.child(items.size());
    }

    @Override
    void put(Node node) {
      items.add(node);
    }

    @Override
    Node closed(int end) {
      return new Node.Sequence(new Span(start, end), items);
    }
  }
}
