package deadband.reading;

import deadband.meterlog.LogUnit;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The numbers of a log: with a decimal point or a decimal comma, with or without thousands marks.
 */
final class LogNumbers {

  private static final Set<String> NOTHING =
      Set.of("", "-", "--", "nan", "na", "n/a", "null", "none", "unknown", "unavailable", "#n/a");

  private static final Pattern COMMA_DECIMAL =
      Pattern.compile(
          "[+-]?(\\d{1,3}(\\.\\d{3})+,\\d+|0\\d*,\\d+|\\d+,(\\d{1,2}|\\d{4,})|\\d{4,},\\d+)");

  private static final Pattern UNIT_BEHIND = Pattern.compile("\\s*(k?Wh?|°?[CF]|%|V|A)$");

  /** A point before three digits is a thousands mark where no number has decimals. */
  private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2}(\\.\\d{3})+");

  private static final Pattern WHOLE = Pattern.compile("[+-]?[1-9]\\d*");

  private final boolean commaIsDecimal;
  private final boolean pointGroups;

  private LogNumbers(boolean commaIsDecimal, boolean pointGroups) {
    this.commaIsDecimal = commaIsDecimal;
    this.pointGroups = pointGroups;
  }

  /** As the first rows show: a comma is a decimal one where no thousands mark stands so. */
  static LogNumbers by(List<String> cells) {
    return new LogNumbers(
        cells.stream().anyMatch(cell -> COMMA_DECIMAL.matcher(compact(cell)).matches()), false);
  }

  /**
   * The same, with what the cells under W and Wh show: whole numbers beside none with decimals are
   * of a writer that gives none, so that its points mark thousands.
   */
  LogNumbers grouped(List<String> watts) {
    boolean whole = watts.stream().anyMatch(cell -> WHOLE.matcher(cell).matches());
    boolean decimals =
        watts.stream().anyMatch(cell -> cell.indexOf('.') >= 0 && !GROUPED.matcher(cell).matches());
    return new LogNumbers(commaIsDecimal, !commaIsDecimal && whole && !decimals);
  }

  /** The number in a cell under a unit. */
  double of(String cell, LogUnit unit) {
    boolean watts = pointGroups && (unit == LogUnit.W || unit == LogUnit.WH);
    return watts && cell.indexOf('.') >= 0 && GROUPED.matcher(cell).matches()
        ? of(cell.replace(".", ""))
        : of(cell);
  }

  private static String compact(String cell) {
    StringBuilder kept = new StringBuilder();
    for (int index = 0; index < cell.length(); index++) {
      char c = cell.charAt(index);
      if (!Character.isWhitespace(c) && c != '\u00A0' && c != '\u202F' && c != '\'') {
        kept.append(c);
      }
    }
    return kept.toString();
  }

  /** The number in a cell; NaN for none, and infinite where the cell is no number. */
  double of(String cell) {
    if (cell.isEmpty()) {
      return Double.NaN;
    }
    double plain = plain(cell);
    if (!Double.isNaN(plain)) {
      return plain;
    }
    return NOTHING.contains(cell.toLowerCase(Locale.ROOT)) ? Double.NaN : marked(cell);
  }

  /** The usual case, digits with at most one point, without taking the text apart. */
  private double plain(String cell) {
    int at = cell.charAt(0) == '-' || cell.charAt(0) == '+' ? 1 : 0;
    long digits = 0;
    int places = -1;
    int from = at;
    for (; at < cell.length(); at++) {
      char c = cell.charAt(at);
      if (c >= '0' && c <= '9') {
        digits = digits * 10 + (c - '0');
        places += places >= 0 ? 1 : 0;
      } else if (c == (commaIsDecimal ? ',' : '.') && places < 0) {
        places = 0;
      } else {
        return Double.NaN;
      }
    }
    if (at - from > 17 || at == from || (at - from == 1 && places >= 0)) {
      return Double.NaN;
    }
    double value = places > 0 ? digits / POWERS[places] : digits;
    return cell.charAt(0) == '-' ? -value : value;
  }

  private static final double[] POWERS = powers();

  private static double[] powers() {
    double[] powers = new double[19];
    for (int index = 0; index < powers.length; index++) {
      powers[index] = Double.parseDouble("1e" + index);
    }
    return powers;
  }

  private double marked(String cell) {
    String text = UNIT_BEHIND.matcher(compact(cell).replace('−', '-')).replaceFirst("");
    if (text.equalsIgnoreCase("on") || text.equalsIgnoreCase("true")) {
      return 1;
    }
    if (text.equalsIgnoreCase("off") || text.equalsIgnoreCase("false")) {
      return 0;
    }
    String number =
        commaIsDecimal ? text.replace(".", "").replace(',', '.') : text.replace(",", "");
    boolean grouped =
        commaIsDecimal
            || text.indexOf(',') < 0
            || text.matches("[+-]?\\d{1,3}(,\\d{3})+(\\.\\d*)?");
    try {
      double value = Double.parseDouble(number);
      return grouped && !Double.isNaN(value) && number.matches("[-+0-9.eE]+")
          ? value
          : Double.POSITIVE_INFINITY;
    } catch (NumberFormatException none) {
      return Double.POSITIVE_INFINITY;
    }
  }
}
