package deadband.reading;

import deadband.cases.Limit;
import deadband.cases.Limits;
import deadband.document.Document;
import deadband.document.Member;
import deadband.document.NearestName;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A site's own limits, read or not: one object that names limits of the rule book, each with a
 * number, or with {@code value} and {@code source}.
 *
 * <pre>{@code
 * { "cloudCost_kWh": 0.3,
 *   "disinfectionTemperature_C": { "value": 62, "source": "risk assessment of the site" } }
 * }</pre>
 */
public sealed interface LimitsReading {

  /** The table with the site's limits in it. */
  record Read(Limits limits) implements LimitsReading {}

  /**
   * A file that cannot be used.
   *
   * @param problems at least one, in the order of the file
   */
  record Unreadable(List<Problem> problems) implements LimitsReading {}

  /** The rule book's own table. */
  static LimitsReading none() {
    return new Read(Limits.standard());
  }

  static LimitsReading ofFile(Path path) {
    return of(JsonReading.ofFile(path));
  }

  static LimitsReading ofText(String name, String text) {
    return of(JsonReading.ofText(name, text));
  }

  private static LimitsReading of(JsonReading json) {
    if (!(json instanceof JsonReading.Read read)) {
      return new Unreadable(json.problems());
    }
    List<Problem> problems = new ArrayList<>(read.problems());
    Map<Limit, Limits.Entry> overrides = new EnumMap<>(Limit.class);
    for (Member member : read.document().root().members()) {
      Limit.named(member.name())
          .ifPresentOrElse(
              limit ->
                  entry(read.document(), limit, member, problems)
                      .ifPresent(entry -> overrides.put(limit, entry)),
              () -> problems.add(unknown(read.document(), member)));
    }
    problems.sort(Problem.inOrder());
    return problems.isEmpty()
        ? new Read(Limits.with(overrides))
        : new Unreadable(List.copyOf(problems));
  }

  private static Problem unknown(Document document, Member member) {
    List<String> known = Arrays.stream(Limit.values()).map(limit -> limit.entry().name()).toList();
    return Problem.of(
            document.source(),
            Kind.UNKNOWN_NAME,
            "\"" + member.name() + "\"",
            "one of: " + String.join(", ", known))
        .at(Pointer.root().child(member.name()), member.nameSpan())
        .near(NearestName.of(member.name(), known));
  }

  private static Optional<Limits.Entry> entry(
      Document document, Limit limit, Member member, List<Problem> problems) {
    String source = "the limits file " + document.name();
    Node node = member.value();
    if (node instanceof Node.Section section && section.get("value").isPresent()) {
      source = section.get("source").map(LimitsReading::text).orElse(source);
      node = section.get("value").get();
    }
    if (node instanceof Node.Numeral number && Double.isFinite(number.value())) {
      return Optional.of(limit.entry().at(number.value(), source));
    }
    problems.add(
        Problem.of(
                document.source(),
                Kind.WRONG_KIND,
                document.source().excerpt(node.span()),
                "a number, or { \"value\": a number, \"source\": a text }")
            .at(Pointer.root().child(member.name()), node.span()));
    return Optional.empty();
  }

  private static String text(Node node) {
    return node instanceof Node.Text text ? text.value() : "";
  }
}
