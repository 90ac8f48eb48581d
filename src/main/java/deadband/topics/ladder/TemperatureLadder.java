package deadband.topics.ladder;

import deadband.facts.Facts;
import deadband.limits.Limits;
import deadband.setup.Setup;

/**
 * Facts about the temperatures that stand above one another at a tank: programmes, tank limit,
 * disinfection, mixing valves, outlets, thermostat, cut-outs and relief.
 */
public final class TemperatureLadder {

  private TemperatureLadder() {}

  public static void derive(Setup setup, Limits limits, Facts facts) {
    HygieneLadder.derive(setup, limits, facts);
    BlendingLadder.derive(setup, limits, facts);
    OutletLadder.derive(setup, limits, facts);
    ProgrammeLadder.derive(setup, limits, facts);
    BarrierLadder.derive(setup, limits, facts);
  }
}
