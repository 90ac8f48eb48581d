package deadband.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {

  private static final List<String> RELAY =
      List.of(
          "drives",
          "counts",
          "reads",
          "start_kW",
          "stop_kW",
          "startDelay_min",
          "stopDelay_min",
          "contact",
          "voltFree",
          "segregated");

  @ParameterizedTest
  @CsvSource({
    "startKw, start_kW",
    "START_KW, start_kW",
    "start-kw, start_kW",
    "start kW, start_kW",
    "start_W, start_kW",
    "start, start_kW",
    "stop, stop_kW",
    "satrt_kW, start_kW",
    "startDelay, startDelay_min",
    "startDelay_s, startDelay_min",
    "contacts, contact",
    "voltfree, voltFree",
    "segregted, segregated"
  })
  void findsWhatWasMeant(String typed, String meant) {
    assertThat(NearestName.of(typed, RELAY)).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"colour", "x", "power_kW", "hysteresis_K", "''"})
  void staysSilentWhereNothingIsNear(String typed) {
    assertThat(NearestName.of(typed, RELAY)).isEmpty();
  }

  @Test
  void takesTheFirstOfEquallyNearOnes() {
    assertThat(NearestName.of("bat", List.of("cat", "hat"))).contains("cat");
    assertThat(NearestName.of("bat", List.of("hat", "cat"))).contains("hat");
  }

  @Test
  void takesTheNameItselfBeforeAnotherSpelling() {
    assertThat(NearestName.of("a_b", List.of("ab", "a_b"))).contains("a_b");
  }

  @Test
  void isNotLedIntoLongWork() {
    assertThat(NearestName.of("start_kW".repeat(1000), RELAY)).isEmpty();
    assertThat(NearestName.of("start_kW", List.of())).isEmpty();
  }

  /**
   * Textbook examples of edit distance: kitten to sitting 3 and Saturday to Sunday 3 (Levenshtein),
   * CA to ABC 3 by optimal string alignment. From memory.
   */
  @Tag("outside")
  @ParameterizedTest
  @CsvSource({
    "kitten, sitting, 3",
    "saturday, sunday, 3",
    "ca, abc, 3",
    "ab, ba, 1",
    "'', abc, 3",
    "a, a, 0"
  })
  void countsSlipsAsTheTextbooksDo(String a, String b, int slips) {
    assertThat(NearestName.distance(a, b)).isEqualTo(slips);
    assertThat(NearestName.distance(b, a)).isEqualTo(slips);
  }
}
