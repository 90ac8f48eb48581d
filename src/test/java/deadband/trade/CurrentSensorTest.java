package deadband.trade;

import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.CurrentSensor.AccuracyClass;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class CurrentSensorTest {

  static List<OutsideCheck> outside() {
    return List.of(
        transcribed(
            "error of a class 0.5 current sensor [% of the current]",
            "IEC 61869-2",
            AccuracyClass.CLASS_0_5.known(),
            value("5 % of rated current", 1.5, 1e-9, () -> errorPercent(5)),
            value("20 %", 0.75, 1e-9, () -> errorPercent(20)),
            value("100 %", 0.5, 1e-9, () -> errorPercent(100))));
  }

  /** A sensor rated 100 A: amperes are per cent. */
  private static double errorPercent(double current_A) {
    return CurrentSensor.error_A(AccuracyClass.CLASS_0_5, 100, current_A) / current_A * 100;
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void straightBetweenThePoints() {
    // 12.5 A lies half way from 5 to 20: 1.125 %; 60 A half way from 20 to 100: 0.625 %
    assertThat(errorPercent(12.5)).isCloseTo(1.125, within(1e-9));
    assertThat(errorPercent(60)).isCloseTo(0.625, within(1e-9));
    assertThat(errorPercent(120)).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void belowFivePerCentTheErrorInAmperesStays() {
    // 1.5 % of 5 A = 0.075 A
    assertThat(CurrentSensor.error_A(AccuracyClass.CLASS_0_5, 100, 5))
        .isCloseTo(0.075, within(1e-12));
    assertThat(CurrentSensor.error_A(AccuracyClass.CLASS_0_5, 100, 1))
        .isCloseTo(0.075, within(1e-12));
    assertThat(CurrentSensor.error_A(AccuracyClass.CLASS_0_5, 100, 0))
        .isCloseTo(0.075, within(1e-12));
  }

  @Test
  void theErrorAsAShareNeverRisesWithTheCurrent() {
    for (AccuracyClass accuracy : AccuracyClass.values()) {
      for (double current_A = 1; current_A <= 120; current_A += 0.5) {
        assertThat(CurrentSensor.error_A(accuracy, 100, current_A) / current_A)
            .isLessThanOrEqualTo(
                CurrentSensor.error_A(accuracy, 100, current_A - 0.5) / (current_A - 0.5) + 1e-12);
      }
    }
  }

  @Test
  void errorAtAPower() {
    // 2.875 kW at 230 V = 12.5 A: 1.125 % = 0.032344 kW, either sign
    assertThat(CurrentSensor.error_kW(AccuracyClass.CLASS_0_5, 100, 2.875, 230))
        .isCloseTo(0.032344, within(1e-6));
    assertThat(CurrentSensor.error_kW(AccuracyClass.CLASS_0_5, 100, -2.875, 230))
        .isCloseTo(0.032344, within(1e-6));
    assertThatThrownBy(() -> CurrentSensor.error_kW(AccuracyClass.CLASS_0_5, 100, 2, 0))
        .hasMessageContaining("voltage_V");
  }

  @Test
  void refusesWhatTheStandardDoesNotSay() {
    assertThatThrownBy(() -> CurrentSensor.error_A(AccuracyClass.CLASS_0_5, 100, 121))
        .hasMessageContaining("is outside 0.0 to 1.2");
    assertThatThrownBy(() -> CurrentSensor.error_A(AccuracyClass.CLASS_0_5, 100, -1))
        .hasMessageContaining("is outside");
    assertThatThrownBy(() -> CurrentSensor.error_A(AccuracyClass.CLASS_0_5, 0, 1))
        .hasMessageContaining("rated_A");
  }

  @Test
  void classesByTheirNumber() {
    assertThat(AccuracyClass.of(0.5)).isEqualTo(AccuracyClass.CLASS_0_5);
    assertThat(AccuracyClass.of(1)).isEqualTo(AccuracyClass.CLASS_1);
    assertThat(AccuracyClass.of(0.2)).isEqualTo(AccuracyClass.CLASS_0_2);
    assertThat(AccuracyClass.CLASS_1.number()).isEqualTo(1);
    assertThat(AccuracyClass.CLASS_1.known()).isEqualTo(Known.MEMORY);
    assertThat(AccuracyClass.CLASS_0_2.known()).isEqualTo(Known.MEMORY);
    assertThatThrownBy(() -> AccuracyClass.of(3)).hasMessage("class 3.0 is not one of 0.2, 0.5, 1");
  }

  @Test
  void aBetterClassErrsLess() {
    for (double current_A = 1; current_A <= 120; current_A++) {
      double good = CurrentSensor.error_A(AccuracyClass.CLASS_0_2, 100, current_A);
      double usual = CurrentSensor.error_A(AccuracyClass.CLASS_0_5, 100, current_A);
      double coarse = CurrentSensor.error_A(AccuracyClass.CLASS_1, 100, current_A);
      assertThat(good).isLessThan(usual);
      assertThat(usual).isLessThan(coarse);
    }
  }
}
