package deadband.diagnosis;

import java.util.Locale;

/** Values of features in words, rounded to what they mean. */
public final class Values {

  private Values() {}

  /** A number without a needless decimal. */
  static String number(double value) {
    return String.format(Locale.ROOT, value == Math.rint(value) ? "%.0f" : "%.1f", value);
  }

  /** To the nearest tenth, without a minus before nothing. */
  static double tenths(double value) {
    return Math.rint(10 * value) / 10 + 0.0;
  }

  /** A value with its unit. */
  public static String says(Feature feature, double value) {
    if (feature.isShare()) {
      return Math.round(100 * value) + " %";
    }
    boolean whole = Math.abs(value - Math.rint(value)) < 0.05;
    boolean fine = feature.unit().equals("kW") || (value < 10 && !whole);
    String number = String.format(Locale.ROOT, fine ? "%.1f" : "%.0f", value);
    return feature.unit().isEmpty() ? number : number + " " + feature.unit();
  }
}
