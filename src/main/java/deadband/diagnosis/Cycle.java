package deadband.diagnosis;

/**
 * One run of the heat pump.
 *
 * @param first row in which it runs
 * @param last row in which it runs
 * @param start_s instant at which it starts [s since 1970], within its row as its power tells
 * @param end_s instant at which it stops [s since 1970]
 * @param running_h time at its usual power that gives its energy [h]
 * @param energy_kWh energy in it, standby included [kWh]
 * @param power_kW usual power in it [kW]
 * @param cut whether a gap in the log, or its beginning or end, cuts it off
 * @param confidence that it is one run of the heat pump, 0 to 1
 */
public record Cycle(
    int first,
    int last,
    double start_s,
    double end_s,
    double running_h,
    double energy_kWh,
    double power_kW,
    boolean cut,
    double confidence) {

  public double run_min() {
    return (end_s - start_s) / 60;
  }
}
