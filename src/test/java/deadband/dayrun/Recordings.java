package deadband.dayrun;

import deadband.dayrun.Surroundings.Source;

/** Recorded runs of a made-up home, for those who draw or write them. */
public final class Recordings {

  private Recordings() {}

  /**
   * A clear day on which the relay hunts, since start and stop are closer than the heat pump's
   * draw, into a store too large to be full by night.
   */
  public static Recording hunting() {
    Surroundings home = home();
    return of(huntingHome(), home.clear(home.springDate()), StepLength.MINUTE);
  }

  static Given huntingHome() {
    Given given = new Given();
    given.volume_L = 1500;
    given.stop_kW = 2.7;
    given.opening_C = 95;
    given.surplusStop_C = 90;
    given.maximumFlow_C = 90;
    given.surplusStart_C = 85;
    return given;
  }

  /** A day of broken cloud in a home that is set well. */
  public static Recording cloud() {
    Given given = new Given();
    Surroundings home = home();
    return of(given, home.cloud(home.springDate()), StepLength.MINUTE);
  }

  /** A clear day, by the quarter hour. */
  public static Recording coarse() {
    Surroundings home = home();
    return of(new Given(), home.clear(home.springDate()), StepLength.ofMinutes(15));
  }

  private static Surroundings home() {
    return new Surroundings(
        new SolarArray(52, 35, 180, 8, 7, 0.85), Household.of(4, 0.35, 56, 10), Source.GROUND);
  }

  private static Recording of(Given given, Day day, StepLength step) {
    Recording recording = Recording.of(step, day.profile().at(step).length());
    DayRun.of(given.build(), step).watchedBy(recording).through(day);
    return recording;
  }
}
