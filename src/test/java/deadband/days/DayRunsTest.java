package deadband.days;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.dayrun.TestDays;
import deadband.reading.SetupReading;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What is run again after a change, and what is not. */
class DayRunsTest {
  private final DayRuns runs = DayRuns.remembered();
  private final Setup home =
      ((SetupReading.Read)
              SetupReading.ofFile(Path.of("sample-configs", "good", "mill-cottage.json")))
          .setup();
  private final TestDays before = of(home);

  private TestDays of(Setup setup) {
    return DayEvidence.days(setup, runs).orElseThrow();
  }

  @Test
  void anotherDisinfectionTargetRunsTheCycleAgainAndNoOtherDay() {
    var target_C = home.heatPump().disinfection().target_C();
    TestDays after = of(Change.of(target_C, target_C.value() + 1).applyTo(home));

    assertThat(after.clear()).isSameAs(before.clear());
    assertThat(after.cloud()).isSameAs(before.cloud());
    assertThat(after.year()).isSameAs(before.year());
    assertThat(after.cycle()).isPresent().isNotEqualTo(before.cycle());
  }

  @Test
  void withoutDisinfectionThereIsNoCycle() {
    Change off = Change.of(home.heatPump().disinfection().enabled(), false);

    assertThat(of(off.applyTo(home)).cycle()).isEmpty();
  }

  @Test
  void anotherTankLimitOfTheDiverterRunsEveryDayAgain() {
    var limit_C = home.diverter().limit_C();
    TestDays after = of(Change.of(limit_C, limit_C.value() - 3).applyTo(home));

    assertThat(after.clear()).isNotEqualTo(before.clear());
    assertThat(after.cloud()).isNotEqualTo(before.cloud());
    assertThat(after.cycle().orElseThrow()).isNotSameAs(before.cycle().orElseThrow());
  }

  @Test
  void aChangeOfWhatNoDayReadsRunsNone() {
    Change plate = Change.of(home.heatPump().startsPerHour(), 4.0);
    TestDays after = of(plate.applyTo(home));

    assertThat(after.clear()).isSameAs(before.clear());
    assertThat(after.cycle().orElseThrow()).isSameAs(before.cycle().orElseThrow());
  }
}
