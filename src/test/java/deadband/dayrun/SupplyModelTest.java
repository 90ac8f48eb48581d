package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class SupplyModelTest {
  private static SupplyModel supply(boolean perPhase, double l1_kW, double l2_kW, double l3_kW) {
    SupplyModel supply = new SupplyModel(new SupplyModel.Spec(perPhase, 3, Line.ALL));
    supply.draw(Line.L1, l1_kW);
    supply.draw(Line.L2, l2_kW);
    supply.draw(Line.L3, l3_kW);
    return supply;
  }

  /** An Australian network company's note (second-hand): (+5, −3, +5) netted is 7 import. */
  @Tag("outside")
  @Test
  void aNettingMeterCountsTheSum() {
    assertThat(supply(false, 5, -3, 5).import_kW()).isEqualTo(7);
    assertThat(supply(false, 5, -3, 5).export_kW()).isZero();
    assertThat(supply(false, -4, -3, 5).export_kW()).isEqualTo(2);
  }

  /** Derived from the same note: phase by phase (+5, −3, +5) is 10 import and 3 export. */
  @Test
  void aMeterThatDoesNotNetCountsEachLine() {
    assertThat(supply(true, 5, -3, 5).import_kW()).isEqualTo(10);
    assertThat(supply(true, 5, -3, 5).export_kW()).isEqualTo(3);
  }

  /** Trade values, section 6, derived: S = 2.4 kW on one line, P = 2.4 kW on three. */
  @Test
  void aBalancedLoadIsCoveredByAThirdOnly() {
    SupplyModel supply = supply(true, -2.4, 0, 0);
    supply.draw(Line.ALL, 2.4);
    assertThat(supply.import_kW()).isCloseTo(1.6, within(1e-12));
    assertThat(supply.export_kW()).isCloseTo(1.6, within(1e-12));
  }

  @Test
  void aSensorOnOneLineSeesThatLine() {
    SupplyModel supply = supply(false, -4, 2, 2);
    assertThat(supply.leaving_kW(Line.L1)).isEqualTo(4);
    assertThat(supply.leaving_kW(Line.ALL)).isZero();
    assertThat(Line.ALL.shareOn(Line.L2)).isCloseTo(1 / 3.0, within(1e-15));
    assertThat(Line.L1.shareOn(Line.L2)).isZero();
    assertThat(Line.L1.shareOn(Line.ALL)).isEqualTo(1);
  }

  @Test
  void theExportLimitHoldsBackSunAndNothingElse() {
    assertThat(supply(false, -5, 0, 0).toCurtail_kW(6)).isEqualTo(2);
    assertThat(supply(false, -3, 0, 0).toCurtail_kW(6)).isZero();
    assertThat(supply(false, -5, 0, 0).toCurtail_kW(1.5)).isEqualTo(1.5);
  }
}
