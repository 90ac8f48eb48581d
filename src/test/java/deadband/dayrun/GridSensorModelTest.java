package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;

/**
 * 1 kW leaves on L1, 2 kW come in on L2; heater 3, heat pump 1.5 with 0.6 of back-up, battery 0.5.
 */
class GridSensorModelTest {
  private final Given given = new Given();
  private final Step now = new Step();
  private final SupplyModel supply = new SupplyModel(new SupplyModel.Spec(false, 99, Line.ALL));

  GridSensorModelTest() {
    supply.draw(Line.L1, -1);
    supply.draw(Line.L2, 2);
    now.immersion_kW = 3;
    now.diverted_kW = 3;
    now.heatPump_kW = 1.5;
    now.backup_kW = 0.6;
    now.charge_kW = 0.5;
    given.battery =
        new BatteryModel.Spec(
            5, 0, 3, 1, EnumSet.noneOf(Load.class), EnumSet.noneOf(Load.class), Line.L2);
  }

  private double counted_kW(Counted first, Counted... others) {
    given.counts = EnumSet.of(first, others);
    return new GridSensorModel(given.build()).counted_kW(supply, now);
  }

  @Test
  void onAllLinesEverythingCountsWhole() {
    assertThat(counted_kW(Counted.EXPORT)).isEqualTo(-1);
    assertThat(counted_kW(Counted.EXPORT, Counted.IMMERSION)).isEqualTo(2);
    assertThat(counted_kW(Counted.HEAT_PUMP)).isEqualTo(1.5);
    assertThat(counted_kW(Counted.BATTERY)).isEqualTo(0.5);
    now.charge_kW = 0;
    now.discharge_kW = 0.5;
    assertThat(counted_kW(Counted.BATTERY)).isEqualTo(-0.5);
  }

  @Test
  void onOneLineOnlyWhatIsThereCounts() {
    given.sensor = Line.L1;
    given.heatPump = Line.ALL;
    assertThat(counted_kW(Counted.EXPORT)).isEqualTo(1);
    assertThat(counted_kW(Counted.IMMERSION)).isEqualTo(3);
    assertThat(counted_kW(Counted.HEAT_PUMP)).isCloseTo(0.5, within(1e-12));
    assertThat(counted_kW(Counted.BATTERY)).isZero();
    given.diverter = Line.L3;
    assertThat(counted_kW(Counted.IMMERSION)).isZero();
  }

  @Test
  void whatATimerFeedsTheElementIsNotTheDivertersToCount() {
    now.diverted_kW = 0;
    assertThat(counted_kW(Counted.IMMERSION)).isZero();
  }

  @Test
  void aHeatPumpBehindItsBackIsMissingFromWhatItSees() {
    given.seesHeatPump = false;
    assertThat(counted_kW(Counted.EXPORT)).isCloseTo(-1 + 1.5 + 0.6, within(1e-12));
  }
}
