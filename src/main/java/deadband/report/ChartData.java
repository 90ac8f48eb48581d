package deadband.report;

import deadband.dayrun.HeatPumpModel;
import deadband.dayrun.Recording;
import deadband.dayrun.Recording.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/** What a chart draws of a recorded day. */
record ChartData(Recording recording) {

  private static final int SECONDS_PER_HOUR = 3600;

  /** Steps from one to before another. */
  record Span(int from, int until) {}

  int length() {
    return recording.length();
  }

  double value(Quantity quantity, int at) {
    return recording.value(quantity, at);
  }

  IntToDoubleFunction values(Quantity quantity) {
    double[] values = recording.values(quantity);
    return at -> values[at];
  }

  double least(Quantity quantity) {
    return Arrays.stream(recording.values(quantity)).min().orElse(0);
  }

  double most(Quantity quantity) {
    return Arrays.stream(recording.values(quantity)).max().orElse(0);
  }

  List<Span> spans(IntPredicate state) {
    List<Span> spans = new ArrayList<>();
    int from = -1;
    for (int at = 0; at <= length(); at++) {
      boolean on = at < length() && state.test(at);
      if (on && from < 0) {
        from = at;
      } else if (!on && from >= 0) {
        spans.add(new Span(from, at));
        from = -1;
      }
    }
    return spans;
  }

  String times(IntPredicate state) {
    return spans(state).size() + "×";
  }

  boolean isRunning(int at) {
    return recording.heatPump(at) == HeatPumpModel.State.RUNNING;
  }

  int runsEndedByTimer() {
    int runs = 0;
    for (int at = 0; at < length(); at++) {
      runs += isEndedByTimer(at) ? 1 : 0;
    }
    return runs;
  }

  boolean isEndedByTimer(int at) {
    return recording.runEnded(at) == HeatPumpModel.End.TIMER;
  }

  /** The hour at which it begins, since midnight. */
  double firstHour() {
    return recording.secondOfDay(0) / (double) SECONDS_PER_HOUR;
  }

  double hours() {
    return length() * recording.step().hours();
  }

  /** The step that begins at this hour. */
  double step(double hour) {
    return (hour - firstHour()) / recording.step().hours();
  }
}
