package deadband.report;

import deadband.dayrun.Recording;
import deadband.dayrun.Recording.Quantity;
import deadband.report.DayChart.Size;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.Stream;

/**
 * One day of two setups in one SVG picture: the tank's top and the relay, dashed before and solid
 * after.
 */
final class OverlayChart {

  private static final double TOP = 26;
  private static final double CLOCK = 26;

  private OverlayChart() {}

  static String of(Recording before, Recording after, Size size, String id, String title) {
    ChartData then = new ChartData(before);
    ChartData now = new ChartData(after);
    List<ChartPanel> panels = List.of(new Tank(then, now), new Relay(then, now));
    Svg svg = new Svg();
    ChartPaper paper = new ChartPaper(svg, now, size, id, TOP);
    double height = TOP + panels.stream().mapToDouble(ChartPaper::height).sum() + CLOCK;
    svg.picture(size, height, id, title + ", before and after", description(then, now));
    svg.lettered(size);
    svg.text("text", title + ", before and after", "x", "4", "y", "16", "font-weight", "bold");
    panels.forEach(paper::draw);
    paper.clock();
    return svg.close().close().toString();
  }

  private static String description(ChartData then, ChartData now) {
    return "Before: " + said(then) + ". After: " + said(now) + ".";
  }

  private static String said(ChartData data) {
    return "relay closed "
        + data.times(data.recording()::relayClosed)
        + ", heat pump ran "
        + data.times(data::isRunning)
        + ", tank top "
        + Words.tenths(data.least(Quantity.TOP))
        + " to "
        + Words.tenths(data.most(Quantity.TOP))
        + " °C";
  }

  /** The top of the tank. */
  private record Tank(ChartData then, ChartData now) implements ChartPanel {

    @Override
    public String title() {
      return "Top of the tank, °C";
    }

    @Override
    public double room() {
      return 130;
    }

    @Override
    public double least() {
      return Stream.of(then, now).mapToDouble(each -> each.least(Quantity.TOP)).min().orElse(0);
    }

    @Override
    public double most() {
      return Stream.of(then, now).mapToDouble(each -> each.most(Quantity.TOP)).max().orElse(0);
    }

    @Override
    public void draw(ChartPaper paper) {
      paper.grid();
      paper.steps(ChartLine.SENSOR, then.values(Quantity.TOP));
      paper.steps(ChartLine.TOP, now.values(Quantity.TOP));
      paper.label("before", ChartLine.SENSOR, then.value(Quantity.TOP, then.length() - 1));
      paper.label("after", ChartLine.TOP, now.value(Quantity.TOP, now.length() - 1));
      paper.placeLabels();
    }
  }

  /** When the relay is closed and the heat pump runs. */
  private record Relay(ChartData then, ChartData now) implements ChartPanel {

    @Override
    public String title() {
      return "Relay closed and heat pump running";
    }

    @Override
    public double room() {
      return 76;
    }

    @Override
    public double least() {
      return 0;
    }

    @Override
    public double most() {
      return 1;
    }

    @Override
    public void draw(ChartPaper paper) {
      double top = paper.scale().head() + 2;
      paper.hourLines();
      bars(paper, "relay, before ", then.recording()::relayClosed, top, "#6a6a6a");
      bars(paper, "relay, after ", now.recording()::relayClosed, top + 18, ChartPaper.INK);
      bars(paper, "runs, before ", then::isRunning, top + 36, "#6f97b5");
      bars(paper, "runs, after ", now::isRunning, top + 54, ChartLine.HEAT_PUMP.colour());
    }

    private void bars(ChartPaper paper, String name, IntPredicate state, double top, String fill) {
      ChartData data = name.endsWith("before ") ? then : now;
      paper.bars(state, top, fill);
      paper.note(name + data.times(state), top + ChartPaper.BAR);
    }
  }
}
