package deadband.dayrun;

import java.util.Set;

/** Battery and vehicle charger in the queue for surplus, and the battery behind all loads. */
final class Stores {
  /** The place in the queue after everything; before it the places of the loads. */
  static final int LAST = 3;

  private final BatteryModel battery;
  private final Charger charger;
  private final StepLength step;
  private final int batteryPlace;
  private final int chargerPlace;
  private final boolean batteryFirst;
  private final boolean fitted;
  private final double[] want_kW = new double[Load.values().length];

  Stores(Installation installation, StepLength step) {
    this.step = step;
    battery = new BatteryModel(installation.battery());
    charger = new Charger(installation.charger());
    batteryPlace = place(installation.battery().chargesBefore());
    chargerPlace = charger.followsSurplus() ? place(installation.charger().before()) : 0;
    batteryFirst = installation.battery().chargesBefore().contains(Load.CHARGER);
    fitted = installation.battery().power_kW() > 0 || installation.charger().maximum_kW() > 0;
  }

  /** Place in the queue of what stands before these loads. */
  private static int place(Set<Load> before) {
    return before.stream().mapToInt(Load::place).filter(place -> place < LAST).min().orElse(LAST);
  }

  /** Whether there is either. */
  boolean fitted() {
    return fitted;
  }

  /** Begins a step with nothing taken. */
  void begin(Step now) {
    now.charge_kW = 0;
    now.discharge_kW = 0;
    now.charger_kW = 0;
    if (fitted) {
      charger.at(now.secondOfDay, step);
    }
  }

  /** Takes its share of what is offered at one place in the queue, and gives that share [kW]. */
  double take_kW(int place, double offered_kW, Step now) {
    if (!fitted) {
      return 0;
    }
    double left_kW = Math.max(0, offered_kW);
    double taken_kW = batteryFirst ? chargeBattery_kW(place, left_kW, now) : 0;
    taken_kW += chargeVehicle_kW(place, left_kW - taken_kW, now);
    return taken_kW + (batteryFirst ? 0 : chargeBattery_kW(place, left_kW - taken_kW, now));
  }

  private double chargeBattery_kW(int place, double offered_kW, Step now) {
    if (place != batteryPlace) {
      return 0;
    }
    now.charge_kW = battery.charge_kW(offered_kW, step.hours());
    return now.charge_kW;
  }

  private double chargeVehicle_kW(int place, double offered_kW, Step now) {
    if (place != chargerPlace) {
      return 0;
    }
    now.charger_kW = charger.charge_kW(offered_kW, step.hours());
    return now.charger_kW;
  }

  /**
   * Lets the battery cover what its loads want beyond PV. It never charges and discharges in one
   * step.
   *
   * @param early_kW what battery and charger took before any load [kW]
   */
  void discharge(Step now, double early_kW) {
    if (!fitted || now.charge_kW > 0) {
      return;
    }
    double left_kW = Math.max(0, now.pv_kW - early_kW);
    left_kW = want(Load.HOUSE, now.house_kW, left_kW);
    left_kW = want(Load.HEAT_PUMP, now.heatPump_kW + now.backup_kW, left_kW);
    left_kW = want(Load.IMMERSION, now.immersion_kW, left_kW);
    want(Load.CHARGER, now.charger_kW, left_kW);
    now.discharge_kW = battery.discharge_kW(battery.mayCover_kW(want_kW), step.hours());
  }

  /** Notes what a load wants beyond the PV that is left, and gives what is left after it [kW]. */
  private double want(Load load, double power_kW, double left_kW) {
    want_kW[load.place()] = Math.max(0, power_kW - left_kW);
    return Math.max(0, left_kW - power_kW);
  }
}
