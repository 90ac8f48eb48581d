package deadband.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClockWindowTest {

  private static final int MINUTES_PER_DAY = 1440;

  @ParameterizedTest
  @CsvSource({
    "22:00-05:00, 420",
    "12:00-12:01, 1",
    "00:00-23:59, 1439",
    "20:00-00:00, 240",
    "00:00-00:00, 1440",
    "07:30-07:30, 1440"
  })
  void holdsAsManyMinutesAsItIsLong(String text, int length_min) {
    ClockWindow window = ClockWindow.parse(text).orElseThrow();

    assertThat(window.length_min()).isEqualTo(length_min);
    assertThat(IntStream.range(0, MINUTES_PER_DAY).filter(window::holds)).hasSize(length_min);
  }

  @ParameterizedTest
  @CsvSource({"21:59, false", "22:00, true", "00:00, true", "04:59, true", "05:00, false"})
  void holdsItsFirstMinuteAndNotTheOneAfterItsLast(String at, boolean inside) {
    ClockWindow night = ClockWindow.parse("22:00-05:00").orElseThrow();
    ClockWindow from = ClockWindow.parse(at + "-12:00").orElseThrow();

    assertThat(night.holds(from.from_min())).isEqualTo(inside);
  }

  /** Minute by minute, with windows that pass midnight, touch or lie over one another. */
  @ParameterizedTest
  @CsvSource({
    "22:00-06:00, 05:00-07:00, 23:00-01:00",
    "10:00-11:00, 11:00-12:00, 09:00-10:00",
    "00:00-00:00, 20:00-04:00, 03:00-05:00",
    "15:00-11:00, 10:00-16:00, 10:30-10:31"
  })
  void sharesTheMinutesThatLieInBoth(String one, String other, String third) {
    ClockWindow window = ClockWindow.parse(one).orElseThrow();
    List<ClockWindow> others =
        List.of(ClockWindow.parse(other).orElseThrow(), ClockWindow.parse(third).orElseThrow());
    long expected =
        IntStream.range(0, MINUTES_PER_DAY)
            .filter(window::holds)
            .filter(minute -> others.stream().anyMatch(each -> each.holds(minute)))
            .count();

    assertThat(window.sharedWith_min(others)).isEqualTo((int) expected);
    assertThat(window.sharedWith_min(List.of())).isZero();
  }
}
