package deadband.reading;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.limits.Limit;
import deadband.limits.LimitOverride;
import deadband.limits.Limits;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A site's own limits: what they may say, and what is refused with its place. */
class LimitsReadingTest {

  private static Limits read(String text) {
    LimitsReading reading = LimitsReading.ofText("site.json", text);
    assertThat(reading).isInstanceOf(LimitsReading.Read.class);
    return ((LimitsReading.Read) reading).limits();
  }

  private static List<Problem> problems(String text) {
    LimitsReading reading = LimitsReading.ofText("site.json", text);
    assertThat(reading).isInstanceOf(LimitsReading.Unreadable.class);
    return ((LimitsReading.Unreadable) reading).problems();
  }

  /** A limits file written before a limit was renamed stays readable. */
  @ParameterizedTest
  @CsvSource({
    "sunLost_kWh, pvUnused_kWh",
    "topsApart_K, stopsApart_K",
    "widestSwing_K, usualDifferential_K",
    "leastSupplyType3_C, minimumSupplyType3_C"
  })
  void aFormerNameOfALimitStaysKnown(String former, String now) {
    double value = Limit.named(now).orElseThrow().entry().value();

    assertThat(read("{ \"" + former + "\": " + value + " }").overrides())
        .extracting(override -> override.limit().entry().name())
        .containsExactly(now);
  }

  /** On the guarded side a bare number will do; on the other it takes a reason and a name. */
  @ParameterizedTest
  @EnumSource(Limit.class)
  void aHazardIsTightenedFreelyAndLoosenedOnlyWithReasonAndName(Limit limit) {
    String name = limit.entry().name();
    double own = limit.entry().value();
    double below = own * 0.98;
    double above = own < 1 ? own * 1.02 : own + 0.01 * own;
    boolean guards = limit.weaker() != Limit.Weaker.NOWHERE;
    double weak = limit.weaker() == Limit.Weaker.BELOW ? below : above;
    double strict = limit.weaker() == Limit.Weaker.BELOW ? above : below;
    if (own >= 100 || (limit.entry().unit() == deadband.setup.Unit.CELSIUS && weak > 100)) {
      return; // nothing above what can physically be is taken, whoever signs it
    }

    if (strict <= 100) {
      assertThat(read("{ \"" + name + "\": " + strict + " }").weakened()).isEmpty();
    }
    if (!guards) {
      assertThat(read("{ \"" + name + "\": " + weak + " }").weakened()).isEmpty();
      return;
    }
    for (String unsigned :
        List.of(
            "", ", \"reason\": \"r\"", ", \"by\": \"b\"", ", \"reason\": \" \", \"by\": \"b\"")) {
      assertThat(problems("{ \"" + name + "\": { \"value\": " + weak + unsigned + " } }"))
          .extracting(Problem::kind)
          .containsExactly(Kind.LIMIT_LOOSENED);
    }
    Limits signed =
        read(
            "{ \""
                + name
                + "\": { \"value\": "
                + weak
                + ", \"reason\": \"tested\", \"by\": \"site engineer\" } }");
    assertThat(signed.weakened()).extracting(LimitOverride::limit).containsExactly(limit);
    assertThat(signed.value(limit)).isEqualTo(weak);
    assertThat(signed.unweakened().value(limit)).isEqualTo(own);
  }

  @Test
  void whatIsRefusedIsToldWithPlaceAndRemedy() {
    Problem loosened = problems("{\n  \"outletBath_C\": 60\n}").get(0);

    assertThat(loosened.place().orElseThrow().line()).isEqualTo(2);
    assertThat(loosened.found()).isEqualTo("60");
    assertThat(loosened.right())
        .isEqualTo(
            "at most 44 °C, or { \"value\": 60, \"reason\": why, \"by\": who answers for it }");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{ \"cloudCost_kWh\": -1 } | OUT_OF_RANGE | a number from 0 to 1000 kWh",
        "{ \"growthBandTop_C\": 101 } | OUT_OF_RANGE | a number from 0 to 100 °C",
        "{ \"voltDropShare\": 1.5 } | OUT_OF_RANGE | a number from 0 to 1",
        "{ \"startsPerHour\": 61 } | OUT_OF_RANGE | a number from 0 to 60",
        "{ \"cloudCost_kWh\": \"much\" } | WRONG_KIND | a number, or",
        "{ \"cloudCost_kWh\": { \"source\": \"us\" } } | WRONG_KIND | a number, or",
        "{ \"cloudCost_kWh\": { \"value\": 1, \"by\": 7 } } | WRONG_KIND | a text",
        "{ \"cloudCost_kWh\": { \"value\": 1, \"reson\": \"x\" } } | UNKNOWN_NAME | one of: source, reason, by, value",
        "{ \"cloudcost\": 1 } | UNKNOWN_NAME | one of: ",
      })
  void otherMistakesAreToldToo(String text, Kind kind, String right) {
    Problem problem = problems(text).get(0);

    assertThat(problem.kind()).isEqualTo(kind);
    assertThat(problem.right()).startsWith(right);
    assertThat(problem.place()).isPresent();
  }
}
