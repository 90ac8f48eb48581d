package deadband.trade;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.Snapshot;
import deadband.trade.OutsideCheck.Kind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The table of outside checks in DEVELOPERS.md is written from the checks themselves. */
class OutsideTableTest {
  private static final Path PAGE = Path.of("DEVELOPERS.md");
  private static final String BEGIN =
      "<!-- outside checks of deadband.trade: written by a test -->\n";
  private static final String END = "<!-- end of outside checks -->\n";

  /** Whole files of open data, read where they are there; values compared when they are. */
  private static final List<DataCheck> DATA =
      List.of(
          new DataCheck(
              "carnot_check.csv", "Carnot COP, evaluated", 18, Known.DERIVED, Kind.WORKED_EXAMPLE),
          new DataCheck(
              "cop_regressions.csv",
              "Staffell 2012, Ruhnau 2019, evaluated",
              77,
              Known.DERIVED,
              Kind.WORKED_EXAMPLE),
          new DataCheck(
              "standing_loss_limits.csv",
              "Reg. (EU) 814/2013, evaluated",
              18,
              Known.DERIVED,
              Kind.WORKED_EXAMPLE),
          new DataCheck(
              "legionella_decimal_reduction_besmod.csv",
              "BESMod model library",
              12,
              Known.READ,
              Kind.QUOTATION),
          new DataCheck(
              "monthly_sap_and_eu_climate.csv",
              "SAP 2012; Reg. (EU) 814/2013",
              60,
              Known.READ,
              Kind.QUOTATION),
          new DataCheck(
              "tapping_profiles_814_2013.csv",
              "Reg. (EU) 814/2013 Annex III Table 1",
              1104,
              Known.READ,
              Kind.QUOTATION));

  private record DataCheck(String file, String source, int values, Known known, Kind kind) {}

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

  /** Values whose answer stands elsewhere; data files, which may be absent, are not among them. */
  @Test
  void aHundredAndFiftyValuesAreIndependent() {
    assertThat(count(Kind.INDEPENDENT)).isGreaterThanOrEqualTo(150);
  }

  @Test
  void nothingFromMemoryCountsAsOutside() {
    assertThat(all()).extracting(OutsideCheck::known).doesNotContain(Known.MEMORY);
    assertThat(all())
        .filteredOn(check -> check.kind() == Kind.INDEPENDENT)
        .extracting(OutsideCheck::known)
        .doesNotContain(Known.COMMON_PRACTICE);
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
  @Tag("snapshot")
  void developersPageHasTheTable() {
    Snapshot.isKeptBetween(BEGIN, END, PAGE, table(), UnaryOperator.identity());
  }

  private static String table() {
    String rows = all().stream().map(OutsideTableTest::row).collect(Collectors.joining());
    String data = DATA.stream().map(OutsideTableTest::row).collect(Collectors.joining());
    return "\n"
        + sum()
        + "\n\n| check | values | kind | source | how known |\n|---|---|---|---|---|\n"
        + rows
        + "\nWhole files of open data, skipped with a word where `deadband.data` names no folder:\n"
        + "\n| file | values | kind | source | how known |\n|---|---|---|---|---|\n"
        + data
        + "\n";
  }

  private static String row(OutsideCheck check) {
    return "| %s | %d | %s | %s | %s |\n"
        .formatted(
            cell(check.name()),
            check.values().size(),
            check.kind(),
            cell(check.source()),
            check.known());
  }

  private static String row(DataCheck data) {
    return "| `%s` | %d | %s | %s | %s |\n"
        .formatted(data.file, data.values, data.kind, cell(data.source), data.known);
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }

  private static String sum() {
    String kinds =
        Stream.of(Kind.values())
            .map(kind -> count(kind) + " " + kind)
            .collect(Collectors.joining(", "));
    return all().stream().mapToInt(check -> check.values().size()).sum()
        + " values: "
        + kinds
        + ".";
  }

  private static int count(Kind kind) {
    return all().stream()
        .filter(check -> check.kind() == kind)
        .mapToInt(check -> check.values().size())
        .sum();
  }
}
