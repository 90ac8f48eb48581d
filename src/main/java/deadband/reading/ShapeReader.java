package deadband.reading;

import deadband.document.Literal;
import deadband.document.Member;
import deadband.document.NearestName;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import deadband.paste.Written;
import deadband.setup.Choice;
import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Part;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.setup.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads the records of a setup out of a document by walking the described shape. */
final class ShapeReader {

  /** Above this, a power in a {@code _kW} field was probably written in watts. */
  private static final double WATTS_SUSPECTED = 100;

  private final Source source;
  private final boolean sheet;
  private final List<Problem> problems = new ArrayList<>();
  private final Set<@Nullable String> confirmed = new HashSet<>();

  /**
   * A reader of one file.
   *
   * @param sheet whether it is an equipment file, which says what a data sheet does and no more
   */
  ShapeReader(Source source, boolean sheet) {
    this.source = source;
    this.sheet = sheet;
  }

  /** What was wrong, in the order it was met. */
  List<Problem> problems() {
    return problems;
  }

  Setup read(Node.Section root) {
    if (root.get("confirmed").orElse(null) instanceof Node.Sequence list) {
      list.items().stream().map(ShapeReader::written).forEach(confirmed::add);
    }
    return (Setup) section(root, Shape.of(Setup.class), Pointer.root());
  }

  private Record section(Node.Section node, Shape shape, Pointer at) {
    Map<String, Object> values = new LinkedHashMap<>();
    Boolean fitted = null;
    for (Member member : node.members()) {
      Optional<Field> field = shape.field(member.name());
      Pointer place = at.child(member.name());
      if (member.value() instanceof Node.Nothing && field.isPresent()) {
        continue;
      }
      boolean fit = shape.isEquipment() && member.name().equals(Shape.FITTED);
      if (sheet && (fit || field.filter(each -> each.optional() && !each.ofType()).isPresent())) {
        notOfType(member, place);
      } else if (field.isPresent()) {
        read(member.value(), field.get(), place)
            .ifPresent(v -> values.putIfAbsent(member.name(), v));
      } else if (fit) {
        fitted = fitted(member.value(), place);
      } else {
        unknownName(member, shape, place);
      }
    }
    boolean entered =
        Boolean.TRUE.equals(fitted)
            || values.entrySet().stream()
                .anyMatch(held -> says(shape.field(held.getKey()), held.getValue()));
    return shape.with(new Part(at, entered, fitted), values);
  }

  /**
   * Whether anything is entered in what a field holds; a section of nothing but nulls says nothing.
   */
  private static boolean says(Optional<Field> field, Object held) {
    if (field.map(Field::kind).filter(FieldKind.Section.class::isInstance).isEmpty()) {
      return true;
    }
    Part part = Shape.partOf((Record) held);
    return part.entered() || part.fitted() != null;
  }

  private @Nullable Boolean fitted(Node node, Pointer at) {
    if (node instanceof Node.Truth truth) {
      return truth.value();
    }
    if (!(node instanceof Node.Nothing)) {
      flag(node, at);
    }
    return null;
  }

  private void notOfType(Member member, Pointer at) {
    problems.add(
        Problem.of(
                source,
                Kind.NOT_OF_TYPE,
                "\"" + member.name() + "\"",
                "enter it in the setup file, and here only what the data sheet says")
            .at(at, member.nameSpan()));
  }

  private void unknownName(Member member, Shape shape, Pointer at) {
    List<Pointer> places = Written.places(member.name(), at.parent().orElseThrow());
    if (!places.isEmpty()) {
      String right =
          places.stream()
              .map(Pointer::dotted)
              .collect(Collectors.joining(" or ", "enter it as ", ""));
      problems.add(
          Problem.of(source, Kind.OTHER_SECTION, "\"" + member.name() + "\"", right)
              .at(at, member.nameSpan()));
      return;
    }
    problems.add(
        Problem.of(
                source,
                Kind.UNKNOWN_NAME,
                "\"" + member.name() + "\"",
                "one of: " + String.join(", ", shape.names()))
            .at(at, member.nameSpan())
            .near(NearestName.of(member.name(), shape.names())));
  }

  /** The value of a field; empty where it is not of its kind, which is then a problem. */
  private Optional<Object> read(Node node, Field field, Pointer at) {
    return read(node, field.kind(), field, at);
  }

  private Optional<Object> read(Node node, FieldKind kind, Field field, Pointer at) {
    if (kind instanceof FieldKind.Num number) {
      return number(node, number, field, at);
    }
    if (kind instanceof FieldKind.Word word) {
      return word(node, word, at);
    }
    if (kind instanceof FieldKind.Text text) {
      return text(node, text, at);
    }
    if (kind instanceof FieldKind.Many many) {
      return many(node, many, field, at);
    }
    if (kind instanceof FieldKind.Section section) {
      return section(node, section, at);
    }
    return flag(node, at);
  }

  private Optional<Object> flag(Node node, Pointer at) {
    if (node instanceof Node.Truth truth) {
      return Optional.of(truth.value());
    }
    if (notKnown(node, at)) {
      return Optional.empty();
    }
    Optional<Boolean> meant =
        node instanceof Node.Text text ? Written.yesOrNo(text.value()) : Optional.empty();
    return meant.isPresent()
        ? corrected(Kind.YES_OR_NO_QUOTED, node, at, meant.get().toString())
        : wrongKind(node, at, "true or false");
  }

  /** "tbc" where a value belongs. */
  private boolean notKnown(Node node, Pointer at) {
    boolean unknown = node instanceof Node.Text text && Written.isUnknown(text.value());
    if (unknown) {
      corrected(Kind.NOT_KNOWN_WRITTEN, node, at, "null");
    }
    return unknown;
  }

  /** A problem whose correction is beyond doubt. */
  private Optional<Object> corrected(Kind kind, Node node, Pointer at, String json) {
    problems.add(
        Problem.of(source, kind, excerpt(node.span()), json).at(at, node.span()).corrected(json));
    return Optional.empty();
  }

  private Optional<Object> section(Node node, FieldKind.Section kind, Pointer at) {
    if (node instanceof Node.Section section) {
      return Optional.of(section(section, kind.shape(), at));
    }
    String name = kind.shape().isEquipment() ? Shape.FITTED : "enabled";
    boolean known = kind.shape().names().contains(name);
    Optional<Boolean> fitted = known ? fitted(node) : Optional.empty();
    return fitted.isPresent()
        ? corrected(Kind.NOT_FITTED_WRITTEN, node, at, "{ \"" + name + "\": " + fitted.get() + " }")
        : wrongKind(node, at, "a section, { … }, with any of: " + names(kind.shape()));
  }

  /** What true, "yes" or "none" says of a thing in place of its section. */
  private static Optional<Boolean> fitted(Node node) {
    if (node instanceof Node.Text text) {
      return Written.yesOrNo(text.value());
    }
    return node instanceof Node.Truth truth ? Optional.of(truth.value()) : Optional.empty();
  }

  private static String names(Shape shape) {
    return String.join(", ", shape.names());
  }

  private Optional<Object> many(Node node, FieldKind.Many kind, Field field, Pointer at) {
    if (!(node instanceof Node.Sequence sequence)) {
      return notAList(node, kind, at);
    }
    List<Object> items = new ArrayList<>();
    for (int i = 0; i < sequence.items().size(); i++) {
      read(sequence.items().get(i), kind.of(), field, at.child(i)).ifPresent(items::add);
    }
    return Optional.of(List.copyOf(items));
  }

  /** One item without its brackets, or what says that there is none. */
  private Optional<Object> notAList(Node node, FieldKind.Many kind, Pointer at) {
    boolean absent =
        node instanceof Node.Section section
            ? section
                .get(Shape.FITTED)
                .map(Literal::of)
                .map(Literal::json)
                .orElse("")
                .equals("false")
            : fitted(node).equals(Optional.of(false));
    if (absent) {
      return corrected(Kind.WRONG_KIND, node, at, "[]");
    }
    boolean item =
        node instanceof Node.Section
            ? kind.of() instanceof FieldKind.Section
            : node instanceof Node.Text;
    return item
        ? corrected(Kind.WRONG_KIND, node, at, "[ " + source.slice(node.span()) + " ]")
        : wrongKind(node, at, "a list, [ … ]");
  }

  private Optional<Object> word(Node node, FieldKind.Word kind, Pointer at) {
    String written = written(node);
    if (written == null) {
      return wrongKind(node, at, oneOf(kind));
    }
    Optional<Choice> choice = kind.of(written);
    if (choice.isEmpty() && !notKnown(node, at)) {
      problems.add(
          Problem.of(source, Kind.NOT_A_CHOICE, excerpt(node.span()), oneOf(kind))
              .at(at, node.span())
              .near(NearestName.of(written, kind.words())));
    }
    return choice.map(found -> found);
  }

  private static String oneOf(FieldKind.Word kind) {
    return "one of: " + String.join(" | ", kind.words());
  }

  /** The word written; a bare number where a word such as "100" is one, is taken as written. */
  private static @Nullable String written(Node node) {
    if (node instanceof Node.Text text) {
      return text.value();
    }
    return node instanceof Node.Numeral number ? number.literal() : null;
  }

  private Optional<Object> text(Node node, FieldKind.Text kind, Pointer at) {
    if (!(node instanceof Node.Text text)) {
      return wrongKind(node, at, suchAs(kind));
    }
    if (kind.form().startsWith("a country") && country(text, at)) {
      return Optional.empty();
    }
    Optional<?> value = kind.parse().apply(text.value());
    if (value.isEmpty() && kind.form().startsWith("a date") && date(text, at)) {
      return Optional.empty();
    }
    if (value.isEmpty()) {
      Kind what = kind.form().startsWith("a date") ? Kind.NOT_A_DATE : Kind.WRONG_KIND;
      problems.add(
          Problem.of(source, what, excerpt(node.span()), suchAs(kind)).at(at, node.span()));
    }
    return value.map(found -> found);
  }

  private static String suchAs(FieldKind.Text kind) {
    return kind.form() + ", such as \"" + kind.example() + "\"";
  }

  /** A country by its name, or by a code that is not its own: UK. */
  private boolean country(Node.Text text, Pointer at) {
    Optional<String> code = Written.country(text.value());
    boolean other = code.isPresent() && !code.get().equals(text.value());
    if (other) {
      corrected(Kind.NOT_A_CHOICE, text, at, Literal.of(code.get()).json());
    }
    return other;
  }

  /** A date that is written otherwise than 2026-05-31. */
  private boolean date(Node.Text text, Pointer at) {
    List<String> meant = OtherDate.meant(text.value());
    if (meant.size() == 1) {
      corrected(Kind.NOT_A_DATE, text, at, Literal.of(meant.get(0)).json());
    } else if (!meant.isEmpty()) {
      String right =
          Literal.of(meant.get(0)).json()
              + " if the day comes first, "
              + Literal.of(meant.get(1)).json()
              + " if the month does";
      problems.add(
          Problem.of(source, Kind.NOT_A_DATE, excerpt(text.span()), right).at(at, text.span()));
    }
    return !meant.isEmpty();
  }

  private Optional<Object> number(Node node, FieldKind.Num kind, Field field, Pointer at) {
    if (!(node instanceof Node.Numeral number)) {
      return notKnown(node, at) ? Optional.empty() : written(node, kind, at);
    }
    double value = number.value();
    if (!Double.isFinite(value)) {
      return Optional.empty();
    }
    if (!kind.admits(value)) {
      outOfRange(node, kind, field, at, value);
      return Optional.empty();
    }
    if (Written.isFar(at, value) && !confirmed.contains(at.toString())) {
      notPlausible(node, kind, at);
    }
    return Optional.of(kind.unit() == Unit.NONE ? value : kind.unit().round(value));
  }

  /** A number in quotes, perhaps with its unit. */
  private Optional<Object> written(Node node, FieldKind.Num kind, Pointer at) {
    Optional<Written.Figure> meant =
        node instanceof Node.Text text
            ? Written.number(text.value(), kind.unit())
            : Optional.empty();
    Written.Figure number = meant.orElse(null);
    if (number instanceof Written.Figure.One one && kind.admits(one.value())) {
      return corrected(Kind.NUMBER_QUOTED, node, at, decimal(one.value()));
    }
    if (number instanceof Written.Figure.Either either) {
      String right =
          decimal(either.decimal())
              + " or "
              + decimal(either.thousands())
              + ": write the one that is meant without a comma";
      return wrong(Kind.COMMA_AMBIGUOUS, node, at, right);
    }
    return number instanceof Written.Figure.Range range
        ? wrong(
            Kind.RANGE_WRITTEN,
            node,
            at,
            "one number: " + decimal(range.from()) + " or " + decimal(range.to()))
        : wrongKind(node, at, range(kind));
  }

  private void outOfRange(Node node, FieldKind.Num kind, Field field, Pointer at, double value) {
    Kind what = Kind.OUT_OF_RANGE;
    String right = range(kind);
    if (field.name().equals("deadband")) {
      what = Kind.OTHER_VERSION;
    } else if (kind.unit() == Unit.KILOWATT && Math.abs(value) > WATTS_SUSPECTED) {
      what = Kind.UNIT_DOUBTED;
      right = right + "; if watts were meant, " + decimal(value / 1000);
    }
    problems.add(Problem.of(source, what, excerpt(node.span()), right).at(at, node.span()));
  }

  private void notPlausible(Node node, FieldKind.Num kind, Pointer at) {
    String right =
        "usually "
            + Written.usual(at)
            + " "
            + kind.unit().printed()
            + "; if it is right, enter \"confirmed\": [\""
            + at
            + "\"]";
    wrong(Kind.NOT_PLAUSIBLE, node, at, right);
  }

  private static String range(FieldKind.Num kind) {
    String what = kind.whole() ? "a whole number" : "a number";
    String unit = kind.unit().printed();
    String ends =
        kind.least() == kind.most()
            ? ": " + decimal(kind.least())
            : " from " + decimal(kind.least()) + " to " + decimal(kind.most());
    return (what + ends + " " + unit).strip();
  }

  private static String decimal(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  private Optional<Object> wrongKind(Node node, Pointer at, String right) {
    return wrong(Kind.WRONG_KIND, node, at, right);
  }

  private Optional<Object> wrong(Kind kind, Node node, Pointer at, String right) {
    problems.add(Problem.of(source, kind, excerpt(node.span()), right).at(at, node.span()));
    return Optional.empty();
  }

  private String excerpt(Span span) {
    return source.excerpt(span);
  }
}
