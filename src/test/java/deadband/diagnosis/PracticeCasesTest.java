package deadband.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.reading.SetupReading;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cases from practice, retold: what was said of them, and the cause that is looked for first. */
class PracticeCasesTest {

  private static final String HEAT_PUMP =
      "\"hotWaterInput_kW\":2.8,\"hotWaterOutput_kW\":8,\"maximumFlow_C\":65,"
          + "\"flowAboveTank_K\":5,\"startLag_min\":2,\"minimumRun_min\":10,\"minimumOff_min\":10,"
          + "\"everyday\":{\"start_C\":45,\"stop_C\":51},\"surplus\":{\"start_C\":50,\"stop_C\":57}";

  private static String home(String relay) {
    return "{\"deadband\":1,\"tank\":{\"volume_L\":250},\"relay\":{"
        + relay
        + "},\"heatPump\":{"
        + HEAT_PUMP
        + "}}";
  }

  private static final String WIDE_GAP =
      home(
          "\"drives\":\"heat pump\",\"counts\":[\"export\"],\"start_kW\":3.2,\"stop_kW\":0.1,"
              + "\"startDelay_min\":5,\"stopDelay_min\":4");

  private static final String STOP_UNDER_START =
      home(
          "\"drives\":\"heat pump\",\"counts\":[\"export\",\"immersion\"],\"start_kW\":3.0,"
              + "\"stop_kW\":2.7,\"startDelay_min\":1,\"stopDelay_min\":1");

  private static final String ONE_THRESHOLD =
      "{\"deadband\":1,\"relay\":{\"drives\":\"element\",\"counts\":[\"export\"],\"start_kW\":0.3,"
          + "\"stop_kW\":0.3,\"startDelay_min\":5,\"stopDelay_min\":5},"
          + "\"immersion\":{\"power_kW\":3.85,\"ratedAt_V\":230},\"diverter\":{\"fitted\":false}}";

  private static String setup(String name) {
    return switch (name) {
      case "one threshold" -> ONE_THRESHOLD;
      case "stop under start" -> STOP_UNDER_START;
      default -> WIDE_GAP;
    };
  }

  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      1  | one threshold    | 6 times an hour, on for 5 min, off 5 min, sunny             | gap-below-input
      2  | wide gap         | one start an hour at most, runs 60 min, hardly any import   | nothing-unusual
      3  | wide gap         | four calls at night, the battery empties down to its floor  | battery
      5  | wide gap         | reading does not fall when the heat pump starts, imports while called | sensor-blind
      10 | wide gap         | the call runs but the tank probe does not rise, floor gets warm       | stuck-valve
      11 | wide gap         | display goes dark with the relay, disinfection counter is reset       | supply-cut
      13 | stop under start | 3 starts an hour, runs 10 min, clear sky                    | gap-below-input
      """)
  void wordsAlone(int practice, String setup, String said, String cause) {
    SetupReading.Read read = (SetupReading.Read) SetupReading.ofText("home.json", setup(setup));
    Diagnosis diagnosis =
        Diagnosis.of(Optional.of(read.setup()), Optional.empty(), ObservedWords.of(said));
    assertThat(diagnosis.causes().get(0).word()).isEqualTo(cause);
    assertThat(diagnosis.fits()).isTrue();
    assertThat(diagnosis.healthy()).contains(cause.equals("nothing-unusual"));
  }
}
