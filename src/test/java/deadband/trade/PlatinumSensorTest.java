package deadband.trade;

import static deadband.trade.OutsideCheck.independent;
import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
import static deadband.trade.OutsideCheck.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.PlatinumSensor.Curve;
import deadband.trade.PlatinumSensor.Reading;
import deadband.trade.PlatinumSensor.ToleranceClass;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class PlatinumSensorTest {

  static List<OutsideCheck> outside() {
    return List.of(
        worked(
            "resistance of a Pt1000",
            "IEC 60751, coefficients second-hand, table evaluated; Pt100 points × 10",
            Known.DERIVED,
            value("0 °C", 1000.00, 0.005, () -> iec_ohm(0)),
            value("10 °C", 1039.03, 0.005, () -> iec_ohm(10)),
            value("20 °C", 1077.93, 0.0051, () -> iec_ohm(20)),
            value("40 °C", 1155.41, 0.005, () -> iec_ohm(40)),
            value("50 °C", 1193.97, 0.005, () -> iec_ohm(50)),
            value("60 °C", 1232.42, 0.005, () -> iec_ohm(60)),
            value("65 °C", 1251.60, 0.005, () -> iec_ohm(65)),
            value("80 °C", 1308.97, 0.005, () -> iec_ohm(80)),
            value("100 °C", 1385.05, 0.0051, () -> iec_ohm(100))),
        independent(
            "resistance of a Pt100 every 10 K, to the printed digit",
            PRINTED,
            Known.SECOND_HAND,
            printed(
                20,
                (row, t) ->
                    value(
                        t + " °C [Ω]",
                        PRINTED_OHM[row],
                        0.0051,
                        () -> Curve.IEC_60751.resistance_ohm(100, t)))),
        independent(
            "temperature of a printed Pt100 resistance, within the printed digit",
            PRINTED,
            Known.SECOND_HAND,
            printed(
                10,
                (row, t) ->
                    value(
                        PRINTED_OHM[row] + " Ω [°C]",
                        t,
                        0.014,
                        () -> Curve.IEC_60751.temperature_C(100, PRINTED_OHM[row])))),
        transcribed(
            "coefficients of the 3916 curve of JIS",
            "JIS C 1604",
            Known.SECOND_HAND,
            value(
                "100 Ω at 100 °C [Ω]",
                139.152,
                0.0005,
                () -> Curve.CURVE_3916.resistance_ohm(100, 100))),
        worked(
            "temperature of a Pt1000",
            "IEC 60751, coefficients second-hand, table evaluated",
            Known.DERIVED,
            value("1000.00 Ω", 0, 0.002, () -> iec_C(1000.00)),
            value("1193.97 Ω", 50, 0.002, () -> iec_C(1193.97)),
            value("1232.42 Ω", 60, 0.002, () -> iec_C(1232.42)),
            value("1385.05 Ω", 100, 0.002, () -> iec_C(1385.05))),
        worked(
            "tolerance of the classes",
            "IEC 60751",
            Known.SECOND_HAND,
            value("AA, 0 °C [K]", 0.10, 1e-12, () -> ToleranceClass.AA.tolerance_K(0)),
            value("AA, 60 °C [K]", 0.202, 1e-12, () -> ToleranceClass.AA.tolerance_K(60)),
            value("A, 0 °C [K]", 0.15, 1e-12, () -> ToleranceClass.A.tolerance_K(0)),
            value("A, 60 °C [K]", 0.27, 1e-12, () -> ToleranceClass.A.tolerance_K(60)),
            value("B, 0 °C [K]", 0.30, 1e-12, () -> ToleranceClass.B.tolerance_K(0)),
            value("B, 60 °C [K]", 0.60, 1e-12, () -> ToleranceClass.B.tolerance_K(60))),
        worked(
            "effect of the leads",
            "IEC 60751, slope evaluated",
            Known.DERIVED,
            value("1 Ω at 60 °C [K]", 0.26, 0.005, () -> PlatinumSensor.leadError_K(1000, 1, 60)),
            value("1 Ω at 0 °C [K]", 0.26, 0.005, () -> PlatinumSensor.leadError_K(1000, 1, 0))));
  }

  private static final String PRINTED = "IEC 60751, Pt100 table as printed by sensor makers";

  /** 0 to 200 °C. */
  private static final double[] PRINTED_OHM = {
    100.00, 103.90, 107.79, 111.67, 115.54, 119.40, 123.24, 127.08, 130.90, 134.71, 138.51, 142.29,
    146.07, 149.83, 153.58, 157.33, 161.05, 164.77, 168.48, 172.17, 175.86
  };

  private interface Printed {
    OutsideCheck.Value at(int row, double temperature_C);
  }

  private static List<OutsideCheck.Value> printed(int last, Printed value) {
    return IntStream.rangeClosed(0, last).mapToObj(row -> value.at(row, row * 10)).toList();
  }

  private static double iec_ohm(double temperature_C) {
    return Curve.IEC_60751.resistance_ohm(1000, temperature_C);
  }

  private static double iec_C(double resistance_ohm) {
    return Curve.IEC_60751.temperature_C(1000, resistance_ohm);
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void temperatureUndoesResistance() {
    for (Curve curve : Curve.values()) {
      for (double t = 0; t <= 200; t += 2.5) {
        assertThat(curve.temperature_C(100, curve.resistance_ohm(100, t)))
            .isCloseTo(t, within(1e-9));
      }
    }
  }

  @Test
  void aHundredOhmSensorIsATenth() {
    assertThat(Curve.IEC_60751.resistance_ohm(100, 60)).isCloseTo(123.242, within(0.0005));
  }

  @Test
  void slopeIsTheChangeOfResistance() {
    // 60 °C: 3.9083 − 2 · 5.775e-4 · 60 = 3.8390 Ω/K
    assertThat(Curve.IEC_60751.slope_ohm_per_K(1000, 60)).isCloseTo(3.8390, within(1e-4));
    assertThat(Curve.IEC_60751.slope_ohm_per_K(1000, 60))
        .isCloseTo((iec_ohm(60.5) - iec_ohm(59.5)), within(1e-9));
  }

  @Test
  void refusesOutsideItsRange() {
    assertThatThrownBy(() -> iec_ohm(-0.1))
        .hasMessage("platinum sensor temperature -0.1 °C is outside 0.0 to 200.0 °C");
    assertThatThrownBy(() -> iec_ohm(200.1)).hasMessageContaining("200.1");
    assertThatThrownBy(() -> iec_C(999.9)).hasMessageContaining("resistance 999.9 Ω is outside");
    assertThatThrownBy(() -> iec_C(1800)).hasMessageContaining("1800.0");
    assertThatThrownBy(() -> Curve.IEC_60751.slope_ohm_per_K(1000, -1))
        .hasMessageContaining("-1.0");
    assertThatThrownBy(() -> Curve.IEC_60751.resistance_ohm(0, 20))
        .hasMessageContaining("nominal_ohm");
    assertThatThrownBy(() -> Curve.IEC_60751.temperature_C(0, 20))
        .hasMessageContaining("nominal_ohm");
    assertThatThrownBy(() -> Curve.IEC_60751.slope_ohm_per_K(0, 20))
        .hasMessageContaining("nominal_ohm");
    assertThatThrownBy(() -> PlatinumSensor.leadError_K(1000, -1, 20))
        .hasMessageContaining("lead_ohm");
    assertThatThrownBy(() -> ToleranceClass.B.tolerance_K(Double.NaN))
        .hasMessageContaining("temperature_C");
  }

  @Test
  void toleranceGrowsAwayFromZero() {
    assertThat(ToleranceClass.B.tolerance_K(-20)).isEqualTo(ToleranceClass.B.tolerance_K(20));
    assertThat(ToleranceClass.C.tolerance_K(60)).isCloseTo(1.2, within(1e-12));
    assertThat(Stream.of(ToleranceClass.values()).map(ToleranceClass::known))
        .containsExactly(Known.SECOND_HAND, Known.SECOND_HAND, Known.SECOND_HAND, Known.MEMORY);
    assertThat(Curve.IEC_60751.known()).isEqualTo(Known.SECOND_HAND);
    assertThat(Curve.CURVE_3916.known()).isEqualTo(Known.SECOND_HAND);
  }

  private static Reading reading(double measured_ohm, double displayed_C, double lead_ohm) {
    return PlatinumSensor.reading(1000, measured_ohm, displayed_C, ToleranceClass.B, lead_ohm);
  }

  @Test
  void aSensorThatAgrees() {
    // 1209 Ω is 53.9 °C; displayed 54; class B ± 0.57 K there
    assertThat(reading(1209, 54, 0)).isEqualTo(Reading.AGREES);
  }

  @Test
  void bothSidesOfTheTolerance() {
    // 60 °C: 1232.42 Ω, ± 0.60 K · 3.839 Ω/K = ± 2.303 Ω
    assertThat(reading(1232.42 + 2.30, 60, 0)).isEqualTo(Reading.AGREES);
    // a little above, the reach of the 3916 curve begins
    assertThat(reading(1232.42 + 2.32, 60, 0)).isEqualTo(Reading.OTHER_CURVE);
    assertThat(reading(1232.42 - 2.29, 60, 0)).isEqualTo(Reading.AGREES);
    assertThat(reading(1232.42 - 2.32, 60, 0)).isEqualTo(Reading.FITS_NOTHING);
    // an ohm of leads widens it by just an ohm
    assertThat(reading(1232.42 + 3.30, 60, 1)).isEqualTo(Reading.AGREES);
    assertThat(reading(1232.42 + 3.32, 60, 1)).isEqualTo(Reading.OTHER_CURVE);
  }

  @Test
  void anotherCurveIsAnotherSensor() {
    // the 3916 curve at 60 °C: 1000·(1 + 0.0039739·60 − 5.870e-7·3600) = 1236.32 Ω, 1.02 K too much
    double measured_ohm = Curve.CURVE_3916.resistance_ohm(1000, 60);
    assertThat(measured_ohm).isCloseTo(1236.32, within(0.01));
    assertThat(reading(measured_ohm, 60, 0)).isEqualTo(Reading.OTHER_CURVE);
  }

  @Test
  void anotherNominalIsAnotherSensor() {
    assertThat(reading(123.24, 60, 0)).isEqualTo(Reading.OTHER_NOMINAL);
    assertThat(PlatinumSensor.reading(100, 1232.4, 60, ToleranceClass.B, 0))
        .isEqualTo(Reading.OTHER_NOMINAL);
    assertThat(reading(600, 60, 0)).isEqualTo(Reading.FITS_NOTHING);
    assertThatThrownBy(() -> reading(0, 60, 0)).hasMessageContaining("measured_ohm");
  }

  /** Class B at 60 °C is 0.6 K, so that both ways of telling the tolerance agree. */
  @Test
  void aToleranceOfTheDataSheetStandsForTheClass() {
    double within_ohm = iec_ohm(60.59);
    double beyond_ohm = iec_ohm(60.62);
    for (double measured_ohm : new double[] {within_ohm, beyond_ohm}) {
      assertThat(PlatinumSensor.reading(1000, measured_ohm, 60, 0.6, 0))
          .isEqualTo(PlatinumSensor.reading(1000, measured_ohm, 60, ToleranceClass.B, 0));
    }
    assertThat(PlatinumSensor.reading(1000, within_ohm, 60, 0.6, 0)).isEqualTo(Reading.AGREES);
    assertThat(PlatinumSensor.reading(1000, beyond_ohm, 60, 0.6, 0)).isNotEqualTo(Reading.AGREES);
  }
}
