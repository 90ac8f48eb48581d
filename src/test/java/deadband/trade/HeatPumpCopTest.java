package deadband.trade;

import static deadband.trade.OutsideCheck.check;
import static deadband.trade.OutsideCheck.figure;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.HeatPumpCop.Fit;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class HeatPumpCopTest {
  private static final String STAFFELL =
      "Staffell et al. 2012, Energy Environ. Sci. 5, 9291, coefficients in open code, evaluated";
  private static final String RUHNAU = "Ruhnau et al. 2019, Sci. Data 6:189, evaluated";

  private static final Map<String, Fit> COLUMNS =
      Map.of(
          "staffell_ashp", Fit.STAFFELL_AIR,
          "staffell_gshp", Fit.STAFFELL_GROUND,
          "ruhnau_ashp", Fit.RUHNAU_AIR,
          "ruhnau_gshp", Fit.RUHNAU_GROUND,
          "ruhnau_wshp", Fit.RUHNAU_WATER);

  static List<OutsideCheck> outside() {
    return List.of(
        check(
            "COP of air source heat pumps against lift",
            STAFFELL,
            Known.READ,
            value("15 K", 5.1367, 0.0001, () -> Fit.STAFFELL_AIR.cop(15)),
            value("35 K", 3.3468, 0.0001, () -> Fit.STAFFELL_AIR.cop(35)),
            value("60 K", 1.8180, 0.0001, () -> Fit.STAFFELL_AIR.cop(60))),
        check(
            "COP of ground source heat pumps against lift",
            STAFFELL,
            Known.READ,
            value("20 K", 6.0636, 0.0001, () -> Fit.STAFFELL_GROUND.cop(20)),
            value("35 K", 4.4191, 0.0001, () -> Fit.STAFFELL_GROUND.cop(35)),
            value("60 K", 2.4124, 0.0001, () -> Fit.STAFFELL_GROUND.cop(60))),
        check(
            "COP against lift, field data fit",
            RUHNAU,
            Known.READ,
            value("air, 35 K", 3.3991, 0.0001, () -> Fit.RUHNAU_AIR.cop(35)),
            value("ground, 35 K", 4.464, 0.0001, () -> Fit.RUHNAU_GROUND.cop(35)),
            value("water, 35 K", 4.2681, 0.0001, () -> Fit.RUHNAU_WATER.cop(35))),
        check(
            "lifts for which the fits hold",
            "Staffell et al. 2012",
            Known.READ,
            value("air from [K]", 15, 0, () -> Fit.STAFFELL_AIR.lift_K().least()),
            value("air to [K]", 60, 0, () -> Fit.STAFFELL_AIR.lift_K().most()),
            value("ground from [K]", 20, 0, () -> Fit.STAFFELL_GROUND.lift_K().least()),
            value("ground to [K]", 60, 0, () -> Fit.STAFFELL_GROUND.lift_K().most())),
        figure(HeatPumpCop.GROUND_C, 10),
        check(
            "COP in the field",
            RUHNAU + ", × 0.85",
            Known.READ,
            value(
                "air, 35 K", 2.8892, 0.0001, () -> HeatPumpCop.inTheField(Fit.RUHNAU_AIR.cop(35))),
            value(
                "ground, 35 K",
                3.7944,
                0.0001,
                () -> HeatPumpCop.inTheField(Fit.RUHNAU_GROUND.cop(35)))),
        check(
            "Carnot COP, source 0 °C",
            "published table of 24 values, one decimal",
            Known.READ,
            value("sink 35 °C", 8.8, 0.05, () -> HeatPumpCop.carnot(35, 0)),
            value("sink 45 °C", 7.1, 0.05, () -> HeatPumpCop.carnot(45, 0)),
            value("sink 55 °C", 6.0, 0.05, () -> HeatPumpCop.carnot(55, 0)),
            value("sink 65 °C", 5.2, 0.05, () -> HeatPumpCop.carnot(65, 0))),
        check(
            "COP of a well-installed heat pump: 4, one either way; flow 35 to 50 °C",
            "none",
            Known.COMMON_PRACTICE,
            value("ground of 10 °C, flow 45 °C", 4, 1, () -> Fit.STAFFELL_GROUND.cop(35)),
            value("ground of 10 °C, flow 50 °C", 4, 1, () -> Fit.STAFFELL_GROUND.cop(40)),
            value("air of 7 °C, flow 35 °C", 4, 1, () -> Fit.STAFFELL_AIR.cop(28)),
            value("air of 7 °C, flow 45 °C", 4, 1, () -> Fit.STAFFELL_AIR.cop(38))));
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
    assertThat(Fit.RUHNAU_AIR.copClamped(80)).isEqualTo(Fit.RUHNAU_AIR.cop(60));
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

  @Test
  void lorenzIsCarnotForStreamsThatKeepTheirTemperature() {
    assertThat(HeatPumpCop.lorenz(45, 45, 5, 5)).isEqualTo(HeatPumpCop.carnot(45, 5));
  }

  @Test
  void lorenzHandWorked() {
    // sink 10 → 60 °C: 50/ln(333.15/283.15) = 307.474 K; source 7 → 2 °C: 5/ln(280.15/275.15) =
    // 277.643 K; 307.474/(307.474 − 277.643) = 10.307
    assertThat(HeatPumpCop.lorenz(10, 60, 7, 2)).isCloseTo(10.307, within(0.002));
    // whichever end is named first
    assertThat(HeatPumpCop.lorenz(60, 10, 2, 7)).isCloseTo(10.307, within(0.002));
    // a sink heated from cold beats one held at the top
    assertThat(HeatPumpCop.lorenz(10, 60, 7, 2)).isGreaterThan(HeatPumpCop.carnot(60, 4.5));
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
}
