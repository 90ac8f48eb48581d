package deadband.trade;

import static deadband.trade.OutsideCheck.check;
import static deadband.trade.OutsideCheck.figure;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.CableRating.Method;
import deadband.trade.CableRating.Size;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class CableRatingTest {

  static List<OutsideCheck> outside() {
    return List.of(
        check(
            "capacity of flat twin and earth",
            "BS 7671 Table 4D5",
            Known.SECOND_HAND,
            capacity(Size.MM2_1_5, Method.C, 20),
            capacity(Size.MM2_1_5, Method.METHOD_100, 16),
            capacity(Size.MM2_1_5, Method.METHOD_103, 10),
            capacity(Size.MM2_2_5, Method.C, 27),
            capacity(Size.MM2_2_5, Method.METHOD_100, 21),
            capacity(Size.MM2_2_5, Method.METHOD_101, 17),
            capacity(Size.MM2_2_5, Method.METHOD_103, 13.5),
            capacity(Size.MM2_4, Method.C, 37),
            capacity(Size.MM2_4, Method.METHOD_100, 27),
            capacity(Size.MM2_4, Method.METHOD_103, 17.5),
            capacity(Size.MM2_6, Method.C, 47),
            capacity(Size.MM2_6, Method.METHOD_100, 34),
            capacity(Size.MM2_6, Method.METHOD_103, 23.5)),
        check(
            "volt drop by size",
            "BS 7671 Appendix 4",
            Known.SECOND_HAND,
            value("1.5 mm² [mV/A/m]", 29, 0, Size.MM2_1_5::voltDrop_mV_per_Am),
            value("2.5 mm² [mV/A/m]", 18, 0, Size.MM2_2_5::voltDrop_mV_per_Am),
            value("4 mm² [mV/A/m]", 11, 0, Size.MM2_4::voltDrop_mV_per_Am),
            value("6 mm² [mV/A/m]", 7.3, 0, Size.MM2_6::voltDrop_mV_per_Am)),
        check(
            "ambient factor, 70 °C PVC",
            "BS 7671 Table 4B1",
            Known.SECOND_HAND,
            value("25 °C", 1.03, 0, () -> CableRating.ambientFactor(25)),
            value("30 °C", 1.00, 0, () -> CableRating.ambientFactor(30)),
            value("35 °C", 0.94, 0, () -> CableRating.ambientFactor(35)),
            value("40 °C", 0.87, 0, () -> CableRating.ambientFactor(40)),
            value("45 °C", 0.79, 0, () -> CableRating.ambientFactor(45)),
            value("50 °C", 0.71, 0, () -> CableRating.ambientFactor(50))),
        check(
            "rating of flexible cord",
            "BS 7671 Table 4F3A",
            Known.SECOND_HAND,
            value("1.0 mm² [A]", 10, 0, () -> flex_A(1.0, true)),
            value("1.25 mm² [A]", 13, 0, () -> flex_A(1.25, true)),
            value("1.5 mm² [A]", 16, 0, () -> flex_A(1.5, true)),
            value("2.5 mm² [A]", 25, 0, () -> flex_A(2.5, true)),
            value("1.5 mm², ordinary at 40 °C [A]", 13.12, 1e-9, () -> flex_A(1.5, false))),
        figure(CableRating.ORDINARY_FLEX_FACTOR, 0.82),
        figure(CableRating.HEAT_RESISTANT_FLEX_TO_C, 80));
  }

  private static OutsideCheck.Value capacity(Size size, Method method, double expected_A) {
    assertThat(method.known(size)).isEqualTo(Known.SECOND_HAND);
    return value(
        size.size_mm2() + " mm², method " + method + " [A]",
        expected_A,
        0,
        () -> method.capacity_A(size));
  }

  private static double flex_A(double size_mm2, boolean heatResistant) {
    return CableRating.flex_A(size_mm2, heatResistant).orElseThrow();
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void figuresFromMemoryAreMarked() {
    assertThat(Method.A.known(Size.MM2_2_5)).isEqualTo(Known.MEMORY);
    assertThat(Method.METHOD_102.known(Size.MM2_2_5)).isEqualTo(Known.MEMORY);
    assertThat(Method.METHOD_101.known(Size.MM2_4)).isEqualTo(Known.MEMORY);
    assertThat(Method.A.capacity_A(Size.MM2_2_5)).isEqualTo(20);
    assertThat(Method.METHOD_102.capacity_A(Size.MM2_2_5)).isEqualTo(21);
  }

  @Test
  void capacityRisesWithSizeAndClippedDirectIsBest() {
    for (Method method : Method.values()) {
      for (Size size : Size.values()) {
        assertThat(method.capacity_A(size)).isLessThanOrEqualTo(Method.C.capacity_A(size));
      }
      assertThat(method.capacity_A(Size.MM2_1_5)).isLessThan(method.capacity_A(Size.MM2_2_5));
      assertThat(method.capacity_A(Size.MM2_2_5)).isLessThan(method.capacity_A(Size.MM2_4));
      assertThat(method.capacity_A(Size.MM2_4)).isLessThan(method.capacity_A(Size.MM2_6));
    }
  }

  @Test
  void sizesByTheirCrossSection() {
    assertThat(Size.of(2.5)).isEqualTo(Size.MM2_2_5);
    assertThat(Size.of(6)).isEqualTo(Size.MM2_6);
    assertThat(Stream.of(Size.values()).map(Size::size_mm2)).containsExactly(1.5, 2.5, 4.0, 6.0);
    assertThatThrownBy(() -> Size.of(10)).hasMessage("10.0 mm² is not one of 1.5, 2.5, 4, 6 mm²");
    assertThat(CableRating.flex_A(0.75, true)).isEmpty();
  }

  @Test
  void betweenTwoAmbientTemperaturesTheHotterCounts() {
    assertThat(CableRating.ambientFactor(30.1)).isEqualTo(0.94);
    assertThat(CableRating.ambientFactor(44.9)).isEqualTo(0.79);
    assertThat(CableRating.ambientFactor(5)).as("never better than at 25 °C").isEqualTo(1.03);
    assertThatThrownBy(() -> CableRating.ambientFactor(50.1))
        .hasMessageContaining("ambient temperature of a cable 50.1 °C is outside");
  }

  @Test
  void groupedCircuits() {
    assertThat(CableRating.groupingFactor(1)).isEqualTo(1);
    assertThat(CableRating.groupingFactor(2)).isEqualTo(0.8);
    assertThat(CableRating.groupingFactor(6)).isEqualTo(0.57);
    assertThatThrownBy(() -> CableRating.groupingFactor(0))
        .hasMessageContaining("grouped circuits");
    assertThatThrownBy(() -> CableRating.groupingFactor(7))
        .hasMessageContaining("grouped circuits");
  }

  @Test
  void capacityAsInstalled() {
    // 2.5 mm² clipped direct in an airing cupboard at 40 °C beside one other: 27 · 0.87 · 0.80 =
    // 18.79
    assertThat(CableRating.installed_A(Size.MM2_2_5, Method.C, 40, 2))
        .isCloseTo(18.79, within(0.005));
    assertThat(CableRating.installed_A(Size.MM2_2_5, Method.C, 30, 1)).isEqualTo(27);
  }

  @Test
  void aSizeIsFoundOrTheLargestBelowIt() {
    assertThat(Size.find(2.5)).contains(Size.MM2_2_5);
    assertThat(Size.find(10)).isEmpty();
    assertThat(Size.largestUpTo(10)).contains(Size.MM2_6);
    assertThat(Size.largestUpTo(2.5)).contains(Size.MM2_2_5);
    assertThat(Size.largestUpTo(1)).isEmpty();
  }
}
