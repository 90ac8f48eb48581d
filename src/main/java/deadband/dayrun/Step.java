package deadband.dayrun;

/**
 * What happened in one step: powers are means over it, temperatures those at its end. One object
 * serves a whole run; copy what is to be kept.
 */
public final class Step {
  int secondOfDay;
  double pv_kW;
  double house_kW;
  double heatPump_kW;
  double heatPumpHeat_kW;
  double immersion_kW;
  double diverted_kW;
  double backup_kW;
  double charge_kW;
  double discharge_kW;
  double charger_kW;
  double export_kW;
  double import_kW;
  double curtailed_kW;
  double counted_kW;
  double kept_kW;
  double keptByHeatPump_kW;
  double draw_L;
  boolean relayClosed;
  HeatPumpModel.State heatPump = HeatPumpModel.State.OFF;
  HeatPumpModel.End runEnded = HeatPumpModel.End.NONE;
  boolean onSurplus;
  boolean disinfecting;
  double top_C;
  double sensor_C;
  double heatPumpSensor_C;
  double bottom_C;

  Step() {}

  /** Second of the day at which the step begins [s]. */
  public int secondOfDay() {
    return secondOfDay;
  }

  /** Sun after the inverter's limit, before any curtailment [kW]. */
  public double pv_kW() {
    return pv_kW;
  }

  /** House load before any flexible load [kW]. */
  public double house_kW() {
    return house_kW;
  }

  /** What the compressor draws [kW]. */
  public double heatPump_kW() {
    return heatPump_kW;
  }

  /** Heat the compressor gives the tank [kW]. */
  public double heatPumpHeat_kW() {
    return heatPumpHeat_kW;
  }

  /** What the immersion heater draws [kW]. */
  public double immersion_kW() {
    return immersion_kW;
  }

  /** Of this, what the diverter feeds it; a timer feeds it past the diverter [kW]. */
  public double diverted_kW() {
    return diverted_kW;
  }

  /** What the back-up heater draws [kW]. */
  public double backup_kW() {
    return backup_kW;
  }

  /** What the battery takes [kW]. */
  public double charge_kW() {
    return charge_kW;
  }

  /** What the battery gives [kW]. */
  public double discharge_kW() {
    return discharge_kW;
  }

  /** What the vehicle charger draws [kW]. */
  public double charger_kW() {
    return charger_kW;
  }

  /** Export by the billing meter's way of counting [kW]. */
  public double export_kW() {
    return export_kW;
  }

  /** Import by the billing meter's way of counting [kW]. */
  public double import_kW() {
    return import_kW;
  }

  /** Sun held back at the export limit [kW]. */
  public double curtailed_kW() {
    return curtailed_kW;
  }

  /** What the relay counts as surplus [kW]. */
  public double counted_kW() {
    return counted_kW;
  }

  /**
   * PV power that went into the tank, as electricity [kW]; with billing by phase only what was fed
   * in on the same phase.
   */
  public double kept_kW() {
    return kept_kW;
  }

  /** Of this, what compressor and back-up heater took [kW]. */
  public double keptByHeatPump_kW() {
    return keptByHeatPump_kW;
  }

  /** Hot water drawn [L]. */
  public double draw_L() {
    return draw_L;
  }

  /** Whether the relay was closed during the step. */
  public boolean relayClosed() {
    return relayClosed;
  }

  /** What the heat pump was doing during the step. */
  public HeatPumpModel.State heatPump() {
    return heatPump;
  }

  /** How the compressor's run ended with this step, if one did. */
  public HeatPumpModel.End runEnded() {
    return runEnded;
  }

  /** Whether the compressor ran for the relay, a leftover minimum run included. */
  public boolean onSurplus() {
    return onSurplus;
  }

  /** Whether a disinfection cycle was under way. */
  public boolean disinfecting() {
    return disinfecting;
  }

  /** Temperature at the top of the tank [°C]. */
  public double top_C() {
    return top_C;
  }

  /** Temperature at the diverter's sensor [°C]. */
  public double sensor_C() {
    return sensor_C;
  }

  /** Temperature at the heat pump's tank sensor [°C]. */
  public double heatPumpSensor_C() {
    return heatPumpSensor_C;
  }

  /** Temperature at the bottom of the tank [°C]. */
  public double bottom_C() {
    return bottom_C;
  }

  /** Whether any heater heats the tank. */
  boolean heats() {
    return heatPump_kW > 0 || backup_kW > 0 || immersion_kW > 0;
  }

  /** Power in less power out [kW]: 0 but for rounding. */
  public double imbalance_kW() {
    double in_kW = pv_kW + import_kW + discharge_kW;
    double used_kW = house_kW + immersion_kW + heatPump_kW + backup_kW;
    return in_kW - used_kW - charge_kW - charger_kW - export_kW - curtailed_kW;
  }
}
