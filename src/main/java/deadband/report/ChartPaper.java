package deadband.report;

import deadband.dayrun.Recording.Quantity;
import deadband.report.ChartData.Span;
import deadband.report.DayChart.Size;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/** What the panels of a chart are drawn on: one axis of time, and for each panel a scale. */
final class ChartPaper {

  static final String INK = "#161616";

  private static final String GRID = "#d4d4d4";
  private static final String EMPTY = "none";

  /** Height of a line of text. */
  static final double LINE = 14;

  /** Height of a bar. */
  static final double BAR = 9;

  private static final double SWATCH = 18;
  private static final double GAP = 6;
  private static final double THINNEST = 0.8;
  private static final double BASE = 4;
  private static final double HEAD = 24;
  private static final double FOOT = 10;

  /** From one line of a pattern to the next. */
  private static final double PITCH = 4.5;

  private static final int HOURS_PER_DAY = 24;
  private static final double[] HOUR_TICKS = {0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 96, 192};

  private final Svg svg;
  private final ChartData data;
  private final Size size;
  private final String id;
  private final double left;
  private final double right;
  private final List<ChartLabels.Label> labels = new ArrayList<>();
  private ChartScale scale = new ChartScale(0, 1, 1, 0, 1);
  private double y;
  private int clips;

  /**
   * Paper.
   *
   * @param id begins every id on it
   * @param y where the first panel begins
   */
  ChartPaper(Svg svg, ChartData data, Size size, String id, double y) {
    this.svg = svg;
    this.data = data;
    this.size = size;
    this.id = id;
    this.left = size.left();
    this.right = size.width() - size.labels();
    this.y = y;
  }

  private String id(String name) {
    return id + "-" + name;
  }

  static double height(ChartPanel panel) {
    return height(panel, panel);
  }

  /** Of two panels side by side. */
  static double height(ChartPanel panel, ChartPanel beside) {
    return head(panel) + Math.max(panel.room(), beside.room()) + FOOT;
  }

  private static double head(ChartPanel panel) {
    return panel.title().isEmpty() ? 0 : HEAD;
  }

  /** Draws a panel below the one before. */
  void draw(ChartPanel panel) {
    draw(panel, panel);
  }

  /** The same on a scale that holds the panel beside it, too. */
  void draw(ChartPanel panel, ChartPanel beside) {
    labels.clear();
    svg.open("g");
    if (!panel.title().isEmpty()) {
      text(panel.title(), BASE, y + 13);
    }
    double top = y + head(panel);
    double least = Math.min(panel.least(), beside.least());
    double most = Math.max(panel.most(), beside.most());
    scale = ChartScale.over(least, most, top, top + Math.max(panel.room(), beside.room()));
    panel.draw(this);
    svg.close();
    y += height(panel, beside);
  }

  ChartScale scale() {
    return scale;
  }

  /** Where a run was ended by the timer, with its legend. */
  void timerMarks(double top) {
    for (int at = 0; at < data.length(); at++) {
      if (data.isEndedByTimer(at)) {
        mark(x(at + 1), top);
      }
    }
    mark(right + GAP + 4, top + 5);
    text("by the timer " + data.runsEndedByTimer() + "×", right + GAP + 12, top + 13);
  }

  /** A band across the panel. */
  void band(String text, ChartLine line, double from, double to) {
    svg.empty(
        "rect",
        "x",
        Svg.px(left),
        "y",
        Svg.px(scale.y(to)),
        "width",
        Svg.px(right - left),
        "height",
        Svg.px(scale.y(from) - scale.y(to)),
        "fill",
        line.fill().ground());
    label(text, line, (from + to) / 2);
  }

  /** A mean over each step: level through it. */
  void steps(ChartLine line, IntToDoubleFunction values) {
    stroke(line, "M" + Svg.px(left) + " " + stairs(values, new Span(0, data.length())));
  }

  /** The heights from left to right, after a place on the first. */
  String stairs(IntToDoubleFunction values, Span span) {
    StringBuilder path = new StringBuilder(Svg.px(scale.y(values.applyAsDouble(span.from()))));
    for (int at = span.from() + 1; at < span.until(); at++) {
      if (height(values, at) != height(values, at - 1)) {
        path.append('H').append(Svg.px(x(at)));
        path.append('V').append(Svg.px(scale.y(values.applyAsDouble(at))));
      }
    }
    return path.append('H').append(Svg.px(x(span.until()))).toString();
  }

  /** The heights from right to left, after a place on the last. */
  String backStairs(IntToDoubleFunction values, Span span) {
    int last = span.until() - 1;
    StringBuilder path = new StringBuilder(Svg.px(scale.y(values.applyAsDouble(last))));
    for (int at = last - 1; at >= span.from(); at--) {
      if (height(values, at) != height(values, at + 1)) {
        path.append('H').append(Svg.px(x(at + 1)));
        path.append('V').append(Svg.px(scale.y(values.applyAsDouble(at))));
      }
    }
    return path.append('H').append(Svg.px(x(span.from()))).toString();
  }

  /** The area between two stairs, where there is one. */
  void area(ChartLine line, IntToDoubleFunction lower, IntToDoubleFunction upper) {
    List<Span> spans = data.spans(at -> height(upper, at) != height(lower, at));
    if (spans.isEmpty()) {
      return;
    }
    StringBuilder path = new StringBuilder();
    for (Span span : spans) {
      path.append('M').append(Svg.px(x(span.from()))).append(' ').append(stairs(upper, span));
      path.append('V').append(backStairs(lower, span)).append('Z');
    }
    double from = x(spans.get(0).from());
    double to = x(spans.get(spans.size() - 1).until());
    filled(line, path.toString(), new Box(from, scale.head(), to, scale.foot()), size.pen());
  }

  /** A rectangle on the paper. */
  private record Box(double left, double top, double right, double bottom) {
    String path() {
      return "M"
          + at(left, top)
          + "H"
          + Svg.px(right)
          + "V"
          + Svg.px(bottom)
          + "H"
          + Svg.px(left)
          + "Z";
    }
  }

  /**
   * An area with its pattern, drawn as lines that are cut off at its edge: printed to PDF, a
   * pattern of SVG itself becomes megabytes.
   */
  private void filled(ChartLine line, String path, Box box, double pen) {
    svg.empty("path", "d", path, "fill", line.fill().ground());
    if (line.fill().isPatterned()) {
      String clip = id("clip-" + ++clips);
      svg.open("clipPath", "id", clip).empty("path", "d", path).close();
      boolean dots = line.fill() == ChartLine.Fill.DOTS;
      svg.empty(
          "path",
          "d",
          pattern(line.fill(), box),
          "clip-path",
          "url(#" + clip + ")",
          "fill",
          EMPTY,
          "stroke",
          line.colour(),
          "stroke-width",
          dots ? "2" : "1",
          "stroke-linecap",
          dots ? "round" : "butt",
          "stroke-dasharray",
          dots ? "0.1 4" : EMPTY);
    }
    String width = Svg.px(line.width() * pen);
    svg.empty("path", "d", path, "fill", EMPTY, "stroke", line.colour(), "stroke-width", width);
  }

  private static String pattern(ChartLine.Fill fill, Box box) {
    StringBuilder path = new StringBuilder();
    double height = box.bottom() - box.top();
    if (fill == ChartLine.Fill.HATCH) {
      for (double x = box.left() - height; x < box.right(); x += PITCH) {
        path.append('M').append(at(x, box.bottom()));
        path.append('l').append(at(height, -height));
      }
      return path.toString();
    }
    for (double y = box.top() + PITCH / 2; y < box.bottom(); y += PITCH) {
      path.append('M').append(at(box.left(), y)).append('H').append(Svg.px(box.right()));
    }
    if (fill == ChartLine.Fill.CROSS) {
      for (double x = box.left() + PITCH / 2; x < box.right(); x += PITCH) {
        path.append('M').append(at(x, box.top())).append('V').append(Svg.px(box.bottom()));
      }
    }
    return path.toString();
  }

  /** Heights are told apart in tenths, as they are written. */
  long height(IntToDoubleFunction values, int at) {
    return Math.round(10 * scale.y(values.applyAsDouble(at)));
  }

  /** A temperature at the end of each step: straight from one to the next. */
  void curve(String text, ChartLine line, Quantity quantity) {
    IntToDoubleFunction values = data.values(quantity);
    StringBuilder path = new StringBuilder();
    for (int at = 0; at < data.length(); at++) {
      boolean end = at == 0 || at == data.length() - 1;
      if (end || !isLevel(values, at)) {
        path.append(at == 0 ? 'M' : 'L').append(at(x(at + 1), scale.y(values.applyAsDouble(at))));
      }
    }
    stroke(line, path.toString());
    label(text, line, data.value(quantity, data.length() - 1));
  }

  /** Whether a line goes level through a point, so that the point need not be entered. */
  boolean isLevel(IntToDoubleFunction values, int at) {
    long height = height(values, at);
    return height == height(values, at - 1) && height == height(values, at + 1);
  }

  void stroke(ChartLine line, String path) {
    svg.empty(
        "path",
        "d",
        path,
        "fill",
        EMPTY,
        "stroke",
        line.colour(),
        "stroke-width",
        Svg.px(line.width() * size.pen()),
        "stroke-dasharray",
        line.dashes(),
        "stroke-linejoin",
        "round");
  }

  /** A level line across the panel, with its label. */
  void marked(String text, ChartLine line, double value) {
    String height = Svg.px(scale.y(value));
    stroke(line, "M" + Svg.px(left) + " " + height + "H" + Svg.px(right));
    label(text, line, value);
  }

  void label(String text, ChartLine line, double value) {
    labels.add(new ChartLabels.Label(text, line, scale.y(value)));
  }

  void placeLabels() {
    ChartLabels column = new ChartLabels(scale.head() + 2, scale.foot() - 2, LINE);
    for (ChartLabels.Placed placed : column.placed(labels)) {
      swatch(placed);
      text(placed.label().text(), right + GAP + SWATCH + 4, placed.y() + size.font() / 3);
    }
  }

  void swatch(ChartLabels.Placed placed) {
    ChartLine line = placed.label().line();
    double from = right + GAP;
    if (line.fill() != ChartLine.Fill.NONE) {
      Box box = new Box(from, placed.y() - 4, from + SWATCH, placed.y() + 4);
      filled(line, box.path(), box, 1);
      return;
    }
    String leader = "M" + at(right, placed.label().wanted()) + "L" + at(from, placed.y());
    if (isLevelAtTheEnd(line)) {
      svg.empty("path", "d", leader, "stroke", line.colour(), "stroke-width", "0.6", "fill", EMPTY);
    }
    stroke(line, "M" + at(from, placed.y()) + "H" + Svg.px(from + SWATCH));
  }

  /** Whether the label's height is that of the line where it leaves the panel. */
  static boolean isLevelAtTheEnd(ChartLine line) {
    return line != ChartLine.COUNTED;
  }

  void note(String text, double base) {
    text(text, right + GAP, base);
  }

  void text(String text, double x, double base) {
    svg.text("text", text, "x", Svg.px(x), "y", Svg.px(base));
  }

  void grid() {
    hourLines();
    scale.ticks().forEach(this::tick);
  }

  void hourLines() {
    for (double hour : hours()) {
      String path = "M" + at(x(data.step(hour)), scale.head()) + "V" + Svg.px(scale.foot());
      svg.empty("path", "d", path, "stroke", GRID);
    }
  }

  void tick(double value) {
    double height = scale.y(value);
    boolean zero = Math.abs(value) < 1e-9;
    String path = "M" + at(left, height) + "H" + Svg.px(right);
    svg.empty("path", "d", path, "stroke", zero ? INK : GRID, "stroke-width", zero ? "0.8" : "0.6");
    svg.text(
        "text",
        Words.number(value),
        "x",
        Svg.px(left - 4),
        "y",
        Svg.px(height + size.font() / 3),
        "text-anchor",
        "end");
  }

  double hourTick(double span) {
    return Arrays.stream(HOUR_TICKS)
        .filter(tick -> span / tick <= size.mostTicks())
        .findFirst()
        .orElse(span);
  }

  void bars(IntPredicate state, double top, String fill) {
    for (Span span : data.spans(state)) {
      svg.empty(
          "rect",
          "x",
          Svg.px(x(span.from())),
          "y",
          Svg.px(top),
          "width",
          Svg.px(Math.max(THINNEST, x(span.until()) - x(span.from()))),
          "height",
          Svg.px(BAR),
          "fill",
          fill);
    }
  }

  /** A small triangle that points up. */
  void mark(double x, double top) {
    double half = 3.5 * size.pen();
    String path =
        "M" + at(x, top) + "L" + at(x + half, top + 7) + "L" + at(x - half, top + 7) + "Z";
    svg.empty("path", "d", path, "fill", INK);
  }

  /** The hours since midnight of the first day that are marked. */
  List<Double> hours() {
    double first = data.firstHour();
    double last = first + data.hours();
    double tick = hourTick(last - first);
    List<Double> hours = new ArrayList<>();
    for (double hour = Math.ceil(first / tick - 1e-9) * tick; hour <= last + 1e-9; hour += tick) {
      hours.add(hour);
    }
    return hours;
  }

  void clock() {
    for (double hour : hours()) {
      svg.text(
          "text",
          clock(hour),
          "x",
          Svg.px(x(data.step(hour))),
          "y",
          Svg.px(y + 8),
          "text-anchor",
          "middle");
    }
  }

  private String clock(double hour) {
    long minutes = Math.round(hour * 60);
    long day = (long) HOURS_PER_DAY * 60;
    long shown = minutes == day && data.hours() <= HOURS_PER_DAY ? day : minutes % day;
    return String.format(Locale.ROOT, "%02d:%02d", shown / 60, shown % 60);
  }

  private double x(double step) {
    return left + step / data.length() * (right - left);
  }

  private static String at(double x, double y) {
    return Svg.px(x) + " " + Svg.px(y);
  }
}
