package deadband.dayrun;

import java.util.Set;

/**
 * The battery: takes surplus in its turn, and gives into the loads it may discharge into. All
 * powers are on the house side of its inverter; the whole loss falls on charging.
 */
public final class BatteryModel {
  private final double capacity_kWh;
  private final double power_kW;
  private final double efficiency;
  private final Load[] dischargesInto;
  private double stored_kWh;

  BatteryModel(Spec spec) {
    capacity_kWh = spec.capacity_kWh;
    power_kW = spec.power_kW;
    efficiency = spec.efficiency;
    dischargesInto = spec.mayDischargeInto.toArray(Load[]::new);
    stored_kWh = spec.stored_kWh;
  }

  /**
   * What is fitted and how it is set.
   *
   * @param capacity_kWh usable capacity [kWh], 0 for none
   * @param stored_kWh what it holds at the start of the run [kWh]
   * @param power_kW greatest charge and discharge power [kW]
   * @param efficiency share of the energy charged that comes out again, above 0, to 1
   * @param chargesBefore loads that it goes before. House: it takes the sun first and the house
   *     buys; heat pump: it takes the surplus whether or not the heat pump draws; immersion heater:
   *     it takes what the heat pump leaves; none of them: it takes what is left at the end
   * @param mayDischargeInto loads whose want it covers
   * @param line where it sits on the supply
   */
  public record Spec(
      double capacity_kWh,
      double stored_kWh,
      double power_kW,
      double efficiency,
      Set<Load> chargesBefore,
      Set<Load> mayDischargeInto,
      Line line) {
    public Spec {
      if (!(efficiency > 0 && efficiency <= 1)) {
        throw new IllegalArgumentException(
            "a battery efficiency of " + efficiency + " is not above 0 and up to 1");
      }
      chargesBefore = Set.copyOf(chargesBefore);
      mayDischargeInto = Set.copyOf(mayDischargeInto);
    }

    /** No battery. */
    public static Spec none() {
      return new Spec(0, 0, 0, 1, Set.of(), Set.of(), Line.ALL);
    }
  }

  /** Charges from what is offered and gives the power taken [kW]. */
  double charge_kW(double offered_kW, double step_h) {
    double room_kW = (capacity_kWh - stored_kWh) / (efficiency * step_h);
    double taken_kW = Math.max(0, Math.min(offered_kW, Math.min(power_kW, room_kW)));
    stored_kWh = Math.min(capacity_kWh, stored_kWh + taken_kW * efficiency * step_h);
    return taken_kW;
  }

  /** Discharges into what is wanted and gives the power [kW]. */
  double discharge_kW(double wanted_kW, double step_h) {
    double given_kW = Math.max(0, Math.min(wanted_kW, Math.min(power_kW, stored_kWh / step_h)));
    stored_kWh = Math.max(0, stored_kWh - given_kW * step_h);
    return given_kW;
  }

  /** The part of each load's want [kW, by place of the load] that it may cover. */
  double mayCover_kW(double[] want_kW) {
    double sum_kW = 0;
    for (Load load : dischargesInto) {
      sum_kW += want_kW[load.place()];
    }
    return sum_kW;
  }

  double stored_kWh() {
    return stored_kWh;
  }
}
