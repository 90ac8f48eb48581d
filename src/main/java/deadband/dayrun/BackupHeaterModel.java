package deadband.dayrun;

/**
 * The electric back-up heater in the heat pump's flow. It carries on where the compressor cannot go
 * higher and the programme asks for more, heats for a disinfection that asks for it, and where it
 * is allowed on a surplus call it joins the compressor: the worst that the permission lets happen.
 */
public final class BackupHeaterModel {
  private final double power_kW;
  private final boolean allowedOnSurplus;
  private boolean on;

  BackupHeaterModel(Spec spec) {
    power_kW = spec.power_kW;
    allowedOnSurplus = spec.allowedOnSurplus;
  }

  /**
   * What is fitted.
   *
   * @param power_kW power [kW], 0 for none
   * @param allowedOnSurplus whether it may join on a surplus call
   */
  public record Spec(double power_kW, boolean allowedOnSurplus) {
    /** No back-up heater. */
    public static Spec none() {
      return new Spec(0, false);
    }
  }

  /** Looks at one step and decides for the next. */
  void decide(HeatPumpModel heatPump, boolean coilCutOut, boolean disinfectionCalls) {
    if (power_kW == 0) {
      return;
    }
    boolean wanted =
        heatPump.surplusInForce() ? wantedOnSurplus(heatPump) : heatPump.leavesCallOpen();
    on = !coilCutOut && (disinfectionCalls || wanted);
  }

  private boolean wantedOnSurplus(HeatPumpModel heatPump) {
    return allowedOnSurplus && (heatPump.running() || heatPump.leavesCallOpen());
  }

  /** Power for this step [kW]. */
  double power_kW() {
    return on ? power_kW : 0;
  }
}
