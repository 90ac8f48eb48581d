package deadband.trade;

import java.util.Arrays;
import java.util.Optional;

/**
 * Error of a current sensor at a given current.
 *
 * <p>IEC 61869-2 limits the ratio error at 5, 20 and 100 % of rated current (up to 120 %). Between
 * these points a straight line in current is used, which lies above a smooth limit. Below 5 % the
 * standard gives no limit: the error in amperes at 5 % is kept, so the share grows as the current
 * falls. Above 120 % the functions refuse.
 */
public final class CurrentSensor {
  private static final double W_PER_KW = 1000;

  private CurrentSensor() {}

  /** Accuracy classes; error limits in per cent of the current. */
  public enum AccuracyClass {
    CLASS_0_2(0.2, 0.75, 0.35, 0.2, Known.MEMORY),
    CLASS_0_5(0.5, 1.5, 0.75, 0.5, Known.SECOND_HAND),
    CLASS_1(1, 3, 1.5, 1, Known.MEMORY);

    private final double number;
    private final double at5_percent;
    private final double at20_percent;
    private final double at100_percent;
    private final Known known;

    AccuracyClass(double number, double at5, double at20, double at100, Known known) {
      this.number = number;
      this.at5_percent = at5;
      this.at20_percent = at20;
      this.at100_percent = at100;
      this.known = known;
    }

    /** The class as it is marked on the sensor. */
    public double number() {
      return number;
    }

    /** How the limits are known. */
    public Known known() {
      return known;
    }

    /**
     * Class by the number marked on the sensor.
     *
     * @throws IllegalArgumentException where no limits are known for it
     */
    public static AccuracyClass of(double number) {
      return find(number)
          .orElseThrow(
              () -> new IllegalArgumentException("class " + number + " is not one of 0.2, 0.5, 1"));
    }

    /** Class by the number marked on the sensor; empty where no limits are known for it. */
    public static Optional<AccuracyClass> find(double number) {
      return Arrays.stream(values()).filter(each -> each.number == number).findFirst();
    }
  }

  private static final ValidRange LOAD_SHARE =
      new ValidRange("current as a share of rated current", 0, 1.2, "");

  /** Returns whether a sensor's error is bounded at a power: up to 120 % of its rated current. */
  public static boolean measures(double rated_A, double power_kW, double voltage_V) {
    double current_A = Math.abs(power_kW) * W_PER_KW / Require.positive("voltage_V", voltage_V);
    return LOAD_SHARE.holds(current_A / Require.positive("rated_A", rated_A));
  }

  /**
   * Greatest error of a sensor at a current.
   *
   * @param accuracy accuracy class
   * @param rated_A rated current [A], positive
   * @param current_A current [A], 0 or more
   * @return error either way [A]
   * @throws IllegalArgumentException above 120 % of rated current
   */
  public static double error_A(AccuracyClass accuracy, double rated_A, double current_A) {
    double share = LOAD_SHARE.check(current_A / Require.positive("rated_A", rated_A));
    return rated_A * Math.max(share, 0.05) * errorShare(accuracy, share);
  }

  private static double errorShare(AccuracyClass accuracy, double share) {
    if (share <= 0.05) {
      return accuracy.at5_percent / 100;
    }
    if (share <= 0.2) {
      return between(share, 0.05, accuracy.at5_percent, 0.2, accuracy.at20_percent) / 100;
    }
    if (share <= 1) {
      return between(share, 0.2, accuracy.at20_percent, 1, accuracy.at100_percent) / 100;
    }
    return accuracy.at100_percent / 100;
  }

  private static double between(double x, double x1, double y1, double x2, double y2) {
    return y1 + (y2 - y1) * (x - x1) / (x2 - x1);
  }

  /**
   * Greatest error of the sensor at a power, power factor 1, one phase.
   *
   * @param accuracy accuracy class
   * @param rated_A rated current [A], positive
   * @param power_kW power [kW], either sign
   * @param voltage_V voltage [V], positive
   * @return error either way [kW]
   */
  public static double error_kW(
      AccuracyClass accuracy, double rated_A, double power_kW, double voltage_V) {
    double current_A = Math.abs(power_kW) * W_PER_KW / Require.positive("voltage_V", voltage_V);
    return error_A(accuracy, rated_A, current_A) * voltage_V / W_PER_KW;
  }
}
