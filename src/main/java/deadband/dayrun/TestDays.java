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
   * Runs them, minute by minute.
   *
   * @param installation without disinfection
   * @param cycle the disinfection programme
   */
  public static TestDays of(
      Installation installation, Surroundings surroundings, DisinfectionModel.Spec cycle) {
    return new TestDays(
        result(installation, surroundings.clear(surroundings.springDate())),
        result(installation, surroundings.cloud(surroundings.springDate())),
        cycle.heater() == DisinfectionModel.Heater.NONE
            ? Optional.empty()
            : Optional.of(CycleRun.of(installation, surroundings, cycle)),
        SurplusYear.of(installation, surroundings));
  }

  private static Result result(Installation installation, Day day) {
    return DayRun.of(installation, StepLength.MINUTE).through(day).result();
  }
}
