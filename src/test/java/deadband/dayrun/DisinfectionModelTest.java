package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.dayrun.DisinfectionModel.Heater;
import java.util.List;
import org.junit.jupiter.api.Test;

/** 60 °C for 30 min every day, due after 10 min, 120 min allowed. */
class DisinfectionModelTest {
  private static DisinfectionModel programme(Heater heater) {
    var spec = new DisinfectionModel.Spec(heater, 60, 30, 1, 10, 700, 120, List.of());
    return new DisinfectionModel(spec, StepLength.MINUTE);
  }

  private static int stepsWhile(DisinfectionModel programme, boolean active, double sensor_C) {
    int steps = 0;
    while (programme.active() == active && steps < 5000) {
      programme.decide(sensor_C, 0);
      steps++;
    }
    return steps;
  }

  @Test
  void beginsWhenItIsDueAndAgainADayLater() {
    DisinfectionModel programme = programme(Heater.IMMERSION);
    assertThat(stepsWhile(programme, false, 65)).isEqualTo(11);
    assertThat(stepsWhile(programme, true, 65)).isEqualTo(30);
    assertThat(stepsWhile(programme, false, 65)).isEqualTo(1440 - 30);
  }

  @Test
  void asksTheHeaterOnlyWhileItLasts() {
    DisinfectionModel programme = programme(Heater.IMMERSION);
    assertThat(programme.calls(Heater.IMMERSION)).isFalse();
    stepsWhile(programme, false, 50);
    assertThat(programme.calls(Heater.IMMERSION)).isTrue();
    assertThat(programme.calls(Heater.HEAT_PUMP)).isFalse();
    stepsWhile(programme, true, 61);
    assertThat(programme.calls(Heater.IMMERSION)).isFalse();
  }

  @Test
  void anInterruptionBeginsTheHoldAnew() {
    DisinfectionModel programme = programme(Heater.IMMERSION);
    stepsWhile(programme, false, 50);
    for (int minute = 0; minute < 29; minute++) {
      programme.decide(60, 0);
    }
    programme.decide(59.9, 0);
    assertThat(stepsWhile(programme, true, 60)).isEqualTo(30);
  }

  @Test
  void givesUpAfterTheTimeAllowed() {
    DisinfectionModel programme = programme(Heater.IMMERSION);
    stepsWhile(programme, false, 50);
    assertThat(stepsWhile(programme, true, 59.9)).isEqualTo(120);
  }

  @Test
  void theCompressorGoesALittleAboveTheTargetAndComesBackAtIt() {
    DisinfectionModel programme = programme(Heater.HEAT_PUMP);
    stepsWhile(programme, false, 50);
    programme.decide(61.9, 0);
    assertThat(programme.calls(Heater.HEAT_PUMP)).isTrue();
    programme.decide(62, 0);
    assertThat(programme.calls(Heater.HEAT_PUMP)).isFalse();
    programme.decide(60.1, 0);
    assertThat(programme.calls(Heater.HEAT_PUMP)).isFalse();
    programme.decide(60, 0);
    assertThat(programme.calls(Heater.HEAT_PUMP)).isTrue();
  }

  /**
   * Due at 00:10, allowed from 02:00 to 02:40: it waits, and what is held outside does not count.
   */
  @Test
  void keepsToTheTimesAtWhichItMayRun() {
    var spec =
        new DisinfectionModel.Spec(
            Heater.IMMERSION, 60, 30, 1, 10, 700, 1440, List.of(new Window(120, 160)));
    DisinfectionModel programme = new DisinfectionModel(spec, StepLength.MINUTE);
    int minute = 0;
    while (!programme.active()) {
      programme.decide(50, 60 * minute++);
    }
    assertThat(minute - 1).isEqualTo(120);
    for (; minute < 145; minute++) {
      programme.decide(50, 60 * minute);
    }
    assertThat(programme.calls(Heater.IMMERSION)).isTrue();
    for (; minute < 200; minute++) {
      programme.decide(61, 60 * minute);
    }
    assertThat(programme.active()).as("15 of 30 min held, then interrupted").isTrue();
    assertThat(programme.calls(Heater.IMMERSION)).as("outside its times").isFalse();
  }

  @Test
  void noneNeverBegins() {
    DisinfectionModel none =
        new DisinfectionModel(DisinfectionModel.Spec.none(), StepLength.MINUTE);
    assertThat(stepsWhile(none, false, 20)).isEqualTo(5000);
  }
}
