package deadband.report;

import deadband.dayrun.Recording.Quantity;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Power input of the heaters, stacked, and below zero what is imported. */
record HeatingPanel(ChartData data) implements ChartPanel {

  @Override
  public String title() {
    return "Power input of the heaters, stacked; below zero import, kW";
  }

  @Override
  public double room() {
    return 84;
  }

  @Override
  public double least() {
    return -data.most(Quantity.IMPORT);
  }

  @Override
  public double most() {
    return IntStream.range(0, data.length()).mapToDouble(this::all).max().orElse(0);
  }

  private double all(int at) {
    return withBackup(at) + data.value(Quantity.IMMERSION, at);
  }

  private double withBackup(int at) {
    return data.value(Quantity.HEAT_PUMP, at) + data.value(Quantity.BACKUP, at);
  }

  @Override
  public void draw(ChartPaper paper) {
    paper.grid();
    IntToDoubleFunction heatPump = data.values(Quantity.HEAT_PUMP);
    boolean helped = data.most(Quantity.BACKUP) > 0;
    paper.area(ChartLine.IMPORT, at -> 0, at -> -data.value(Quantity.IMPORT, at));
    paper.area(ChartLine.HEAT_PUMP, at -> 0, heatPump);
    if (helped) {
      paper.area(ChartLine.BACKUP, heatPump, this::withBackup);
    }
    paper.area(ChartLine.IMMERSION, this::withBackup, this::all);
    paper.label("immersion", ChartLine.IMMERSION, paper.scale().most());
    if (helped) {
      paper.label("back-up heater", ChartLine.BACKUP, paper.scale().most() / 2);
    }
    paper.label("heat pump", ChartLine.HEAT_PUMP, data.most(Quantity.HEAT_PUMP) / 2);
    paper.label("import", ChartLine.IMPORT, -data.most(Quantity.IMPORT) / 2);
    paper.placeLabels();
  }
}
