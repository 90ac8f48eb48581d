package deadband.report;

import deadband.dayrun.Recording;
import deadband.dayrun.Recording.Quantity;
import deadband.days.DayModel;
import deadband.setup.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A recorded day as an SVG picture, panels one above the other on one axis of time: PV power and
 * counted surplus with both thresholds; power input of the heaters, stacked, and import below zero;
 * bars for relay and heat pump; temperatures of the tank with their limits.
 *
 * <p>Nothing is shown by colour alone: lines differ in dash and weight, areas in pattern, and each
 * is named beside the panel. The text is text. Self-contained, without scripts; the same recording
 * gives the same bytes. Meant for a day or a few: each step is drawn.
 */
public final class DayChart {

  private static final double TOP = 26;
  private static final double CLOCK = 24;

  private final ChartData data;
  private final Markings markings;
  private final Size size;
  private final Svg svg = new Svg();

  private DayChart(ChartData data, Markings markings, Size size) {
    this.data = data;
    this.markings = markings;
    this.size = size;
  }

  /**
   * What is marked beside the run itself.
   *
   * @param id begins every id of the picture, so that several may stand in one page; a letter and
   *     letters, digits or dashes
   * @param title what day this is
   * @param surplusOnly whether the day is one of surplus, PV and house load not apart
   * @param start_kW the relay's start threshold [kW]
   * @param stop_kW its stop threshold [kW]
   * @param tankLimit_C temperature at which the diverter stops [°C]
   * @param blendingLimit_C the highest hot supply of the mixing valve [°C]
   */
  public record Markings(
      String id,
      String title,
      boolean surplusOnly,
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

    /** The thresholds and limits of a setup. */
    public static Markings of(Setup setup, DayModel model, String id, String title) {
      return of(setup, model, id, title, false);
    }

    /** The same of a day that may be one of surplus alone. */
    public static Markings of(
        Setup setup, DayModel model, String id, String title, boolean surplusOnly) {
      return new Markings(
          id,
          title,
          surplusOnly,
          OptionalDouble.of(model.installation().relay().start_kW()),
          OptionalDouble.of(model.installation().relay().stop_kW()),
          setup.diverter().limit_C().isEntered()
              ? OptionalDouble.of(model.installation().diverter().opening_C())
              : OptionalDouble.empty(),
          setup
              .blending()
              .hotSupplyMax_C()
              .optional()
              .map(OptionalDouble::of)
              .orElse(OptionalDouble.empty()));
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

    /** A word for it, to tell ids apart. */
    String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    int width() {
      return width;
    }

    int left() {
      return left;
    }

    int labels() {
      return labels;
    }

    double font() {
      return font;
    }

    int mostTicks() {
      return mostTicks;
    }

    double pen() {
      return pen;
    }
  }

  /**
   * The picture, an {@code svg} element.
   *
   * @throws IllegalArgumentException where nothing was recorded
   */
  public static String of(Recording recording, Markings markings, Size size) {
    DayChart chart = chart(recording, markings, size);
    return chart.drawnBeside(chart);
  }

  /** Two days side by side on the same scales, one {@code svg} element. */
  public static String of(
      Recording left, Markings leftMarkings, Recording right, Markings rightMarkings) {
    DayChart one = chart(left, leftMarkings, Size.PAGE);
    DayChart other = chart(right, rightMarkings, Size.PAGE);
    String width = Integer.toString(2 * Size.PAGE.width());
    String height = Svg.px(one.height(other));
    return new Svg()
        .open(
            "svg",
            "xmlns",
            "http://www.w3.org/2000/svg",
            "viewBox",
            "0 0 " + width + " " + height,
            "width",
            width,
            "height",
            height)
        .picture(one.drawnBeside(other), 0)
        .picture(other.drawnBeside(one), Size.PAGE.width())
        .close()
        .toString();
  }

  private static DayChart chart(Recording recording, Markings markings, Size size) {
    if (recording.length() == 0) {
      throw new IllegalArgumentException("the recording is empty: there is nothing to chart");
    }
    return new DayChart(new ChartData(recording), markings, size);
  }

  private List<ChartPanel> panels() {
    return List.of(
        new SurplusPanel(data, markings),
        new HeatingPanel(data),
        new RunsPanel(data),
        new TankPanel(data, markings));
  }

  private double height(DayChart other) {
    double height = TOP + CLOCK;
    for (int at = 0; at < panels().size(); at++) {
      height += ChartPaper.height(panels().get(at), other.panels().get(at));
    }
    return height;
  }

  private String drawnBeside(DayChart other) {
    ChartPaper paper = new ChartPaper(svg, data, size, markings.id(), TOP);
    begin(height(other));
    for (int at = 0; at < panels().size(); at++) {
      paper.draw(panels().get(at), other.panels().get(at));
    }
    paper.clock();
    return svg.close().close().toString();
  }

  private void begin(double height) {
    svg.picture(size, height, markings.id(), markings.title(), description());
    svg.lettered(size);
    svg.text(
        "text",
        cut(markings.title(), (int) (size.width() / size.font() * 1.75)),
        "x",
        "4",
        "y",
        "16",
        "font-weight",
        "bold");
  }

  private static String cut(String text, int most) {
    int length = text.codePointCount(0, text.length());
    return length <= most ? text : text.substring(0, text.offsetByCodePoints(0, most - 1)) + "…";
  }

  /** What the picture shows, for those who do not see it. */
  private String description() {
    List<String> says = new ArrayList<>();
    markings.start_kW().ifPresent(start -> says.add("Relay start " + kW(start)));
    markings.stop_kW().ifPresent(stop -> says.add("relay stop " + kW(stop)));
    says.add("relay closed " + data.times(data.recording()::relayClosed));
    says.add("heat pump ran " + data.times(data::isRunning));
    says.add(data.runsEndedByTimer() + " of its runs ended by the timer");
    says.add("tank top " + range(Quantity.TOP) + ", bottom " + range(Quantity.BOTTOM));
    markings.tankLimit_C().ifPresent(limit -> says.add("tank limit " + degrees(limit)));
    markings.blendingLimit_C().ifPresent(limit -> says.add("mixing valve limit " + degrees(limit)));
    return String.join("; ", says) + ".";
  }

  private String range(Quantity quantity) {
    return "%s to %s"
        .formatted(Words.tenths(data.least(quantity)), Words.tenths(data.most(quantity)) + " °C");
  }

  private static String kW(double value) {
    return Words.withUnit(value, "kW");
  }

  private static String degrees(double value) {
    return Words.withUnit(value, "°C");
  }
}
