package deadband.trade;

import static deadband.trade.OutsideCheck.figure;
import static deadband.trade.OutsideCheck.transcribed;
import static deadband.trade.OutsideCheck.value;
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
        transcribed(
            "store at 60 °C or more in other countries",
            "AS/NZS 3500.4; DVGW W 551, outlet of the store; ASHRAE Guideline 12 (2000), above",
            Known.SECOND_HAND,
            value("Australia and New Zealand [°C]", 60, 0, Hygiene.STORE_C::value),
            value("Germany [°C]", 60, 0, Hygiene.STORE_C::value),
            value("United States [°C]", 60, 0, Hygiene.STORE_C::value)),
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
        .containsExactly(
            "read", "read in a draft", "second-hand", "derived", "common practice", "from memory");
    assertThat(Stream.of(Known.values()).filter(Known::isFirm))
        .containsExactly(Known.READ, Known.SECOND_HAND, Known.DERIVED);
    assertThat(Known.MEMORY).hasToString("from memory");
  }
}
