package deadband.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/**
 * A check of our formulas against values that come from somewhere else, with the place they come
 * from. Each value runs as a test of its own; each check is a row of the table in DEVELOPERS.md.
 *
 * @param kind what a failure would tell
 * @param name what is checked
 * @param source where the values come from
 * @param known how they are known
 * @param values the values
 */
record OutsideCheck(Kind kind, String name, String source, Known known, List<Value> values) {

  /** What a check can find out. */
  enum Kind {
    /** A constant of ours beside the same number in its source: finds a slip of the pen. */
    QUOTATION("quotation"),
    /** A source's formula, worked out apart from the code: finds a fault of the code. */
    WORKED_EXAMPLE("worked example"),
    /**
     * An answer that stands in somebody else's text, program, library or measurement: finds a fault
     * of the formula as well.
     */
    INDEPENDENT("independent");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    @Override
    public String toString() {
      return words;
    }
  }

  /**
   * One value from outside.
   *
   * @param at the case it holds for
   * @param expected the value
   * @param tolerance how far ours may differ
   * @param actual ours
   */
  record Value(String at, double expected, double tolerance, DoubleSupplier actual) {
    void verify() {
      assertThat(actual.getAsDouble()).as(at).isCloseTo(expected, within(tolerance));
    }
  }

  static OutsideCheck transcribed(String name, String source, Known known, Value... values) {
    return new OutsideCheck(Kind.QUOTATION, name, source, known, List.of(values));
  }

  static OutsideCheck worked(String name, String source, Known known, Value... values) {
    return new OutsideCheck(Kind.WORKED_EXAMPLE, name, source, known, List.of(values));
  }

  static OutsideCheck independent(String name, String source, Known known, Value... values) {
    return new OutsideCheck(Kind.INDEPENDENT, name, source, known, List.of(values));
  }

  static OutsideCheck transcribed(String name, String source, Known known, List<Value> values) {
    return new OutsideCheck(Kind.QUOTATION, name, source, known, List.copyOf(values));
  }

  static OutsideCheck independent(String name, String source, Known known, List<Value> values) {
    return new OutsideCheck(Kind.INDEPENDENT, name, source, known, List.copyOf(values));
  }

  static Value value(String at, double expected, double tolerance, DoubleSupplier actual) {
    return new Value(at, expected, tolerance, actual);
  }

  /** A figure held as a constant: it must stand with the value, and the mark, its source has. */
  static OutsideCheck figure(Figure figure, double expected) {
    return new OutsideCheck(
        Kind.QUOTATION,
        figure.what(),
        figure.source(),
        figure.known(),
        List.of(value(figure.unit(), expected, 0, figure::value)));
  }

  static Stream<DynamicTest> tests(List<OutsideCheck> checks) {
    return checks.stream()
        .flatMap(
            check ->
                check.values.stream()
                    .map(
                        value ->
                            DynamicTest.dynamicTest(check.name + ", " + value.at, value::verify)));
  }
}
