package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

class RelayModelTest {
  private static RelayModel relay(
      double start_kW, double stop_kW, double startDelay, double stopDelay) {
    var spec =
        new RelayModel.Spec(
            Set.of(Counted.EXPORT),
            start_kW,
            stop_kW,
            startDelay,
            stopDelay,
            RelayModel.Call.WHILE_CLOSED);
    return new RelayModel(spec, StepLength.MINUTE);
  }

  private static int stepsUntil(RelayModel relay, boolean closed, double counted_kW) {
    int steps = 0;
    while (relay.closed() != closed && steps < 100) {
      relay.closes(counted_kW);
      steps++;
    }
    return steps;
  }

  @Test
  void closesAtTheStartAfterItsDelay() {
    assertThat(stepsUntil(relay(3.2, 0.3, 5, 3), true, 3.2)).isEqualTo(5);
  }

  @Test
  void opensAtTheStopAfterItsDelay() {
    RelayModel relay = relay(3.2, 0.3, 1, 3);
    relay.closes(3.2);
    assertThat(stepsUntil(relay, false, 0.3)).isEqualTo(3);
  }

  @Test
  void noDelayIsOneStep() {
    assertThat(stepsUntil(relay(3.2, 0.3, 0, 0), true, 5)).isEqualTo(1);
  }

  @Test
  void aPartOfAStepIsAWholeOne() {
    assertThat(stepsUntil(relay(3.2, 0.3, 2.5, 0), true, 5)).isEqualTo(3);
  }

  @Test
  void anInterruptionBeginsTheDelayAnew() {
    RelayModel relay = relay(3.2, 0.3, 3, 3);
    relay.closes(4);
    relay.closes(4);
    relay.closes(3.1);
    assertThat(stepsUntil(relay, true, 4)).isEqualTo(3);
  }

  @Test
  void betweenTheThresholdsItStays() {
    RelayModel relay = relay(3.2, 0.3, 1, 1);
    assertThat(stepsUntil(relay, true, 3.1)).isEqualTo(100);
    relay.closes(3.2);
    assertThat(stepsUntil(relay, false, 0.4)).isEqualTo(100);
  }

  /** 3.2 − 0.4 is 2.8000000000000003 in doubles; in whole watts it is 2800. */
  @Test
  void comparesInWholeWatts() {
    RelayModel relay = relay(0.1, 2.8, 1, 1);
    relay.closes(1);
    assertThat(stepsUntil(relay, false, 3.2 - 0.4)).isEqualTo(1);
    assertThat(stepsUntil(relay(2.8, 0.3, 1, 1), true, 2.7996)).isEqualTo(1);
    assertThat(stepsUntil(relay(2.8, 0.3, 1, 1), true, 2.7994)).isEqualTo(100);
  }

  @Test
  void noRelayNeverCloses() {
    RelayModel none = new RelayModel(RelayModel.Spec.none(), StepLength.MINUTE);
    assertThat(stepsUntil(none, true, 1e6)).isEqualTo(100);
  }
}
