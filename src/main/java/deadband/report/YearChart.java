package deadband.report;

import deadband.dayrun.Result;
import deadband.report.DayChart.Size;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A simulated year as an SVG picture: a table with a row for each month and a small bar beside each
 * number, and the sums of the year below.
 */
public final class YearChart {

  private static final int MONTHS = 12;
  private static final double LEFT = 8;
  private static final double NAMES = 88;
  private static final double COLUMN = 132;
  private static final double NUMBER = 46;
  private static final double BAR = 74;
  private static final double HEAD = 62;
  private static final double ROW = 22;

  private final List<Result> ends;
  private final LocalDate first;
  private final Svg svg = new Svg();

  private YearChart(List<Result> ends, LocalDate first) {
    this.ends = ends;
    this.first = first;
  }

  /** A quantity in a column. */
  private record Column(
      String name, String unit, String colour, Function<Result, OptionalDouble> of) {

    /** What a month came to: what the run had come to at its end, less what at its beginning. */
    OptionalDouble of(Result end, Result beginning) {
      OptionalDouble to = of.apply(end);
      OptionalDouble from = of.apply(beginning);
      return to.isPresent() && from.isPresent()
          ? OptionalDouble.of(to.getAsDouble() - from.getAsDouble())
          : OptionalDouble.empty();
    }
  }

  private static final List<Column> COLUMNS =
      List.of(
          energy("Heat from PV", ChartLine.PV, Result::solarHeat_kWh),
          energy("Import", ChartLine.IMPORT, Result::import_kWh),
          energy("Export", ChartLine.SENSOR, Result::export_kWh),
          count("Heat pump starts", ChartLine.HEAT_PUMP, Result.Cycles::heatPumpStarts),
          count("Relay closures", ChartLine.THRESHOLD, Result.Cycles::relayClosings));

  private static Column energy(String name, ChartLine line, Function<Result, Double> of) {
    return new Column(name, "kWh", line.colour(), result -> OptionalDouble.of(of.apply(result)));
  }

  private static Column count(String name, ChartLine line, Function<Result.Cycles, Integer> of) {
    return new Column(
        name,
        "",
        line.colour(),
        result ->
            result
                .cycles()
                .map(cycles -> OptionalDouble.of(of.apply(cycles)))
                .orElse(OptionalDouble.empty()));
  }

  /**
   * The picture, an {@code svg} element.
   *
   * @param first first day of the year
   * @param ends what the run had come to at the end of each of its twelve months
   */
  public static String of(List<Result> ends, LocalDate first, String title) {
    if (ends.size() != MONTHS) {
      throw new IllegalArgumentException(ends.size() + " months make no year");
    }
    return new YearChart(ends, first).drawn(title);
  }

  private String drawn(String title) {
    double height = HEAD + (MONTHS + 1) * ROW + 12;
    svg.picture(Size.PAGE, height, "year", title, description());
    svg.lettered(Size.PAGE);
    svg.text("text", title, "x", Svg.px(LEFT), "y", "18", "font-weight", "bold");
    for (int at = 0; at < COLUMNS.size(); at++) {
      column(COLUMNS.get(at), NAMES + at * COLUMN);
    }
    for (int month = 0; month < MONTHS; month++) {
      word(name(month), LEFT, base(month), "start", "normal");
    }
    double line = HEAD + MONTHS * ROW;
    svg.empty(
        "path",
        "d",
        "M" + Svg.px(LEFT) + " " + Svg.px(line) + "H" + (Size.PAGE.width() - 8),
        "stroke",
        ChartPaper.INK);
    word("Year", LEFT, base(MONTHS), "start", "bold");
    return svg.close().close().toString();
  }

  private static double base(int row) {
    return HEAD + row * ROW + 15;
  }

  private String name(int month) {
    return first.plusMonths(month).getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  private void column(Column column, double left) {
    word(column.name(), left, HEAD - 22, "start", "bold");
    word(column.unit(), left, HEAD - 8, "start", "normal");
    double most =
        IntStream.range(0, MONTHS)
            .mapToDouble(month -> of(column, month).orElse(0))
            .max()
            .orElse(0);
    for (int month = 0; month < MONTHS; month++) {
      OptionalDouble value = of(column, month);
      word(shown(value), left + NUMBER, base(month), "end", "normal");
      svg.empty(
          "rect",
          "x",
          Svg.px(left + NUMBER + 6),
          "y",
          Svg.px(base(month) - 9),
          "width",
          Svg.px(most > 0 ? Math.max(0, value.orElse(0)) / most * BAR : 0),
          "height",
          "10",
          "fill",
          column.colour());
    }
    word(
        shown(column.of().apply(ends.get(MONTHS - 1))), left + NUMBER, base(MONTHS), "end", "bold");
  }

  private OptionalDouble of(Column column, int month) {
    Result end = ends.get(month);
    return month == 0 ? column.of().apply(end) : column.of(end, ends.get(month - 1));
  }

  private static String shown(OptionalDouble value) {
    return value.isPresent() ? Words.number(Math.rint(value.getAsDouble())) : "-";
  }

  private void word(String text, double x, double y, String anchor, String weight) {
    svg.text(
        "text", text, "x", Svg.px(x), "y", Svg.px(y), "text-anchor", anchor, "font-weight", weight);
  }

  private String description() {
    return Stream.concat(
            IntStream.range(0, MONTHS)
                .mapToObj(month -> name(month) + ": " + said(column -> of(column, month))),
            Stream.of("Year: " + said(column -> column.of().apply(ends.get(MONTHS - 1)))))
        .collect(Collectors.joining("; ", "", "."));
  }

  private static String said(Function<Column, OptionalDouble> value) {
    return COLUMNS.stream()
        .map(
            column ->
                (column.name().toLowerCase(Locale.ROOT)
                        + " "
                        + shown(value.apply(column))
                        + " "
                        + column.unit())
                    .strip())
        .collect(Collectors.joining(", "));
  }
}
