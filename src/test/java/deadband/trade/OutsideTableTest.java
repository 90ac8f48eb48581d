package deadband.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The table of outside checks in DEVELOPERS.md is written from the checks themselves. Run with
 * {@code -Ddeadband.update=outside-checks} to write it again.
 */
class OutsideTableTest {
  private static final Path PAGE = Path.of("DEVELOPERS.md");
  private static final String BEGIN =
      "<!-- outside checks of deadband.trade: written by a test -->\n";
  private static final String END = "<!-- end of outside checks -->\n";

  /** Whole files of open data, read where they are there; values compared when they are. */
  private static final List<DataCheck> DATA =
      List.of(
          new DataCheck("carnot_check.csv", "Carnot COP of a published table", 18, Known.DERIVED),
          new DataCheck("cop_regressions.csv", "Staffell 2012, Ruhnau 2019", 77, Known.READ),
          new DataCheck(
              "standing_loss_limits.csv", "Reg. (EU) 812/2013 and 814/2013", 72, Known.SECOND_HAND),
          new DataCheck(
              "legionella_decimal_reduction_besmod.csv", "BESMod model library", 12, Known.READ),
          new DataCheck(
              "monthly_sap_and_eu_climate.csv", "SAP 2012; Reg. (EU) 814/2013", 60, Known.READ),
          new DataCheck(
              "tapping_profiles_814_2013.csv",
              "Reg. (EU) 814/2013 Annex III Table 1",
              1104,
              Known.READ));

  private record DataCheck(String file, String source, int values, Known known) {}

  static List<OutsideCheck> all() {
    return Stream.of(
            HygieneTest.outside(),
            DisinfectionCycleTest.outside(),
            DecimalReductionTest.outside(),
            BlendingTest.outside(),
            ScaldTest.outside(),
            SafetyChainTest.outside(),
            HeaterCircuitTest.outside(),
            CableRatingTest.outside(),
            PlatinumSensorTest.outside(),
            MeteringTest.outside(),
            CurrentSensorTest.outside(),
            SignalContactTest.outside(),
            HeatPumpCopTest.outside(),
            CompressorTest.outside(),
            BufferVolumeTest.outside(),
            WaterTest.outside(),
            StoredHeatTest.outside(),
            StandingLossTest.outside(),
            SunnyDayTest.outside(),
            TappingProfileTest.outside(),
            HotWaterUseTest.outside(),
            ClearSkyTest.outside())
        .flatMap(List::stream)
        .toList();
  }

  @Test
  void everyTestClassWithOutsideValuesIsInTheTable() throws IOException {
    Path tests = Path.of("src", "test", "java", "deadband", "trade");
    String own = Files.readString(tests.resolve("OutsideTableTest.java"));
    try (Stream<Path> files = Files.list(tests)) {
      List<String> classes =
          files
              .filter(OutsideTableTest::hasOutsideValues)
              .map(file -> file.getFileName().toString().replace(".java", ""))
              .toList();
      assertThat(classes).hasSize(22).allMatch(name -> own.contains(name + ".outside()"));
    }
  }

  private static boolean hasOutsideValues(Path file) {
    try {
      return Files.readString(file).contains("\n  static List<OutsideCheck> outside() {");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void moreThanAHundredAndTwentyValuesComeFromOutside() {
    Map<Known, Integer> count = count();
    int outside =
        count.getOrDefault(Known.READ, 0)
            + count.getOrDefault(Known.SECOND_HAND, 0)
            + count.getOrDefault(Known.DERIVED, 0);
    assertThat(outside).isGreaterThanOrEqualTo(120);
    assertThat(count).as("nothing from memory counts as outside").doesNotContainKey(Known.MEMORY);
  }

  @Test
  void everyCheckNamesItsSource() {
    assertThat(all())
        .allSatisfy(
            check -> {
              assertThat(check.name()).isNotBlank();
              assertThat(check.source()).isNotBlank();
              assertThat(check.values()).isNotEmpty();
            })
        .extracting(OutsideCheck::name)
        .doesNotHaveDuplicates();
  }

  @Test
  void developersPageHasTheTable() throws IOException {
    String page = Files.readString(PAGE);
    int from = page.indexOf(BEGIN) + BEGIN.length();
    int to = page.indexOf(END);
    assertThat(from).as("marker in " + PAGE).isGreaterThanOrEqualTo(BEGIN.length());
    assertThat(to).as("end marker in " + PAGE).isGreaterThanOrEqualTo(from);
    if ("outside-checks".equals(System.getProperty("deadband.update"))) {
      Files.writeString(PAGE, page.substring(0, from) + table() + page.substring(to));
      return;
    }
    assertThat(page.substring(from, to)).isEqualTo(table());
  }

  private static String table() {
    String rows = all().stream().map(OutsideTableTest::row).collect(Collectors.joining());
    String data = DATA.stream().map(OutsideTableTest::row).collect(Collectors.joining());
    return "\n"
        + sum()
        + "\n\n| check | values | source | how known |\n|---|---|---|---|\n"
        + rows
        + "\nWhole files of open data, skipped with a word where `deadband.data` names no folder:\n"
        + "\n| file | values | source | how known |\n|---|---|---|---|\n"
        + data
        + "\n";
  }

  private static String row(OutsideCheck check) {
    return "| %s | %d | %s | %s |\n"
        .formatted(cell(check.name()), check.values().size(), cell(check.source()), check.known());
  }

  private static String row(DataCheck data) {
    return "| `%s` | %d | %s | %s |\n"
        .formatted(data.file, data.values, cell(data.source), data.known);
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }

  private static String sum() {
    Map<Known, Integer> count = count();
    String marks =
        count.entrySet().stream()
            .map(entry -> entry.getValue() + " " + entry.getKey())
            .collect(Collectors.joining(", "));
    int values = count.values().stream().mapToInt(Integer::intValue).sum();
    return values + " values: " + marks + ".";
  }

  private static Map<Known, Integer> count() {
    Map<Known, Integer> count = new EnumMap<>(Known.class);
    for (OutsideCheck check : all()) {
      count.merge(check.known(), check.values().size(), Integer::sum);
    }
    return count;
  }
}
