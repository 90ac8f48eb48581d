package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.HeatPumpCop;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Ground source, factor 0.85, 0.5 to 2.5 kW, top of the programme 60, flow 5 K above to 70 °C. */
class PerformanceTest {
  private static Performance performance(double minimumInput_kW, double source_C) {
    var spec =
        new Performance.Spec(
            HeatPumpCop.Fit.STAFFELL_GROUND, 0.85, minimumInput_kW, 2.5, 60, 70, 5);
    Performance performance = new Performance(spec);
    performance.source(source_C);
    return performance;
  }

  /** Staffell et al. 2012: 8.77 − 0.150·45 + 0.000734·45² = 3.50635 at 45 K of lift (read). */
  @Tag("outside")
  @Test
  void theCopIsThatOfTheFitAtTheFlowTimesTheFactor() {
    Performance performance = performance(0.5, 10);
    performance.at(50);
    assertThat(performance.cop()).isCloseTo(0.85 * 3.50635, within(1e-9));
  }

  /** At constant output input goes as 1/COP: 3.1050 at 50 K of lift, 2.4124 at 60 K, 29 % more. */
  @Test
  void theDrawRisesTowardTheTopAndTheOutputStays() {
    Performance performance = performance(0.5, 5);
    performance.at(60);
    double output_kW = performance.output_kW();
    assertThat(performance.input_kW()).isEqualTo(2.5);
    performance.at(50);
    assertThat(performance.output_kW()).isCloseTo(output_kW, within(1e-9));
    assertThat(2.5 / performance.input_kW()).isCloseTo(3.1050 / 2.4124, within(1e-9));
  }

  @Test
  void theDrawNeverLeavesItsLeastAndItsMost() {
    Performance performance = performance(2.2, 10);
    performance.at(15);
    assertThat(performance.input_kW()).isEqualTo(2.2);
    performance.at(64);
    assertThat(performance.input_kW()).isEqualTo(2.5);
  }

  /** The flow may reach 70 °C: full output to 65 °C, a fifth of it at 69 °C. */
  @Test
  void nearItsLimitItTurnsDownAndThenStops() {
    Performance performance = performance(0.5, 10);
    performance.at(64.99);
    assertThat(performance.input_kW()).isEqualTo(2.5);
    performance.at(69);
    assertThat(performance.input_kW()).isCloseTo(0.5, within(1e-9));
    assertThat(performance.atLimit()).isFalse();
    performance.at(69.01);
    assertThat(performance.atLimit()).isTrue();
    Performance constant = performance(2.5, 10);
    constant.at(65);
    assertThat(constant.atLimit()).isFalse();
    constant.at(65.01);
    assertThat(constant.atLimit()).isTrue();
  }

  @Test
  void aMachineThatTurnsDownToNothingStopsAtItsHighestFlow() {
    Performance performance = performance(0, 10);
    performance.at(69.99);
    assertThat(performance.atLimit()).isFalse();
    performance.at(70);
    assertThat(performance.atLimit()).isTrue();
  }

  /** The fit ends at 60 K; at 70 − (−10) = 80 K its COP at 60 K stands. */
  @Test
  void outsideTheFitTheCopOfItsEndStands() {
    Performance performance = performance(0.5, -10);
    performance.at(65);
    assertThat(performance.cop()).isEqualTo(0.85 * HeatPumpCop.Fit.STAFFELL_GROUND.cop(60));
  }

  @Test
  void theFlowItselfEndsAtItsHighest() {
    Performance performance = performance(0.5, 15);
    performance.at(68);
    assertThat(performance.cop()).isEqualTo(0.85 * HeatPumpCop.Fit.STAFFELL_GROUND.cop(70 - 15));
  }

  @Test
  void whatIsNotFittedIsAtItsLimit() {
    var none =
        new Performance(new Performance.Spec(HeatPumpCop.Fit.STAFFELL_AIR, 1, 0, 0, 60, 60, 5));
    assertThat(none.fitted()).isFalse();
    assertThat(none.atLimit()).isTrue();
  }
}
