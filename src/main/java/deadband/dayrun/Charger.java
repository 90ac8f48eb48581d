package deadband.dayrun;

import java.util.Set;

/**
 * The vehicle charger. One that follows surplus modulates between its least and greatest power and
 * pauses below the least; one that does not charges at its greatest. Either stops when the vehicle
 * has what it needs.
 */
public final class Charger {
  private final Spec spec;
  private double need_kWh;
  private boolean plugged;

  Charger(Spec spec) {
    this.spec = spec;
    need_kWh = spec.need_kWh;
  }

  /**
   * What is fitted and how it is used.
   *
   * @param followsSurplus whether it follows surplus
   * @param minimum_kW least power it charges at [kW]
   * @param maximum_kW greatest power it charges at [kW], 0 for none
   * @param need_kWh energy the vehicle takes each time it is plugged in [kWh]
   * @param plugged when the vehicle is plugged in; the need begins anew each day at its start
   * @param before loads that it takes surplus before, in the sense of {@link BatteryModel.Spec}
   * @param line where it sits on the supply
   */
  public record Spec(
      boolean followsSurplus,
      double minimum_kW,
      double maximum_kW,
      double need_kWh,
      Window plugged,
      Set<Load> before,
      Line line) {
    public Spec {
      before = Set.copyOf(before);
    }

    /** No charger. */
    public static Spec none() {
      return new Spec(true, 0, 0, 0, Window.ALWAYS, Set.of(), Line.ALL);
    }
  }

  /** Follows the clock. */
  void at(int secondOfDay, StepLength step) {
    plugged = spec.plugged.holds(secondOfDay / 60);
    int sinceStart_s =
        Math.floorMod(secondOfDay - 60 * spec.plugged.from_min(), StepLength.SECONDS_PER_DAY);
    if (sinceStart_s < step.seconds()) {
      need_kWh = spec.need_kWh;
    }
  }

  boolean followsSurplus() {
    return spec.followsSurplus;
  }

  /** Charges from what is offered, for ever where it does not follow surplus [kW]. */
  double charge_kW(double offered_kW, double step_h) {
    double most_kW = plugged ? Math.min(spec.maximum_kW, need_kWh / step_h) : 0;
    double power_kW = spec.followsSurplus ? followed_kW(offered_kW, most_kW) : most_kW;
    need_kWh = Math.max(0, need_kWh - power_kW * step_h);
    return power_kW;
  }

  private double followed_kW(double offered_kW, double most_kW) {
    double power_kW = Math.min(offered_kW, most_kW);
    return offered_kW < spec.minimum_kW ? 0 : Math.max(0, power_kW);
  }
}
