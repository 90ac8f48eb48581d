package deadband.report;

import deadband.dayrun.CycleRun;
import deadband.dayrun.Result;

/** What a day run comes to, in one line. */
final class DayWords {

  private DayWords() {}

  /** What a day comes to: closures and starts, heat from PV, import and what is curtailed. */
  static String of(String day, Result result) {
    return day
        + ": "
        + result.cycles().map(DayWords::counts).orElse("")
        + kWh(result.solarHeat_kWh())
        + " of heat from "
        + kWh(result.solarKept_kWh())
        + " of PV energy; "
        + kWh(result.importWhileOnSurplus_kWh())
        + " imported on surplus calls"
        + curtailed(result)
        + warmWhenCalled(result);
  }

  private static String counts(Result.Cycles counted) {
    return Words.count(counted.relayClosings(), "relay closure")
        + ", "
        + Words.count(counted.heatPumpStarts(), "start")
        + ", "
        + counted.runsEndedByTimer()
        + " ended by the timer; ";
  }

  /** What the inverter curtails at the export limit; nothing where it curtails nothing. */
  static String curtailed(Result result) {
    return result.curtailed_kWh() > 0
        ? ", " + kWh(result.curtailed_kWh()) + " curtailed at the export limit"
        : "";
  }

  private static String warmWhenCalled(Result result) {
    boolean idle =
        result.heatPumpOnSurplus_kWh() == 0
            && result.cycles().filter(counted -> counted.relayClosings() > 0).isPresent();
    return idle
        ? "; no start on a surplus call, since the tank is at "
            + tenths(result.coolestWhenCalled_C())
            + " °C or more whenever the relay is closed"
        : "";
  }

  /** What a disinfection cycle by itself comes to. */
  static String of(CycleRun cycle) {
    return "disinfection cycle alone: "
        + (cycle.held()
            ? "holds its target in " + tenths(100 * cycle.heldShare()) + " % of the store"
            : "never holds its target")
        + "; log reduction "
        + tenths(cycle.result().logReductionTop())
        + " at the top, "
        + tenths(cycle.result().logReductionBottom())
        + " at the bottom (conservative)";
  }

  static String kWh(double energy_kWh) {
    return Words.withUnit(energy_kWh, "kWh");
  }

  static String tenths(double value) {
    return Words.tenths(value);
  }
}
