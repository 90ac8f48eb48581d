package deadband.reading;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.ProblemText;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people write in a setup file, and the exact correction that each is given. */
class CorrectionsTest {

  private static SetupReading.Unreadable unreadable(String text) {
    SetupReading reading = SetupReading.ofText("home.json", text);
    assertThat(reading).isInstanceOf(SetupReading.Unreadable.class);
    return (SetupReading.Unreadable) reading;
  }

  private static Problem problem(String text) {
    List<Problem> problems = unreadable(text).problems();
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{ `tank`: { `relief_C`: ⟦`62 °C`⟧ } } | NUMBER_QUOTED | 62",
        "{ `tank`: { `relief_C`: ⟦`144 °F`⟧ } } | NUMBER_QUOTED | 62.22",
        "{ `relay`: { `start_kW`: ⟦`2,5`⟧ } } | NUMBER_QUOTED | 2.5",
        "{ `relay`: { `start_kW`: ⟦`3200 W`⟧ } } | NUMBER_QUOTED | 3.2",
        "{ `relay`: { `start_kW`: ⟦3200 W⟧ } } | UNIT_WRITTEN | 3.2",
        "{ `relay`: { `start_kW`: ⟦3,2⟧ } } | DECIMAL_COMMA | 3.2",
        "{ `relay`: { `startDelay_min`: ⟦`90 s`⟧ } } | NUMBER_QUOTED | 1.5",
        "{ `tank`: { `height_mm`: ⟦`1.6 m`⟧ } } | NUMBER_QUOTED | 1600",
        "{ `tank`: { `height_mm`: ⟦`tbc`⟧ } } | NOT_KNOWN_WRITTEN | null",
        "{ `relay`: { `contact`: ⟦`unknown`⟧ } } | NOT_KNOWN_WRITTEN | null",
        "{ `tank`: { `unvented`: ⟦`yes`⟧ } } | YES_OR_NO_QUOTED | true",
        "{ `tank`: { `unvented`: ⟦`nein`⟧ } } | YES_OR_NO_QUOTED | false",
        "{ `battery`: ⟦false⟧ } | NOT_FITTED_WRITTEN | { `fitted`: false }",
        "{ `heatPump`: { `disinfection`: ⟦false⟧ } } | NOT_FITTED_WRITTEN | { `enabled`: false }",
        "{ `battery`: ⟦`none`⟧ } | NOT_FITTED_WRITTEN | { `fitted`: false }",
        "{ `group`: ⟦{ `fitted`: false }⟧ } | WRONG_KIND | []",
        "{ `outlets`: ⟦{ `at`: `bath` }⟧ } | WRONG_KIND | [ { `at`: `bath` } ]",
        "{ `relay`: { `counts`: ⟦`export`⟧ } } | WRONG_KIND | [ `export` ]",
        "{ `site`: { `country`: ⟦`UK`⟧ } } | NOT_A_CHOICE | `GB`",
        "{ `site`: { `country`: ⟦`Germany`⟧ } } | NOT_A_CHOICE | `DE`",
        "{ `accepted`: [ { `on`: ⟦`31/05/2026`⟧ } ] } | NOT_A_DATE | `2026-05-31`",
        "{ `accepted`: [ { `on`: ⟦`5.6.2026`⟧ } ] } | NOT_A_DATE | `2026-06-05`",
        "{ `relay`: { ⟦`Start_KW`⟧: 3 } } | UNKNOWN_NAME | `start_kW`",
        "{ `relay`: { ⟦`startDelay_s`: 300⟧ } } | UNKNOWN_NAME | `startDelay_min`: 5",
        "{ `relay`: { ⟦`start_W` : 3200⟧, `stop_kW`: 1 } } | UNKNOWN_NAME | `start_kW`: 3.2",
        "{ `tank`: { ⟦`height_m`: 1.6⟧ } } | UNKNOWN_NAME | `height_mm`: 1600",
        "{ `immersion`: { ⟦`thermostat_F`: 140⟧ } } | UNKNOWN_NAME | `thermostat_C`: 60",
        "{ `relay`: { `drives`: ⟦`heatpump`⟧ } } | NOT_A_CHOICE | `heat pump`",
        "{ `heatPump`: { `source`: ⟦`brine`⟧ } } | NOT_A_CHOICE | `ground`",
        "{ `heatPump`: { `disinfection`: { `every_days`: ⟦`weekly`⟧ } } } | WRONG_KIND | 7",
        "{ `relay`: { `start_kW`: 3⟦;⟧ `stop_kW`: 1 } } | SEMICOLON | ,",
      })
  void whatIsBeyondDoubtIsCorrected(String marked, Kind kind, String correction) {
    String text = marked.replace('`', '"');
    String file = text.replace("⟦", "").replace("⟧", "");
    Problem problem = problem(file);

    assertThat(problem.kind()).isEqualTo(kind);
    assertThat(problem.correction()).isEqualTo(correction.replace('`', '"'));
    String wrong = text.substring(text.indexOf('⟦') + 1, text.indexOf('⟧'));
    assertThat(problem.source().slice(span(problem))).isEqualTo(wrong);
    Corrections.Corrected corrected = Corrections.of(unreadable(file));
    assertThat(corrected.left()).isEmpty();
    assertThat(corrected.text()).isEqualTo(file.replace(wrong, problem.correction()));
  }

  private static deadband.document.Span span(Problem problem) {
    deadband.document.@Nullable Span span = problem.span();
    assertThat(span).isNotNull();
    return span;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{ `tank`: { `height_mm`: 1,500 } } | COMMA_AMBIGUOUS | 1.5 or 1500",
        "{ `tank`: { `volume_L`: `1,500 L` } } | COMMA_AMBIGUOUS | 1.5 or 1500",
        "{ `diverter`: { `limit_C`: 60-62 } } | RANGE_WRITTEN | one number: 60 or 62",
        "{ `diverter`: { `limit_C`: `60-62` } } | RANGE_WRITTEN | one number: 60 or 62",
        "{ `tank`: { `height_mm`: 1.5 } } | NOT_PLAUSIBLE | `confirmed`: [`/tank/height_mm`]",
        "{ `tank`: { `tankLimit_C`: 62 } } | OTHER_SECTION | enter it as diverter.limit_C",
        "{ `tank`: { `limit_C`: 62 } } | OTHER_SECTION | enter it as diverter.limit_C",
        "{ `relay`: { `start_C`: 62 } } | OTHER_SECTION | heatPump.everyday.start_C or heatPump.surplus.start_C",
        "{ `accepted`: [ { `on`: `05/06/2026` } ] } | NOT_A_DATE | `2026-06-05` if the day comes first, `2026-05-06`",
        "{ `relay`: { `start_kW`: 5 kWh } } | UNIT_WRITTEN | 5",
        "{ `relay`: { `contact`: `no` } } | NOT_A_CHOICE | one of: normally open",
        "{ `relay`: { `startDelay_kW`: 300 } } | UNKNOWN_NAME | one of: fitted, drives",
      })
  void whatCanMeanTwoThingsIsToldAndNotCorrected(String text, Kind kind, String right) {
    Problem problem = problem(text.replace('`', '"'));

    assertThat(problem.kind()).isEqualTo(kind);
    assertThat(problem.right()).contains(right.replace('`', '"'));
    assertThat(problem.correction()).isNull();
    assertThat(Corrections.of(unreadable(text.replace('`', '"'))).made()).isEmpty();
  }

  @Test
  void aValueThatIsConfirmedIsTaken() {
    String text = "{ \"tank\": { \"height_mm\": 1.5 }, \"confirmed\": [\"/tank/height_mm\"] }";

    assertThat(SetupReading.ofText("home.json", text)).isInstanceOf(SetupReading.Read.class);
  }

  @Test
  void theSameMistakeIsToldOnceWithItsPlacesAndCorrections() {
    String text = "{ \"relay\": { \"start_kW\": \"3,2\",\n \"stop_kW\": \"0.3 kW\" } }";

    assertThat(ProblemText.of(unreadable(text).problems(), 78))
        .containsOnlyOnce("A number is in quotes, in 2 places")
        .contains("right  3.2")
        .contains("also   line 2, column 13 \"0.3 kW\": 0.3");
  }

  @Test
  void aMissingCommaIsPutIn() {
    String text = "{ \"relay\": { \"start_kW\": 3.2 // menu\n  \"stop_kW\": 0.3 } }";
    Corrections.Corrected corrected = Corrections.of(unreadable(text));

    assertThat(corrected.text()).isEqualTo(text.replace("3.2 //", "3.2, //"));
    assertThat(corrected.left()).isEmpty();
  }

  @Test
  void commentsAndLayoutStayAsTheyAre() {
    String text =
        "{ // mine\n  \"relay\": { \"start_kW\": \"3,2\", /* menu */ \"stop_kW\": 60-62 }\n}\n";
    Corrections.Corrected corrected = Corrections.of(unreadable(text));

    assertThat(corrected.text()).isEqualTo(text.replace("\"3,2\"", "3.2"));
    assertThat(corrected.left()).extracting(Problem::kind).containsExactly(Kind.RANGE_WRITTEN);
  }
}
