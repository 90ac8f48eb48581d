package deadband.setup;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Pointer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuestionTest {

  /** Every place that a setup can enter, one entry of each list. */
  static Stream<Pointer> places() {
    List<Pointer> places = new ArrayList<>();
    within(Shape.of(Setup.class), Pointer.root(), places);
    return places.stream();
  }

  private static void within(Shape shape, Pointer at, List<Pointer> places) {
    for (Field field : shape.fields()) {
      Pointer place = at.child(field.name());
      places.add(place);
      if (field.kind() instanceof FieldKind.Section section && section.type() != Setup.class) {
        within(section.shape(), place, places);
      } else if (field.kind() instanceof FieldKind.Many many
          && many.of() instanceof FieldKind.Section section) {
        within(section.shape(), place.child(0), places);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("places")
  void everyPlaceHasAQuestionInPlainWords(Pointer place) {
    String asks = Question.about(place).orElseThrow().asks();

    assertThat(asks).matches("[A-Z][^?{}_\"]+\\?( \\(entry 1\\))?");
    assertThat(asks.length()).isLessThan(80);
  }

  @Test
  void noTwoPlacesHaveTheSameQuestion() {
    Set<String> asked = new HashSet<>();

    assertThat(places().map(place -> Question.about(place).orElseThrow().asks()))
        .allSatisfy(asks -> assertThat(asked.add(asks)).as(asks).isTrue())
        .hasSizeGreaterThan(150);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/heatPump/everyday/stop_C | At what tank temperature does the everyday hot water programme"
            + " stop?",
        "/heatPump/surplus/stop_C | At what tank temperature does the hot water programme on a"
            + " surplus call stop?",
        "/outlets/2/blended | Does a thermostatic mixing valve protect the outlet? (entry 3)"
      })
  void aQuestionNamesWhatItIsAbout(String place, String asks) {
    assertThat(Question.about(Pointer.parse(place))).map(Question::asks).contains(asks);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "/relay/strat_kW", "/outlets/x", "/relay/start_kW/0", "/tank/fitted"})
  void whatIsNoValueOfASetupHasNone(String place) {
    assertThat(Question.about(Pointer.parse(place))).isEmpty();
  }

  /** What is usual for a number can stand there. */
  @ParameterizedTest
  @MethodSource("places")
  void whatIsUsualLiesInTheRange(Pointer place) {
    Question question = Question.about(place).orElseThrow();

    if (question.field().kind() instanceof FieldKind.Num range) {
      java.util.regex.Pattern.compile("(?<![A-Za-z])\\d+(\\.\\d+)?")
          .matcher(question.usual())
          .results()
          .forEach(found -> assertThat(range.admits(Double.parseDouble(found.group()))).isTrue());
    }
  }
}
