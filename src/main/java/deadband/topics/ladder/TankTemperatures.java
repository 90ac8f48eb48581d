package deadband.topics.ladder;

import deadband.facts.Facts;
import deadband.limits.Limits;
import deadband.setup.Setup;

/**
 * Facts about the temperatures that stand above one another at a tank: programmes, tank limit,
 * disinfection, mixing valves, outlets, thermostat, cut-outs and relief.
 */
public final class TankTemperatures {

  private TankTemperatures() {}

  public static void derive(Setup setup, Limits limits, Facts facts) {
    StoreHygiene.derive(setup, limits, facts);
    ValveSupply.derive(setup, limits, facts);
    OutletTemperatures.derive(setup, limits, facts);
    ProgrammeTemperatures.derive(setup, limits, facts);
    SafetyDevices.derive(setup, limits, facts);
  }
}
