package deadband.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClockWindowTest {

  @ParameterizedTest
  @CsvSource({
    "10:00-11:00, 60",
    "22:00-06:00, 480",
    "15:00-11:00, 1200",
    "00:00-00:00, 1440",
    "00:00-23:59, 1439"
  })
  void holdsAsManyMinutesAsItIsLong(String written, int minutes) {
    ClockWindow window = ClockWindow.parse(written).orElseThrow();

    assertThat(IntStream.range(0, 1440).filter(window::holds)).hasSize(minutes);
    assertThat(window.holds(window.from_min())).isTrue();
    assertThat(window.holds(window.until_min())).isEqualTo(minutes == 1440);
  }
}
