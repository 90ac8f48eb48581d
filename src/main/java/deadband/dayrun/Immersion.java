package deadband.dayrun;

/**
 * The immersion heater with its own rod thermostat and its cut-out, both at the element. The
 * cut-out does not reset itself: once open it stays open to the end of the run.
 */
public final class Immersion {
  private final double power_kW;
  private final double cutOut_C;
  private final Thermostat thermostat;
  private boolean cutOut;

  Immersion(Spec spec) {
    power_kW = spec.power_kW;
    cutOut_C = spec.cutOut_C;
    thermostat =
        Thermostat.closed(spec.thermostat_C, spec.thermostat_C - spec.thermostatDifferential_K);
  }

  /**
   * What is fitted.
   *
   * @param power_kW power at the site's voltage [kW], 0 for none
   * @param height_mm height of the element above the base of the tank [mm]
   * @param thermostat_C its own thermostat opens [°C]
   * @param thermostatDifferential_K and closes so far below [K]
   * @param cutOut_C non-self-resetting cut-out [°C]
   */
  public record Spec(
      double power_kW,
      double height_mm,
      double thermostat_C,
      double thermostatDifferential_K,
      double cutOut_C) {
    /** No immersion heater. */
    public static Spec none() {
      return new Spec(0, 0, 0, 0, 0);
    }
  }

  /** Follows the water at the element; gives the power it can take now [kW]. */
  double available_kW(double element_C) {
    cutOut |= element_C >= cutOut_C;
    boolean closed = thermostat.follow(element_C);
    return closed && !cutOut ? power_kW : 0;
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
