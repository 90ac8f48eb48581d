package deadband.report;

import deadband.document.Pointer;
import deadband.facts.Measure;
import deadband.judging.Consequence;
import deadband.setup.Choice;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.setup.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** Values and measures in words. */
final class Words {

  private static final double MOST_MIN = 120;
  private static final double MINUTES_PER_HOUR = 60;
  private static final double SECONDS_PER_MINUTE = 60;
  private static final double LEAST = 1e-6;

  private Words() {}

  /** A number as short as it goes, without an exponent. */
  static String number(double value) {
    BigDecimal decimal =
        BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return (decimal.scale() < 0 ? decimal.setScale(0) : decimal).toPlainString();
  }

  /**
   * A quantity as it is shown, no finer than it means anything: the one place where units are
   * rounded for the eye. JSON keeps the resolution of the unit.
   */
  static String withUnit(double value, String unit) {
    return switch (unit) {
      case "", "1/h" -> number(value);
      case "kW" -> power(value);
      case "kWh", "kWh/day", "m", "h", "L" -> tenths(value) + " " + unit;
      case "A", "V", "Ω" -> number(hundredths(value)) + " " + unit;
      case "min" -> time(value);
      case "s" -> burn(value);
      case "days" -> number(value) + (value == 1 ? " day" : " days");
      default -> number(value) + " " + unit;
    };
  }

  /** A power keeps one decimal, as a dial shows it. */
  private static String power(double value_kW) {
    String number = number(value_kW);
    return (number.contains(".") ? number : number + ".0") + " kW";
  }

  /** Hours from two hours on. */
  private static String time(double value_min) {
    return value_min > MOST_MIN
        ? tenths(value_min / MINUTES_PER_HOUR) + " h"
        : tenths(value_min) + " min";
  }

  /** A time to a burn is known to its order, not to a second. */
  private static String burn(double value_s) {
    if (value_s < 10) {
      return "under 10 s";
    }
    double value_min = value_s / SECONDS_PER_MINUTE;
    if (value_min > MOST_MIN) {
      return "over 2 h";
    }
    return value_min < 1
        ? "about " + tens(value_s) + " s"
        : "about " + Math.round(value_min) + " min";
  }

  /** As fine as a clamp or a multimeter is read. */
  private static double hundredths(double value) {
    return Math.rint(value * 100) / 100;
  }

  private static long tens(double value) {
    return 10 * Math.round(value / 10);
  }

  /** A number to a tenth; one that is not nothing is not shown as nothing. */
  static String tenths(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_EVEN);
    if (rounded.signum() == 0) {
      return Math.abs(value) < LEAST ? "0" : "under 0.1";
    }
    return number(rounded.doubleValue());
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

  /** A value of a setup with its unit, as an instrument shows it. */
  static String shown(Pointer pointer, Object value) {
    if (value instanceof Boolean flag) {
      return flag ? "yes" : "no";
    }
    if (value instanceof Double number) {
      return (number(number) + " " + Unit.of(pointer.last()).printed()).strip();
    }
    if (value instanceof List<?> items) {
      return items.isEmpty()
          ? "none"
          : items.stream().map(Words::value).collect(Collectors.joining(", "));
    }
    return value(value);
  }

  /** What a value of a setup means, with its name in the file. */
  static String named(Pointer pointer) {
    String means = Shape.means(Setup.class, pointer);
    return means.isEmpty() ? pointer.dotted() : means + " (" + pointer.dotted() + ")";
  }

  /** How many findings of a class; damage and waste cannot be counted. */
  static String count(int number, Consequence of) {
    return switch (of) {
      case HAZARD, RECORD -> count(number, of.word());
      case DAMAGE, WASTE -> number + " " + of.word();
      case QUERY -> number + (number == 1 ? " query" : " queries");
    };
  }

  /** How many of a thing, with its plural. */
  static String count(int number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }
}
