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
 * @param name what is checked
 * @param source where the values come from
 * @param known how they are known
 * @param values the values
 */
record OutsideCheck(String name, String source, Known known, List<Value> values) {

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

  static OutsideCheck check(String name, String source, Known known, Value... values) {
    return new OutsideCheck(name, source, known, List.of(values));
  }

  static OutsideCheck check(String name, String source, Known known, List<Value> values) {
    return new OutsideCheck(name, source, known, List.copyOf(values));
  }

  static Value value(String at, double expected, double tolerance, DoubleSupplier actual) {
    return new Value(at, expected, tolerance, actual);
  }

  /** A figure held as a constant: it must stand with the value, and the mark, its source has. */
  static OutsideCheck figure(Figure figure, double expected) {
    return new OutsideCheck(
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
