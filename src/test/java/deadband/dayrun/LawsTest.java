package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The laws of the day run, over thousands of made-up installations and days. */
class LawsTest {
  private static final int CASES = 2000;
  private static final List<StepLength> STEPS =
      List.of(
          new StepLength(30), StepLength.MINUTE, StepLength.ofMinutes(5), StepLength.ofMinutes(60));

  @Test
  void noInstallationBreaksALaw() {
    Generated made = Generated.forTest("noInstallationBreaksALaw");
    int running = 0;
    for (int number = 0; number < CASES; number++) {
      StepLength step = number % 10 < 8 ? StepLength.MINUTE : made.oneOf(STEPS);
      Installation installation = made.installation().build();
      String what = "case " + number + " " + Generated.seed();
      Result result = Laws.hold(installation, made.between(10.0, 62), made.day(step), step, what);
      running += result.heatPump_kWh() > 0 && result.immersion_kWh() > 0 ? 1 : 0;
    }
    assertThat(running).as("cases in which both heat").isGreaterThan(CASES / 3);
  }

  @Test
  void countingExportAloneEqualsCountingTheHeatPumpTooWithStopRaisedByItsDraw() {
    Generated made = Generated.forTest("countingExportAlone");
    int starts = 0;
    for (int number = 0; number < CASES; number++) {
      double draw_kW = made.between(1, 40) / 10.0;
      Given given = Given.boundless().constantDraw(draw_kW).untimed();
      given.startDelay_min = made.between(1, 8);
      given.stopDelay_min = made.between(1, 8);
      given.immersion_kW = made.chance(0.5) ? 0 : made.between(1, 40) / 10.0;
      given.start_kW = made.between(0, 40) / 10.0;
      given.stop_kW = made.between(-10, 30) / 10.0;
      Day day = made.day(StepLength.MINUTE);
      given.counts = EnumSet.of(Counted.EXPORT);
      Result alone = run(given, day);
      given.counts = EnumSet.of(Counted.EXPORT, Counted.HEAT_PUMP);
      given.stop_kW += draw_kW;
      assertThat(run(given, day))
          .as("case %s %s", number, Generated.seed())
          .usingRecursiveComparison()
          .ignoringFields("mostCounted_kW")
          .isEqualTo(alone);
      starts += alone.cycles().orElseThrow().heatPumpStarts();
    }
    assertThat(starts).isGreaterThan(CASES);
  }

  private static Result run(Given given, Day day) {
    return DayRun.startingAt(20, given.build(), day.profile().step()).through(day).result();
  }

  @Test
  void timeOfDayDoesNotMatterWhereNothingGoesByTheClock() {
    Generated made = Generated.forTest("timeOfDay");
    for (int number = 0; number < CASES / 10; number++) {
      Given given = made.installation();
      given.blocked = List.of();
      given.surplusBlocked = List.of();
      given.timed = List.of();
      given.disinfection = DisinfectionModel.Spec.none();
      given.charger = Charger.Spec.none();
      Day day = made.day(StepLength.MINUTE);
      Profile later = day.profile().startingAt(made.between(0, 86399));
      Result shifted = run(given, new Day(later, day.coldWater_C(), day.source_C()));
      assertThat(shifted).as("case %s %s", number, Generated.seed()).isEqualTo(run(given, day));
    }
  }

  @Test
  void piecesOfADayComeToTheWholeDay() {
    Generated made = Generated.forTest("piecesOfADay");
    for (int number = 0; number < CASES / 10; number++) {
      Installation installation = made.installation().build();
      Day day = made.day(StepLength.MINUTE);
      Result whole = DayRun.of(installation, StepLength.MINUTE).through(day).result();
      DayRun pieces = DayRun.of(installation, StepLength.MINUTE);
      for (int from = 0, until; from < day.profile().length(); from = until) {
        until = Math.min(day.profile().length(), from + made.between(1, 500));
        Profile piece = day.profile().part(from, until);
        pieces.through(new Day(piece, day.coldWater_C(), day.source_C()));
      }
      assertThat(pieces.result()).as("case %s %s", number, Generated.seed()).isEqualTo(whole);
    }
  }

  @Test
  void aTankLeftAloneOnlyComesCloserToItsRoom() {
    Generated made = Generated.forTest("aTankLeftAlone");
    for (int number = 0; number < CASES / 10; number++) {
      Given given = made.installation();
      TankModel tank =
          new TankModel(given.build().tank(), made.between(1.0, 90), StepLength.MINUTE);
      for (int minute = 0; minute < 600; minute++) {
        double before_K = Math.abs(tank.top_C() - given.room_C);
        boolean warmer = tank.top_C() > given.room_C;
        tank.cool();
        assertThat(Math.abs(tank.top_C() - given.room_C)).isLessThanOrEqualTo(before_K);
        assertThat(tank.top_C() > given.room_C).isEqualTo(warmer);
      }
    }
  }
}
