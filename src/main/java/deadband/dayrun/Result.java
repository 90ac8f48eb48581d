package deadband.dayrun;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a run comes to. Energies are sums over the run; temperatures are those at the ends of the
 * steps and at the start.
 *
 * @param steps steps run
 * @param cycles counts of relay and compressor; empty where the step is longer than the shortest
 *     delay, so that no count could be trusted
 * @param heatPump_kWh electricity the compressor took
 * @param heatPumpOnSurplus_kWh of this, taken while the compressor ran for the relay, a leftover
 *     minimum run included
 * @param heatPumpHeat_kWh heat the compressor gave the tank
 * @param immersion_kWh electricity the immersion heater took
 * @param backup_kWh electricity the back-up heater took
 * @param import_kWh bought, by the billing meter's way of counting
 * @param importWhileOnSurplus_kWh of this, bought while the compressor ran for the relay, a
 *     leftover minimum run included
 * @param export_kWh exported, by the same counting
 * @param solarKept_kWh PV energy that went into the tank, as the electricity that heater,
 *     compressor and back-up took from it at once; with billing by phase only what was fed in on
 *     the same phase
 * @param solarHeat_kWh the heat that this became in the tank; more than the electricity where the
 *     heat pump made it
 * @param solarHeatByHeatPump_kWh of this, what the compressor made
 * @param tankTop_C top layer
 * @param tankSensor_C layer of the diverter's sensor
 * @param tankBottom_C bottom layer
 * @param minutes20to45 time the diverter's sensor spent in the growth band [min]
 * @param logReductionTop decimal reduction at the top, cautious, capped at 8
 * @param logReductionBottom the same at the bottom
 * @param diverted_kWh of the immersion heater's electricity, what the diverter fed it
 * @param divertedBought_kWh of this, what was neither PV nor from the battery
 * @param mostCounted_kW most that the relay counted as surplus in any step [kW]
 * @param coolestWhenCalled_C coolest at the heat pump's tank sensor while the relay was closed
 *     [°C]; infinite where it never was
 * @param curtailed_kWh PV energy held back at the export limit
 * @param coldDraw_L drawn while the top of the tank was below 40 °C
 * @param standingLoss_kWh lost to the room
 * @param balanceError_kWh the larger of what is left over in the electrical and in the tank's
 *     balance
 */
public record Result(
    long steps,
    Optional<Cycles> cycles,
    double heatPump_kWh,
    double heatPumpOnSurplus_kWh,
    double heatPumpHeat_kWh,
    double immersion_kWh,
    double backup_kWh,
    double import_kWh,
    double importWhileOnSurplus_kWh,
    double export_kWh,
    double solarKept_kWh,
    double solarHeat_kWh,
    double solarHeatByHeatPump_kWh,
    Span tankTop_C,
    Span tankSensor_C,
    Span tankBottom_C,
    double minutes20to45,
    double logReductionTop,
    double logReductionBottom,
    double diverted_kWh,
    double divertedBought_kWh,
    double mostCounted_kW,
    double coolestWhenCalled_C,
    double curtailed_kWh,
    double coldDraw_L,
    double standingLoss_kWh,
    double balanceError_kWh,
    boolean cutOutOpened) {

  /**
   * Counts of relay and compressor. A run still going on at the end counts as the longest run if it
   * is that, but not as the shortest nor toward the median.
   *
   * @param relayClosings times the relay closed
   * @param closingsInWorstHour most closings in any 60 minutes that include their first and not
   *     their last
   * @param heatPumpStarts times the compressor started
   * @param startsInWorstHour most starts in any such hour
   * @param runsEndedByTimer runs that nothing called for any more and only the minimum run kept
   *     going
   * @param shortestRun_min shortest run that ended [min]
   * @param medianRun_min median of the runs that ended [min]
   * @param longestRun_min longest run [min]
   */
  public record Cycles(
      int relayClosings,
      int closingsInWorstHour,
      int heatPumpStarts,
      int startsInWorstHour,
      int runsEndedByTimer,
      OptionalDouble shortestRun_min,
      OptionalDouble medianRun_min,
      OptionalDouble longestRun_min) {}

  /**
   * A quantity over the run.
   *
   * @param min its least value
   * @param max its greatest value
   * @param end its value at the end
   */
  public record Span(double min, double max, double end) {}
}
