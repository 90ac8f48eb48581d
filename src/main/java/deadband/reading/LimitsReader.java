package deadband.reading;

import deadband.document.Document;
import deadband.document.Member;
import deadband.document.NearestName;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Span;
import deadband.limits.Limit;
import deadband.limits.LimitOverride;
import deadband.limits.Limits;
import deadband.setup.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads a site's own limits out of a document. */
final class LimitsReader {

  private static final String VALUE = "value";
  private static final List<String> TEXTS = List.of("source", "reason", "by");

  private final Document document;
  private final List<Problem> problems = new ArrayList<>();

  LimitsReader(Document document) {
    this.document = document;
  }

  /** What was wrong, in the order it was met. */
  List<Problem> problems() {
    return problems;
  }

  List<LimitOverride> read() {
    List<LimitOverride> overrides = new ArrayList<>();
    List<String> known = Arrays.stream(Limit.values()).map(limit -> limit.entry().name()).toList();
    for (Member member : document.root().members()) {
      Pointer at = Pointer.root().child(member.name());
      Limit.named(member.name())
          .ifPresentOrElse(
              limit -> override(limit, member.value(), at).ifPresent(overrides::add),
              () -> unknown(member, at, known));
    }
    return overrides;
  }

  private void unknown(Member member, Pointer at, List<String> known) {
    problems.add(
        Problem.of(
                document.source(),
                Kind.UNKNOWN_NAME,
                "\"" + member.name() + "\"",
                "one of: " + String.join(", ", known))
            .at(at, member.nameSpan())
            .near(NearestName.of(member.name(), known)));
  }

  private Optional<LimitOverride> override(Limit limit, Node node, Pointer at) {
    if (!(node instanceof Node.Section section)) {
      return number(limit, node, at)
          .map(value -> override(limit, value, List.of("", "", "")))
          .filter(override -> isSigned(override, node, at));
    }
    List<String> texts = texts(section, at);
    Optional<Node> value = section.get(VALUE);
    if (value.isEmpty()) {
      wrong(Kind.WRONG_KIND, node.span(), at, form());
      return Optional.empty();
    }
    return number(limit, value.get(), at.child(VALUE))
        .map(entered -> override(limit, entered, texts))
        .filter(override -> isSigned(override, value.get(), at.child(VALUE)));
  }

  /** The texts beside a value, each empty where it is not there. */
  private List<String> texts(Node.Section section, Pointer at) {
    List<String> names = new ArrayList<>(TEXTS);
    names.add(VALUE);
    for (Member member : section.members()) {
      if (!names.contains(member.name())) {
        unknown(member, at.child(member.name()), names);
      }
    }
    return TEXTS.stream().map(name -> text(section, name, at.child(name))).toList();
  }

  private String text(Node.Section section, String name, Pointer at) {
    Optional<Node> node = section.get(name);
    if (node.isPresent() && !(node.get() instanceof Node.Text)) {
      wrong(Kind.WRONG_KIND, node.get().span(), at, "a text");
    }
    return node.filter(Node.Text.class::isInstance)
        .map(text -> ((Node.Text) text).value().strip())
        .orElse("");
  }

  private LimitOverride override(Limit limit, double value, List<String> texts) {
    List<Optional<String>> entered =
        texts.stream().map(text -> Optional.of(text).filter(some -> !some.isEmpty())).toList();
    return new LimitOverride(
        limit, value, document.name(), entered.get(0), entered.get(1), entered.get(2));
  }

  private Optional<Double> number(Limit limit, Node node, Pointer at) {
    if (!(node instanceof Node.Numeral number)) {
      wrong(Kind.WRONG_KIND, node.span(), at, form());
      return Optional.empty();
    }
    // a number that is not finite is a problem of the text already
    boolean sensible = number.value() >= least(limit) && number.value() <= most(limit);
    if (Double.isFinite(number.value()) && !sensible) {
      wrong(Kind.OUT_OF_RANGE, node.span(), at, range(limit));
    }
    return sensible ? Optional.of(number.value()) : Optional.empty();
  }

  private static String range(Limit limit) {
    return ("a number from "
            + decimal(least(limit))
            + " to "
            + decimal(most(limit))
            + " "
            + limit.entry().unit().printed())
        .strip();
  }

  private static double least(Limit limit) {
    return Math.max(0, limit.entry().unit().least());
  }

  private static double most(Limit limit) {
    Limits.Entry entry = limit.entry();
    if (entry.unit() == Unit.CELSIUS) {
      return 100;
    }
    // what has no unit is a share, or starts an hour
    double plain = entry.value() <= 1 ? 1 : 60;
    return entry.unit() == Unit.NONE ? plain : entry.unit().most();
  }

  /** Whoever lets more of a hazard pass says why, and who answers for it. */
  private boolean isSigned(LimitOverride override, Node node, Pointer at) {
    if (!override.isWeaker() || (override.reason().isPresent() && override.by().isPresent())) {
      return true;
    }
    Limits.Entry own = override.limit().entry();
    String side = override.limit().weaker() == Limit.Weaker.ABOVE ? "at most " : "at least ";
    wrong(
        Kind.LIMIT_LOOSENED,
        node.span(),
        at,
        (side + decimal(own.value()) + " " + own.unit().printed()).strip()
            + ", or { \"value\": "
            + decimal(override.value())
            + ", \"reason\": why, \"by\": who answers for it }");
    return false;
  }

  private static String form() {
    return "a number, or { \"value\": a number, \"source\": a text, \"reason\": a text,"
        + " \"by\": a name }";
  }

  private static String decimal(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  private void wrong(Kind kind, Span span, Pointer at, String right) {
    problems.add(
        Problem.of(document.source(), kind, document.source().excerpt(span), right).at(at, span));
  }
}
