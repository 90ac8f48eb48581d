package deadband.reading;

import deadband.document.Member;
import deadband.document.NearestName;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import deadband.setup.Choice;
import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Part;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.setup.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the records of a setup out of a document by walking the described shape. */
final class ShapeReader {

  /** Above this, a power in a {@code _kW} field was probably written in watts. */
  private static final double WATTS_SUSPECTED = 100;

  private final Source source;
  private final List<Problem> problems = new ArrayList<>();

  ShapeReader(Source source) {
    this.source = source;
  }

  /** What was wrong, in the order it was met. */
  List<Problem> problems() {
    return problems;
  }

  Setup read(Node.Section root) {
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
      if (field.isPresent()) {
        read(member.value(), field.get(), place)
            .ifPresent(v -> values.putIfAbsent(member.name(), v));
      } else if (shape.isEquipment() && member.name().equals(Shape.FITTED)) {
        fitted = fitted(member.value(), place);
      } else {
        unknownName(member, shape, place);
      }
    }
    boolean entered = !values.isEmpty() || Boolean.TRUE.equals(fitted);
    return shape.with(new Part(at, entered, fitted), values);
  }

  private @Nullable Boolean fitted(Node node, Pointer at) {
    if (node instanceof Node.Truth truth) {
      return truth.value();
    }
    if (!(node instanceof Node.Nothing)) {
      wrongKind(node, at, "true or false");
    }
    return null;
  }

  private void unknownName(Member member, Shape shape, Pointer at) {
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
    if (node instanceof Node.Truth truth) {
      return Optional.of(truth.value());
    }
    return wrongKind(node, at, "true or false");
  }

  private Optional<Object> section(Node node, FieldKind.Section kind, Pointer at) {
    if (node instanceof Node.Section section) {
      return Optional.of(section(section, kind.shape(), at));
    }
    return wrongKind(node, at, "a section, { … }, with any of: " + names(kind.shape()));
  }

  private static String names(Shape shape) {
    return String.join(", ", shape.names());
  }

  private Optional<Object> many(Node node, FieldKind.Many kind, Field field, Pointer at) {
    if (!(node instanceof Node.Sequence sequence)) {
      return wrongKind(node, at, "a list, [ … ]");
    }
    List<Object> items = new ArrayList<>();
    for (int i = 0; i < sequence.items().size(); i++) {
      read(sequence.items().get(i), kind.of(), field, at.child(i)).ifPresent(items::add);
    }
    return Optional.of(List.copyOf(items));
  }

  private Optional<Object> word(Node node, FieldKind.Word kind, Pointer at) {
    String right = "one of: " + String.join(" | ", kind.words());
    String written = written(node);
    if (written == null) {
      return wrongKind(node, at, right);
    }
    Optional<Choice> choice = kind.of(written);
    if (choice.isEmpty()) {
      problems.add(
          Problem.of(source, Kind.NOT_A_CHOICE, excerpt(node.span()), right)
              .at(at, node.span())
              .near(NearestName.of(written, kind.words())));
    }
    return choice.map(found -> found);
  }

  /** The word written; a bare number where a word such as "100" is one, is taken as written. */
  private static @Nullable String written(Node node) {
    if (node instanceof Node.Text text) {
      return text.value();
    }
    return node instanceof Node.Numeral number ? number.literal() : null;
  }

  private Optional<Object> text(Node node, FieldKind.Text kind, Pointer at) {
    String right = kind.form() + ", such as \"" + kind.example() + "\"";
    if (!(node instanceof Node.Text text)) {
      return wrongKind(node, at, right);
    }
    Optional<?> value = kind.parse().apply(text.value());
    if (value.isEmpty()) {
      Kind what = kind.form().startsWith("a date") ? Kind.NOT_A_DATE : Kind.WRONG_KIND;
      problems.add(Problem.of(source, what, excerpt(node.span()), right).at(at, node.span()));
    }
    return value.map(found -> found);
  }

  private Optional<Object> number(Node node, FieldKind.Num kind, Field field, Pointer at) {
    if (!(node instanceof Node.Numeral number)) {
      return wrongKind(node, at, range(kind));
    }
    double value = number.value();
    if (!Double.isFinite(value)) {
      return Optional.empty();
    }
    if (!kind.admits(value)) {
      outOfRange(node, kind, field, at, value);
      return Optional.empty();
    }
    return Optional.of(kind.unit() == Unit.NONE ? value : kind.unit().round(value));
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
    problems.add(
        Problem.of(source, Kind.WRONG_KIND, excerpt(node.span()), right).at(at, node.span()));
    return Optional.empty();
  }

  private String excerpt(Span span) {
    return source.excerpt(span);
  }
}
