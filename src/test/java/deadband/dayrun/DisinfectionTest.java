package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.dayrun.Disinfection.Heater;
import org.junit.jupiter.api.Test;

/** 60 °C for 30 min every day, due after 10 min, 120 min allowed. */
class DisinfectionTest {
  private static Disinfection programme(Heater heater) {
    var spec = new Disinfection.Spec(heater, 60, 30, 1, 10, 700, 120);
    return new Disinfection(spec, StepLength.MINUTE);
  }

  private static int stepsWhile(Disinfection programme, boolean active, double sensor_C) {
    int steps = 0;
    while (programme.active() == active && steps < 5000) {
      programme.decide(sensor_C);
      steps++;
    }
    return steps;
  }

  @Test
  void beginsWhenItIsDueAndAgainADayLater() {
    Disinfection programme = programme(Heater.IMMERSION);
    assertThat(stepsWhile(programme, false, 65)).isEqualTo(11);
    assertThat(stepsWhile(programme, true, 65)).isEqualTo(30);
    assertThat(stepsWhile(programme, false, 65)).isEqualTo(1440 - 30);
  }

  @Test
  void asksTheHeaterOnlyWhileItLasts() {
    Disinfection programme = programme(Heater.IMMERSION);
    assertThat(programme.calls(Heater.IMMERSION)).isFalse();
    stepsWhile(programme, false, 50);
    assertThat(programme.calls(Heater.IMMERSION)).isTrue();
    assertThat(programme.calls(Heater.HEAT_PUMP)).isFalse();
    stepsWhile(programme, true, 61);
    assertThat(programme.calls(Heater.IMMERSION)).isFalse();
  }

  @Test
  void anInterruptionBeginsTheHoldAnew() {
    Disinfection programme = programme(Heater.IMMERSION);
    stepsWhile(programme, false, 50);
    for (int minute = 0; minute < 29; minute++) {
      programme.decide(60);
    }
    programme.decide(59.9);
    assertThat(stepsWhile(programme, true, 60)).isEqualTo(30);
  }

  @Test
  void givesUpAfterTheTimeAllowed() {
    Disinfection programme = programme(Heater.IMMERSION);
    stepsWhile(programme, false, 50);
    assertThat(stepsWhile(programme, true, 59.9)).isEqualTo(120);
  }

  @Test
  void theCompressorGoesALittleAboveTheTargetAndComesBackAtIt() {
    Disinfection programme = programme(Heater.HEAT_PUMP);
    stepsWhile(programme, false, 50);
    programme.decide(61.9);
    assertThat(programme.calls(Heater.HEAT_PUMP)).isTrue();
    programme.decide(62);
    assertThat(programme.calls(Heater.HEAT_PUMP)).isFalse();
    programme.decide(60.1);
    assertThat(programme.calls(Heater.HEAT_PUMP)).isFalse();
    programme.decide(60);
    assertThat(programme.calls(Heater.HEAT_PUMP)).isTrue();
  }

  @Test
  void noneNeverBegins() {
    Disinfection none = new Disinfection(Disinfection.Spec.none(), StepLength.MINUTE);
    assertThat(stepsWhile(none, false, 20)).isEqualTo(5000);
  }
}
