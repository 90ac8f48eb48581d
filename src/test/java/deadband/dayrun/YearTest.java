package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import deadband.dayrun.Surroundings.Source;
import java.time.Year;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The example home of the setup file through a year of built-in days. */
class YearTest {
  private static final Surroundings SURROUNDINGS =
      new Surroundings(
          new SolarArray(52.3, 35, 180, 8.8, 8, 0.85), Household.of(4, 0.4, 56, 10), Source.GROUND);
  private static final List<Day> DAYS = SURROUNDINGS.year(Year.of(2026)).toList();

  private static Result run(List<Day> days) {
    DayRun run = DayRun.of(new Given().build(), StepLength.MINUTE);
    days.forEach(run::through);
    return run.result();
  }

  @Test
  void aYearBalancesAndIsTheSameEachTime() {
    Result result = run(DAYS);
    assertThat(result.steps()).isEqualTo(365L * 1440);
    assertThat(result.balanceError_kWh()).isLessThan(1e-6);
    assertThat(run(SURROUNDINGS.year(Year.of(2026)).toList())).isEqualTo(result);
    double sun_kWh = DAYS.stream().mapToDouble(day -> day.profile().pv_kWh()).sum();
    double house_kWh =
        DAYS.stream()
            .map(Day::profile)
            .mapToDouble(
                profile -> {
                  double sum_kW = 0;
                  for (int minute = 0; minute < profile.length(); minute++) {
                    sum_kW += profile.house_kW(minute);
                  }
                  return sum_kW / 60;
                })
            .sum();
    double used_kWh = house_kWh + result.heatPump_kWh() + result.immersion_kWh();
    assertThat(sun_kWh + result.import_kWh())
        .isCloseTo(used_kWh + result.export_kWh() + result.curtailed_kWh(), within(1e-6));
  }

  /** Gains of the settings that the setup file's example is meant to be silent on. */
  @Test
  void theExampleHomeIsWellBehaved() {
    Result result = run(DAYS);
    Result.Cycles cycles = result.cycles().orElseThrow();
    assertThat(cycles.startsInWorstHour()).isLessThanOrEqualTo(3);
    assertThat(cycles.shortestRun_min().orElseThrow()).isGreaterThanOrEqualTo(10);
    assertThat(result.importWhileOnSurplus_kWh()).isLessThan(0.02 * result.heatPump_kWh());
    assertThat(result.coldDraw_L()).isZero();
    assertThat(result.minutes20to45()).isZero();
    assertThat(result.cutOutOpened()).isFalse();
  }

  @Test
  void aStopAWhiskerUnderTheStartShowsOverAYear() {
    Given hunting = new Given();
    hunting.start_kW = 3.0;
    hunting.stop_kW = 2.7;
    hunting.startDelay_min = 1;
    hunting.stopDelay_min = 1;
    DayRun run = DayRun.of(hunting.build(), StepLength.MINUTE);
    DAYS.forEach(run::through);
    Result.Cycles hunts = run.result().cycles().orElseThrow();
    Result.Cycles quiet = run(DAYS).cycles().orElseThrow();
    assertThat(hunts.relayClosings()).isGreaterThan(2 * quiet.relayClosings());
    assertThat(hunts.runsEndedByTimer()).isGreaterThan(10 * quiet.runsEndedByTimer());
  }
}
