package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Windows by the clock, joined. */
class HoursTest {

  private static Window window(int from_h, int until_h) {
    return new Window(60 * from_h, 60 * until_h);
  }

  @Test
  void theLongestStretchJoinsWindowsThatMeetAndPassesMidnight() {
    Window longest = Window.longest(List.of(window(10, 13), window(22, 24), window(0, 2)));
    assertThat(longest).isEqualTo(window(22, 2));
    assertThat(longest.length_min()).isEqualTo(240);
  }

  @Test
  void theWholeDayIsOneStretch() {
    assertThat(Window.longest(List.of(Window.ALWAYS)).length_min()).isEqualTo(1440);
    assertThat(Window.longest(List.of(window(0, 12), window(12, 24))).length_min()).isEqualTo(1440);
  }

  @Test
  void whereNothingIsEnteredEveryMinuteIsInside() {
    assertThat(Hours.anyOr(List.of()).hold(0)).isTrue();
    assertThat(Hours.within(List.of()).hold(0)).isFalse();
  }

  @Test
  void blockedMinutesAreTakenOut() {
    Hours left = Hours.anyOr(List.of(window(6, 9))).without(Hours.within(List.of(window(7, 8))));
    assertThat(left.hold(6 * 3600)).isTrue();
    assertThat(left.hold(7 * 3600)).isFalse();
    assertThat(left.hold(8 * 3600)).isTrue();
    assertThat(left.hold(9 * 3600)).isFalse();
  }
}
