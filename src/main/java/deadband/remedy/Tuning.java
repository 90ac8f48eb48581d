package deadband.remedy;

import deadband.setup.Change;
import deadband.setup.Entered;
import deadband.setup.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

// Error Prone cannot see that nothing here changes.
/** The values that a search for the best settings may turn, each by the steps of its dial. */
@SuppressWarnings("ImmutableEnumChecker")
enum Tuning {
  START_KW(setup -> setup.relay().start_kW(), -20, 20, 0.1, 0.5),
  STOP_KW(setup -> setup.relay().stop_kW(), 0, 20, 0.1, 0.5),
  START_DELAY_MIN(setup -> setup.relay().startDelay_min(), 1, 30, 1, 3),
  STOP_DELAY_MIN(setup -> setup.relay().stopDelay_min(), 1, 30, 1, 3),
  SURPLUS_START_C(setup -> setup.heatPump().surplus().start_C(), 30, 75, 0.5, 2),
  SURPLUS_STOP_C(setup -> setup.heatPump().surplus().stop_C(), 30, 75, 0.5, 2),
  EVERYDAY_START_C(setup -> setup.heatPump().everyday().start_C(), 30, 75, 0.5, 2),
  EVERYDAY_STOP_C(setup -> setup.heatPump().everyday().stop_C(), 30, 75, 0.5, 2);

  private final Value value;
  private final double least;
  private final double most;
  private final double[] steps;

  Tuning(Value value, double least, double most, double... steps) {
    this.value = value;
    this.least = least;
    this.most = most;
    this.steps = steps;
  }

  /** Where a setup tells the value. */
  @FunctionalInterface
  interface Value extends Function<Setup, Entered<Double>> {}

  /** The changes of this value by one step or by several, down and up. */
  List<Change> around(Setup setup) {
    Entered<Double> entered = value.apply(setup);
    List<Change> changes = new ArrayList<>();
    if (entered.isEntered()) {
      double now = Objects.requireNonNull(entered.value());
      for (double step : steps) {
        add(changes, entered, now - step);
        add(changes, entered, now + step);
      }
    }
    return changes;
  }

  private void add(List<Change> changes, Entered<Double> entered, double to) {
    double rounded = Math.rint(to * 10) / 10 + 0.0;
    if (rounded >= least && rounded <= most) {
      changes.add(Change.of(entered, rounded));
    }
  }
}
