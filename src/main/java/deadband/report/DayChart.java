package deadband.report;

import deadband.dayrun.HeatPumpModel;
import deadband.dayrun.Recording;
import deadband.dayrun.Recording.Quantity;
import deadband.trade.Hygiene;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * A recorded day as an SVG picture, one above the other on one axis of time: sun and counted
 * surplus with both thresholds; what the tank takes, stacked, and below zero what is bought; bars
 * for relay and heat pump; temperatures of the tank with their limits.
 *
 * <p>Nothing is told by colour alone: lines differ in dash and weight, areas in pattern, and each
 * is named beside the panel. The text is text. Self-contained, without scripts; the same recording
 * gives the same bytes. Meant for a day or a few: each step is drawn.
 */
public final class DayChart {

  private static final String INK = "#161616";
  private static final String GRID = "#d4d4d4";
  private static final String FONTS =
      "'Helvetica Neue', Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif";
  private static final String EMPTY = "none";

  private static final double LINE = 14;
  private static final double SWATCH = 18;
  private static final double GAP = 6;
  private static final double BAR = 9;
  private static final double THINNEST = 0.8;
  private static final double BASE = 4;

  private static final int SECONDS_PER_HOUR = 3600;
  private static final int HOURS_PER_DAY = 24;
  private static final double[] HOUR_TICKS = {0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 96, 192};

  private final Recording recording;
  private final Markings markings;
  private final Size size;
  private final int length;
  private final double left;
  private final double right;
  private final Svg svg = new Svg();
  private double y;

  private DayChart(Recording recording, Markings markings, Size size) {
    this.recording = recording;
    this.markings = markings;
    this.size = size;
    this.length = recording.length();
    this.left = size.left;
    this.right = size.width - size.labels;
  }

  /**
   * What is marked beside the run itself.
   *
   * @param id begins every id of the picture, so that several may stand in one page; a letter and
   *     letters, digits or dashes
   * @param title what day this is
   * @param start_kW the relay's start threshold [kW]
   * @param stop_kW its stop threshold [kW]
   * @param tankLimit_C temperature at which the diverter lets go [°C]
   * @param blendingLimit_C the most that the blending valve may be fed with [°C]
   */
  public record Markings(
      String id,
      String title,
      OptionalDouble start_kW,
      OptionalDouble stop_kW,
      OptionalDouble tankLimit_C,
      OptionalDouble blendingLimit_C) {

    public Markings {
      if (!id.matches("[A-Za-z][A-Za-z0-9-]*")) {
        throw new IllegalArgumentException(
            "id \"" + id + "\" must be a letter and letters, digits or dashes");
      }
    }
  }

  /** For what the picture is laid out. */
  public enum Size {
    /** A sheet of paper or a screen on a desk. */
    PAGE(760, 30, 158, 12, 8, 1),
    /** A telephone held upright. */
    NARROW(360, 26, 130, 10.5, 4, 0.6);

    private final int width;
    private final int left;
    private final int labels;
    private final double font;
    private final int mostTicks;
    private final double pen;

    /**
     * A layout.
     *
     * @param left room for the numbers of the scales
     * @param labels room for what names the lines
     * @param mostTicks hours marked at the most
     * @param pen factor on the weight of lines
     */
    Size(int width, int left, int labels, double font, int mostTicks, double pen) {
      this.width = width;
      this.left = left;
      this.labels = labels;
      this.font = font;
      this.mostTicks = mostTicks;
      this.pen = pen;
    }
  }

  /**
   * The picture, an {@code svg} element.
   *
   * @throws IllegalArgumentException where nothing was recorded
   */
  public static String of(Recording recording, Markings markings, Size size) {
    if (recording.length() == 0) {
      throw new IllegalArgumentException("nothing was recorded that could be drawn");
    }
    return new DayChart(recording, markings, size).drawn();
  }

  private String drawn() {
    List<Panel> panels = List.of(sunPanel(), takenPanel(), statePanel(), tankPanel());
    double height = 26 + panels.stream().mapToDouble(Panel::height).sum() + 24;
    begin(height);
    y = 26;
    for (Panel panel : panels) {
      draw(panel);
    }
    clock();
    return svg.close().close().toString();
  }

  private void begin(double height) {
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        "0 0 " + size.width + " " + Svg.px(height),
        "width",
        Integer.toString(size.width),
        "height",
        Svg.px(height),
        "style",
        "max-width:100%;height:auto",
        "role",
        "img",
        "aria-labelledby",
        id("title") + " " + id("desc"));
    svg.text("title", markings.title(), "id", id("title"));
    svg.text("desc", description(), "id", id("desc"));
    patterns();
    svg.empty("rect", "width", "100%", "height", "100%", "fill", "#ffffff");
    svg.open("g", "font-family", FONTS, "font-size", Svg.px(size.font), "fill", INK);
    svg.text(
        "text",
        cut(markings.title(), (int) (size.width / size.font * 1.75)),
        "x",
        Svg.px(BASE),
        "y",
        "16",
        "font-weight",
        "bold");
  }

  private static String cut(String text, int most) {
    int length = text.codePointCount(0, text.length());
    return length <= most ? text : text.substring(0, text.offsetByCodePoints(0, most - 1)) + "…";
  }

  private String id(String name) {
    return markings.id() + "-" + name;
  }

  /** What the picture shows, for those who do not see it. */
  private String description() {
    List<String> says = new ArrayList<>();
    markings.start_kW().ifPresent(start -> says.add("Relay start " + kW(start)));
    markings.stop_kW().ifPresent(stop -> says.add("relay stop " + kW(stop)));
    says.add("relay closed " + times(recording::relayClosed));
    says.add("heat pump ran " + times(this::isRunning));
    says.add(runsEndedByTimer() + " runs ended by its timer");
    says.add("tank top " + range(Quantity.TOP) + ", bottom " + range(Quantity.BOTTOM));
    markings.tankLimit_C().ifPresent(limit -> says.add("tank limit " + degrees(limit)));
    markings.blendingLimit_C().ifPresent(limit -> says.add("blending limit " + degrees(limit)));
    return String.join("; ", says) + ".";
  }

  private String range(Quantity quantity) {
    return "%s to %s"
        .formatted(Words.number(tenth(least(quantity))), degrees(tenth(most(quantity))));
  }

  private static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }

  private static String kW(double value) {
    return Words.withUnit(value, "kW");
  }

  private static String degrees(double value) {
    return Words.withUnit(value, "°C");
  }

  private String times(IntPredicate state) {
    return spans(state).size() + "×";
  }

  // Patterns -------------------------------------------------------------------------------------

  private void patterns() {
    svg.open("defs");
    pattern("hatch", ChartLine.HEAT_PUMP, "M-1 6L6 -1M4 6L6 4M-1 1L1 -1", "5");
    pattern("cross", ChartLine.BACKUP, "M0 2.5H5M2.5 0V5", "5");
    svg.open("pattern", patternSize("dots", "4"));
    svg.empty("rect", "width", "4", "height", "4", "fill", "#fbeee8");
    svg.empty("circle", "cx", "2", "cy", "2", "r", "1", "fill", ChartLine.IMMERSION.colour());
    svg.close().close();
  }

  private void pattern(String name, ChartLine line, String path, String side) {
    svg.open("pattern", patternSize(name, side));
    svg.empty("path", "d", path, "stroke", line.colour(), "stroke-width", "1", "fill", EMPTY);
    svg.close();
  }

  private String[] patternSize(String name, String side) {
    return new String[] {
      "id", id(name), "width", side, "height", side, "patternUnits", "userSpaceOnUse"
    };
  }

  private String fill(ChartLine line) {
    return switch (line.fill()) {
      case NONE -> EMPTY;
      case LIGHT -> "#f6e8bd";
      case PALE -> "#ececec";
      case DARK -> "#6a6a6a";
      case HATCH -> "url(#" + id("hatch") + ")";
      case DOTS -> "url(#" + id("dots") + ")";
      case CROSS -> "url(#" + id("cross") + ")";
    };
  }

  // Panels ---------------------------------------------------------------------------------------

  /**
   * One of the pictures above each other.
   *
   * @param title what it shows, with the unit
   * @param room height of what is drawn
   */
  private record Panel(String title, double room, double least, double most, Runnable inside) {
    private static final double HEAD = 24;
    private static final double FOOT = 10;

    double head() {
      return title.isEmpty() ? 0 : HEAD;
    }

    double height() {
      return head() + room + FOOT;
    }
  }

  private ChartScale scale = new ChartScale(0, 1, 1, 0, 1);
  private final List<ChartLabels.Label> labels = new ArrayList<>();

  private void draw(Panel panel) {
    labels.clear();
    svg.open("g");
    if (!panel.title().isEmpty()) {
      text(panel.title(), BASE, y + 13);
    }
    double head = y + panel.head();
    scale = ChartScale.over(panel.least(), panel.most(), head, head + panel.room());
    panel.inside().run();
    svg.close();
    y += panel.height();
  }

  private Panel sunPanel() {
    double least = Math.min(0, least(Quantity.COUNTED));
    double most = Math.max(most(Quantity.PV), most(Quantity.COUNTED));
    for (OptionalDouble threshold : List.of(markings.start_kW(), markings.stop_kW())) {
      least = Math.min(least, threshold.orElse(0));
      most = Math.max(most, threshold.orElse(0));
    }
    return new Panel("Sun, and surplus as the relay counts it, kW", 170, least, most, this::sun);
  }

  private void sun() {
    grid();
    area(ChartLine.SUN, at -> 0, values(Quantity.PV));
    steps(ChartLine.COUNTED, values(Quantity.COUNTED));
    label("sun", ChartLine.SUN, most(Quantity.PV));
    label("counted surplus", ChartLine.COUNTED, most(Quantity.COUNTED));
    markings
        .start_kW()
        .ifPresent(start -> marked("start " + kW(start), ChartLine.THRESHOLD, start));
    markings.stop_kW().ifPresent(stop -> marked("stop " + kW(stop), ChartLine.THRESHOLD, stop));
    placeLabels();
  }

  private Panel takenPanel() {
    double most = 0;
    for (int at = 0; at < length; at++) {
      most = Math.max(most, taken(at));
    }
    double least = -most(Quantity.IMPORT);
    return new Panel(
        "Into the tank, stacked; below zero bought, kW", 110, least, most, this::taken);
  }

  private double taken(int at) {
    return value(Quantity.HEAT_PUMP, at)
        + value(Quantity.BACKUP, at)
        + value(Quantity.IMMERSION, at);
  }

  private void taken() {
    grid();
    IntToDoubleFunction heatPump = values(Quantity.HEAT_PUMP);
    IntToDoubleFunction backup = at -> heatPump.applyAsDouble(at) + value(Quantity.BACKUP, at);
    boolean helped = most(Quantity.BACKUP) > 0;
    area(ChartLine.IMPORT, at -> 0, at -> -value(Quantity.IMPORT, at));
    area(ChartLine.HEAT_PUMP, at -> 0, heatPump);
    if (helped) {
      area(ChartLine.BACKUP, heatPump, backup);
    }
    area(ChartLine.IMMERSION, backup, this::taken);
    label("immersion", ChartLine.IMMERSION, scale.most());
    if (helped) {
      label("back-up heater", ChartLine.BACKUP, scale.most() / 2);
    }
    label("heat pump", ChartLine.HEAT_PUMP, most(Quantity.HEAT_PUMP) / 2);
    label("bought", ChartLine.IMPORT, -most(Quantity.IMPORT) / 2);
    placeLabels();
  }

  private Panel statePanel() {
    return new Panel("", runsEndedByTimer() > 0 ? 52 : 38, 0, 1, this::states);
  }

  private void states() {
    double relay = y + 4;
    double heatPump = relay + LINE + 4;
    hourLines();
    bars(recording::relayClosed, relay, INK);
    bars(this::isRunning, heatPump, ChartLine.HEAT_PUMP.colour());
    note("relay closed " + times(recording::relayClosed), relay + BAR);
    note("heat pump ran " + times(this::isRunning), heatPump + BAR);
    if (runsEndedByTimer() > 0) {
      timerMarks(heatPump + BAR + 1);
    }
  }

  private void timerMarks(double top) {
    for (int at = 0; at < length; at++) {
      if (recording.runEnded(at) == HeatPumpModel.End.TIMER) {
        mark(x(at + 1), top);
      }
    }
    mark(right + GAP + 4, top + 5);
    text("by its timer " + runsEndedByTimer() + "×", right + GAP + 12, top + 13);
  }

  /** A small triangle that points up. */
  private void mark(double x, double top) {
    double half = 3.5 * size.pen;
    String path =
        "M" + at(x, top) + "L" + at(x + half, top + 7) + "L" + at(x - half, top + 7) + "Z";
    svg.empty("path", "d", path, "fill", INK);
  }

  private static String at(double x, double y) {
    return Svg.px(x) + " " + Svg.px(y);
  }

  private boolean isRunning(int at) {
    return recording.heatPump(at) == HeatPumpModel.State.RUNNING;
  }

  private int runsEndedByTimer() {
    int runs = 0;
    for (int at = 0; at < length; at++) {
      runs += recording.runEnded(at) == HeatPumpModel.End.TIMER ? 1 : 0;
    }
    return runs;
  }

  private void bars(IntPredicate state, double top, String fill) {
    for (Span span : spans(state)) {
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

  /** Steps from one to before another. */
  private record Span(int from, int until) {}

  private List<Span> spans(IntPredicate state) {
    List<Span> spans = new ArrayList<>();
    int from = -1;
    for (int at = 0; at <= length; at++) {
      boolean on = at < length && state.test(at);
      if (on && from < 0) {
        from = at;
      } else if (!on && from >= 0) {
        spans.add(new Span(from, at));
        from = -1;
      }
    }
    return spans;
  }

  private Panel tankPanel() {
    double least = Math.min(least(Quantity.BOTTOM), Hygiene.GROWTH_TO_C.value() - 5);
    double most = most(Quantity.TOP);
    for (OptionalDouble limit : List.of(markings.tankLimit_C(), markings.blendingLimit_C())) {
      most = Math.max(most, limit.orElse(most));
    }
    return new Panel("Tank, °C", 150, least, most, this::tank);
  }

  private void tank() {
    band();
    grid();
    curve("bottom", ChartLine.BOTTOM, Quantity.BOTTOM);
    curve("top", ChartLine.TOP, Quantity.TOP);
    curve("diverter sensor", ChartLine.SENSOR, Quantity.SENSOR);
    markings
        .tankLimit_C()
        .ifPresent(limit -> marked("tank limit " + degrees(limit), ChartLine.LIMIT, limit));
    markings
        .blendingLimit_C()
        .ifPresent(limit -> marked("blending " + degrees(limit), ChartLine.LIMIT, limit));
    placeLabels();
  }

  private void band() {
    double from_C = Math.max(scale.least(), Hygiene.GROWTH_FROM_C.value());
    double to_C = Hygiene.GROWTH_TO_C.value();
    svg.empty(
        "rect",
        "x",
        Svg.px(left),
        "y",
        Svg.px(scale.y(to_C)),
        "width",
        Svg.px(right - left),
        "height",
        Svg.px(scale.y(from_C) - scale.y(to_C)),
        "fill",
        fill(ChartLine.BAND));
    label("growth 20 to 45 °C", ChartLine.BAND, (from_C + to_C) / 2);
  }

  // Lines and areas ------------------------------------------------------------------------------

  private double x(double step) {
    return left + step / length * (right - left);
  }

  private double value(Quantity quantity, int at) {
    return recording.value(quantity, at);
  }

  private IntToDoubleFunction values(Quantity quantity) {
    double[] values = recording.values(quantity);
    return at -> values[at];
  }

  private double least(Quantity quantity) {
    return Arrays.stream(recording.values(quantity)).min().orElse(0);
  }

  private double most(Quantity quantity) {
    return Arrays.stream(recording.values(quantity)).max().orElse(0);
  }

  /** A mean over each step: level through it. */
  private void steps(ChartLine line, IntToDoubleFunction values) {
    stroke(line, "M" + Svg.px(left) + " " + stairs(values, new Span(0, length)));
  }

  /** The heights from left to right, after a place on the first. */
  private String stairs(IntToDoubleFunction values, Span span) {
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
  private String backStairs(IntToDoubleFunction values, Span span) {
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
  private void area(ChartLine line, IntToDoubleFunction lower, IntToDoubleFunction upper) {
    for (Span span : spans(at -> height(upper, at) != height(lower, at))) {
      String path =
          "M"
              + Svg.px(x(span.from()))
              + " "
              + stairs(upper, span)
              + "V"
              + backStairs(lower, span)
              + "Z";
      svg.empty(
          "path",
          "d",
          path,
          "fill",
          fill(line),
          "stroke",
          line.colour(),
          "stroke-width",
          Svg.px(line.width() * size.pen));
    }
  }

  /** Heights are told apart in tenths, as they are written. */
  private long height(IntToDoubleFunction values, int at) {
    return Math.round(10 * scale.y(values.applyAsDouble(at)));
  }

  /** A temperature at the end of each step: straight from one to the next. */
  private void curve(String text, ChartLine line, Quantity quantity) {
    IntToDoubleFunction values = values(quantity);
    StringBuilder path = new StringBuilder();
    for (int at = 0; at < length; at++) {
      boolean end = at == 0 || at == length - 1;
      if (end || !isLevel(values, at)) {
        path.append(at == 0 ? 'M' : 'L').append(at(x(at + 1), scale.y(values.applyAsDouble(at))));
      }
    }
    stroke(line, path.toString());
    label(text, line, value(quantity, length - 1));
  }

  /** Whether a line goes level through a point, so that the point need not be told. */
  private boolean isLevel(IntToDoubleFunction values, int at) {
    long height = height(values, at);
    return height == height(values, at - 1) && height == height(values, at + 1);
  }

  private void stroke(ChartLine line, String path) {
    svg.empty(
        "path",
        "d",
        path,
        "fill",
        EMPTY,
        "stroke",
        line.colour(),
        "stroke-width",
        Svg.px(line.width() * size.pen),
        "stroke-dasharray",
        line.dashes(),
        "stroke-linejoin",
        "round");
  }

  /** A level line across the panel, with its label. */
  private void marked(String text, ChartLine line, double value) {
    String height = Svg.px(scale.y(value));
    stroke(line, "M" + Svg.px(left) + " " + height + "H" + Svg.px(right));
    label(text, line, value);
  }

  private void label(String text, ChartLine line, double value) {
    labels.add(new ChartLabels.Label(text, line, scale.y(value)));
  }

  // Labels and axes ------------------------------------------------------------------------------

  private void placeLabels() {
    ChartLabels column = new ChartLabels(scale.head() + 2, scale.foot() - 2, LINE);
    for (ChartLabels.Placed placed : column.placed(labels)) {
      swatch(placed);
      text(placed.label().text(), right + GAP + SWATCH + 4, placed.y() + size.font / 3);
    }
  }

  private void swatch(ChartLabels.Placed placed) {
    ChartLine line = placed.label().line();
    double from = right + GAP;
    if (line.fill() != ChartLine.Fill.NONE) {
      svg.empty(
          "rect",
          "x",
          Svg.px(from),
          "y",
          Svg.px(placed.y() - 4),
          "width",
          Svg.px(SWATCH),
          "height",
          "8",
          "fill",
          fill(line),
          "stroke",
          line.colour());
      return;
    }
    String leader = "M" + at(right, placed.label().wanted()) + "L" + at(from, placed.y());
    if (isLevelAtTheEnd(line)) {
      svg.empty("path", "d", leader, "stroke", line.colour(), "stroke-width", "0.6", "fill", EMPTY);
    }
    stroke(line, "M" + at(from, placed.y()) + "H" + Svg.px(from + SWATCH));
  }

  /** Whether the label's height is that of the line where it leaves the panel. */
  private static boolean isLevelAtTheEnd(ChartLine line) {
    return line != ChartLine.COUNTED;
  }

  private void note(String text, double base) {
    text(text, right + GAP, base);
  }

  private void text(String text, double x, double base) {
    svg.text("text", text, "x", Svg.px(x), "y", Svg.px(base));
  }

  private void grid() {
    hourLines();
    scale.ticks().forEach(this::tick);
  }

  private void hourLines() {
    for (double hour : hours()) {
      String path = "M" + at(x(step(hour)), scale.head()) + "V" + Svg.px(scale.foot());
      svg.empty("path", "d", path, "stroke", GRID);
    }
  }

  private void tick(double value) {
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
        Svg.px(height + size.font / 3),
        "text-anchor",
        "end");
  }

  /** The hours since midnight of the first day that are marked. */
  private List<Double> hours() {
    double first = recording.secondOfDay(0) / (double) SECONDS_PER_HOUR;
    double last = first + length * recording.step().hours();
    double tick = hourTick(last - first);
    List<Double> hours = new ArrayList<>();
    for (double hour = Math.ceil(first / tick - 1e-9) * tick; hour <= last + 1e-9; hour += tick) {
      hours.add(hour);
    }
    return hours;
  }

  private double hourTick(double span) {
    return Arrays.stream(HOUR_TICKS)
        .filter(tick -> span / tick <= size.mostTicks)
        .findFirst()
        .orElse(span);
  }

  private double step(double hour) {
    return (hour * SECONDS_PER_HOUR - recording.secondOfDay(0)) / recording.step().seconds();
  }

  private void clock() {
    for (double hour : hours()) {
      svg.text(
          "text",
          clock(hour),
          "x",
          Svg.px(x(step(hour))),
          "y",
          Svg.px(y + 8),
          "text-anchor",
          "middle");
    }
  }

  private String clock(double hour) {
    long minutes = Math.round(hour * 60);
    long day = (long) HOURS_PER_DAY * 60;
    long shown =
        minutes == day && length * recording.step().hours() <= HOURS_PER_DAY ? day : minutes % day;
    return String.format(Locale.ROOT, "%02d:%02d", shown / 60, shown % 60);
  }
}
