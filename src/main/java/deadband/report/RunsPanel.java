package deadband.report;

/** Bars for the relay and the heat pump, with the runs that the timer ended. */
record RunsPanel(ChartData data) implements ChartPanel {

  @Override
  public String title() {
    return "";
  }

  @Override
  public double room() {
    return data.runsEndedByTimer() > 0 ? 52 : 38;
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
    double relay = paper.scale().head() + 4;
    double heatPump = relay + ChartPaper.LINE + 4;
    paper.hourLines();
    paper.bars(data.recording()::relayClosed, relay, ChartPaper.INK);
    paper.bars(data::isRunning, heatPump, ChartLine.HEAT_PUMP.colour());
    paper.note("relay closed " + data.times(data.recording()::relayClosed), relay + ChartPaper.BAR);
    paper.note("heat pump ran " + data.times(data::isRunning), heatPump + ChartPaper.BAR);
    if (data.runsEndedByTimer() > 0) {
      paper.timerMarks(heatPump + ChartPaper.BAR + 1);
    }
  }
}
