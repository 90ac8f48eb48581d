package deadband.report;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.reading.SetupReading;
import org.junit.jupiter.api.Test;

class StarterFileTest {

  /** It can be read as it stands, and nothing in it counts as entered. */
  @Test
  void nothingIsFilledIn() {
    SetupReading reading = SetupReading.ofText("starter", StarterFile.text());

    assertThat(reading).isInstanceOf(SetupReading.Read.class);
    SetupReading.Read read = (SetupReading.Read) reading;
    assertThat(read.setup().relay().part().entered()).isFalse();
    assertThat(read.setup().heatPump().part().isFitted().isEntered()).isFalse();
    assertThat(read.setup().relay().start_kW().isEntered()).isFalse();
    assertThat(read.setup().heatPump().everyday().stop_C().isEntered()).isFalse();
    assertThat(read.setup().deadband().says(1.0)).isTrue();
  }

  @Test
  void eachValueHasItsQuestionUnitAndPlace() {
    assertThat(StarterFile.text())
        .contains(
            "// At what surplus does the relay close? (menu of the controller)",
            "\"start_kW\": null,   // -100 to 100 kW")
        .contains("\"drives\": null,   // heat pump | element | other");
  }
}
