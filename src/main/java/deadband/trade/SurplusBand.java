package deadband.trade;

/**
 * A closed span of steady surplus, both ends in whole watts.
 *
 * @param from_kW lowest surplus of the span [kW], −∞ where it has no lower end
 * @param to_kW highest surplus of the span [kW], +∞ where it has no upper end
 */
public record SurplusBand(double from_kW, double to_kW) {

  /** Guards the order of the ends. */
  public SurplusBand {
    if (!(from_kW <= to_kW)) {
      throw new IllegalArgumentException(
          "a band from " + from_kW + " kW cannot end at " + to_kW + " kW");
    }
  }

  /** Width [kW]; 0 where a single value hunts. */
  public double width_kW() {
    return to_kW - from_kW;
  }

  /** Returns whether a surplus [kW], brought to whole watts, lies in the band. */
  public boolean holds(double surplus_kW) {
    double surplus = ControlLoop.wholeWatts_kW(surplus_kW);
    return surplus >= from_kW && surplus <= to_kW;
  }
}
