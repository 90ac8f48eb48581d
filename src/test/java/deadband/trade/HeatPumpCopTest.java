package deadband.trade;

import static deadband.trade.OutsideCheck.figure;
import static deadband.trade.OutsideCheck.independent;
import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
import static deadband.trade.OutsideCheck.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.HeatPumpCop.Fit;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class HeatPumpCopTest {
  private static final String STAFFELL =
      "Staffell et al. 2012, Energy Environ. Sci. 5, 9291: coefficients in open code, evaluated";
  private static final String RUHNAU =
      "Ruhnau et al. 2019, Sci. Data 6:189: coefficients in the authors' open data, evaluated";

  private static final Map<String, Fit> COLUMNS =
      Map.of(
          "staffell_ashp", Fit.STAFFELL_AIR,
          "staffell_gshp", Fit.STAFFELL_GROUND,
          "ruhnau_ashp", Fit.RUHNAU_AIR,
          "ruhnau_gshp", Fit.RUHNAU_GROUND,
          "ruhnau_wshp", Fit.RUHNAU_WATER);

  static List<OutsideCheck> outside() {
    return List.of(
        worked(
            "COP of air source heat pumps against lift",
            STAFFELL,
            Known.DERIVED,
            value("15 K", 5.1367, 0.0001, () -> Fit.STAFFELL_AIR.cop(15)),
            value("35 K", 3.3468, 0.0001, () -> Fit.STAFFELL_AIR.cop(35)),
            value("60 K", 1.8180, 0.0001, () -> Fit.STAFFELL_AIR.cop(60))),
        worked(
            "COP of ground source heat pumps against lift",
            STAFFELL,
            Known.DERIVED,
            value("20 K", 6.0636, 0.0001, () -> Fit.STAFFELL_GROUND.cop(20)),
            value("35 K", 4.4191, 0.0001, () -> Fit.STAFFELL_GROUND.cop(35)),
            value("60 K", 2.4124, 0.0001, () -> Fit.STAFFELL_GROUND.cop(60))),
        worked(
            "COP against lift, field data fit",
            RUHNAU,
            Known.DERIVED,
            value("air, 35 K", 3.3991, 0.0001, () -> Fit.RUHNAU_AIR.cop(35)),
            value("ground, 35 K", 4.464, 0.0001, () -> Fit.RUHNAU_GROUND.cop(35)),
            value("water, 35 K", 4.2681, 0.0001, () -> Fit.RUHNAU_WATER.cop(35))),
        transcribed(
            "lifts for which the fits hold",
            "Staffell et al. 2012",
            Known.SECOND_HAND,
            value("air from [K]", 15, 0, () -> Fit.STAFFELL_AIR.lift_K().least()),
            value("air to [K]", 60, 0, () -> Fit.STAFFELL_AIR.lift_K().most()),
            value("ground from [K]", 20, 0, () -> Fit.STAFFELL_GROUND.lift_K().least()),
            value("ground to [K]", 60, 0, () -> Fit.STAFFELL_GROUND.lift_K().most())),
        figure(HeatPumpCop.GROUND_C, 10),
        worked(
            "COP in the field",
            RUHNAU + ", × 0.85",
            Known.DERIVED,
            value(
                "air, 35 K", 2.8892, 0.0001, () -> HeatPumpCop.inTheField(Fit.RUHNAU_AIR.cop(35))),
            value(
                "ground, 35 K",
                3.7944,
                0.0001,
                () -> HeatPumpCop.inTheField(Fit.RUHNAU_GROUND.cop(35)))),
        independent(
            "Carnot COP, source 0 °C",
            COP_TABLE,
            Known.SECOND_HAND,
            carnot(0, 8.8, 7.1, 6.0, 5.2, 4.6, 4.2)),
        independent(
            "Carnot COP, source −20 °C",
            COP_TABLE,
            Known.SECOND_HAND,
            carnot(-20, 5.6, 4.9, 4.4, 4.0, 3.7, 3.4)),
        independent(
            "Carnot COP, source 10 °C",
            COP_TABLE,
            Known.SECOND_HAND,
            carnot(10, 12.3, 9.1, 7.3, 6.1, 5.4, 4.8)),
        independent(
            "Lorenz COP, water returning at 25 °C, source 0 °C",
            COP_TABLE,
            Known.SECOND_HAND,
            bySink((sink_C) -> lorenz(25, sink_C, 0, 0), 10.1, 8.8, 7.9, 7.1, 6.5, 6.1)),
        independent(
            "Carnot COP at the test points of a heat pump, source 0 °C",
            "unit tests of the UK government's calculation engine",
            Known.READ,
            value("outlet 24 °C", 12.38125, 1e-9, () -> HeatPumpCop.carnot(24, 0)),
            value("outlet 27 °C", 11.116666666666665, 1e-9, () -> HeatPumpCop.carnot(27, 0)),
            value("outlet 30 °C", 10.105, 1e-9, () -> HeatPumpCop.carnot(30, 0)),
            value("outlet 34 °C", 9.033823529411764, 1e-9, () -> HeatPumpCop.carnot(34, 0)),
            value("outlet 36 °C", 8.5875, 1e-9, () -> HeatPumpCop.carnot(36, 0)),
            value("outlet 42 °C", 7.503571428571428, 1e-9, () -> HeatPumpCop.carnot(42, 0)),
            value("outlet 52 °C", 6.252884615384615, 1e-9, () -> HeatPumpCop.carnot(52, 0))),
        figure(HeatPumpCop.BELOW_SOURCE_K, 5),
        worked(
            "COP of a well-installed heat pump: 4, one either way; flow 35 to 50 °C",
            "none",
            Known.COMMON_PRACTICE,
            value("ground of 10 °C, flow 45 °C", 4, 1, () -> Fit.STAFFELL_GROUND.cop(35)),
            value("ground of 10 °C, flow 50 °C", 4, 1, () -> Fit.STAFFELL_GROUND.cop(40)),
            value("air of 7 °C, flow 35 °C", 4, 1, () -> Fit.STAFFELL_AIR.cop(28)),
            value("air of 7 °C, flow 45 °C", 4, 1, () -> Fit.STAFFELL_AIR.cop(38))));
  }

  private static final String COP_TABLE =
      "published table of heat pumps and theoretical limits by flow temperature, one decimal";

  private static List<OutsideCheck.Value> carnot(double source_C, double... expected) {
    return bySink(sink_C -> HeatPumpCop.carnot(sink_C, source_C), expected);
  }

  /** Flow of 35, 45, 55, 65, 75 and 85 °C. */
  private static List<OutsideCheck.Value> bySink(DoubleUnaryOperator cop, double... expected) {
    return IntStream.range(0, expected.length)
        .mapToObj(
            column -> {
              double sink_C = 35 + 10 * column;
              return value(
                  "sink " + sink_C + " °C",
                  expected[column],
                  0.051,
                  () -> cop.applyAsDouble(sink_C));
            })
        .toList();
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  /** Data file: the published fits evaluated by lift, four decimals. */
  @Test
  @Tag("outside")
  void everyCopInTheDataFile() {
    DataFile file = DataFile.read("cop_regressions.csv");
    assertThat(file.size()).isEqualTo(13);
    for (int row = 0; row < file.size(); row++) {
      double lift_K = file.number(row, "lift_K");
      for (Map.Entry<String, Fit> column : COLUMNS.entrySet()) {
        if (column.getValue().lift_K().holds(lift_K)) {
          assertThat(column.getValue().cop(lift_K))
              .as("%s at %s K", column.getKey(), lift_K)
              .isCloseTo(file.number(row, column.getKey()), within(0.000051));
        }
      }
      assertThat(HeatPumpCop.inTheField(Fit.RUHNAU_WATER.cop(lift_K)))
          .isCloseTo(file.number(row, "ruhnau_wshp_x0.85"), within(0.000051));
    }
  }

  /** Data file: Carnot COP for a published table, evaluated to four decimals. */
  @Test
  @Tag("outside")
  void everyCarnotCopInTheDataFile() {
    DataFile file = DataFile.read("carnot_check.csv");
    assertThat(file.size()).isEqualTo(18);
    for (int row = 0; row < file.size(); row++) {
      assertThat(HeatPumpCop.carnot(file.number(row, "t_sink_C"), file.number(row, "t_source_C")))
          .isCloseTo(file.number(row, "cop_carnot"), within(0.000051));
    }
  }

  @Test
  void copFallsWithLiftAndStaysBelowCarnot() {
    for (Fit fit : Fit.values()) {
      for (double lift_K = fit.lift_K().least() + 1; lift_K <= 60; lift_K++) {
        assertThat(fit.cop(lift_K)).isLessThan(fit.cop(lift_K - 1));
        assertThat(fit.cop(lift_K)).isLessThan(HeatPumpCop.carnot(lift_K, 0)).isGreaterThan(1);
      }
    }
  }

  @Test
  void refusesALiftOutsideTheFit() {
    assertThatThrownBy(() -> Fit.STAFFELL_GROUND.cop(19.9))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("lift 19.9 K is outside 20.0 to 60.0 K");
    assertThatThrownBy(() -> Fit.STAFFELL_AIR.cop(60.1)).hasMessageContaining("60.1");
    assertThatThrownBy(() -> Fit.RUHNAU_AIR.cop(14.9)).hasMessageContaining("14.9");
  }

  @Test
  void clampsALiftForTheDayRun() {
    assertThat(Fit.STAFFELL_GROUND.copClamped(5)).isEqualTo(Fit.STAFFELL_GROUND.cop(20));
    assertThat(Fit.STAFFELL_AIR.copClamped(5)).isEqualTo(Fit.STAFFELL_AIR.cop(15));
    assertThat(Fit.RUHNAU_AIR.copClamped(90)).isEqualTo(Fit.RUHNAU_AIR.cop(80));
    assertThat(Fit.RUHNAU_AIR.copClamped(33)).isEqualTo(Fit.RUHNAU_AIR.cop(33));
  }

  @Test
  void namesItsSource() {
    assertThat(Fit.STAFFELL_AIR.source()).isEqualTo("Staffell et al. 2012");
    assertThat(Fit.RUHNAU_WATER.source()).isEqualTo("Ruhnau et al. 2019");
  }

  @Test
  void carnotNeedsALift() {
    assertThatThrownBy(() -> HeatPumpCop.carnot(35, 35)).hasMessageContaining("sink_C");
    assertThatThrownBy(() -> HeatPumpCop.carnot(35, -273.15)).hasMessageContaining("source_C");
  }

  /**
   * Lorenz bound: Carnot between the logarithmic means, T̄ = (T₁ − T₂)/ln(T₁/T₂) in kelvin, of
   * streams that change temperature. Nothing needs it; its published values check Carnot.
   */
  private static double lorenz(
      double sinkIn_C, double sinkOut_C, double sourceIn_C, double sourceOut_C) {
    return HeatPumpCop.carnot(logMean_C(sinkIn_C, sinkOut_C), logMean_C(sourceIn_C, sourceOut_C));
  }

  private static double logMean_C(double first_C, double second_C) {
    double ratio = (first_C + 273.15) / (second_C + 273.15);
    return first_C == second_C ? first_C : (first_C - second_C) / Math.log(ratio) - 273.15;
  }

  @Test
  void lorenzIsCarnotForStreamsThatKeepTheirTemperature() {
    assertThat(lorenz(45, 45, 5, 5)).isEqualTo(HeatPumpCop.carnot(45, 5));
  }

  @Test
  void lorenzHandWorked() {
    // sink 10 → 60 °C: 50/ln(333.15/283.15) = 307.474 K; source 7 → 2 °C: 5/ln(280.15/275.15) =
    // 277.643 K; 307.474/(307.474 − 277.643) = 10.307
    assertThat(lorenz(10, 60, 7, 2)).isCloseTo(10.307, within(0.002));
    // whichever end is named first
    assertThat(lorenz(60, 10, 2, 7)).isCloseTo(10.307, within(0.002));
    // a sink heated from cold beats one held at the top
    assertThat(lorenz(10, 60, 7, 2)).isGreaterThan(HeatPumpCop.carnot(60, 4.5));
  }

  @Test
  void drawRisesWithTheTankAndEndsAtTheMost() {
    // Carnot from 10 °C with flow 5 K above the tank: 55 °C 328.15/45 = 7.292, 65 °C 338.15/55 =
    // 6.148; 2.5 kW at 60 °C is 2.5 · 6.148/7.292 = 2.108 kW at 50 °C, 18.6 % less
    double at50 = HeatPumpCop.carnot(55, 10);
    double at60 = HeatPumpCop.carnot(65, 10);
    assertThat(HeatPumpCop.input_kW(2.5, 0, at60, at50)).isCloseTo(2.108, within(0.001));
    assertThat(HeatPumpCop.input_kW(2.5, 0, at60, at60)).isEqualTo(2.5);
    double rise = 2.5 / HeatPumpCop.input_kW(2.5, 0, at60, at50) - 1;
    assertThat(rise).as("15 to 20 %% from 50 to 60 °C").isBetween(0.15, 0.20);
  }

  @Test
  void drawNeverFallsBelowTheLeast() {
    assertThat(HeatPumpCop.input_kW(2.5, 1.8, 2, 5)).isEqualTo(1.8);
    assertThat(HeatPumpCop.input_kW(2.5, 2.5, 2, 5)).as("equal values: constant").isEqualTo(2.5);
    assertThatThrownBy(() -> HeatPumpCop.input_kW(0, 0, 2, 5))
        .hasMessageContaining("hotWaterInput_kW");
    assertThatThrownBy(() -> HeatPumpCop.input_kW(2, -1, 2, 5))
        .hasMessageContaining("minimumInput_kW");
    assertThatThrownBy(() -> HeatPumpCop.input_kW(2, 0, 0, 5)).hasMessageContaining("copAtStop");
    assertThatThrownBy(() -> HeatPumpCop.input_kW(2, 0, 2, 0)).hasMessageContaining("copNow");
  }

  @Test
  void drawByAFitAtATankTemperature() {
    // source 10, flow 5 above: tank 60 is lift 55, tank 40 is lift 35; air 2.0608 and 3.3468;
    // 2.5 · 2.0608/3.3468 = 1.5394 kW
    assertThat(Fit.STAFFELL_AIR.inputAt_kW(2.5, 0, 10, 5, 60, 40)).isCloseTo(1.5394, within(1e-4));
    assertThat(Fit.STAFFELL_AIR.inputAt_kW(2.5, 0, 10, 5, 60, 60)).isEqualTo(2.5);
    assertThat(Fit.STAFFELL_AIR.inputAt_kW(2.5, 1.8, 10, 5, 60, 40)).isEqualTo(1.8);
    // lifts beyond the fit are clamped: 80 and 60 K draw alike
    assertThat(Fit.STAFFELL_AIR.inputAt_kW(2.5, 0, 0, 5, 75, 55)).isEqualTo(2.5);
  }

  @Test
  void outputIsInputTimesCop() {
    assertThat(HeatPumpCop.output_kW(2.5, 2.8)).isCloseTo(7, within(1e-12));
    assertThat(HeatPumpCop.output_kW(0, 2.8)).isZero();
    assertThatThrownBy(() -> HeatPumpCop.output_kW(-1, 2.8)).hasMessageContaining("input_kW");
    assertThatThrownBy(() -> HeatPumpCop.output_kW(1, 0)).hasMessageContaining("cop");
    assertThatThrownBy(() -> HeatPumpCop.inTheField(0)).hasMessageContaining("cop");
  }

  /** Ground at 10 °C less 5 K; the script of Ruhnau et al. 2019 gives ground water the same. */
  @Test
  void brineLiesBelowTheGround() {
    assertThat(HeatPumpCop.brine_C()).isEqualTo(5);
  }

  /** A plate as good as the fit comes to 0.85 of it, and so does one that is better. */
  @Test
  void theFieldGetsLessThanThePlate() {
    assertThat(HeatPumpCop.fieldFactor(2.8, 2.8)).isCloseTo(0.85, within(1e-12));
    assertThat(HeatPumpCop.fieldFactor(2.0, 2.5)).isCloseTo(0.68, within(1e-12));
    assertThat(HeatPumpCop.fieldFactor(3.6, 2.8)).isEqualTo(0.85);
    assertThatThrownBy(() -> HeatPumpCop.fieldFactor(3, 0)).hasMessageContaining("fitCop");
  }
}
