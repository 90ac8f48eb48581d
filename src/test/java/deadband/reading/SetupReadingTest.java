package deadband.reading;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.setup.Relay;
import deadband.setup.Setup;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SetupReadingTest {

  private static Setup setup(String text) {
    SetupReading reading = SetupReading.ofText("test", text);
    assertThat(reading).isInstanceOf(SetupReading.Read.class);
    return ((SetupReading.Read) reading).setup();
  }

  private static List<Problem> problems(String text) {
    SetupReading reading = SetupReading.ofText("test", text);
    assertThat(reading).isInstanceOf(SetupReading.Unreadable.class);
    return ((SetupReading.Unreadable) reading).problems();
  }

  @Test
  void aValueKnowsItsPlace() {
    Relay relay = setup("{ \"relay\": { \"start_kW\": 3.2 } }").relay();

    assertThat(relay.start_kW().value()).isEqualTo(3.2);
    assertThat(relay.start_kW().pointer()).hasToString("/relay/start_kW");
    assertThat(relay.stop_kW().isEntered()).isFalse();
    assertThat(relay.stop_kW().pointer()).hasToString("/relay/stop_kW");
  }

  @Test
  void nullIsTheSameAsMissing() {
    Setup setup = setup("{ \"relay\": { \"start_kW\": null }, \"tank\": null, \"battery\": {} }");

    assertThat(setup.relay().start_kW().isEntered()).isFalse();
    assertThat(setup.relay().part().isFitted().isEntered()).isFalse();
    assertThat(setup.tank().part().isFitted().isEntered()).isFalse();
    assertThat(setup.battery().part().isFitted().isEntered()).isFalse();
  }

  @Test
  void onlyFittedFalseSaysThatAThingIsNotThere() {
    Setup setup = setup("{ \"battery\": { \"fitted\": false }, \"tank\": { \"volume_L\": 200 } }");

    assertThat(setup.battery().part().isFitted().value()).isFalse();
    assertThat(setup.tank().part().isFitted().value()).isTrue();
    assertThat(setup.buffer().part().isFitted().isEntered()).isFalse();
  }

  @Test
  void anEmptyListIsToldAndAMissingOneIsNot() {
    assertThat(setup("{ \"outlets\": [] }").outlets().value()).isEmpty();
    assertThat(setup("{}").outlets().isEntered()).isFalse();
  }

  @Test
  void valuesComeAtTheResolutionOfTheirUnit() {
    assertThat(setup("{ \"relay\": { \"start_kW\": 2.20049 } }").relay().start_kW().value())
        .isEqualTo(2.2);
  }

  @Test
  void everyProblemIsToldAtOnceWithItsPlace() {
    List<Problem> problems =
        problems(
            """
            { "relay": { "strat_kW": 3, "stop_kW": 2700,
              "counts": ["exprt"], "voltFree": "yes" },
              "tank": { "volume_L": -5 }, "accepted": [ { "on": "31.5.26" } ] }""");

    assertThat(problems)
        .extracting(Problem::kind)
        .containsExactly(
            Kind.UNKNOWN_NAME,
            Kind.UNIT_DOUBTED,
            Kind.NOT_A_CHOICE,
            Kind.YES_OR_NO_QUOTED,
            Kind.OUT_OF_RANGE,
            Kind.NOT_A_DATE);
    assertThat(problems.get(0).nearest()).isEqualTo("start_kW");
    assertThat(problems.get(2).pointer()).hasToString("/relay/counts/0");
    assertThat(problems.get(2).place().orElseThrow().line()).isEqualTo(2);
    assertThat(problems.get(2).place().orElseThrow().column()).isEqualTo(14);
    assertThat(problems.get(1).right()).contains("2.7");
  }

  @ParameterizedTest
  @CsvSource({"100, true", "100.001, false", "-100, true", "-100.5, false"})
  void thresholdsMayBeNegativeUpToWhatCanBe(double start_kW, boolean admitted) {
    SetupReading reading =
        SetupReading.ofText("test", "{ \"relay\": { \"start_kW\": " + start_kW + " } }");

    assertThat(reading instanceof SetupReading.Read).isEqualTo(admitted);
  }

  @Test
  void anotherVersionIsSaidToBeOne() {
    assertThat(problems("{ \"deadband\": 2 }"))
        .singleElement()
        .extracting(Problem::kind)
        .isEqualTo(Kind.OTHER_VERSION);
  }

  @Test
  void settingsAsFoundHaveTheSameShape() {
    Setup setup = setup("{ \"asFound\": { \"settings\": { \"relay\": { \"start_kW\": 3 } } } }");

    assertThat(setup.asFound().settings().optional().orElseThrow().relay().start_kW().pointer())
        .hasToString("/asFound/settings/relay/start_kW");
  }
}
