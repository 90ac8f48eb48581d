package deadband.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import deadband.document.Literal;
import deadband.judging.Setups;
import deadband.reading.SetupReading;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schemas, held against an independent validator. */
class SchemaTest {

  private static final Schema SETUP = schema(SetupSchema.text());
  private static final Schema REPORT = schema(JsonReport.schema());

  private static Schema schema(String text) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(text);
  }

  static Stream<Path> samples() {
    return Setups.files("sample-configs", ".json").stream();
  }

  private static List<?> errors(Schema schema, String json) {
    return schema.validate(json, InputFormat.JSON);
  }

  /** The sample without its comments and trailing commas, which the independent reader refuses. */
  private static String plain(Path sample) {
    SetupReading.Read read = Setups.read(sample.toString(), Setups.text(sample));
    return Literal.of(read.document().root()).json();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everySampleIsValid(Path sample) {
    assertThat(errors(SETUP, plain(sample))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{ \"relay\": { \"start_kw\": 3 } }",
        "{ \"relay\": { \"start_kW\": \"3\" } }",
        "{ \"relay\": { \"start_kW\": 3000 } }",
        "{ \"relay\": { \"counts\": [\"exprt\"] } }",
        "{ \"tank\": { \"volume_L\": 0 } }",
        "{ \"site\": { \"country\": \"Britain\" } }",
        "{ \"supply\": { \"phases\": 1.5 } }",
        "{ \"site\": { \"fitted\": false } }",
        "{ \"deadband\": 2 }",
        "{ \"outlets\": {} }",
        "[]"
      })
  void schemaAndReaderRefuseTheSame(String setup) {
    assertThat(errors(SETUP, setup)).isNotEmpty();
    assertThat(SetupReading.ofText("test", setup)).isInstanceOf(SetupReading.Unreadable.class);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyReportIsValid(Path sample) {
    SetupReading.Read read = Setups.read(sample.toString(), Setups.text(sample));

    assertThat(errors(REPORT, Setups.json(read))).isEmpty();
  }

  @Test
  void theReportOfAnUnreadableFileIsValid() {
    SetupReading.Unreadable file =
        (SetupReading.Unreadable) SetupReading.ofText("bad.json", "{ \"relay\": { \"x\": 1 } ");

    assertThat(errors(REPORT, JsonReport.unreadable(file.name(), file.problems(), "1", false)))
        .isEmpty();
  }

  @Test
  void theSchemaOfReportsCanSayNo() {
    assertThat(errors(REPORT, "{}")).isNotEmpty();
  }
}
