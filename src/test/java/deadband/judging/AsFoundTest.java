package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.setup.Setup;
import org.junit.jupiter.api.Test;

/** The installation as it was found: the settings found, laid over the proposal. */
class AsFoundTest {

  private static Setup setup(String text) {
    return Setups.read("found", text).setup();
  }

  @Test
  void aSettingFoundStandsInPlaceOfTheOneProposedAndKeepsItsPlace() {
    Setup found =
        setup(
                """
                { "relay": { "start_kW": 3.2, "stop_kW": 0.3 },
                  "asFound": { "settings": { "relay": { "start_kW": 3.0 } } } }
                """)
            .asItWasFound();

    assertThat(found.relay().start_kW().optional()).contains(3.0);
    assertThat(found.relay().start_kW().pointer()).hasToString("/asFound/settings/relay/start_kW");
    assertThat(found.relay().stop_kW().optional()).contains(0.3);
    assertThat(found.relay().stop_kW().pointer()).hasToString("/relay/stop_kW");
  }

  @Test
  void nothingFoundIsTheProposalItself() {
    Setup setup = setup("{ \"relay\": { \"start_kW\": 3.2 }, \"asFound\": { \"settings\": {} } }");

    assertThat(setup.asItWasFound()).isEqualTo(setup);
  }

  @Test
  void aListFoundIsTakenWhole() {
    Setup found =
        setup(
                """
                { "outlets": [ { "at": "bath" }, { "at": "basin" } ],
                  "asFound": { "settings": { "outlets": [ { "at": "shower" } ] } } }
                """)
            .asItWasFound();

    assertThat(found.outlets().optional().orElseThrow()).hasSize(1);
  }

  @Test
  void aPartThatIsToBeRemovedWasThere() {
    Setup found =
        setup(
                """
                { "battery": { "fitted": false },
                  "asFound": { "settings": { "battery": { "power_kW": 3 } } } }
                """)
            .asItWasFound();

    assertThat(found.battery().part().isFitted().optional()).contains(true);
  }

  @Test
  void aPartThatIsToBeAddedWasNotThere() {
    Setup found =
        setup(
                """
                { "relay": { "start_kW": 3.2 },
                  "asFound": { "settings": { "relay": { "fitted": false } } } }
                """)
            .asItWasFound();

    assertThat(found.relay().part().isFitted().optional()).contains(false);
  }

  /** A loop that short-cycled as found is named where the proposal ends it, and only there. */
  @Test
  void whatTheProposalEndsIsNamed() {
    String home =
        """
        { "relay": { "drives": "heat pump", "counts": [ "export", "immersion" ],
                     "start_kW": 2.9, "stop_kW": %s },
          "supply": { "phases": 1 }, "immersion": { "fitted": false },
          "heatPump": { "minimumInput_kW": 1.2, "hotWaterInput_kW": 2.2 },
          "asFound": { "settings": { "relay": { "stop_kW": 2.6 } } } }
        """;

    assertThat(Setups.judge(home.formatted("0.2")).asFound())
        .extracting(Check::name)
        .contains("gap-below-heat-pump-draw");
    assertThat(Setups.judge(home.formatted("2.5")).asFound())
        .extracting(Check::name)
        .doesNotContain("gap-below-heat-pump-draw");
  }
}
