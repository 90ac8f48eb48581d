package deadband.trade;

/**
 * The timing of a loop that hunts: how long the compressor runs and rests, how often it starts, and
 * for how long the tank lets that go on.
 *
 * @param run_min time the compressor runs in each cycle [min]
 * @param pause_min time it rests in each cycle [min]
 */
public record HuntingCycle(double run_min, double pause_min) {
  private static final double MINUTES_PER_HOUR = 60;

  /** Guards the times. */
  public HuntingCycle {
    Require.positive("run_min", run_min);
    Require.notNegative("pause_min", pause_min);
  }

  /**
   * The delays of relay and heat pump.
   *
   * @param startDelay_min time the start condition must hold [min], 0 or more
   * @param stopDelay_min time the stop condition must hold [min], 0 or more
   * @param startLag_min time from the call to the compressor [min], 0 or more
   * @param step_min time between two looks of the controller [min], positive
   */
  public record Delays(
      double startDelay_min, double stopDelay_min, double startLag_min, double step_min) {

    /** Guards the times. */
    public Delays {
      Require.notNegative("startDelay_min", startDelay_min);
      Require.notNegative("stopDelay_min", stopDelay_min);
      Require.notNegative("startLag_min", startLag_min);
      Require.positive("step_min", step_min);
    }

    /** Start delay as the controller can keep it: at least one step [min]. */
    public double start_min() {
      return Math.max(step_min, startDelay_min);
    }

    /** Stop delay as the controller can keep it: at least one step [min]. */
    public double stop_min() {
      return Math.max(step_min, stopDelay_min);
    }
  }

  /**
   * Cycle as the heat pump's own timers shape it: run = max(stop delay, minimum run), pause =
   * max(start delay + start lag, minimum off).
   *
   * @param minimumRun_min shortest run the pump allows [min], 0 or more
   * @param minimumOff_min shortest rest the pump allows [min], 0 or more
   */
  public static HuntingCycle withTimers(
      Delays delays, double minimumRun_min, double minimumOff_min) {
    Require.notNegative("minimumRun_min", minimumRun_min);
    Require.notNegative("minimumOff_min", minimumOff_min);
    return new HuntingCycle(
        Math.max(delays.stop_min(), minimumRun_min),
        Math.max(delays.start_min() + delays.startLag_min, minimumOff_min));
  }

  /** Cycle without the pump's timers: what the relay asks for. */
  public static HuntingCycle withoutTimers(Delays delays) {
    return withTimers(delays, 0, 0);
  }

  /** Length of the cycle [min]. */
  public double period_min() {
    return run_min + pause_min;
  }

  /** Starts per hour while the cycle lasts. */
  public double startsPerHour() {
    return MINUTES_PER_HOUR / period_min();
  }

  /**
   * Rise of the heated part of the tank in one run, ΔT = Q·t/(V·ρ·c).
   *
   * @param output_kW heat output P·COP [kW], positive
   * @param heated_L volume the coil heats [L], positive
   * @param tank_C its temperature, for the water properties [°C]
   * @return rise [K]
   */
  public double rise_K(double output_kW, double heated_L, double tank_C) {
    double heat_kWh = Require.positive("output_kW", output_kW) * run_min / MINUTES_PER_HOUR;
    double capacity = Water.heatCapacity_kWh_per_LK(tank_C);
    return heat_kWh / (Require.positive("heated_L", heated_L) * capacity);
  }

  /**
   * Most starts in a row before the tank is too warm for another, without draw-off or loss.
   *
   * <p>A start is possible while the sensor is at or below the start temperature, so the n-th needs
   * T + (n − 1)·ΔT ≤ T_start: n = ⌊(T_start − T)/ΔT⌋ + 1. Away from the edge this equals ⌈(T_start
   * − T)/ΔT⌉; at it, one start more. Temperatures count in 0.01 K.
   *
   * @param start_C start temperature of the programme in force [°C]
   * @param tank_C sensor temperature before the first start [°C]
   * @param rise_K rise per run [K], positive
   * @return starts; 0 where the tank is already warmer than {@code start_C}
   */
  public static long startsInARow(double start_C, double tank_C, double rise_K) {
    long room = hundredths(start_C - tank_C);
    long rise = Math.max(1, hundredths(Require.positive("rise_K", rise_K)));
    return room < 0 ? 0 : room / rise + 1;
  }

  /** Differences of temperature count in 0.01 K, so that equal decimals are equal. */
  private static long hundredths(double difference_K) {
    return Math.round(difference_K * 100);
  }

  /**
   * What one cloud to zero surplus can cost: P·max(stop delay, rest of the minimum run)/60. A cloud
   * that leaves some surplus, or ends sooner, costs less.
   *
   * @param draw_kW draw of the heat pump [kW], 0 or more
   * @param stopDelay_min stop delay [min], 0 or more
   * @param restOfMinimumRun_min what is left of the minimum run [min], 0 or more
   * @return energy bought [kWh]
   */
  public static double cloudCost_kWh(
      double draw_kW, double stopDelay_min, double restOfMinimumRun_min) {
    double held_min =
        Math.max(
            Require.notNegative("stopDelay_min", stopDelay_min),
            Require.notNegative("restOfMinimumRun_min", restOfMinimumRun_min));
    return Require.notNegative("draw_kW", draw_kW) * held_min / MINUTES_PER_HOUR;
  }
}
