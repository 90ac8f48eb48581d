package deadband.report;

import deadband.diagnosis.Cycle;
import deadband.diagnosis.Cycles;
import deadband.diagnosis.Surplus;
import deadband.diagnosis.Trigger;
import deadband.meterlog.Column;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import deadband.report.DayChart.Size;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A stretch of a meter log: surplus before the flexible loads, power input of the heat pump, start
 * and stop of the relay, and the runs, each with a letter for what started it.
 */
final class LogChart {

  private static final double HEIGHT = 190;
  private static final double TOP = 40;
  private static final double FOOT = 34;
  private static final double TICK = 8;
  private static final int MOST_POINTS = 1200;
  private static final String SURPLUS = "#8a6d00";
  private static final String PUMP = "#1d4f91";
  private static final String RUN = "#dbe6f4";
  private static final String BAND = "#b3261e";

  private final MeterLog log;
  private final List<Cycle> runs;
  private final List<Trigger> triggers;
  private final double[] surplus_kW;
  private final Optional<Column> pump;
  private final List<Double> band_kW;
  private final Size size;
  private final int from;
  private final int until;
  private final double low_kW;
  private final double high_kW;

  private LogChart(
      MeterLog log,
      Cycles cycles,
      List<Trigger> triggers,
      List<Double> band_kW,
      Size size,
      int from,
      int until) {
    this.log = log;
    this.runs = cycles.list();
    this.triggers = triggers;
    this.surplus_kW = Surplus.of(log, cycles).orElse(new double[0]);
    this.pump = log.column(Meaning.HEAT_PUMP);
    this.band_kW = band_kW;
    this.size = size;
    this.from = from;
    this.until = until;
    double low = 0;
    double high = 1;
    for (int row = from; row < until; row++) {
      low = Math.min(low, orZero(surplus(row)));
      high = Math.max(high, Math.max(orZero(surplus(row)), orZero(pump(row))));
    }
    this.low_kW = low;
    this.high_kW = band_kW.stream().reduce(high, Math::max);
  }

  /** The rows from one until before another. */
  static String of(
      MeterLog log,
      Cycles cycles,
      List<Trigger> triggers,
      List<Double> band_kW,
      Size size,
      int from,
      int until,
      String title) {
    return new LogChart(log, cycles, triggers, band_kW, size, from, until).drawn(title);
  }

  private double surplus(int row) {
    return row < surplus_kW.length ? surplus_kW[row] : Double.NaN;
  }

  private double pump(int row) {
    return pump.map(column -> column.value(row)).orElse(Double.NaN);
  }

  private static double orZero(double value) {
    return Double.isFinite(value) ? value : 0;
  }

  private String drawn(String title) {
    String id = title.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-") + "-" + size.word();
    Svg svg = new Svg();
    svg.picture(size, TOP + HEIGHT + FOOT, id, title, description());
    svg.lettered(size);
    legend(svg);
    runs(svg);
    axes(svg);
    for (double kW : band_kW) {
      line(svg, left(), y(kW), right(), y(kW), BAND, "4 3");
    }
    curve(svg, true);
    curve(svg, false);
    svg.close().close();
    return svg.toString();
  }

  private String description() {
    long within = runs.stream().filter(run -> run.first() >= from && run.first() < until).count();
    return Words.count((int) within, "run")
        + " of the heat pump from "
        + clock(from, "yyyy-MM-dd HH:mm")
        + " to "
        + clock(until - 1, "yyyy-MM-dd HH:mm");
  }

  private void legend(Svg svg) {
    text(svg, left(), 14, "surplus before heat pump and heater", SURPLUS, "start");
    text(svg, left(), 30, "heat pump", PUMP, "start");
    text(svg, right(), 30, "dashed: relay start and stop, kW", BAND, "end");
  }

  private void runs(Svg svg) {
    for (int index = 0; index < runs.size(); index++) {
      Cycle run = runs.get(index);
      if (run.last() < from || run.first() >= until) {
        continue;
      }
      double begin = x(Math.max((double) log.at_s(from), run.start_s()));
      double end = x(Math.min((double) log.end_s(until - 1), run.end_s()));
      svg.empty(
          "rect",
          "x",
          Svg.px(begin),
          "y",
          Svg.px(TOP),
          "width",
          Svg.px(Math.max(0.8, end - begin)),
          "height",
          Svg.px(HEIGHT),
          "fill",
          RUN);
      text(svg, (begin + end) / 2, TOP + 11, letter(triggers.get(index)), ChartPaper.INK, "middle");
    }
  }

  /** What started a run, in one letter; the table below the chart says what each means. */
  static String letter(Trigger trigger) {
    return switch (trigger) {
      case RELAY -> "R";
      case BELOW_START -> "B";
      case TEMPERATURE -> "T";
      case DISINFECTION -> "D";
      case NONE -> "?";
      case NOT_SHOWN -> "-";
    };
  }

  private void axes(Svg svg) {
    for (int kW = (int) Math.ceil(low_kW); kW <= high_kW; kW++) {
      line(svg, left() - 3, y(kW), left(), y(kW), ChartPaper.INK, "none");
      text(svg, left() - 5, y(kW) + 4, Integer.toString(kW), ChartPaper.INK, "end");
    }
    line(svg, left(), TOP, left(), TOP + HEIGHT, ChartPaper.INK, "none");
    line(svg, left(), y(0), right(), y(0), ChartPaper.INK, "none");
    int ticks = size == Size.PAGE ? 8 : 4;
    for (int tick = 0; tick <= ticks; tick++) {
      int row = from + (int) ((until - 1L - from) * tick / ticks);
      double at = x((double) log.at_s(row));
      line(svg, at, TOP + HEIGHT, at, TOP + HEIGHT + TICK / 2, ChartPaper.INK, "none");
      text(svg, at, TOP + HEIGHT + TICK + 12, clock(row, "HH:mm"), ChartPaper.INK, "middle");
    }
  }

  /** A curve with a gap where a reading is missing; of many readings the mean of several. */
  private void curve(Svg svg, boolean ofSurplus) {
    int each = Math.max(1, (until - from) / MOST_POINTS);
    StringBuilder path = new StringBuilder();
    boolean drawing = false;
    for (int row = from; row < until; row += each) {
      double sum = 0;
      for (int one = row; one < Math.min(until, row + each); one++) {
        sum += ofSurplus ? surplus(one) : pump(one);
      }
      double mean_kW = sum / Math.min(each, until - row);
      if (Double.isFinite(mean_kW)) {
        path.append(drawing && log.follows(row) ? 'L' : 'M')
            .append(Svg.px(x((double) log.at_s(row))))
            .append(' ')
            .append(Svg.px(y(mean_kW)));
      }
      drawing = Double.isFinite(mean_kW);
    }
    if (path.length() > 0) {
      svg.empty(
          "path",
          "d",
          path.toString(),
          "fill",
          "none",
          "stroke",
          ofSurplus ? SURPLUS : PUMP,
          "stroke-width",
          ofSurplus ? "1" : "1.4");
    }
  }

  private static void line(
      Svg svg, double x1, double y1, double x2, double y2, String colour, String dashes) {
    svg.empty(
        "line",
        "x1",
        Svg.px(x1),
        "y1",
        Svg.px(y1),
        "x2",
        Svg.px(x2),
        "y2",
        Svg.px(y2),
        "stroke",
        colour,
        "stroke-dasharray",
        dashes);
  }

  private static void text(
      Svg svg, double x, double y, String content, String colour, String anchor) {
    svg.text(
        "text", content, "x", Svg.px(x), "y", Svg.px(y), "fill", colour, "text-anchor", anchor);
  }

  private String clock(int row, String form) {
    return log.clock(row).format(DateTimeFormatter.ofPattern(form, Locale.ROOT));
  }

  private double left() {
    return size.left();
  }

  private double right() {
    return size.width() - size.left() / 2.0;
  }

  private double x(double at_s) {
    double span_s = Math.max(1, log.end_s(until - 1) - log.at_s(from));
    return left() + (right() - left()) * (at_s - log.at_s(from)) / span_s;
  }

  private double y(double kW) {
    return TOP + HEIGHT * (high_kW - kW) / (high_kW - low_kW);
  }
}
