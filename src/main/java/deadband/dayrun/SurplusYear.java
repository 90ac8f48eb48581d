package deadband.dayrun;

/**
 * Whether the surplus relay does in any season what it is there for: a dull, a broken and a clear
 * day for each month, one after the other. The days end as soon as the relay has closed and the
 * compressor has run for it, so that a home that works costs a few of them.
 *
 * @param days days run
 * @param result what they came to
 */
public record SurplusYear(int days, Result result) {

  /** Goes through the days until both have been seen. */
  static SurplusYear of(Installation installation, Surroundings surroundings) {
    DayRun run = DayRun.of(installation, StepLength.MINUTE);
    SurplusYear year = new SurplusYear(0, run.result());
    while (year.days < Surroundings.SEASONS && !(year.relayCloses() && year.heatPumpRuns())) {
      year = new SurplusYear(year.days + 1, run.through(surroundings.season(year.days)).result());
    }
    return year;
  }

  /** Whether the relay closed on any of them. */
  public boolean relayCloses() {
    return result.cycles().orElseThrow().relayClosings() > 0;
  }

  /** Whether the compressor ran for the relay on any of them. */
  public boolean heatPumpRuns() {
    return result.heatPumpOnSurplus_kWh() > 0;
  }
}
