package deadband.trade;

import static deadband.trade.OutsideCheck.independent;
import static deadband.trade.OutsideCheck.value;
import static deadband.trade.OutsideCheck.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class MeteringTest {
  /** Five periods of three phases, Wh, import positive. */
  private static final double[][] PERIODS_WH = {
    {5, -3, 5}, {-4, -3, 5}, {0, -5, 5}, {3, 4, 5}, {-5, 0, -2}
  };

  static List<OutsideCheck> outside() {
    return List.of(
        independent(
            "three-phase netting, five periods [Wh]",
            "an Australian network company's note",
            Known.SECOND_HAND,
            value("(+5, −3, +5), import", 7, 1e-12, () -> Metering.nettedImport(PERIODS_WH[0])),
            value("(−4, −3, +5), export", 2, 1e-12, () -> Metering.nettedExport(PERIODS_WH[1])),
            value("(0, −5, +5), import", 0, 1e-12, () -> Metering.nettedImport(PERIODS_WH[2])),
            value("(0, −5, +5), export", 0, 1e-12, () -> Metering.nettedExport(PERIODS_WH[2])),
            value("(+3, +4, +5), import", 12, 1e-12, () -> Metering.nettedImport(PERIODS_WH[3])),
            value("(−5, 0, −2), export", 7, 1e-12, () -> Metering.nettedExport(PERIODS_WH[4])),
            value("netted import in all", 19, 1e-12, () -> total(Metering::nettedImport)),
            value("netted export in all", 9, 1e-12, () -> total(Metering::nettedExport))),
        worked(
            "phase by phase, the same five periods [Wh]",
            "sum of the phases that import, sum of those that export",
            Known.DERIVED,
            value("import in all", 32, 1e-12, () -> total(Metering::perPhaseImport)),
            value("export in all", 22, 1e-12, () -> total(Metering::perPhaseExport))),
        worked(
            "balanced load of 2.4 kW, surplus of 2.4 kW on one phase, not netted [kW]",
            "offset min(S, P/3)",
            Known.DERIVED,
            value("imported", 1.6, 1e-12, () -> 2.4 - Metering.balancedLoadCovered_kW(2.4, 2.4)),
            value("exported", 1.6, 1e-12, () -> Metering.perPhaseExport(2.4 / 3 - 2.4, 0.8, 0.8))),
        worked(
            "6 kW of PV on L1, 2 kW of load on each phase [kW]",
            "account from practice, arithmetic",
            Known.DERIVED,
            value("netted import", 0, 1e-12, () -> Metering.nettedImport(2 - 6, 2, 2)),
            value("import phase by phase", 4, 1e-12, () -> Metering.perPhaseImport(2 - 6, 2, 2)),
            value("export phase by phase", 4, 1e-12, () -> Metering.perPhaseExport(2 - 6, 2, 2))));
  }

  private static double total(ToDoubleFunction<double[]> meter) {
    return Stream.of(PERIODS_WH).mapToDouble(meter).sum();
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void bothMetersAgreeOnTheDifference() {
    for (double[] period : PERIODS_WH) {
      assertThat(Metering.perPhaseImport(period) - Metering.perPhaseExport(period))
          .isCloseTo(Metering.nettedImport(period) - Metering.nettedExport(period), within(1e-12));
    }
  }

  @Test
  void onePhaseIsNettedAnyway() {
    assertThat(Metering.nettedImport(3)).isEqualTo(Metering.perPhaseImport(3)).isEqualTo(3);
    assertThat(Metering.nettedExport(-3)).isEqualTo(Metering.perPhaseExport(-3)).isEqualTo(3);
    assertThat(Metering.nettedExport(3)).isZero();
    assertThat(Metering.nettedImport(-3)).isZero();
  }

  @Test
  void aSmallSurplusCoversItself() {
    assertThat(Metering.balancedLoadCovered_kW(2.4, 0.5)).isEqualTo(0.5);
    assertThat(Metering.balancedLoadCovered_kW(2.4, -1)).isZero();
    assertThat(Metering.balancedLoadCovered_kW(0, 2)).isZero();
    assertThat(Metering.onePhaseOf_kW(2.4)).isCloseTo(0.8, within(1e-12));
    assertThatThrownBy(() -> Metering.balancedLoadCovered_kW(-1, 2))
        .hasMessageContaining("load_kW");
  }
}
