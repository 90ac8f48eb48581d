package deadband.judging;

import deadband.setup.Entered;
import deadband.setup.HeatPump;
import deadband.setup.Outlet;
import deadband.setup.Setup;
import java.util.List;

/**
 * A yardstick for the rule book: twenty checks as somebody would write them by hand, without
 * provenance, defaults, three values or explanation. What is not entered is passed over.
 */
final class TwentyChecks {

  private static final double DISINFECTION_C = 60;
  private static final double SCALD_C = 48;
  private static final double VOLT = 230;

  private TwentyChecks() {}

  /** How many of them find something. */
  static int found(Setup setup) {
    HeatPump pump = setup.heatPump();
    double start_kW = of(setup.relay().start_kW());
    double stop_kW = of(setup.relay().stop_kW());
    double draw_kW = of(pump.hotWaterInput_kW());
    double reach_kW =
        Math.min(of(setup.solar().peak_kW()), of(setup.solar().inverter_kW()))
            - of(setup.house().baseLoad_kW());
    double heater_kW = of(setup.immersion().power_kW());
    double limit_C = of(setup.diverter().limit_C());
    double thermostat_C = of(setup.immersion().thermostat_C());
    double cutOut_C = of(setup.immersion().cutOut_C());
    double valve_C = of(setup.blending().hotSupplyMax_C());
    double everydayStart_C = of(pump.everyday().start_C());
    double everydayStop_C = of(pump.everyday().stop_C());
    double surplusStart_C = of(pump.surplus().start_C());
    double surplusStop_C = of(pump.surplus().stop_C());
    double target_C = of(pump.disinfection().target_C());
    int found = 0;
    found += stop_kW >= start_kW ? 1 : 0;
    found += start_kW - stop_kW < draw_kW - start_kW ? 1 : 0;
    found += start_kW > reach_kW ? 1 : 0;
    found += start_kW < draw_kW / 2 ? 1 : 0;
    found += of(setup.relay().startDelay_min()) < 1 ? 1 : 0;
    found += of(setup.relay().stopDelay_min()) < 1 ? 1 : 0;
    found += draw_kW < of(pump.minimumInput_kW()) ? 1 : 0;
    found += everydayStart_C >= everydayStop_C ? 1 : 0;
    found += surplusStart_C >= surplusStop_C ? 1 : 0;
    found += surplusStop_C > of(pump.maximumFlow_C()) ? 1 : 0;
    found += everydayStart_C < 20 ? 1 : 0;
    found += target_C < DISINFECTION_C ? 1 : 0;
    found += of(pump.disinfection().every_days()) > 14 ? 1 : 0;
    found += limit_C < target_C && limit_C < 50 ? 1 : 0;
    found += thermostat_C >= cutOut_C ? 1 : 0;
    found += limit_C > cutOut_C ? 1 : 0;
    found += Math.max(limit_C, surplusStop_C) > valve_C ? 1 : 0;
    found += 1000 * heater_kW / VOLT > of(setup.immersion().circuit().breaker_A()) ? 1 : 0;
    found += of(pump.minimumRun_min()) < 1 ? 1 : 0;
    found += scalds(setup.outlets().optional().orElse(List.of())) ? 1 : 0;
    return found;
  }

  private static boolean scalds(List<Outlet> outlets) {
    for (Outlet outlet : outlets) {
      if (of(outlet.mixed_C()) > SCALD_C) {
        return true;
      }
    }
    return false;
  }

  /** Not a number compares with nothing, and so finds nothing. */
  private static double of(Entered<Double> entered) {
    Double value = entered.value();
    return value == null ? Double.NaN : value;
  }
}
