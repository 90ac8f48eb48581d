package deadband.dayrun;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * All that a run shows, step by step, kept in columns.
 *
 * <pre>{@code
 * Recording recording = Recording.of(StepLength.MINUTE, day.profile().length());
 * DayRun.of(installation, StepLength.MINUTE).watchedBy(recording).through(day);
 * }</pre>
 *
 * <p>Room is set aside once, about 160 bytes a step: 230 kB for a day of minutes, 84 MB for a year.
 */
public final class Recording implements Trace {

  private static final List<Quantity> QUANTITIES = List.of(Quantity.values());

  private final StepLength step;
  private final int[] secondOfDay;
  private final double[][] values;
  private final HeatPumpModel.State[] heatPump;
  private final HeatPumpModel.End[] runEnded;
  private final BitSet relayClosed;
  private final BitSet onSurplus;
  private final BitSet disinfecting;
  private int length;

  private Recording(StepLength step, int steps) {
    this.step = step;
    secondOfDay = new int[steps];
    values = new double[QUANTITIES.size()][steps];
    heatPump = new HeatPumpModel.State[steps];
    runEnded = new HeatPumpModel.End[steps];
    relayClosed = new BitSet(steps);
    onSurplus = new BitSet(steps);
    disinfecting = new BitSet(steps);
  }

  /**
   * A recording with room for so many steps.
   *
   * @param step length of each
   */
  public static Recording of(StepLength step, int steps) {
    return new Recording(step, steps);
  }

  /** What is recorded as a number, named by quantity and unit; see {@link Step}. */
  @SuppressWarnings("ImmutableEnumChecker")
  public enum Quantity {
    PV("pv_kW", Step::pv_kW),
    HOUSE("house_kW", Step::house_kW),
    DRAW("draw_L", Step::draw_L),
    COUNTED("counted_kW", Step::counted_kW),
    HEAT_PUMP("heatPump_kW", Step::heatPump_kW),
    HEAT_PUMP_HEAT("heatPumpHeat_kW", Step::heatPumpHeat_kW),
    IMMERSION("immersion_kW", Step::immersion_kW),
    BACKUP("backup_kW", Step::backup_kW),
    CHARGE("charge_kW", Step::charge_kW),
    DISCHARGE("discharge_kW", Step::discharge_kW),
    CHARGER("charger_kW", Step::charger_kW),
    IMPORT("import_kW", Step::import_kW),
    EXPORT("export_kW", Step::export_kW),
    CURTAILED("curtailed_kW", Step::curtailed_kW),
    KEPT("kept_kW", Step::kept_kW),
    TOP("tankTop_C", Step::top_C),
    SENSOR("tankSensor_C", Step::sensor_C),
    BOTTOM("tankBottom_C", Step::bottom_C);

    private final String header;
    private final ToDoubleFunction<Step> of;

    Quantity(String header, ToDoubleFunction<Step> of) {
      this.header = header;
      this.of = of;
    }

    /** Its name, ending in its unit. */
    public String header() {
      return header;
    }
  }

  /** What is recorded as a state, in the order in which a trace lists it. */
  public enum Status {
    RELAY_CLOSED("relayClosed"),
    HEAT_PUMP("heatPump"),
    RUN_ENDED("runEnded"),
    ON_SURPLUS("onSurplus"),
    DISINFECTING("disinfecting");

    private final String header;

    Status(String header) {
      this.header = header;
    }

    /** Its name. */
    public String header() {
      return header;
    }
  }

  /** The names of all that is recorded, numbers first. */
  public static List<String> headers() {
    return Stream.concat(
            QUANTITIES.stream().map(Quantity::header),
            Stream.of(Status.values()).map(Status::header))
        .toList();
  }

  /**
   * Keeps a step.
   *
   * @throws IllegalStateException where no room is left
   */
  @Override
  public void step(Step now) {
    if (length == secondOfDay.length) {
      throw new IllegalStateException("a recording of " + length + " steps is full");
    }
    secondOfDay[length] = now.secondOfDay();
    for (int quantity = 0; quantity < values.length; quantity++) {
      values[quantity][length] = QUANTITIES.get(quantity).of.applyAsDouble(now);
    }
    heatPump[length] = now.heatPump();
    runEnded[length] = now.runEnded();
    relayClosed.set(length, now.relayClosed());
    onSurplus.set(length, now.onSurplus());
    disinfecting.set(length, now.disinfecting());
    length++;
  }

  public StepLength step() {
    return step;
  }

  /** Steps recorded so far. */
  public int length() {
    return length;
  }

  /** Second of the day at which a step begins [s]. */
  public int secondOfDay(int at) {
    return secondOfDay[at];
  }

  /** A quantity in a step: a mean over it, or a temperature at its end. */
  public double value(Quantity quantity, int at) {
    return values[QUANTITIES.indexOf(quantity)][at];
  }

  /** A quantity, step by step. */
  public double[] values(Quantity quantity) {
    return Arrays.copyOf(values[QUANTITIES.indexOf(quantity)], length);
  }

  public boolean relayClosed(int at) {
    return relayClosed.get(at);
  }

  /** What the heat pump was doing during a step. */
  public HeatPumpModel.State heatPump(int at) {
    return heatPump[at];
  }

  /** How a run ended with a step, if one did. */
  public HeatPumpModel.End runEnded(int at) {
    return runEnded[at];
  }

  /** Whether the compressor ran for the relay during a step. */
  public boolean onSurplus(int at) {
    return onSurplus.get(at);
  }

  /** Whether a disinfection cycle was under way during a step. */
  public boolean disinfecting(int at) {
    return disinfecting.get(at);
  }
}
