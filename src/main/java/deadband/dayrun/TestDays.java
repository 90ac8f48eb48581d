package deadband.dayrun;

import java.util.Optional;

/**
 * What the days on which a setup is judged come to.
 *
 * @param clear the built-in clear day
 * @param cloud the built-in day of broken cloud
 * @param cycle the disinfection cycle by itself; empty where nothing disinfects
 * @param year what the surplus relay comes to over the seasons
 */
public record TestDays(Result clear, Result cloud, Optional<CycleRun> cycle, SurplusYear year) {

  /**
   * Runs them, minute by minute, but for the disinfection cycle.
   *
   * @param installation without disinfection
   */
  public static TestDays of(Installation installation, Surroundings surroundings) {
    return new TestDays(
        result(installation, surroundings.clear(surroundings.springDate())),
        result(installation, surroundings.cloud(surroundings.springDate())),
        Optional.empty(),
        SurplusYear.of(installation, surroundings));
  }

  /** These days and a disinfection cycle. */
  public TestDays with(CycleRun cycle) {
    return new TestDays(clear, cloud, Optional.of(cycle), year);
  }

  private static Result result(Installation installation, Day day) {
    return DayRun.of(installation, StepLength.MINUTE).through(day).result();
  }
}
