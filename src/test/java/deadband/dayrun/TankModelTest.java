package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.StoredHeat;
import deadband.trade.Water;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** 300 L, 1600 mm, 20 layers of 80 mm and 15 L; coil 100 to 900 mm unless said otherwise. */
class TankModelTest {
  private final Given given = new Given();

  private TankModel tank(double start_C) {
    return new TankModel(given.build().tank(), start_C, StepLength.MINUTE);
  }

  @Test
  void aLowElementAndACoilHalfWayUpLeaveDifferentBottoms() {
    given.coilBottom_mm = 800;
    given.coilTop_mm = 1200;
    TankModel byElement = tank(20);
    TankModel byCoil = tank(20);
    int element = byElement.at(120);
    for (int minute = 0; minute < 240; minute++) {
      byElement.heatElement(element, 3.0 / 60);
      byCoil.heatCoil(3.0 / 60, 5, 70);
    }
    assertThat(byElement.content_kWh()).isCloseTo(byCoil.content_kWh(), within(1e-9));
    // one layer lies below the element, ten below the coil
    assertThat(byElement.bottom_C()).isEqualTo(20);
    assertThat(byElement.layer_C(1)).isGreaterThan(50);
    assertThat(byCoil.layer_C(9)).isEqualTo(20);
    assertThat(byCoil.layer_C(10)).isGreaterThan(80);
    given.element_mm = 10;
    TankModel byLowestElement = tank(20);
    for (int minute = 0; minute < 240; minute++) {
      byLowestElement.heatElement(byLowestElement.at(10), 3.0 / 60);
    }
    assertThat(byLowestElement.bottom_C()).isGreaterThan(50);
  }

  @Test
  void theElementHeatsItsLayerAndThoseAbove() {
    TankModel tank = tank(20);
    tank.heatElement(5, 1);
    assertThat(tank.layer_C(4)).isEqualTo(20);
    for (int layer = 6; layer < 20; layer++) {
      assertThat(tank.layer_C(layer)).isCloseTo(tank.layer_C(5), within(1e-9));
    }
  }

  @Test
  void theCoilWarmsColdWaterFirstAndNoLayerPastItsFlow() {
    TankModel tank = tank(60);
    tank.draw(100, 10);
    double warmest_C = tank.coilTop_C();
    double flow_C = tank.coil_C() + 5;
    tank.heatCoil(0.3, 5, 70);
    assertThat(warmest_C).isGreaterThan(flow_C);
    assertThat(tank.coilTop_C()).isEqualTo(warmest_C);
    assertThat(tank.layer_C(1)).isGreaterThan(10);
  }

  @Test
  void theCoilsEndsCountInPart() {
    given.coilBottom_mm = 120;
    given.coilTop_mm = 240;
    TankModel tank = tank(20);
    tank.heatCoil(0.01, 5, 70);
    // 40 mm in layer 1, 80 mm in layer 2, none in layer 3
    double half_K = tank.layer_C(1) - 20;
    assertThat(half_K).isPositive();
    assertThat(tank.layer_C(0)).isEqualTo(20);
    assertThat(tank.coil_C()).isCloseTo((tank.layer_C(1) + 2 * tank.layer_C(2)) / 3, within(1e-12));
  }

  @Test
  void theWholeCapacityIsThatOfWaterAtFiftyDegrees() {
    TankModel tank = tank(20);
    double before_kWh = tank.content_kWh();
    tank.heatElement(0, 5);
    double rise_K = 5 / (300 * Water.heatCapacity_kWh_per_LK(50));
    assertThat(tank.top_C()).isCloseTo(20 + rise_K, within(1e-9));
    assertThat(tank.content_kWh()).isCloseTo(before_kWh + 5, within(1e-9));
  }

  /** The stated bound of the class comment, against StoredHeat's own properties. */
  @Test
  void oneCapacityForAllStaysWithinTheStatedBound() {
    double reference = Water.heatCapacity_kWh_per_LK(50);
    for (double at_C = 10; at_C <= 65; at_C++) {
      assertThat(Water.heatCapacity_kWh_per_LK(at_C))
          .isCloseTo(reference, within(0.016 * reference));
    }
  }

  /**
   * EN 12897 conversion: 1.8 kWh in 24 h at 45 K is 1.6667 W/K; in one hour from 65 in 20 °C 75 Wh.
   */
  @Test
  void standingLossIsTheDeclaredOneFortyFiveKelvinAboveTheRoom() {
    TankModel tank = tank(65);
    for (int minute = 0; minute < 60; minute++) {
      tank.cool();
    }
    assertThat(tank.lost_kWh()).isCloseTo(1.8 / 24, within(2e-4));
    // C at the mean of store and room: T = 20 + 45·exp(−H·t/C)
    double capacity_kWh_per_K = 300 * Water.heatCapacity_kWh_per_LK((65 + 20) / 2.0);
    double expected_C = 20 + 45 * Math.exp(-1.8 / 24 / 45 / capacity_kWh_per_K);
    assertThat(tank.top_C()).isCloseTo(expected_C, within(1e-3));
  }

  @Test
  void drawingTheWholeStoreLeavesColdWater() {
    TankModel tank = tank(60);
    tank.draw(300, 10);
    assertThat(tank.top_C()).isEqualTo(10);
    assertThat(tank.drawn_kWh())
        .isCloseTo(300 * Water.heatCapacity_kWh_per_LK(50) * 50, within(1e-9));
  }

  /** Common practice: 400 L from cold to full takes about 25 kWh; a 3 kW element about 8 h. */
  @Tag("outside")
  @Test
  void fourHundredLitresTakeAThreeKilowattElementAboutEightHours() {
    given.volume_L = 400;
    given.loss_kWh_per_day = 0;
    TankModel tank = tank(10);
    int minutes = 0;
    while (tank.layer_C(1) < 64) {
      tank.heatElement(tank.at(120), 3.0 / 60);
      minutes++;
    }
    assertThat(minutes / 60.0).isBetween(7.5, 8.5);
    assertThat(StoredHeat.heat_kWh(400, 10, 64)).isCloseTo(25, within(0.2));
  }

  /**
   * Halving the step: six hours of element and coil with a draw-off every half hour. The profiles
   * at 60 s and at 30 s stay within 0.5 K of each other, and the store's mean within 0.1 K.
   */
  @Test
  void halvingTheStepChangesTemperaturesByLessThanHalfAKelvin() {
    TankModel coarse = heated(StepLength.MINUTE);
    TankModel fine = heated(new StepLength(30));
    for (int layer = 0; layer < coarse.layers(); layer++) {
      assertThat(coarse.layer_C(layer))
          .as("layer " + layer)
          .isCloseTo(fine.layer_C(layer), within(0.5));
    }
    assertThat(coarse.content_kWh()).isCloseTo(fine.content_kWh(), within(0.1 * 300 * 0.00116));
  }

  private TankModel heated(StepLength step) {
    TankModel tank = new TankModel(given.build().tank(), 40, step);
    for (int number = 0; number < 6 * step.perHour(); number++) {
      tank.heatElement(tank.at(120), 1.0 * step.hours());
      tank.heatCoil(4.0 * step.hours(), 5, 75);
      tank.cool();
      int second = number * step.seconds();
      tank.draw(second % 1800 < 120 ? 8 * step.minutes() : 0, 10);
    }
    return tank;
  }

  /** Layers 0 and 1 at 10, the others at 60 °C; 15 L hold 0.0172 kWh/K. */
  @Test
  void roomIsWhatIsMissingToALimit() {
    TankModel tank = tank(60);
    tank.draw(30, 10);
    double layer_kWh_per_K = 15 * Water.heatCapacity_kWh_per_LK(50);
    assertThat(tank.room_kWh(2, 65)).isCloseTo(18 * 5 * layer_kWh_per_K, within(1e-9));
    assertThat(tank.room_kWh(1, 65)).isCloseTo((18 * 5 + 55) * layer_kWh_per_K, within(1e-9));
    assertThat(tank.room_kWh(1, 65, 0.1)).isBetween(0.1, tank.room_kWh(1, 65));
    assertThat(tank.room_kWh(0, 50)).isCloseTo(2 * 40 * layer_kWh_per_K, within(1e-9));
    // coil from 100 to 900 mm: three quarters of layer 1, 2 to 10, a quarter of 11; then 12 to 19
    double crossed_K = 0.75 * 55 + 9 * 5 + 0.25 * 5;
    assertThat(tank.coilRoom_kWh(65))
        .isCloseTo((crossed_K + 8 * 5) * layer_kWh_per_K, within(1e-9));
  }

  /** A whole day's heat in one go into a coil of one layer stays below the flow's limit. */
  @Test
  void muchHeatAtOnceIsGivenInParts() {
    given.coilBottom_mm = 0;
    given.coilTop_mm = 80;
    TankModel tank = tank(20);
    tank.heatCoil(10, 5, 70);
    assertThat(tank.top_C())
        .isCloseTo(20 + 10 / (300 * Water.heatCapacity_kWh_per_LK(50)), within(1e-9));
    assertThat(tank.bottom_C()).isEqualTo(tank.top_C());
    given.coilTop_mm = 800;
    TankModel layered = tank(60);
    layered.draw(150, 10);
    layered.heatCoil(5, 5, 62);
    assertThat(layered.top_C()).isEqualTo(60);
    for (int layer = 0; layer < layered.layers(); layer++) {
      assertThat(layered.layer_C(layer)).isLessThanOrEqualTo(62);
    }
  }

  @Test
  void itsAccountHoldsWhatWasGivenLostAndDrawn() {
    TankModel tank = tank(50);
    tank.heatElement(3, 1.5);
    tank.heatCoil(2.5, 5, 70);
    tank.cool();
    tank.draw(20, 10);
    assertThat(tank.given_kWh()).isEqualTo(4);
    assertThat(tank.lost_kWh()).isPositive();
    assertThat(tank.imbalance_kWh()).isCloseTo(0, within(1e-12));
    tank.accountAfresh();
    assertThat(tank.given_kWh() + tank.lost_kWh() + tank.drawn_kWh()).isZero();
    tank.heatElement(3, 1);
    assertThat(tank.imbalance_kWh()).isCloseTo(0, within(1e-12));
  }

  /** One of twenty layers comes in at 18 °C below water of 10 °C: the whole column mixes. */
  @Test
  void coldWaterWarmerThanTheTankMixesWithIt() {
    TankModel tank = tank(10);
    tank.draw(15, 18);
    assertThat(tank.bottom_C()).isCloseTo(10 + 8 / 20.0, within(1e-9));
    assertThat(tank.top_C()).isEqualTo(tank.bottom_C());
    assertThat(tank.imbalance_kWh()).isCloseTo(0, within(1e-12));
  }
}
