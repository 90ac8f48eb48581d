package deadband.trade;

import static deadband.trade.OutsideCheck.figure;
import static deadband.trade.OutsideCheck.independent;
import static deadband.trade.OutsideCheck.value;
import static deadband.trade.OutsideCheck.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.CableRating.Size;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class HeaterCircuitTest {

  static List<OutsideCheck> outside() {
    return List.of(
        worked(
            "power of a heater rated 3 kW at 230 V",
            "P ∝ V², evaluated",
            Known.DERIVED,
            value("207 V [kW]", 2.430, 0.0005, () -> HeaterCircuit.power_kW(3, 230, 207)),
            value("230 V [kW]", 3.000, 0.0005, () -> HeaterCircuit.power_kW(3, 230, 230)),
            value("253 V [kW]", 3.630, 0.0005, () -> HeaterCircuit.power_kW(3, 230, 253))),
        worked(
            "heater rated 3 kW at 240 V, on 230 V",
            "P ∝ V², evaluated",
            Known.DERIVED,
            value("power [kW]", 2.755, 0.0005, () -> HeaterCircuit.power_kW(3, 240, 230)),
            value("current [A]", 11.98, 0.005, () -> HeaterCircuit.current_A(3, 240, 230))),
        worked(
            "volt drop of 13.04 A over 20 m of 2.5 mm²",
            "18 mV/A/m, BS 7671 Appendix 4, evaluated",
            Known.DERIVED,
            value("[V]", 4.69, 0.005, () -> HeaterCircuit.voltDrop_V(Size.MM2_2_5, 13.04, 20)),
            value(
                "[% of 230 V]",
                2.04, 0.005, () -> HeaterCircuit.voltDrop_V(Size.MM2_2_5, 13.04, 20) / 2.30)),
        worked(
            "volt drop limit, 5 % of 230 V",
            "BS 7671 Appendix 4",
            Known.SECOND_HAND,
            value("[V]", 11.5, 1e-9, () -> HeaterCircuit.VOLT_DROP_SHARE.value() * 230)),
        figure(HeaterCircuit.DECLARED_VOLTAGE_V, 230),
        figure(HeaterCircuit.VOLTAGE_UP_SHARE, 0.10),
        figure(HeaterCircuit.OWN_CIRCUIT_ABOVE_L, 15),
        independent(
            "volt drop, examples",
            "courses and forums of the trade, BS 7671 by the mV/A/m",
            Known.READ,
            value(
                "16 A, 18 m, 2.5 mm² [V]",
                5.18,
                0.005,
                () -> HeaterCircuit.voltDrop_V(Size.MM2_2_5, 16, 18)),
            value(
                "32 A, 40 m, 2.5 mm² [V]",
                23.04,
                0.005,
                () -> HeaterCircuit.voltDrop_V(Size.MM2_2_5, 32, 40))),
        independent(
            "elements rated at 240 V on another voltage",
            "element makers' statements and forums of the trade",
            Known.READ,
            value(
                "5.5 kW at 208 V [kW]", 4.131, 0.0005, () -> HeaterCircuit.power_kW(5.5, 240, 208)),
            value(
                "4.5 kW at 208 V [kW]", 3.38, 0.0051, () -> HeaterCircuit.power_kW(4.5, 240, 208)),
            value(
                "3.8 kW at 120 V [kW]", 0.95, 0.0005, () -> HeaterCircuit.power_kW(3.8, 240, 120)),
            value(
                "4.5 kW at 240 V [A]", 18.75, 0.005, () -> HeaterCircuit.current_A(4.5, 240, 240)),
            value("3.8 kW at 240 V [A]", 15.8, 0.05, () -> HeaterCircuit.current_A(3.8, 240, 240)),
            value(
                "3.5 kW at 240 V [A]", 14.6, 0.05, () -> HeaterCircuit.current_A(3.5, 240, 240))));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void noVoltageNoPower() {
    assertThat(HeaterCircuit.power_kW(3, 230, 0)).isZero();
    assertThat(HeaterCircuit.power_kW(0, 230, 230)).isZero();
    assertThatThrownBy(() -> HeaterCircuit.power_kW(-1, 230, 230)).hasMessageContaining("rated_kW");
    assertThatThrownBy(() -> HeaterCircuit.power_kW(3, 0, 230)).hasMessageContaining("ratedAt_V");
    assertThatThrownBy(() -> HeaterCircuit.power_kW(3, 230, -1)).hasMessageContaining("voltage_V");
    assertThatThrownBy(() -> HeaterCircuit.current_A(3, 230, 0)).hasMessageContaining("voltage_V");
  }

  @Test
  void voltDropGrowsWithCurrentAndLength() {
    double drop_V = HeaterCircuit.voltDrop_V(Size.MM2_4, 10, 10);
    assertThat(HeaterCircuit.voltDrop_V(Size.MM2_4, 20, 10)).isCloseTo(2 * drop_V, within(1e-12));
    assertThat(HeaterCircuit.voltDrop_V(Size.MM2_4, 10, 20)).isCloseTo(2 * drop_V, within(1e-12));
    assertThat(HeaterCircuit.voltDrop_V(Size.MM2_4, 0, 20)).isZero();
    assertThatThrownBy(() -> HeaterCircuit.voltDrop_V(Size.MM2_4, -1, 20))
        .hasMessageContaining("current_A");
    assertThatThrownBy(() -> HeaterCircuit.voltDrop_V(Size.MM2_4, 1, -1))
        .hasMessageContaining("length_m");
  }

  @Test
  void breakerBetweenLoadAndCable() {
    // a 16 A breaker on 2.5 mm² by method 103 (13.5 A) fails, by method C (27 A) it passes
    assertThat(HeaterCircuit.protects(13, 16, 13.5)).isFalse();
    assertThat(HeaterCircuit.protects(13, 16, 27)).isTrue();
    assertThat(HeaterCircuit.protects(16, 16, 16)).isTrue();
    assertThat(HeaterCircuit.protects(16.01, 16, 27)).isFalse();
    assertThat(HeaterCircuit.protects(13, 16, 15.99)).isFalse();
  }

  /** √3 · 230 V = 398.37 V, which the trade calls 400 V. */
  @Test
  void twoPhasesStandFurtherApartThanOneAndNeutral() {
    assertThat(HeaterCircuit.betweenPhases_V(230)).isCloseTo(398.37, within(0.005));
    assertThat(HeaterCircuit.betweenPhases_V(0)).isZero();
  }

  /** 230 V + 10 % = 253 V; a measured voltage does not move the nominal one. */
  @Test
  void theHighestVoltageIsATenthAboveNominal() {
    assertThat(HeaterCircuit.highest_V(230)).isCloseTo(253, within(1e-9));
    assertThat(HeaterCircuit.highest_V(207)).isCloseTo(253, within(1e-9));
    assertThat(HeaterCircuit.highest_V(253)).isCloseTo(253, within(1e-9));
    assertThat(HeaterCircuit.highest_V(120)).isCloseTo(132, within(1e-9));
    assertThatThrownBy(() -> HeaterCircuit.highest_V(0)).hasMessageContaining("voltage_V");
  }
}
