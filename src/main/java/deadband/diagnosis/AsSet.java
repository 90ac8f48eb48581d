package deadband.diagnosis;

import deadband.loop.ElementLoop;
import deadband.loop.LoopForm;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.setup.Entered;
import deadband.setup.HeatPump;
import deadband.setup.Relay;
import deadband.setup.Setup;
import deadband.trade.CompressorReach;
import deadband.trade.ControlLoop;
import deadband.trade.HuntingCycle;
import deadband.trade.Water;
import java.util.Optional;

/**
 * The settings that shape the runs, as numbers; NaN where one is not known, so that a comparison
 * with it never holds.
 *
 * @param closes_kW lowest surplus before flexible loads at which the relay closes
 * @param opens_kW highest such surplus at which it opens while the heat pump runs
 * @param opensAtRest_kW the same while the heat pump rests
 * @param hunts whether some steady surplus both closes and opens it
 */
record AsSet(
    double closes_kW,
    double opens_kW,
    double opensAtRest_kW,
    double input_kW,
    boolean hunts,
    double startDelay_min,
    double stopDelay_min,
    double startLag_min,
    double minimumRun_min,
    double minimumOff_min,
    HuntingCycle cycle,
    HuntingCycle onDelays,
    double everydayStart_C,
    double everydayStop_C,
    double surplusStart_C,
    double surplusStop_C,
    double limit_C,
    double rise_K_per_h) {

  /** Tank temperature for the properties of its water [°C]. */
  private static final double WARM_C = 45;

  /** A surplus no home has: where the search for the opening ends [kW]. */
  private static final double HIGHEST_KW = 40;

  private static final double STEP_KW = 0.05;

  /**
   * The settings of a setup.
   *
   * @param measured_kW power input where the log has it, else NaN: it is the one in force
   */
  static AsSet of(Setup setup, double measured_kW) {
    RelayLoop loop = new RelayLoop(setup);
    boolean element = setup.relay().drives().says(Relay.Drives.ELEMENT);
    ElementLoop alone = new ElementLoop(setup, loop);
    Optional<LoopForm> entered = element ? alone.form() : loop.form().or(() -> plain(loop));
    double entered_kW = number(element ? alone.draw_kW() : loop.draw_kW());
    double input_kW = Double.isNaN(measured_kW) || element ? entered_kW : measured_kW;
    double margin_kW = entered.map(LoopForm::margin_kW).orElse(0.0);
    Optional<ControlLoop> form = entered.map(f -> drawing(f.loop(), input_kW));
    HeatPump pump = setup.heatPump();
    boolean noGap = loop.gap_kW().is(gap -> gap <= 0);
    return new AsSet(
        form.map(f -> margin_kW + f.lowestClosing_kW().orElse(Double.NaN))
            .orElse(number(loop.start_kW())),
        form.map(f -> margin_kW + opens_kW(f)).orElse(Double.NaN),
        form.map(f -> margin_kW + opens_kW(drawing(f, 0))).orElse(Double.NaN),
        input_kW,
        noGap || form.map(f -> !f.hunting().isEmpty()).orElse(false),
        number(setup.relay().startDelay_min()),
        number(setup.relay().stopDelay_min()),
        element ? 0 : number(pump.startLag_min()),
        element ? 0 : number(pump.minimumRun_min()),
        element ? 0 : number(pump.minimumOff_min()),
        element ? loop.timing().onDelays() : loop.timing().withTimers(),
        loop.timing().onDelays(),
        number(pump.everyday().start_C()),
        number(pump.everyday().stop_C()),
        number(pump.surplus().start_C()),
        number(pump.surplus().stop_C()),
        limit_C(pump),
        rise_K_per_h(setup, input_kW, entered_kW));
  }

  /** Where it is not entered what the relay counts: export, and what the diverter takes of it. */
  private static Optional<LoopForm> plain(RelayLoop loop) {
    boolean known =
        loop.start_kW().isKnown() && loop.stop_kW().isKnown() && loop.draw_kW().isKnown();
    return known
        ? Optional.of(
            LoopForm.of(
                new ControlLoop(
                    new ControlLoop.Counts(true, true, false),
                    loop.start_kW().get(),
                    loop.stop_kW().get(),
                    loop.draw_kW().get(),
                    0,
                    0),
                0))
        : Optional.empty();
  }

  private static ControlLoop drawing(ControlLoop loop, double input_kW) {
    return new ControlLoop(
        loop.counts(),
        loop.start_kW(),
        loop.stop_kW(),
        input_kW,
        loop.heater_kW(),
        loop.heaterLeast_kW());
  }

  private static double opens_kW(ControlLoop loop) {
    double highest_kW = Double.NaN;
    for (double kW = -HIGHEST_KW; kW <= HIGHEST_KW; kW += STEP_KW) {
      highest_kW = loop.opens(kW) ? kW : highest_kW;
    }
    return highest_kW;
  }

  private static double limit_C(HeatPump pump) {
    double flow_C = number(pump.maximumFlow_C());
    double above_K = number(pump.flowAboveTank_K());
    return Double.isNaN(flow_C + above_K)
        ? Double.NaN
        : CompressorReach.highestTank_C(flow_C, above_K);
  }

  /** Rise of the tank while it is heated: output over the heat capacity of the water. */
  private static double rise_K_per_h(Setup setup, double input_kW, double entered_kW) {
    double volume_L = number(setup.tank().volume_L());
    double output_kW = number(setup.heatPump().hotWaterOutput_kW()) * input_kW / entered_kW;
    return output_kW / (volume_L * Water.heatCapacity_kWh_per_LK(WARM_C));
  }

  private static double number(Entered<Double> entered) {
    return number(Derived.of(entered));
  }

  private static double number(Derived<Double> value) {
    return value.isKnown() ? value.get() : Double.NaN;
  }

  /** Highest surplus at which a stop can come of a gap that is too narrow. */
  double bandTop_kW() {
    return hunts ? opens_kW : closes_kW + 0.9 * input_kW;
  }

  /** Differential of the everyday programme. */
  double differential_K() {
    return everydayStop_C - everydayStart_C;
  }

  /** Whether a programme's stop is beyond what the compressor reaches. */
  boolean stopBeyondReach() {
    return Math.max(orLow(everydayStop_C), orLow(surplusStop_C)) > limit_C;
  }

  private static double orLow(double value) {
    return Double.isNaN(value) ? Double.NEGATIVE_INFINITY : value;
  }

  double orZero(double value) {
    return Double.isNaN(value) ? 0 : value;
  }
}
