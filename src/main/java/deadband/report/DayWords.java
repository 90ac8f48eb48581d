package deadband.report;

import deadband.dayrun.CycleRun;
import deadband.dayrun.Result;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What a day run comes to, in one line. */
final class DayWords {

  private DayWords() {}

  /** What a day comes to: calls and starts, what was bought, and the sun kept. */
  static String of(String day, Result result) {
    String cycles =
        result
            .cycles()
            .map(
                counted ->
                    Words.count(counted.relayClosings(), "call")
                        + ", "
                        + Words.count(counted.heatPumpStarts(), "start")
                        + ", "
                        + counted.runsEndedByTimer()
                        + " ended by the timer; ")
            .orElse("");
    return day
        + ": "
        + cycles
        + kWh(result.solarHeat_kWh())
        + " of heat from "
        + kWh(result.solarKept_kWh())
        + " of sun, "
        + kWh(result.importWhileOnSurplus_kWh())
        + " bought on surplus";
  }

  /** What a disinfection cycle by itself comes to. */
  static String of(CycleRun cycle) {
    return "disinfection by itself: "
        + (cycle.held() ? "holds its target" : "never holds its target")
        + " in "
        + tenths(100 * cycle.heldShare())
        + " % of the store; log reduction "
        + tenths(cycle.result().logReductionTop())
        + " at the top, "
        + tenths(cycle.result().logReductionBottom())
        + " at the bottom, reckoned with caution";
  }

  static String kWh(double energy_kWh) {
    return tenths(energy_kWh) + " kWh";
  }

  static String tenths(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
