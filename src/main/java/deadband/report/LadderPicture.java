package deadband.report;

import deadband.report.DayChart.Size;
import deadband.report.TankLadder.Kind;
import deadband.report.TankLadder.Rung;
import deadband.trade.Hygiene;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The temperatures of a tank as an SVG picture: a row each, hottest on top, all on one scale. Each
 * kind has a mark of its own shape; limits run through all rows, so that what crosses them shows.
 */
final class LadderPicture {

  /** Room for the names beside the scale, where there is room. */
  private static final double NAMES = 330;

  private static final double TOP = 20;
  private static final double FOOT = 44;
  private static final double EDGE = 12;
  private static final double BAR = 11;
  private static final double HALF = 6;

  /** Width of an ordinary letter as a share of its height, generously. */
  private static final double LETTER = 0.5;

  private final Svg svg = new Svg();
  private final List<Rung> rungs;
  private final Size size;
  private final String id;
  private final ChartScale scale;
  private final boolean beside;
  private final double row;

  private LadderPicture(List<Rung> rungs, Size size, String id) {
    this.rungs = rungs;
    this.size = size;
    this.id = id;
    double least = rungs.stream().mapToDouble(Rung::from_C).min().orElse(40);
    double most = rungs.stream().mapToDouble(Rung::to_C).max().orElse(100);
    this.beside = size == Size.PAGE;
    this.row = beside ? 20 : 34;
    // a scale from left to right: its head lies at the right edge
    this.scale = ChartScale.over(least - 5, most, size.width() - EDGE - 24, beside ? NAMES : EDGE);
  }

  /**
   * The picture, an {@code svg} element.
   *
   * @param id begins every id in it
   */
  static String of(List<Rung> rungs, Size size, String id) {
    return new LadderPicture(rungs, size, id).drawn();
  }

  private String drawn() {
    double foot = TOP + rungs.size() * row;
    svg.picture(size, foot + FOOT, id, "Temperatures of the tank", description());
    svg.lettered(size);
    growth(foot);
    scale(foot);
    rungs.stream().filter(rung -> rung.kind() == Kind.LIMIT).forEach(rung -> through(rung, foot));
    for (int at = 0; at < rungs.size(); at++) {
      row(rungs.get(at), TOP + at * row);
    }
    return svg.close().close().toString();
  }

  private void growth(double foot) {
    double from = scale.y(Math.max(scale.least(), Hygiene.GROWTH_FROM_C.value()));
    double to = scale.y(Hygiene.GROWTH_TO_C.value());
    if (to > from) {
      rect(from, TOP, to - from, foot - TOP, "#ececec", "none");
      text("Legionella grows: 20 to 45 °C", from + 4, TOP - 6, "start", ChartPaper.INK);
    }
  }

  private void scale(double foot) {
    for (double tick : scale.ticks()) {
      line("M" + Svg.px(scale.y(tick)) + " " + Svg.px(TOP) + "V" + Svg.px(foot), "#d4d4d4", "1");
      text(Words.number(tick), scale.y(tick), foot + 14, "middle", ChartPaper.INK);
    }
    text("°C", scale.y(scale.most()) + 14, foot + 14, "start", ChartPaper.INK);
    text(legend(), EDGE, foot + 34, "start", ChartPaper.INK);
  }

  private String legend() {
    return size == Size.NARROW
        ? "▭ band  ◆ set point  | limit  ■ cut-out  ▲ relief"
        : "▭ band in which a device moves   ◆ set point   | limit, through all rows   ■ cut-out   ▲"
            + " relief valve";
  }

  private void through(Rung rung, double foot) {
    svg.empty(
        "path",
        "d",
        "M" + Svg.px(scale.y(rung.to_C())) + " " + Svg.px(TOP) + "V" + Svg.px(foot),
        "stroke",
        ChartLine.LIMIT.colour(),
        "stroke-width",
        "1",
        "stroke-dasharray",
        "4 3");
  }

  /** A row: the words beside the scale, else above the mark. */
  private void row(Rung rung, double top) {
    double from = scale.y(rung.from_C());
    double to = scale.y(rung.to_C());
    if (beside) {
      line("M" + Svg.px(EDGE) + " " + Svg.px(top + row) + "H" + Svg.px(NAMES), "#d4d4d4", "0.6");
      text(rung.device(), EDGE, top + 14, "start", ChartPaper.INK);
      text(rung.temperature(), NAMES - EDGE, top + 14, "end", ChartPaper.INK);
      mark(rung.kind(), from, to, top + row / 2);
      return;
    }
    boolean late = to > size.width() * 0.55;
    String words = rung.device() + "  " + rung.temperature();
    double begins = late ? to + HALF : from - HALF;
    double width = LETTER * size.font() * words.length();
    rect(late ? begins - width : begins, top + 3, width, 14, "#ffffff", "none");
    text(words, begins, top + 14, late ? "end" : "start", ChartPaper.INK);
    mark(rung.kind(), from, to, top + 24);
  }

  private void mark(Kind kind, double from, double to, double middle) {
    switch (kind) {
      case BAND ->
          rect(
              from,
              middle - BAR / 2,
              Math.max(2, to - from),
              BAR,
              "#c9dced",
              ChartLine.HEAT_PUMP.colour());
      case SET_POINT -> shape(to, middle, "l6 6l-6 6l-6 -6z", -HALF, ChartLine.HEAT_PUMP.colour());
      case LIMIT ->
          line("M" + Svg.px(to) + " " + Svg.px(middle - 8) + "v16", ChartLine.LIMIT.colour(), "3");
      case CUT_OUT -> rect(to - HALF, middle - HALF, 12, 12, ChartLine.TOP.colour(), "none");
      case RELIEF -> shape(to, middle, "l7 12h-14z", -HALF, ChartLine.TOP.colour());
    }
  }

  private void shape(double x, double y, String path, double up, String fill) {
    svg.empty("path", "d", "M" + Svg.px(x) + " " + Svg.px(y + up) + path, "fill", fill);
  }

  private void rect(double x, double y, double width, double height, String fill, String stroke) {
    svg.empty(
        "rect",
        "x",
        Svg.px(x),
        "y",
        Svg.px(y),
        "width",
        Svg.px(width),
        "height",
        Svg.px(height),
        "fill",
        fill,
        "stroke",
        stroke);
  }

  private void line(String path, String stroke, String width) {
    svg.empty("path", "d", path, "stroke", stroke, "stroke-width", width, "fill", "none");
  }

  private void text(String words, double x, double y, String anchor, String fill) {
    svg.text("text", words, "x", Svg.px(x), "y", Svg.px(y), "text-anchor", anchor, "fill", fill);
  }

  private String description() {
    return rungs.stream()
        .map(
            rung ->
                String.format(
                    Locale.ROOT,
                    "%s: %s, %s",
                    rung.device(),
                    rung.temperature(),
                    rung.kind().word()))
        .collect(Collectors.joining("; ", "From hot to cool. ", "."));
  }
}
