package deadband.trade;

import static deadband.trade.OutsideCheck.figure;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class HygieneTest {

  static List<OutsideCheck> outside() {
    return List.of(
        figure(Hygiene.STORE_C, 60),
        figure(Hygiene.OUTLET_C, 50),
        figure(Hygiene.OUTLET_HEALTHCARE_C, 55),
        figure(Hygiene.COLD_C, 20),
        figure(Hygiene.GROWTH_FROM_C, 20),
        figure(Hygiene.GROWTH_TO_C, 45));
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void bothEndsOfTheGrowthBandBelongToIt() {
    assertThat(Hygiene.inGrowthBand(20)).isTrue();
    assertThat(Hygiene.inGrowthBand(45)).isTrue();
    assertThat(Hygiene.inGrowthBand(19.99)).isFalse();
    assertThat(Hygiene.inGrowthBand(45.01)).isFalse();
  }

  @Test
  void theStoreIsHotEnoughToKill() {
    // what the page asks for is credited by the laboratory too, growth is not
    assertThat(Hygiene.STORE_C.value()).isGreaterThanOrEqualTo(DecimalReduction.LEAST_CREDITED_C);
    assertThat(Hygiene.GROWTH_TO_C.value()).isLessThan(DecimalReduction.LEAST_CREDITED_C);
  }

  @Test
  void marksAsPrinted() {
    assertThat(Stream.of(Known.values()).map(Known::words))
        .containsExactly("read", "second-hand", "derived", "common practice", "from memory");
    assertThat(Known.MEMORY).hasToString("from memory");
  }
}
