package deadband.reading;

import deadband.document.Problem;
import deadband.limits.LimitOverride;
import deadband.limits.Limits;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A site's own limits, read or not: one object that names limits of the rule book, each with a
 * number, or with {@code value} and any of {@code source}, {@code reason} and {@code by}. A limit
 * that guards against a hazard may be set weaker only with reason and name.
 *
 * <pre>{@code
 * { "cloudCost_kWh": 0.3,
 *   "disinfectionTemperature_C": { "value": 62, "source": "risk assessment of the site" },
 *   "ownCircuitAbove_L": { "value": 20, "reason": "older circuit, tested", "by": "site engineer" } }
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
    LimitsReader reader = new LimitsReader(read.document());
    List<LimitOverride> overrides = reader.read();
    List<Problem> problems = new ArrayList<>(read.problems());
    problems.addAll(reader.problems());
    problems.sort(Problem.inOrder());
    return problems.isEmpty()
        ? new Read(Limits.with(overrides))
        : new Unreadable(List.copyOf(problems));
  }
}
