package deadband.cases;

import deadband.setup.Setup;

/**
 * Cases about the temperatures that stand above one another at a tank: programmes, tank limit,
 * disinfection, mixing valves, outlets, thermostat, cut-outs and relief.
 */
final class TemperatureLadder {

  private TemperatureLadder() {}

  static void derive(Setup setup, Limits limits, Cases cases) {
    HygieneLadder.derive(setup, limits, cases);
    BlendingLadder.derive(setup, limits, cases);
    OutletLadder.derive(setup, limits, cases);
    ProgrammeLadder.derive(setup, limits, cases);
    BarrierLadder.derive(setup, limits, cases);
  }
}
