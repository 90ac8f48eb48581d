package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import deadband.dayrun.Recording.Quantity;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is kept of a run is what the run came to. */
class RecordingTest {

  private final Surroundings home =
      new Surroundings(
          new SolarArray(52, 35, 180, 8, 7, 0.85),
          Household.of(4, 0.35, 56, 10),
          Surroundings.Source.GROUND);
  private final Day day = home.cloud(home.springDate());

  @Test
  void sumsToTheResult() {
    Given given = Recordings.huntingHome();
    Recording recording = Recording.of(StepLength.MINUTE, day.profile().length());
    Result result =
        DayRun.of(given.build(), StepLength.MINUTE).watchedBy(recording).through(day).result();
    assertThat(recording.length()).isEqualTo(1440);
    assertThat(sum_kWh(recording, Quantity.IMMERSION))
        .isCloseTo(result.immersion_kWh(), within(1e-9));
    assertThat(sum_kWh(recording, Quantity.HEAT_PUMP))
        .isCloseTo(result.heatPump_kWh(), within(1e-9));
    assertThat(sum_kWh(recording, Quantity.HEAT_PUMP_HEAT))
        .isCloseTo(result.heatPumpHeat_kWh(), within(1e-9));
    assertThat(sum_kWh(recording, Quantity.IMPORT)).isCloseTo(result.import_kWh(), within(1e-9));
    assertThat(sum_kWh(recording, Quantity.EXPORT)).isCloseTo(result.export_kWh(), within(1e-9));
    assertThat(sum_kWh(recording, Quantity.KEPT)).isCloseTo(result.solarKept_kWh(), within(1e-9));
    assertThat(Arrays.stream(recording.values(Quantity.TOP)).max())
        .hasValue(result.tankTop_C().max());
    assertThat(recording.value(Quantity.BOTTOM, 1439)).isEqualTo(result.tankBottom_C().end());
    Result.Cycles cycles = result.cycles().orElseThrow();
    assertThat(risings(recording)).isEqualTo(cycles.relayClosings());
    assertThat(ended(recording)).isEqualTo(cycles.runsEndedByTimer()).isPositive();
  }

  private static double sum_kWh(Recording recording, Quantity quantity) {
    return Arrays.stream(recording.values(quantity)).sum() * recording.step().hours();
  }

  private static long risings(Recording recording) {
    return IntStream.range(0, recording.length())
        .filter(at -> recording.relayClosed(at) && (at == 0 || !recording.relayClosed(at - 1)))
        .count();
  }

  private static long ended(Recording recording) {
    return IntStream.range(0, recording.length())
        .filter(at -> recording.runEnded(at) == HeatPumpModel.End.TIMER)
        .count();
  }

  @Test
  void aRunEndsInItsLastStep() {
    Recording recording = Recordings.hunting();
    for (int at = 0; at < recording.length() - 1; at++) {
      boolean ends =
          recording.heatPump(at) == HeatPumpModel.State.RUNNING
              && recording.heatPump(at + 1) != HeatPumpModel.State.RUNNING;
      assertThat(recording.runEnded(at) != HeatPumpModel.End.NONE).as("step " + at).isEqualTo(ends);
    }
  }

  @Test
  void takesNoMoreThanItHasRoomFor() {
    Recording recording = Recording.of(StepLength.MINUTE, 100);
    DayRun run = DayRun.of(new Given().build(), StepLength.MINUTE).watchedBy(recording);
    assertThatIllegalStateException()
        .isThrownBy(() -> run.through(day))
        .withMessageContaining("100 steps");
  }

  @Test
  void namesEveryQuantityOnceAndWithItsUnit() {
    assertThat(Recording.headers()).doesNotHaveDuplicates();
    assertThat(Quantity.values()).allMatch(each -> each.header().matches(".*_(kW|L|C)"));
  }
}
