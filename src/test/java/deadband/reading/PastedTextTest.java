package deadband.reading;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.paste.Pasted;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read as a text and what as a setup file, and where its values stand. */
class PastedTextTest {

  private static SetupReading.Read read(String name, String text) {
    SetupReading reading = SetupReading.ofText(name, text);
    assertThat(reading).isInstanceOf(SetupReading.Read.class);
    return (SetupReading.Read) reading;
  }

  private static int line(SetupReading.Read read, String pointer) {
    return read.document().place(Pointer.parse(pointer)).orElseThrow().line();
  }

  @Test
  void aValueKnowsItsLineInTheText() {
    SetupReading.Read read =
        read("mail.txt", "Hello,\r\n\r\n> relay start 3200 W\r\nstop 0,3 kW\r\n");

    assertThat(read.setup().relay().start_kW().value()).isEqualTo(3.2);
    assertThat(line(read, "/relay/start_kW")).isEqualTo(3);
    assertThat(line(read, "/relay/stop_kW")).isEqualTo(4);
    assertThat(
            read.document()
                .source()
                .excerpt(
                    read.document().find(Pointer.parse("/relay/start_kW")).orElseThrow().span()))
        .isEqualTo("3200 W");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Hi,\n\n> { \"relay\": {\n>   \"start_kW\": 3.2 } }\n\nThanks",
        "Hi,\n\n```json\n{ \"relay\": {\n  \"start_kW\": 3.2 } }\n```\n",
        "Hi,\n\n{ &quot;relay&quot;: {\n &quot;start_kW&quot;:&nbsp;3.2 } }\n",
        "Hi,\n\n{ “relay”: {\n “start_kW”: 3.2 } }\n"
      })
  void jsonInATextIsReadAsJson(String text) {
    SetupReading.Read read = read("mail.txt", text);

    assertThat(read.setup().relay().start_kW().value()).isEqualTo(3.2);
    int line =
        (int) text.substring(0, text.indexOf("3.2")).chars().filter(c -> c == '\n').count() + 1;
    assertThat(line(read, "/relay/start_kW")).isEqualTo(line);
    assertThat(read.paste()).isPresent();
  }

  @Test
  void whatStandsAroundTheJsonIsReadToo() {
    SetupReading.Read read =
        read(
            "mail.txt",
            """
            Hello, the tank is 250 l.
            { "relay": { "start_kW": 3.2 }, "outlets": [] }
            Relay stop 0.4 kW, relay start 3.2 kW
            Bath mixed to 41 °C
            Bye""");
    Pasted pasted = read.paste().orElseThrow();

    assertThat(read.setup().relay().start_kW().value()).isEqualTo(3.2);
    assertThat(read.setup().relay().stop_kW().value()).isEqualTo(0.4);
    assertThat(read.setup().tank().volume_L().value()).isEqualTo(250);
    assertThat(line(read, "/relay/stop_kW")).isEqualTo(3);
    assertThat(pasted.understood()).hasSize(3);
    assertThat(pasted.notUnderstood()).extracting(Pasted.NotUnderstood::line).containsExactly(4);
    assertThat(pasted.json()).isTrue();
  }

  @Test
  void whereTheJsonAndTheTextDifferNeitherIsTaken() {
    SetupReading.Read read =
        read(
            "mail.txt",
            """
            Hello,
            The relay start is 3.4 kW now:
            { "relay": { "start_kW": 3.2, "stop_kW": 0.4 },
              "battery": { "fitted": false } }
            Battery 5 kWh
            """);
    Pasted pasted = read.paste().orElseThrow();

    assertThat(read.setup().relay().start_kW().isEntered()).isFalse();
    assertThat(read.setup().relay().stop_kW().value()).isEqualTo(0.4);
    assertThat(read.setup().battery().capacity_kWh().isEntered()).isFalse();
    assertThat(pasted.ambiguous())
        .singleElement()
        .satisfies(
            one ->
                assertThat(one.choices())
                    .containsExactly(
                        "relay.start_kW 3.2 kW (line 3)", "relay.start_kW 3.4 kW (line 2)"));
    assertThat(pasted.notUnderstood()).extracting(Pasted.NotUnderstood::line).containsExactly(5);
  }

  @Test
  void aNameInTheJsonThatIsNotKnownIsListedAndTheRestIsRead() {
    SetupReading.Read read =
        read(
            "mail.txt",
            """
            Hi,
            { "relay": { "start_kW": 3.2, "firmware": 7 },
              "appVersion": "2" }
            Tank 250 l
            """);
    Pasted pasted = read.paste().orElseThrow();

    assertThat(read.setup().relay().start_kW().value()).isEqualTo(3.2);
    assertThat(read.setup().tank().volume_L().value()).isEqualTo(250);
    assertThat(pasted.notUnderstood())
        .containsExactly(
            new Pasted.NotUnderstood(2, "\"firmware\": 7"),
            new Pasted.NotUnderstood(3, "\"appVersion\": \"2\""));
  }

  @Test
  void anErrorInTheJsonHasItsPlaceInTheText() {
    SetupReading reading =
        SetupReading.ofText("mail.txt", "Hi,\n> { \"relay\": {\n>   \"start_kW\": \"tbc\" } }\n");
    Problem problem = ((SetupReading.Unreadable) reading).problems().get(0);

    assertThat(problem.kind()).isEqualTo(Kind.NOT_KNOWN_WRITTEN);
    assertThat(problem.place().orElseThrow()).hasToString("line 3, column 17");
  }

  @ParameterizedTest
  @ValueSource(strings = {"home.json", "HOME.JSONC"})
  void aFileNamedAsASetupIsOne(String name) {
    assertThat(SetupReading.ofText(name, "relay start 3 kW"))
        .isInstanceOf(SetupReading.Unreadable.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{ \"relay\": { \"start_kW\": 3.2 ",
        "// mine\n{ ]",
        "\"relay\": 3",
        "no settings here",
        ""
      })
  void whatBeginsAsJsonOrSaysNothingIsToldAsJson(String text) {
    SetupReading reading = SetupReading.ofText("standard input", text);

    assertThat(reading).isInstanceOf(SetupReading.Unreadable.class);
    assertThat(((SetupReading.Unreadable) reading).problems()).isNotEmpty();
  }

  @Test
  void theFileMadeOfATextSaysTheSameWithItsLines() {
    String text =
        """
        Site: Alder Mews
        relay start 3,2 kW */\s

        Bath mixed to 41 °C
        kitchen blended: no
        Relay counts: export, immersion
        everyday blocked 22:00-06:00
        Tank height: tbc
        No battery
        start 45 °C
        As found: stop 2.7 kW
        """;
    SetupReading.Read read = read("mail.txt", text);
    String file = PastedSetup.text(read.paste().orElseThrow());
    SetupReading.Read again = read("home.json", file);

    assertThat(again.document().root().get("deadband")).isPresent();
    assertThat(file)
        .contains("\"start_kW\": 3.2,  // line 2: relay start 3,2 kW */")
        .contains("\"height_mm\": null")
        .contains(
            "// ambiguous, line 10: start 45 °C: heatPump.everyday.start_C 45 °C or"
                + " heatPump.surplus.start_C 45 °C");
    assertThat(again.document().without(Pointer.parse("/deadband"))).isNotEmpty();
    assertThat(read.document().root().members())
        .allSatisfy(
            member ->
                assertThat(again.document().root().get(member.name()))
                    .hasValueSatisfying(node -> assertThat(node.same(member.value())).isTrue()));
  }

  @Test
  void twoValuesOfOneNameAreAskedAboutAndNeitherIsTaken() {
    SetupReading.Read read =
        read("mail.txt", "relay start 3 kW\nrelay stop 0.3 kW\nrelay start 3.2 kW\n");

    assertThat(read.setup().relay().start_kW().isEntered()).isFalse();
    assertThat(read.setup().relay().stop_kW().value()).isEqualTo(0.3);
    assertThat(read.paste().orElseThrow().ambiguous()).hasSize(2);
  }
}
