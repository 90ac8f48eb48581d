package deadband.report;

import deadband.cases.Measure;
import deadband.setup.Choice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** Values and measures in words. */
final class Words {

  private Words() {}

  /** A number as short as it goes, without an exponent. */
  static String number(double value) {
    BigDecimal decimal =
        BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return (decimal.scale() < 0 ? decimal.setScale(0) : decimal).toPlainString();
  }

  /** A number with its unit; a power keeps one decimal, as a dial shows it. */
  static String withUnit(double value, String unit) {
    String number = number(value);
    if (unit.equals("kW") && !number.contains(".")) {
      number += ".0";
    }
    return unit.isEmpty() || unit.equals("1/h") ? number : number + " " + unit;
  }

  static String withUnit(Measure measure) {
    return withUnit(measure.value(), measure.unit());
  }

  /** A value of a setup as it would be written in the file. */
  static String value(Object value) {
    if (value instanceof Double number) {
      return number(number);
    }
    if (value instanceof Choice choice) {
      return choice.word();
    }
    if (value instanceof List<?> items) {
      return items.stream().map(Words::value).collect(Collectors.joining(", ", "[", "]"));
    }
    return value.toString();
  }

  /** How many of a thing, with its plural. */
  static String count(int number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }
}
