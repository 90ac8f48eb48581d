package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.dayrun.HeatPumpModel.End;
import deadband.dayrun.HeatPumpModel.State;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The transitions of day-run section 2, one by one: everyday 51 to 56 °C, surplus 57 to 62 °C. */
class HeatPumpModelTest {
  private static final boolean CLOSED = true;
  private static final boolean OPEN = false;

  private final Given given = new Given();

  private HeatPumpModel pump(double lag_min, double minimumRun_min, double minimumOff_min) {
    given.startLag_min = lag_min;
    given.minimumRun_min = minimumRun_min;
    given.minimumOff_min = minimumOff_min;
    return new HeatPumpModel(given.build().heatPump(), StepLength.MINUTE);
  }

  private static boolean step(HeatPumpModel pump, boolean relay, double sensor_C) {
    return pump.starts(relay, sensor_C, () -> false, false, 0);
  }

  private static int stepsUntilRunning(HeatPumpModel pump, boolean relay, double sensor_C) {
    int steps = 0;
    while (!pump.running() && steps < 1000) {
      step(pump, relay, sensor_C);
      steps++;
    }
    return steps;
  }

  private static int stepsUntilOff(HeatPumpModel pump, boolean relay, double sensor_C) {
    int steps = 0;
    while (pump.running() && steps < 1000) {
      step(pump, relay, sensor_C);
      steps++;
    }
    return steps;
  }

  @Test
  void startsAtOnceWhereLagAndMinimumOffAreNothing() {
    HeatPumpModel pump = pump(0, 0, 0);
    assertThat(step(pump, CLOSED, 50)).isTrue();
    assertThat(pump.state()).isEqualTo(State.RUNNING);
  }

  @Test
  void waitsForItsLagInThePreRun() {
    HeatPumpModel pump = pump(2, 0, 0);
    assertThat(step(pump, CLOSED, 50)).isFalse();
    assertThat(pump.state()).isEqualTo(State.PRE_RUN);
    assertThat(step(pump, CLOSED, 50)).isFalse();
    assertThat(step(pump, CLOSED, 50)).isTrue();
  }

  @Test
  void preRunEndsWhereNothingCallsAnyMore() {
    HeatPumpModel pump = pump(3, 0, 0);
    step(pump, CLOSED, 55);
    step(pump, OPEN, 55);
    assertThat(pump.state()).isEqualTo(State.OFF);
  }

  @Test
  void surplusCallsAtItsStartAndNotAboveIt() {
    assertThat(step(pump(0, 0, 0), CLOSED, 57)).isTrue();
    assertThat(step(pump(0, 0, 0), CLOSED, 57.01)).isFalse();
  }

  @Test
  void everydayCallsAtItsStartAndNotAboveIt() {
    assertThat(step(pump(0, 0, 0), OPEN, 51)).isTrue();
    assertThat(step(pump(0, 0, 0), OPEN, 51.01)).isFalse();
  }

  @Test
  void theClockBlocksTheEverydayCallAndNotTheSurplusCall() {
    given.blocked = List.of(new Window(0, 60));
    assertThat(pump(0, 0, 0).starts(OPEN, 40, () -> false, false, 3599)).isFalse();
    assertThat(pump(0, 0, 0).starts(OPEN, 40, () -> false, false, 3600)).isTrue();
    assertThat(pump(0, 0, 0).starts(CLOSED, 40, () -> false, false, 0)).isTrue();
  }

  @Test
  void theSurplusProgrammeMayHaveBlockedTimesOfItsOwn() {
    given.surplusBlocked = List.of(new Window(0, 60));
    assertThat(pump(0, 0, 0).starts(CLOSED, 55, () -> false, false, 3599)).isFalse();
    assertThat(pump(0, 0, 0).starts(CLOSED, 55, () -> false, false, 3600)).isTrue();
    HeatPumpModel everyday = pump(0, 0, 0);
    assertThat(everyday.starts(CLOSED, 50, () -> false, false, 0)).isTrue();
    assertThat(everyday.onSurplus()).isFalse();
  }

  @Test
  void minimumOffCountsTheLagIn() {
    HeatPumpModel pump = pump(2, 0, 10);
    stepsUntilRunning(pump, CLOSED, 55);
    stepsUntilOff(pump, OPEN, 55);
    assertThat(stepsUntilRunning(pump, CLOSED, 55)).isEqualTo(10);
  }

  @Test
  void lagRulesWhereItIsLongerThanTheMinimumOff() {
    HeatPumpModel pump = pump(4, 0, 1);
    stepsUntilRunning(pump, CLOSED, 55);
    stepsUntilOff(pump, OPEN, 55);
    assertThat(stepsUntilRunning(pump, CLOSED, 55)).isEqualTo(5);
  }

  @Test
  void reachingTheStopOfTheProgrammeInForceEndsTheRunAtOnce() {
    HeatPumpModel surplus = pump(0, 10, 0);
    step(surplus, CLOSED, 50);
    step(surplus, CLOSED, 61.99);
    assertThat(surplus.running()).isTrue();
    step(surplus, CLOSED, 62);
    assertThat(surplus.running()).isFalse();
    assertThat(surplus.end()).isEqualTo(End.PROGRAMME);
    HeatPumpModel everyday = pump(0, 10, 0);
    step(everyday, OPEN, 50);
    step(everyday, OPEN, 55.99);
    assertThat(everyday.running()).isTrue();
    step(everyday, OPEN, 56);
    assertThat(everyday.running()).isFalse();
  }

  @Test
  void aRunThatTheRelayLeavesBetweenTheProgrammesEndsByItsMinimumRun() {
    HeatPumpModel pump = pump(0, 10, 0);
    step(pump, CLOSED, 57);
    step(pump, CLOSED, 57.5);
    assertThat(stepsUntilOff(pump, OPEN, 58)).isEqualTo(9);
    assertThat(pump.ran()).isEqualTo(10);
    assertThat(pump.end()).isEqualTo(End.TIMER);
  }

  @Test
  void aLeftRunEndsAtOnceAtTheSurplusStop() {
    HeatPumpModel pump = pump(0, 10, 0);
    step(pump, CLOSED, 57);
    step(pump, OPEN, 62);
    assertThat(pump.end()).isEqualTo(End.PROGRAMME);
  }

  @Test
  void aRunWhoseCallGoesAfterTheMinimumRunIsNotCountedAsTheTimers() {
    HeatPumpModel pump = pump(0, 3, 0);
    step(pump, CLOSED, 53);
    for (int minute = 0; minute < 5; minute++) {
      step(pump, CLOSED, 53);
    }
    step(pump, OPEN, 55);
    assertThat(pump.end()).isEqualTo(End.PROGRAMME);
  }

  @Test
  void aCallThatComesBackTakesTheRunFromTheTimer() {
    HeatPumpModel pump = pump(0, 5, 0);
    step(pump, CLOSED, 55);
    step(pump, OPEN, 55);
    step(pump, CLOSED, 55);
    for (int minute = 0; minute < 6; minute++) {
      step(pump, CLOSED, 55);
    }
    step(pump, OPEN, 55);
    assertThat(pump.end()).isEqualTo(End.PROGRAMME);
  }

  @Test
  void everydayTakesOverWhereItHadCalledToo() {
    HeatPumpModel pump = pump(0, 0, 0);
    step(pump, CLOSED, 50);
    assertThat(pump.onSurplus()).isTrue();
    step(pump, OPEN, 55);
    assertThat(pump.running()).isTrue();
    assertThat(pump.onSurplus()).isFalse();
  }

  @Test
  void onSurplusLastsThroughTheLeftoverMinimumRun() {
    HeatPumpModel pump = pump(0, 10, 0);
    step(pump, CLOSED, 57);
    step(pump, OPEN, 57.2);
    assertThat(pump.running()).isTrue();
    assertThat(pump.onSurplus()).isTrue();
  }

  @Test
  void theLimitEndsARunAtOnceAndForbidsAStart() {
    HeatPumpModel pump = pump(0, 10, 0);
    assertThat(pump.starts(CLOSED, 50, () -> true, false, 0)).isFalse();
    step(pump, CLOSED, 50);
    pump.starts(CLOSED, 50, () -> true, false, 0);
    assertThat(pump.end()).isEqualTo(End.LIMIT);
    assertThat(pump.leavesCallOpen()).isTrue();
  }

  @Test
  void disinfectionCallsPastTheStops() {
    HeatPumpModel pump = pump(0, 0, 0);
    assertThat(pump.starts(OPEN, 58, () -> false, true, 0)).isTrue();
    pump.starts(OPEN, 63, () -> false, true, 0);
    assertThat(pump.running()).isTrue();
    pump.starts(OPEN, 63, () -> false, false, 0);
    assertThat(pump.running()).isFalse();
  }

  @Test
  void aMachineWhoseStopLiesBelowItsStartDoesNotStartOnlyToStop() {
    given.surplusStart_C = 60;
    given.surplusStop_C = 55;
    HeatPumpModel pump = pump(0, 0, 0);
    assertThat(step(pump, CLOSED, 56)).isFalse();
    assertThat(step(pump, CLOSED, 54)).isTrue();
  }
}
