package deadband.dayrun;

import java.util.List;

/**
 * Whether the surplus relay does in any season what it is there for: a dull, a broken and a clear
 * day for each month, one after the other. The days end as soon as the relay has closed and the
 * compressor has run for it, so that a home that works costs a few of them.
 *
 * @param days days run
 * @param relayCloses whether the relay closed on any of them
 * @param heatPumpRuns whether the compressor ran for the relay on any of them
 * @param mostCounted_kW most that the relay counted as surplus in any step [kW]
 * @param coolestWhenCalled_C coolest at the heat pump's tank sensor while the relay was closed [°C];
 *     infinite where it never was
 */
public record SurplusYear(
    int days,
    boolean relayCloses,
    boolean heatPumpRuns,
    double mostCounted_kW,
    double coolestWhenCalled_C) {

  /** Goes through the days until both have been seen. */
  static SurplusYear of(Installation installation, Surroundings surroundings) {
    Watch watch = new Watch();
    DayRun run = DayRun.of(installation, StepLength.MINUTE).watchedBy(watch);
    List<Day> days = surroundings.seasons();
    int ran = 0;
    while (ran < days.size() && !(watch.relayCloses && watch.heatPumpRuns)) {
      run.through(days.get(ran++));
    }
    return new SurplusYear(
        ran,
        watch.relayCloses,
        watch.heatPumpRuns,
        watch.mostCounted_kW,
        watch.coolestWhenCalled_C);
  }

  /** Watches the relay and what it calls. */
  private static final class Watch implements Trace {
    private boolean relayCloses;
    private boolean heatPumpRuns;
    private double mostCounted_kW = Double.NEGATIVE_INFINITY;
    private double coolestWhenCalled_C = Double.POSITIVE_INFINITY;

    @Override
    public void step(Step now) {
      heatPumpRuns |= now.onSurplus();
      mostCounted_kW = Math.max(mostCounted_kW, now.counted_kW());
      if (now.relayClosed()) {
        relayCloses = true;
        coolestWhenCalled_C = Math.min(coolestWhenCalled_C, now.heatPumpSensor_C());
      }
    }
  }
}
