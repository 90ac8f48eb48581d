package deadband.dayrun;

import deadband.trade.ControlLoop;

/**
 * The controller that feeds surplus into the immersion heater in proportion, by a tank sensor of
 * its own; on a demand call at full power, wherever the energy comes from.
 */
public final class DiverterModel {
  private final double minimum_kW;
  private final double exportMargin_kW;
  private final boolean answersDemand;
  private final Thermostat limit;

  DiverterModel(Spec spec) {
    minimum_kW = spec.minimum_kW;
    exportMargin_kW = spec.exportMargin_kW;
    answersDemand = spec.answersDemand;
    limit = Thermostat.closed(spec.opening_C, spec.closing_C);
  }

  /**
   * How it is set.
   *
   * @param opening_C tank temperature that ends its heating [°C]
   * @param closing_C tank temperature that lets it heat again [°C]
   * @param minimum_kW least power it feeds [kW]
   * @param exportMargin_kW export it leaves untouched [kW]
   * @param answersDemand whether a demand call reaches it and is answered at full power
   * @param sensor_mm height of its tank sensor above the base [mm]
   * @param line where the heater it feeds sits on the supply
   */
  public record Spec(
      double opening_C,
      double closing_C,
      double minimum_kW,
      double exportMargin_kW,
      boolean answersDemand,
      double sensor_mm,
      Line line) {}

  /** Follows its tank sensor [°C]. */
  void follow(double sensor_C) {
    limit.follow(sensor_C);
  }

  /** Whether its tank sensor lets it heat. */
  boolean mayHeat() {
    return limit.isClosed();
  }

  /**
   * Power for this step, while its tank sensor lets it heat: what {@link ControlLoop#heater} takes
   * of the surplus less the margin; all the heater can take on demand. It regulates on the export
   * that it sees: where the export limit holds this at or below what it needs to begin, it never
   * begins; where it sees enough, what it takes lets the inverter give more, until nothing is held
   * back.
   *
   * @param demanded whether the heat pump asks for the immersion heater
   * @param available_kW what the heater can take [kW]
   * @param surplus_kW what its sensor would see leaving the house without it, were nothing held
   *     back at the export limit [kW]
   * @param seen_kW what its sensor sees before it takes anything [kW]
   */
  double power_kW(boolean demanded, double available_kW, double surplus_kW, double seen_kW) {
    if (demanded && answersDemand) {
      return available_kW;
    }
    double begins_kW = seen_kW - exportMargin_kW;
    if (begins_kW <= 0 || begins_kW < minimum_kW) {
      return 0;
    }
    return ControlLoop.heater(surplus_kW - exportMargin_kW, available_kW, minimum_kW);
  }
}
