package deadband.days;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.dayrun.DayRun;
import deadband.dayrun.Result;
import deadband.dayrun.StepLength;
import deadband.reading.SetupReading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Year;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * COP of hot water over a year against field tests. They found, for heating and hot water together,
 * 3.7 with ground, 2.8 with air and 3.4 with water as the source (Fraunhofer ISE, abstract, read);
 * hot water is the hotter part and stays below. Not below 2: that would be an element and a half.
 */
class YearCopTest {

  /** One ordinary home, with each source, and a plate that is worse and one that is better. */
  @Tag("outside")
  @ParameterizedTest
  @CsvSource({
    "ground, 7.0, 3.7",
    "ground, 5.5, 3.7",
    "ground, 9.0, 3.7",
    "air, 7.0, 2.8",
    "air, 5.5, 2.8",
    "air, 9.0, 2.8",
    "water, 7.0, 3.4",
    "water, 5.5, 3.4",
    "water, 9.0, 3.4"
  })
  void aYearOfHotWaterStaysBelowTheFieldMeans(String source, double output_kW, double field)
      throws IOException {
    Result year = year(source, output_kW);
    assertThat(year.heatPumpHeat_kWh() / year.heatPump_kWh()).isBetween(2.0, field);
  }

  private static Result year(String source, double output_kW) throws IOException {
    String text =
        Files.readString(Path.of("sample-configs", "good", "mill-cottage.json"))
            .replace("\"source\": \"ground\"", "\"source\": \"" + source + "\"")
            .replace("\"hotWaterOutput_kW\": 7.0", "\"hotWaterOutput_kW\": " + output_kW);
    assertThat(text).contains("\"source\": \"" + source + "\"", "_kW\": " + output_kW);
    SetupReading.Read read = (SetupReading.Read) SetupReading.ofText("a home", text);
    DayModel model = DayModel.of(read.setup()).get();
    DayRun run = DayRun.of(model.installation(), StepLength.MINUTE);
    model.surroundings().year(Year.of(2026)).forEach(run::through);
    return run.result();
  }
}
