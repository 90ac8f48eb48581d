package deadband.dayrun;

import java.util.List;

/**
 * The immersion heater with its own rod thermostat and its cut-out, both at the element. The
 * cut-out does not reset itself: once open it stays open to the end of the run.
 */
public final class ImmersionModel {
  private final double power_kW;
  private final double cutOut_C;
  private final Thermostat thermostat;
  private final Hours timed;
  private boolean cutOut;

  ImmersionModel(Spec spec) {
    power_kW = spec.power_kW;
    cutOut_C = spec.cutOut_C;
    thermostat =
        Thermostat.closed(spec.thermostat_C, spec.thermostat_C - spec.thermostatDifferential_K);
    timed = Hours.within(spec.timed);
  }

  /**
   * What is fitted.
   *
   * @param power_kW power at the site's voltage [kW], 0 for none
   * @param height_mm height of the element above the base of the tank [mm]
   * @param thermostat_C its own thermostat opens [°C]
   * @param thermostatDifferential_K and closes so far below [K]
   * @param cutOut_C non-self-resetting cut-out [°C]
   * @param timed times of day at which a timer feeds it, past the diverter and its tank limit
   */
  public record Spec(
      double power_kW,
      double height_mm,
      double thermostat_C,
      double thermostatDifferential_K,
      double cutOut_C,
      List<Window> timed) {
    public Spec {
      timed = List.copyOf(timed);
    }

    /** No immersion heater, and so neither thermostat nor cut-out that could open. */
    public static Spec none() {
      double never_C = Double.POSITIVE_INFINITY;
      return new Spec(0, 0, never_C, 0, never_C, List.of());
    }
  }

  /** Follows the water at the element; gives the power it can take now [kW]. */
  double available_kW(double element_C) {
    cutOut |= element_C >= cutOut_C;
    boolean closed = thermostat.follow(element_C);
    return closed && !cutOut ? power_kW : 0;
  }

  /** Whether a timer feeds it now. */
  boolean isTimed(int secondOfDay) {
    return timed.hold(secondOfDay);
  }

  /** Power that brings the water to the cut-out and no further; there it opens [kW]. */
  double limited_kW(double power_kW, double room_kW) {
    cutOut |= power_kW > room_kW;
    return Math.min(power_kW, room_kW);
  }

  /** Whether the cut-out has opened. */
  boolean cutOutOpened() {
    return cutOut;
  }

  double cutOut_C() {
    return cutOut_C;
  }
}
