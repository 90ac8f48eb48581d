package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The UK government reference engine's unit case (read): a store of 150 L at 55 °C with a set point
 * of 60 °C is offered 1 kWh and takes 0.8917 kWh, 0.8717 of it sensible heat. The loss there is
 * 1.68 kWh in 24 h. The engine takes 1 kg and 4.184 kJ for a litre; here the water is that of
 * IAPWS-IF97, so that the sensible part is 0.861 kWh.
 */
@Tag("outside")
class DivertedEnergyTest {
  /** A 3 kW heater is offered 1 kWh in 20 minutes; ten-second steps keep what is beyond small. */
  @Test
  void aStoreNearItsSetPointTakesWhatTheReferenceEngineSays() {
    Given given = new Given();
    given.volume_L = 150;
    given.height_mm = 1200;
    given.loss_kWh_per_day = 1.68;
    given.element_mm = 0;
    given.opening_C = 60;
    given.closing_C = 55;
    given.everydayStart_C = Double.NEGATIVE_INFINITY;
    given.start_kW = 99;
    StepLength step = new StepLength(10);
    double[] surplus_kW = new double[20 * 6];
    Arrays.fill(surplus_kW, 3);
    Profile profile = Profile.ofSurplus(step, 0, surplus_kW, new double[surplus_kW.length]);
    Result result =
        DayRun.startingAt(55, given.build(), step).through(new Day(profile, 10, 10)).result();
    assertThat(profile.pv_kWh()).isEqualTo(1.0);
    assertThat(result.immersion_kWh()).isBetween(0.87, 0.90);
    assertThat(result.tankTop_C().max()).isBetween(60.0, 60.1);
    assertThat(result.immersion_kWh() + result.export_kWh()).isBetween(0.999999, 1.000001);
  }
}
