package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import deadband.report.Comparison;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two setups side by side, and one with its settings as found. */
class CompareTest {

  private static final String FAULTY = "sample-configs/faulty/stop-just-under-start.json";
  private static final String GOOD = "sample-configs/good/mill-cottage.json";

  @TempDir private Path folder;

  /** The faulty sample with its stop lowered, as its own check proposes. */
  private String cured() throws IOException {
    String text =
        Files.readString(Path.of(FAULTY)).replaceFirst("\"stop_kW\": 2.7", "\"stop_kW\": 0.1");
    return Files.writeString(folder.resolve("cured.json"), text).toString();
  }

  @Test
  void aCureClearsItsFindingAndIsNotWorse() throws IOException {
    CommandLineRun run = CommandLineRun.of("compare", "--as-of=2026-11-27", FAULTY, cured());

    assertThat(run.exit()).isEqualTo(0);
    assertThat(run.out())
        .contains("NOT WORSE", "(relay.stop_kW): 2.7 kW -> 0.1 kW", "Findings cleared")
        .contains("gap-below-heat-pump-draw", "year, starts")
        .doesNotContain("Findings raised");
  }

  @Test
  void theOtherWayRoundIsWorse() throws IOException {
    CommandLineRun run = CommandLineRun.of("compare", "--no-year", cured(), FAULTY);

    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains("Findings raised").doesNotContain("Findings cleared");
  }

  @Test
  void whatCannotBeJudgedAnyMoreIsWorse() throws IOException {
    String text = Files.readString(Path.of(GOOD)).replace("\"limit_C\": 62, ", "");
    Path less = Files.writeString(folder.resolve("less.json"), text);

    CommandLineRun run = CommandLineRun.of("compare", "--no-year", GOOD, less.toString());

    assertThat(run.out()).contains("No longer judged");
    assertThat(run.exit()).isEqualTo(1);
  }

  @Test
  void oneFileIsComparedWithWhatWasFound() {
    CommandLineRun run = CommandLineRun.of("compare", "--no-year", GOOD);

    assertThat(run.exit()).isEqualTo(0);
    assertThat(run.out()).contains("(relay.start_kW): 3 kW -> 3.2 kW", "gap-below-heat-pump-draw");
    assertThat(CommandLineRun.of("check", GOOD).out()).contains("changed since as-found:");
  }

  @Test
  void withoutWhatWasFoundTwoFilesAreNeeded() throws IOException {
    Path bare = Files.writeString(folder.resolve("bare.json"), "{ \"deadband\": 1 }");
    CommandLineRun run = CommandLineRun.of("compare", bare.toString());

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("asFound.settings", "name two files");
  }

  @Test
  void itsJsonKeepsToItsSchema() throws IOException {
    String json = CommandLineRun.of("compare", "--format=json", FAULTY, cured()).out();
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Comparison.schema());

    assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
    assertThat(schema.validate("{}", InputFormat.JSON)).isNotEmpty();
    assertThat(json).contains("\"worse\": false", "\"pointer\": \"/relay/stop_kW\"");
  }

  @Test
  void itsPageLaysOneDayOverTheOther() throws IOException {
    String page = CommandLineRun.of("compare", "--no-year", "--format=html", FAULTY, cured()).out();

    assertThat(page.split("<svg", -1)).as("two days, two sizes").hasSize(5);
    assertThat(page).contains("Clear day, before and after", "style-src 'sha256-");
  }
}
