package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** Steps, windows, the worst hour and run lengths. */
class CountsTest {
  private static int worst(int... minutes) {
    WorstHour hour = new WorstHour(StepLength.MINUTE);
    for (int minute : minutes) {
      hour.event(minute);
    }
    return hour.worst();
  }

  /** Day-run section 5: starts at 0, 20, 40, 60 are three. */
  @Test
  void theWorstHourIncludesItsFirstMinuteAndNotItsLast() {
    assertThat(worst(0, 20, 40, 60)).isEqualTo(3);
    assertThat(worst(0, 20, 40, 59)).isEqualTo(4);
    assertThat(worst()).isZero();
    assertThat(worst(5, 500, 505, 510, 900)).isEqualTo(3);
  }

  @Test
  void theWorstHourTakesAnEventInEveryStep() {
    WorstHour hour = new WorstHour(StepLength.MINUTE);
    for (int minute = 0; minute < 200; minute++) {
      hour.event(minute);
    }
    assertThat(hour.worst()).isEqualTo(60);
    assertThat(hour.count()).isEqualTo(200);
  }

  @Test
  void runsKnowTheirShortestMedianAndLongest() {
    Runs runs = new Runs(StepLength.MINUTE);
    assertThat(runs.shortest_min()).isEmpty();
    assertThat(runs.median_min()).isEmpty();
    assertThat(runs.longest_min(0)).isEmpty();
    for (int length : new int[] {30, 10, 12}) {
      runs.ended(length);
    }
    assertThat(runs.shortest_min()).hasValue(10);
    assertThat(runs.median_min()).hasValue(12);
    assertThat(runs.longest_min(25)).hasValue(30);
    assertThat(runs.longest_min(31)).hasValue(31);
    runs.ended(20);
    assertThat(runs.median_min()).hasValue(16);
  }

  @Test
  void runsLongerThanADayAreKept() {
    Runs runs = new Runs(StepLength.ofMinutes(60));
    runs.ended(100);
    runs.ended(1000);
    assertThat(runs.median_min()).hasValue(550 * 60.0);
  }

  @Test
  void aStepDividesAnHour() {
    assertThat(StepLength.MINUTE.perDay()).isEqualTo(1440);
    assertThat(new StepLength(10).until(0.1)).isEqualTo(1);
    assertThat(new StepLength(6).until(0.3)).isEqualTo(3);
    assertThat(StepLength.MINUTE.until(0)).isZero();
    assertThat(StepLength.MINUTE.delay(0)).isEqualTo(1);
    assertThat(StepLength.ofMinutes(5).delay(12)).isEqualTo(3);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StepLength(420))
        .withMessageContaining("420 s does not divide an hour");
    assertThatIllegalArgumentException().isThrownBy(() -> new StepLength(0));
  }

  @Test
  void aWindowMayPassMidnight() {
    Window night = new Window(1320, 360);
    assertThat(night.holds(1320)).isTrue();
    assertThat(night.holds(0)).isTrue();
    assertThat(night.holds(359)).isTrue();
    assertThat(night.holds(360)).isFalse();
    assertThat(new Window(600, 660).holds(659)).isTrue();
    assertThat(new Window(600, 660).holds(660)).isFalse();
    assertThat(Window.ALWAYS.holds(777)).isTrue();
    assertThatIllegalArgumentException().isThrownBy(() -> new Window(1440, 0));
  }
}
