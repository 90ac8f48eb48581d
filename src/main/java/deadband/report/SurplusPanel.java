package deadband.report;

import deadband.dayrun.Recording.Quantity;
import java.util.stream.DoubleStream;

/** PV power, and surplus as the relay counts it, with both thresholds. */
record SurplusPanel(ChartData data, DayChart.Markings markings) implements ChartPanel {

  @Override
  public String title() {
    return (markings.surplusOnly() ? "Surplus entered" : "PV power")
        + ", and surplus as counted by the relay, kW";
  }

  @Override
  public double room() {
    return 130;
  }

  @Override
  public double least() {
    return DoubleStream.concat(DoubleStream.of(0, data.least(Quantity.COUNTED)), thresholds())
        .min()
        .orElse(0);
  }

  @Override
  public double most() {
    DoubleStream drawn = DoubleStream.of(0, data.most(Quantity.PV), data.most(Quantity.COUNTED));
    return DoubleStream.concat(drawn, thresholds()).max().orElse(0);
  }

  private DoubleStream thresholds() {
    return DoubleStream.concat(markings.start_kW().stream(), markings.stop_kW().stream());
  }

  @Override
  public void draw(ChartPaper paper) {
    paper.grid();
    paper.area(ChartLine.PV, at -> 0, data.values(Quantity.PV));
    paper.steps(ChartLine.COUNTED, data.values(Quantity.COUNTED));
    paper.label(
        markings.surplusOnly() ? "surplus entered" : "PV", ChartLine.PV, data.most(Quantity.PV));
    paper.label("counted surplus", ChartLine.COUNTED, data.most(Quantity.COUNTED));
    markings
        .start_kW()
        .ifPresent(
            start ->
                paper.marked("start " + Words.withUnit(start, "kW"), ChartLine.THRESHOLD, start));
    markings
        .stop_kW()
        .ifPresent(
            stop -> paper.marked("stop " + Words.withUnit(stop, "kW"), ChartLine.THRESHOLD, stop));
    paper.placeLabels();
  }
}
