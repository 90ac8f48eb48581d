package deadband.trade;

import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import deadband.trade.CableRating.Harmonised;
import deadband.trade.CableRating.Method;
import deadband.trade.CableRating.Size;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class CableRatingTest {

  static List<OutsideCheck> outside() {
    return List.of(
        transcribed(
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
        transcribed(
            "volt drop by size",
            "BS 7671 Appendix 4",
            Known.SECOND_HAND,
            value("1.5 mm² [mV/A/m]", 29, 0, Size.MM2_1_5::voltDrop_mV_per_Am),
            value("2.5 mm² [mV/A/m]", 18, 0, Size.MM2_2_5::voltDrop_mV_per_Am),
            value("4 mm² [mV/A/m]", 11, 0, Size.MM2_4::voltDrop_mV_per_Am),
            value("6 mm² [mV/A/m]", 7.3, 0, Size.MM2_6::voltDrop_mV_per_Am)),
        transcribed(
            "rating of flexible cord",
            "BS 7671 Table 4F3A",
            Known.SECOND_HAND,
            value("1.0 mm² [A]", 10, 0, () -> flex_A(1.0, true)),
            value("1.25 mm² [A]", 13, 0, () -> flex_A(1.25, true)),
            value("1.5 mm² [A]", 16, 0, () -> flex_A(1.5, true)),
            value("2.5 mm² [A]", 25, 0, () -> flex_A(2.5, true)),
            value("1.5 mm², ordinary at 40 °C [A]", 13.12, 1e-9, () -> flex_A(1.5, false))),
        transcribed(
            "capacity of cable with PVC, three loaded conductors",
            "IEC 60364-5-52, quoted in a manual of an industrial machine",
            Known.SECOND_HAND,
            common(Harmonised.B, Size.MM2_1_5, 15),
            common(Harmonised.B, Size.MM2_2_5, 20),
            common(Harmonised.B, Size.MM2_4, 27),
            common(Harmonised.B, Size.MM2_6, 34),
            common(Harmonised.C, Size.MM2_1_5, 17),
            common(Harmonised.C, Size.MM2_2_5, 24),
            common(Harmonised.C, Size.MM2_4, 32),
            common(Harmonised.C, Size.MM2_6, 41)),
        transcribed(
            "cord of an appliance by its rated current",
            "IEC 60335-1, quoted in a manual of a pump",
            Known.SECOND_HAND,
            value("0.5 mm² [A]", 3, 0, () -> cord_A(0.5)),
            value("0.75 mm² [A]", 6, 0, () -> cord_A(0.75)),
            value("1.0 mm² [A]", 10, 0, () -> cord_A(1.0)),
            value("1.5 mm² [A]", 16, 0, () -> cord_A(1.5)),
            value("2.5 mm² [A]", 25, 0, () -> cord_A(2.5))),
        transcribed(
            "factor of an ordinary cord, 60 °C",
            "BS 7671 Table 4F3A",
            Known.SECOND_HAND,
            factors(false, 35, 0.91, 0.82, 0.71, 0.58, 0.41)),
        transcribed(
            "factor of a heat-resistant cord, 90 °C",
            "BS 7671 Table 4F3A",
            Known.SECOND_HAND,
            factors(true, 50, 1, 0.96, 0.83, 0.67, 0.47)));
  }

  private static double cord_A(double size_mm2) {
    return CableRating.applianceCord_A(size_mm2, true).orElseThrow();
  }

  private static OutsideCheck.Value common(Harmonised method, Size size, double expected_A) {
    return value(
        size.size_mm2() + " mm², method " + method + " [A]",
        expected_A,
        0,
        () -> method.capacity_A(size));
  }

  @Test
  void aCordBetweenTwoSizesOfAnApplianceCountsAsTheSmaller() {
    assertThat(cord_A(1.25)).isEqualTo(10);
    assertThat(CableRating.applianceCord_A(1.5, false).orElseThrow())
        .isEqualTo(16 * CableRating.flexFactor(false, 40));
    assertThat(CableRating.applianceCord_A(0.4, true)).isEmpty();
  }

  /** Three loaded conductors warm a cable more than two: the common table is the lower one. */
  @Test
  void theCommonTableIsOnTheSafeSideOfTheBritishOne() {
    for (Size size : Size.values()) {
      assertThat(Harmonised.C.capacity_A(size)).isLessThan(Method.C.capacity_A(size));
    }
  }

  private static OutsideCheck.Value capacity(Size size, Method method, double expected_A) {
    assertThat(method.known(size)).isEqualTo(Known.SECOND_HAND);
    return value(
        size.size_mm2() + " mm², method " + method + " [A]",
        expected_A,
        0,
        () -> method.capacity_A(size));
  }

  /** Factors every 5 K from a temperature. */
  private static List<OutsideCheck.Value> factors(
      boolean heatResistant, double from_C, double... expected) {
    return IntStream.range(0, expected.length)
        .mapToObj(
            step -> {
              double ambient_C = from_C + 5 * step;
              return value(
                  ambient_C + " °C",
                  expected[step],
                  0,
                  () -> CableRating.flexFactor(heatResistant, ambient_C));
            })
        .toList();
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
    assertThat(CableRating.flex_A(0.6, true)).isEmpty();
    assertThat(CableRating.flex_A(0.75, true)).hasValue(6);
    assertThat(CableRating.flex_A(0.5, true)).hasValue(3);
  }

  @Test
  void noCableOfItsSizeCarriesMoreThanInFreeAir() {
    // Two-core cable of 90 °C in free air, from memory: the fit stays within 3 % of it.
    double[] size_mm2 = {1.5, 2.5, 4, 6, 10, 16};
    double[] carries_A = {26, 36, 49, 63, 86, 115};
    for (int row = 0; row < size_mm2.length; row++) {
      assertThat(CableRating.most_A(size_mm2[row]))
          .isCloseTo(carries_A[row], org.assertj.core.api.Assertions.withinPercentage(3));
    }
  }

  @Test
  void aSizeIsFoundOrTheLargestBelowIt() {
    assertThat(Size.find(2.5)).contains(Size.MM2_2_5);
    assertThat(Size.find(10)).isEmpty();
    assertThat(Size.largestUpTo(10)).contains(Size.MM2_6);
    assertThat(Size.largestUpTo(2.5)).contains(Size.MM2_2_5);
    assertThat(Size.largestUpTo(1)).isEmpty();
  }

  @Test
  void betweenTwoAmbientTemperaturesTheHotterCounts() {
    assertThat(CableRating.flexFactor(false, 30)).isEqualTo(1);
    assertThat(CableRating.flexFactor(false, 30.1)).isEqualTo(0.91);
    assertThat(CableRating.flexFactor(false, -5)).isEqualTo(1);
    assertThat(CableRating.flexFactor(true, 50.1)).isEqualTo(0.96);
    assertThatThrownBy(() -> CableRating.flexFactor(false, 55.1))
        .hasMessageContaining("ambient temperature of an ordinary cord 55.1 °C is outside");
    assertThatThrownBy(() -> CableRating.flexFactor(true, 70.1))
        .hasMessageContaining("heat-resistant cord 70.1");
  }
}
