package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import deadband.document.Node;
import deadband.judging.Fragment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code deadband simulate}, as its users run it. */
class SimulateTest {
  private static final String HOME = "sample-configs/good/mill-cottage.json";

  @TempDir private Path folder;

  private static CommandLineRun simulate(String... options) {
    String[] arguments = new String[options.length + 1];
    arguments[0] = "simulate";
    System.arraycopy(options, 0, arguments, 1, options.length);
    return CommandLineRun.of(arguments);
  }

  private static double number(CommandLineRun run, String name) {
    Node.Section root = (Node.Section) Fragment.parse(run.out());
    return ((Node.Numeral) root.get(name).orElseThrow()).value();
  }

  @ParameterizedTest
  @ValueSource(strings = {"clear", "cloud", "winter"})
  void everyBuiltInDayRunsAndIsTheSameEachTime(String day) {
    CommandLineRun run = simulate(HOME, "--day", day, "--format", "json");

    assertThat(run.exit()).isEqualTo(Exit.READY);
    assertThat(run.err()).isEmpty();
    assertThat(number(run, "steps")).isEqualTo(1440);
    assertThat(number(run, "balanceError_kWh")).isZero();
    assertThat(simulate(HOME, "--day", day, "--format", "json")).isEqualTo(run);
  }

  /** Less sun in winter: less kept and more bought. */
  @Test
  void aDullWinterDayKeepsLessSunThanAClearOne() {
    CommandLineRun clear = simulate(HOME, "--format", "json");
    CommandLineRun winter = simulate(HOME, "--day", "winter", "--format", "json");

    assertThat(number(winter, "pvIntoTank_kWh")).isLessThan(number(clear, "pvIntoTank_kWh"));
    assertThat(number(winter, "import_kWh")).isGreaterThan(number(clear, "import_kWh"));
  }

  @Test
  void theResultIsAsItsSchemaSays() {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(CommandLineRun.of("schema", "simulation").out());

    for (String step : List.of("1", "5")) {
      String json = simulate(HOME, "--step", step, "--format", "json").out();
      assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
    }
    assertThat(schema.validate("{}", InputFormat.JSON)).isNotEmpty();
  }

  @Test
  void aYearIsAYear() {
    CommandLineRun run =
        simulate(HOME, "--day", "year", "--date", "2024-02-29", "--format", "json");

    assertThat(number(run, "steps")).isEqualTo(366 * 1440);
  }

  /** What is traced can be run again: the same sun, house and draw-off give the same day. */
  @Test
  void aTraceRunsAgainAsTheSameDay() {
    Path trace = folder.resolve("day.csv");
    CommandLineRun first =
        simulate(HOME, "--day", "cloud", "--trace", trace.toString(), "--format", "json");
    CommandLineRun again = simulate(HOME, "--day", trace.toString(), "--format", "json");

    for (String name : List.of("relayClosures", "heatPumpStarts", "steps")) {
      assertThat(number(again, name)).as(name).isEqualTo(number(first, name));
    }
    assertThat(number(again, "pvIntoTank_kWh"))
        .isCloseTo(number(first, "pvIntoTank_kWh"), within(0.01));
  }

  @Test
  void drawsAChart() throws IOException {
    Path chart = folder.resolve("day.svg");

    assertThat(simulate(HOME, "--chart", chart.toString()).exit()).isEqualTo(Exit.READY);
    assertThat(Files.readString(chart))
        .startsWith("<svg")
        .contains("Mill Cottage", "start 3.2 kW", "stop 0.3 kW", "tank limit 63 °C");
  }

  @Test
  void drawsTwoDaysOnTheSameScales() throws IOException {
    Path chart = folder.resolve("two.svg");
    Path alone = folder.resolve("alone.svg");
    simulate(HOME, "--day", "winter", "--chart", alone.toString());
    CommandLineRun run =
        simulate(HOME, "--day", "winter", "--beside", "clear", "--chart", chart.toString());

    assertThat(run.exit()).isEqualTo(Exit.READY);
    String two = Files.readString(chart);
    assertThat(two)
        .contains("dull winter day", "clear day", "id=\"day-title\"", "id=\"beside-title\"");
    assertThat(two.split("<svg", -1)).as("one picture of two").hasSize(4);
    String[] days = two.split("<g transform=", -1);
    assertThat(scale(days[1]))
        .isEqualTo(scale(days[2]))
        .isNotEqualTo(scale(Files.readString(alone)));
  }

  /** The numbers beside the panels of a chart. */
  private static List<String> scale(String svg) {
    return Pattern.compile("text-anchor=\"end\">([^<]+)<")
        .matcher(svg)
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  @Test
  void drawsAYearAsATableOfMonths() throws IOException {
    Path chart = folder.resolve("year.svg");
    CommandLineRun run =
        simulate(HOME, "--day", "year", "--chart", chart.toString(), "--format", "json");
    String svg = Files.readString(chart);

    assertThat(svg).contains("Mill Cottage, year 2026", ">January<", ">December<", "Heat from PV");
    List<Double> starts =
        Pattern.compile("heat pump starts (\\d+)")
            .matcher(svg)
            .results()
            .map(found -> Double.valueOf(found.group(1)))
            .toList();
    assertThat(starts).as("twelve months and the year").hasSize(13);
    assertThat(starts.subList(0, 12).stream().mapToDouble(each -> each).sum())
        .isEqualTo(starts.get(12))
        .isEqualTo(number(run, "heatPumpStarts"));
    assertThat(svg.split("<rect", -1)).as("ground, and a bar for each number").hasSize(2 + 60);
  }

  @Test
  void aDayOfSurplusAloneIsNotCalledPV() throws IOException {
    Path day =
        Files.writeString(
            Files.createDirectories(folder.resolve("deep/folder")).resolve("mine.csv"),
            "time,surplus_kW\n"
                + IntStream.range(0, 24)
                    .mapToObj("%02d:00,2.5\n"::formatted)
                    .collect(Collectors.joining()));
    Path chart = folder.resolve("surplus.svg");
    String home = Files.readString(Path.of(HOME)).replace("\"reference\": \"Mill Cottage\",", "");
    Path unnamed = Files.writeString(folder.resolve("unnamed.json"), home);

    CommandLineRun run =
        simulate(
            unnamed.toString(),
            "--day",
            day.toString(),
            "--step",
            "5",
            "--chart",
            chart.toString());

    assertThat(run.err()).isEmpty();
    assertThat(Files.readString(chart))
        .contains("Surplus entered", "unnamed.json, mine.csv, ")
        .doesNotContain(">PV", "PV power", "deep", folder.toString());
  }

  /** No cycle is counted at a step longer than the shortest delay; the energies still are. */
  @Test
  void aLongStepQuotesNoCounts() {
    CommandLineRun run = simulate(HOME, "--step", "5", "--format", "json");
    Node.Section root = (Node.Section) Fragment.parse(run.out());

    assertThat(root.get("relayClosures").orElseThrow()).isInstanceOf(Node.Nothing.class);
    assertThat(number(run, "immersion_kWh")).isPositive();
    assertThat(simulate(HOME, "--step", "5").out()).containsPattern("no closures are\\s+counted");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--day noon | none of clear, cloud, winter, year",
        "--step 7 | whole seconds that divide an hour",
        "--step 0 | whole seconds that divide an hour",
        "--beside cloud | name a --chart",
        "--day year --beside cloud --chart x.svg | charts a second day beside the first",
        "--date soon | is not a date"
      })
  void wrongUseIsToldInOneSentence(String options, String says) {
    String[] words = (HOME + " " + options).split(" ", -1);
    CommandLineRun run = simulate(words);

    assertThat(run.exit()).isEqualTo(Exit.USAGE);
    assertThat(run.err()).contains(says).doesNotContain("Exception");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void whatIsNotToldIsNamed() {
    CommandLineRun run = CommandLineRun.with("{}", Map.of(), "simulate", "-");

    assertThat(run.exit()).isEqualTo(Exit.NOTHING_CHECKED);
    assertThat(run.err()).contains("relay.start_kW", "tank.volume_L", "solar.peak_kW");
  }

  @Test
  void aBrokenDayFileIsToldByLine() throws IOException {
    Path day = folder.resolve("day.csv");
    Files.writeString(day, "time,surplus_kW\n10:00,1\n10:01,sunny\n");
    CommandLineRun run = simulate(HOME, "--day", day.toString());

    assertThat(run.exit()).isEqualTo(Exit.UNREADABLE);
    assertThat(run.err()).contains("line 3", "sunny");
  }

  @Test
  void aFileThatCannotBeWrittenIsTold() {
    CommandLineRun run = simulate(HOME, "--trace", folder.resolve("no/such.csv").toString());

    assertThat(run.exit()).isEqualTo(Exit.UNWRITABLE);
    assertThat(run.err()).contains("such.csv cannot be written");
  }

  @Test
  void theNoteFitsAnEightyColumnTerminal() {
    assertThat(simulate(HOME).out().lines()).allMatch(line -> line.length() <= 80);
  }

  /** A day on which heat pump and heater ran, as meters log it, in columns of this form. */
  private String log(String header, DayRow row) throws IOException {
    StringBuilder csv = new StringBuilder(header).append('\n');
    for (int minute = 0; minute < 1440; minute++) {
      double pv_kW = Math.max(0, 6 * Math.sin(Math.PI * (minute - 360) / 840.0));
      pv_kW = minute > 360 && minute < 1200 ? pv_kW : 0;
      double pump_kW = minute >= 600 && minute < 660 ? 2.8 : 0;
      double heater_kW = minute >= 720 && minute < 780 ? 2.5 : 0;
      double surplus_kW = pv_kW - 0.4;
      csv.append(String.format(Locale.ROOT, "2026-05-14 %02d:%02d,", minute / 60, minute % 60))
          .append(row.cells(pv_kW, surplus_kW - pump_kW - heater_kW, pump_kW, heater_kW))
          .append('\n');
    }
    Path file = folder.resolve("log-" + Integer.toHexString(header.hashCode()) + ".csv");
    return Files.writeString(file, csv).toString();
  }

  private interface DayRow {
    String cells(double pv_kW, double export_kW, double pump_kW, double heater_kW);
  }

  private static String cells(String form, double... values) {
    return String.format(Locale.ROOT, form, DoubleStream.of(values).boxed().toArray());
  }

  @Test
  void whatTheSimulationAddsIsTakenOutOfALog() throws IOException {
    CommandLineRun without =
        simulate(
            HOME,
            "--day",
            log("time,surplus_kW", (pv, out, hp, im) -> cells("%.4f", out + hp + im)),
            "--format",
            "json");
    assertThat(without.exit()).isEqualTo(Exit.READY);
    double[] sums = new double[4];
    Map<String, String> logs =
        Map.of(
            "grid",
            log(
                "time,grid (kW),heat pump (kW),immersion (kW)",
                (pv, out, hp, im) -> cells("%.4f,%.4f,%.4f", -out, hp, im)),
            "import and export apart",
            log(
                "time,import (W),export (W),heat pump (W),immersion (W)",
                (pv, out, hp, im) ->
                    cells(
                        "%.1f,%.1f,%.1f,%.1f",
                        1000 * Math.max(0, -out), 1000 * Math.max(0, out), 1000 * hp, 1000 * im)),
            "counters",
            log(
                "time,import counter (Wh),export counter (Wh),heat pump counter (Wh),"
                    + "immersion counter (Wh)",
                (pv, out, hp, im) -> {
                  String row = cells("%.4f,%.4f,%.4f,%.4f", sums);
                  double[] now = {Math.max(0, -out), Math.max(0, out), hp, im};
                  Arrays.setAll(sums, index -> sums[index] + now[index] * 1000 / 60);
                  return row;
                }),
            "house",
            log(
                "time,pv (kW),house (kW),heat pump (kW),immersion (kW)",
                (pv, out, hp, im) -> cells("%.4f,%.4f,%.4f,%.4f", pv, pv - out, hp, im)));
    for (Map.Entry<String, String> log : logs.entrySet()) {
      CommandLineRun run = simulate(HOME, "--day", log.getValue(), "--format", "json");
      assertThat(run.exit()).as(log.getKey()).isEqualTo(Exit.READY);
      for (String name : List.of("relayClosures", "import_kWh", "export_kWh", "immersion_kWh")) {
        assertThat(number(run, name))
            .as(log.getKey())
            .isEqualTo(number(without, name), within(0.1));
      }
      assertThat(run.err())
          .contains("without power input of the heat pump, power of the immersion");
    }
  }

  @Test
  void aLogThatDoesNotShowWhatIsInItIsRefused() throws IOException {
    Map<String, String> refused =
        Map.of(
            log("time,grid (kW),heat pump (kW)", (pv, out, hp, im) -> cells("%.3f,%.3f", -out, hp)),
            "and no power of the immersion heater",
            log("time,grid (kW),immersion (kW)", (pv, out, hp, im) -> cells("%.3f,%.3f", -out, im)),
            "and no power input of the heat pump",
            log("time,grid (kW),pv (kW)", (pv, out, hp, im) -> cells("%.3f,%.3f", -out, pv)),
            "and no power input of the heat pump",
            log(
                "time,export (kW),heat pump (kW),immersion (kW)",
                (pv, out, hp, im) -> cells("%.3f,%.3f,%.3f", Math.max(0, out), hp, im)),
            "export without import",
            log(
                "time,surplus_kW,heatPump_kW",
                (pv, out, hp, im) -> cells("%.3f,%.3f", out + hp + im, hp)),
            "heatPump_kW beside what a day file holds",
            log(
                "time,pv_kW,house_kW,heatPump_kW,immersion_kW",
                (pv, out, hp, im) -> cells("%.3f,%.3f,%.3f,%.3f", pv, 0.4, hp, im)),
            "a house that takes less than the heat pump alone");
    refused.forEach(
        (log, why) -> {
          CommandLineRun run = simulate(HOME, "--day", log);
          assertThat(run.exit()).as(why).isEqualTo(Exit.UNREADABLE);
          assertThat((run.out() + run.err()).replaceAll("\\s+", " ")).contains(why);
        });
  }
}
