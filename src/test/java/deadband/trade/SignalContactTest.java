package deadband.trade;

import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import deadband.trade.SignalContact.SgReady;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class SignalContactTest {

  static List<OutsideCheck> outside() {
    return List.of(
        transcribed(
            "state of the SG Ready contacts, 1 block, 2 normal, 3 recommendation, 4 start",
            "label text as quoted",
            Known.SECOND_HAND,
            value("1:0", 1, 0, () -> SgReady.of(true, false).state()),
            value("0:0", 2, 0, () -> SgReady.of(false, false).state()),
            value("0:1", 3, 0, () -> SgReady.of(false, true).state()),
            value("1:1", 4, 0, () -> SgReady.of(true, true).state())));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void theHoldIsFromMemory() {
    assertThat(SignalContact.SG_READY_HOLD_MIN.value()).isEqualTo(10);
    assertThat(SignalContact.SG_READY_HOLD_MIN.known()).isEqualTo(Known.MEMORY);
  }

  @Test
  void statesByNumberAndByContacts() {
    assertThat(SgReady.of(1)).isEqualTo(SgReady.BLOCK).isEqualTo(SgReady.of(true, false));
    assertThat(SgReady.of(2)).isEqualTo(SgReady.NORMAL).isEqualTo(SgReady.of(false, false));
    assertThat(SgReady.of(3)).isEqualTo(SgReady.RECOMMENDATION).isEqualTo(SgReady.of(false, true));
    assertThat(SgReady.of(4)).isEqualTo(SgReady.START_COMMAND).isEqualTo(SgReady.of(true, true));
    assertThatThrownBy(() -> SgReady.of(5)).hasMessage("state 5 is not one of 1 to 4");
  }
}
