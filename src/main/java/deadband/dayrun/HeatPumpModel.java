package deadband.dayrun;

import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The heat pump as it heats the tank: two temperature programmes, a start lag and timers of its
 * own.
 *
 * <p>The everyday programme calls from its start to its stop, outside its blocked times. The
 * surplus programme is in force while the relay is closed, outside its own. A run that nothing
 * calls for any more goes on to its minimum run; a run that reaches the stop of the programme in
 * force, or the compressor's limit, ends at once. A run that the relay leaves above the everyday
 * stop has no programme in force: it ends by the minimum run, or at the surplus stop.
 */
public final class HeatPumpModel {
  /** What the machine is doing. */
  public enum State {
    OFF,
    /** Called: pumps and valves move, the compressor waits for its lag and its minimum off time. */
    PRE_RUN,
    RUNNING
  }

  /** How a run ended. */
  public enum End {
    /** No run ended. */
    NONE,
    /** Its programme was satisfied or withdrew after the minimum run. */
    PROGRAMME,
    /** Nothing called for it any more; only the minimum run had kept it going. */
    TIMER,
    /** The flow cannot go higher, or the coil's cut-out is open. */
    LIMIT
  }

  private static final int LONG_OFF = Integer.MAX_VALUE / 2;

  private final Programme everyday;
  private final Programme surplus;
  private final Thermostat everydayDemand;
  private final Hours everydayOpen;
  private final Hours surplusOpen;
  private final int lagSteps;
  private final int minimumRunSteps;
  private final int minimumOffSteps;

  private State state = State.OFF;
  private End end = End.NONE;
  private int lagged;
  private int ran;
  private int rested = LONG_OFF;
  private boolean callLost;
  private boolean onSurplus;

  private boolean surplusCalls;
  private double sensor_C;
  private boolean everydayCalls;
  private boolean disinfectionCalls;
  private BooleanSupplier limit = () -> false;

  HeatPumpModel(Spec spec, StepLength step) {
    everyday = spec.everyday;
    surplus = spec.surplus;
    everydayDemand = Thermostat.open(everyday.stop_C, everyday.start_C);
    lagSteps = step.until(spec.startLag_min);
    minimumRunSteps = step.until(spec.minimumRun_min);
    minimumOffSteps = step.until(spec.minimumOff_min);
    everydayOpen = everyday.open();
    surplusOpen = surplus.open();
  }

  /**
   * A temperature programme.
   *
   * @param start_C calls at this sensor temperature and below [°C]; minus infinity for never
   * @param stop_C until this one [°C]
   * @param blocked times of day without a call
   * @param timed the only times of day at which its clock lets it call; none for any
   */
  public record Programme(double start_C, double stop_C, List<Window> blocked, List<Window> timed) {
    public Programme {
      blocked = List.copyOf(blocked);
      timed = List.copyOf(timed);
    }

    private Hours open() {
      return Hours.anyOr(timed).without(Hours.within(blocked));
    }

    /** A programme that the clock does not block. */
    public static Programme of(double start_C, double stop_C) {
      return new Programme(start_C, stop_C, List.of(), List.of());
    }

    /** A programme that never calls. */
    public static Programme none() {
      return of(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
  }

  /**
   * What is fitted and how it is set.
   *
   * @param startLag_min time from call to compressor [min]
   * @param minimumRun_min its own minimum run time [min]
   * @param minimumOff_min its own minimum off time [min]
   * @param sensor_mm height of its tank sensor above the base [mm]
   * @param everyday the programme in force while the relay is open
   * @param surplus the programme in force while the relay is closed
   * @param line where it sits on the supply
   * @param performance what it draws and gives
   */
  public record Spec(
      double startLag_min,
      double minimumRun_min,
      double minimumOff_min,
      double sensor_mm,
      Programme everyday,
      Programme surplus,
      Line line,
      Performance.Spec performance) {}

  /**
   * Looks at one step and decides for the next.
   *
   * @param limit whether it can heat no further as the tank now stands; asked only where it matters
   * @return true where the compressor starts
   */
  boolean starts(
      boolean relayCalls,
      double sensor_C,
      BooleanSupplier limit,
      boolean disinfectionCalls,
      int secondOfDay) {
    surplusCalls = relayCalls && surplusOpen.hold(secondOfDay);
    this.sensor_C = sensor_C;
    this.limit = limit;
    this.disinfectionCalls = disinfectionCalls;
    boolean open = everydayOpen.hold(secondOfDay);
    boolean called = everydayCalls;
    everydayCalls = everydayDemand.follow(sensor_C) && open;
    end = End.NONE;
    if (state == State.RUNNING) {
      ran++;
      run(called);
      return false;
    }
    rested = Math.min(LONG_OFF, rested + 1);
    return rest(open);
  }

  private boolean rest(boolean open) {
    if (state == State.OFF) {
      if (!mayStart(open) || rested < minimumOffSteps - lagSteps) {
        return false;
      }
      state = State.PRE_RUN;
      lagged = 0;
    } else if (!calls()) {
      state = State.OFF;
      return false;
    } else {
      lagged++;
    }
    return lagged >= lagSteps && rested >= minimumOffSteps && start();
  }

  private boolean start() {
    state = State.RUNNING;
    ran = 0;
    callLost = false;
    onSurplus = surplusCalls;
    return true;
  }

  private boolean mayStart(boolean open) {
    return (disinfectionCalls || isWanted(open)) && !limit.getAsBoolean();
  }

  private boolean isWanted(boolean open) {
    boolean wanted =
        (surplusCalls && sensor_C <= surplus.start_C) || (open && sensor_C <= everyday.start_C);
    return wanted && sensor_C < (surplusCalls ? surplus : everyday).stop_C;
  }

  /** Whether anything calls for a machine that is on, or on its way. */
  private boolean calls() {
    return disinfectionCalls || everydayCalls || (surplusCalls && sensor_C < surplus.stop_C);
  }

  private void run(boolean everydayCalled) {
    if (limit.getAsBoolean()) {
      stop(End.LIMIT);
    } else if (isSatisfied(everydayCalled)) {
      stop(End.PROGRAMME);
    } else if (calls()) {
      callLost = false;
      onSurplus = surplusCalls || (onSurplus && !everydayCalls);
    } else if (ran >= minimumRunSteps) {
      stop(callLost ? End.TIMER : End.PROGRAMME);
    } else {
      callLost = true;
    }
  }

  /** Whether the stop of the programme in force is reached. */
  private boolean isSatisfied(boolean everydayCalled) {
    if (disinfectionCalls) {
      return false;
    }
    if (surplusCalls) {
      return sensor_C >= surplus.stop_C;
    }
    boolean above = sensor_C >= everyday.stop_C;
    return above && (everydayCalled || sensor_C >= surplus.stop_C);
  }

  private void stop(End how) {
    state = State.OFF;
    end = how;
    rested = 0;
    onSurplus = false;
  }

  State state() {
    return state;
  }

  /** Whether the surplus programme is in force: the relay is closed and the clock allows it. */
  boolean surplusInForce() {
    return surplusCalls;
  }

  boolean running() {
    return state == State.RUNNING;
  }

  /** Whether a running compressor runs for the relay, its leftover minimum run included. */
  boolean onSurplus() {
    return onSurplus;
  }

  /** How the run ended that this step's decision ended; none where no run ended. */
  End end() {
    return end;
  }

  /** Steps of the present run, or of the last one. */
  int ran() {
    return ran;
  }

  /** Whether the programme in force still asks for heat that the compressor cannot give. */
  boolean leavesCallOpen() {
    return !running() && calls() && limit.getAsBoolean();
  }
}
