package deadband.report;

import deadband.dayrun.Recording.Quantity;
import deadband.trade.Hygiene;
import java.util.stream.DoubleStream;

/** Temperatures of the tank, with their limits and the band in which Legionella grows. */
record TankPanel(ChartData data, DayChart.Markings markings) implements ChartPanel {

  @Override
  public String title() {
    return "Tank, °C";
  }

  @Override
  public double room() {
    return 116;
  }

  @Override
  public double least() {
    return Math.min(data.least(Quantity.BOTTOM), Hygiene.GROWTH_TO_C.value() - 5);
  }

  @Override
  public double most() {
    DoubleStream limits =
        DoubleStream.concat(markings.tankLimit_C().stream(), markings.blendingLimit_C().stream());
    return DoubleStream.concat(DoubleStream.of(data.most(Quantity.TOP)), limits).max().orElse(0);
  }

  @Override
  public void draw(ChartPaper paper) {
    double from_C = Math.max(paper.scale().least(), Hygiene.GROWTH_FROM_C.value());
    paper.band("growth 20 to 45 °C", ChartLine.BAND, from_C, Hygiene.GROWTH_TO_C.value());
    paper.grid();
    paper.curve("tank bottom", ChartLine.BOTTOM, Quantity.BOTTOM);
    paper.curve("tank top", ChartLine.TOP, Quantity.TOP);
    paper.curve("diverter sensor", ChartLine.SENSOR, Quantity.SENSOR);
    markings
        .tankLimit_C()
        .ifPresent(
            limit ->
                paper.marked("tank limit " + Words.withUnit(limit, "°C"), ChartLine.LIMIT, limit));
    markings
        .blendingLimit_C()
        .ifPresent(
            limit ->
                paper.marked(
                    "mixing valve " + Words.withUnit(limit, "°C"), ChartLine.LIMIT, limit));
    paper.placeLabels();
  }
}
