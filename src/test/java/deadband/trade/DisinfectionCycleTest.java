package deadband.trade;

import static deadband.trade.OutsideCheck.figure;
import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.DisinfectionCycle.Treatment;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class DisinfectionCycleTest {

  static List<OutsideCheck> outside() {
    return List.of(
        cycle(
            "disinfection of heat-pump water heaters, AU and NZ",
            DisinfectionCycle.AS_3498,
            "AS 3498",
            new Treatment(60, 32, 7, 0.90),
            new Treatment(60, 0, 1, 0.45)),
        cycle(
            "disinfection of heat-pump stores, NL",
            DisinfectionCycle.ISSO_55_1,
            "ISSO 55.1",
            new Treatment(60, 20, 7, 1),
            new Treatment(65, 10, 7, 1),
            new Treatment(70, 5, 7, 1)),
        cycle(
            "disinfection of new installations of 400 L and more, FR",
            DisinfectionCycle.ORDER_2005,
            "Order of 30 Nov 2005",
            new Treatment(60, 60, 1, 1),
            new Treatment(65, 4, 1, 1),
            new Treatment(70, 2, 1, 1)),
        figure(DisinfectionCycle.ORDER_2005_KEPT_C, 55),
        cycle(
            "disinfection of pre-heat stores, GB other than homes",
            DisinfectionCycle.HSE_L8,
            "HSE L8",
            new Treatment(60, 60, 1, 1)));
  }

  /** Each number of each treatment is a value; a treatment left out or added fails too. */
  private static OutsideCheck cycle(
      String name, DisinfectionCycle cycle, String source, Treatment... expected) {
    List<OutsideCheck.Value> values = new ArrayList<>();
    values.add(value("treatments", expected.length, 0, () -> cycle.treatments().size()));
    for (int i = 0; i < expected.length; i++) {
      int row = i;
      values.add(
          value(
              "target " + row + " [°C]",
              expected[i].target_C(),
              0,
              () -> cycle.treatments().get(row).target_C()));
      values.add(
          value(
              "hold " + row + " [min]",
              expected[i].hold_min(),
              0,
              () -> cycle.treatments().get(row).hold_min()));
      values.add(
          value(
              "every " + row + " [d]",
              expected[i].every_days(),
              0,
              () -> cycle.treatments().get(row).every_days()));
      values.add(
          value("share " + row, expected[i].share(), 0, () -> cycle.treatments().get(row).share()));
    }
    return transcribed(name, source, Known.SECOND_HAND, values);
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void marksAreCarried() {
    assertThat(DisinfectionCycle.ALL)
        .extracting(DisinfectionCycle::name, DisinfectionCycle::known)
        .containsExactly(
            tuple("AS 3498", Known.SECOND_HAND),
            tuple("ISSO 55.1", Known.SECOND_HAND),
            tuple("Order of 30 Nov 2005", Known.SECOND_HAND),
            tuple("HSE L8", Known.SECOND_HAND),
            tuple("GB domestic", Known.MEMORY));
    assertThat(DisinfectionCycle.GB_DOMESTIC.treatments())
        .containsExactly(new Treatment(60, 60, 7, 1));
  }

  @Test
  void theFrenchOrderSpeaksOfFourHundredLitresAndMore() {
    assertThat(DisinfectionCycle.ORDER_2005.speaksOf(400)).isTrue();
    assertThat(DisinfectionCycle.ORDER_2005.speaksOf(399.9)).isFalse();
    assertThat(DisinfectionCycle.AS_3498.speaksOf(50)).isTrue();
  }

  @Test
  void anyOneTreatmentPasses() {
    assertThat(DisinfectionCycle.ORDER_2005.isMetBy(new Treatment(65, 4, 1, 1))).isTrue();
    assertThat(DisinfectionCycle.ORDER_2005.isMetBy(new Treatment(66, 5, 1, 1))).isTrue();
    assertThat(DisinfectionCycle.ORDER_2005.isMetBy(new Treatment(64.9, 4, 1, 1))).isFalse();
    assertThat(DisinfectionCycle.AS_3498.isMetBy(new Treatment(60, 0, 1, 0.45))).isTrue();
  }

  @Test
  void eachNumberOfATreatmentDecides() {
    Treatment asked = new Treatment(60, 60, 7, 0.9);
    assertThat(asked.isMetBy(asked)).isTrue();
    assertThat(asked.isMetBy(new Treatment(61, 61, 6, 1))).isTrue();
    assertThat(asked.isMetBy(new Treatment(59.99, 60, 7, 0.9))).isFalse();
    assertThat(asked.isMetBy(new Treatment(60, 59.99, 7, 0.9))).isFalse();
    assertThat(asked.isMetBy(new Treatment(60, 60, 8, 0.9))).isFalse();
    assertThat(asked.isMetBy(new Treatment(60, 60, 7, 0.89))).isFalse();
  }

  @Test
  void aCycleNeedsATreatment() {
    assertThatThrownBy(
            () -> new DisinfectionCycle("none", List.of("XX"), "", 0, List.of(), "", Known.MEMORY))
        .hasMessage("none has no treatment");
  }

  @Test
  void shareAboveTheHeater() {
    assertThat(DisinfectionCycle.treatedShare(120, 1600)).isCloseTo(0.925, within(1e-12));
    assertThat(DisinfectionCycle.treatedShare(0, 1600)).isEqualTo(1);
    assertThat(DisinfectionCycle.treatedShare(1600, 1600)).isZero();
    assertThat(DisinfectionCycle.treatedShare(2000, 1600)).isZero();
    assertThatThrownBy(() -> DisinfectionCycle.treatedShare(-1, 1600))
        .hasMessageContaining("heaterBottom_mm");
    assertThatThrownBy(() -> DisinfectionCycle.treatedShare(1, 0))
        .hasMessageContaining("tankHeight_mm");
  }

  @Test
  void theFrenchOrderTakesAStoreKeptAtItsOwnTemperature() {
    assertThat(DisinfectionCycle.ORDER_2005.keptHot_C(60)).isEqualTo(55);
    assertThat(DisinfectionCycle.ISSO_55_1.keptHot_C(60)).isEqualTo(60);
  }
}
