package deadband.topics.thresholds;

import static deadband.setup.Unit.KILOWATT;

import deadband.facts.Measure;
import deadband.loop.LoopForm;
import deadband.loop.RelayLoop;
import deadband.plant.HeatedVolume;
import deadband.provenance.Derived;
import deadband.setup.Setup;
import deadband.setup.Unit;
import deadband.trade.HuntingCycle;
import deadband.trade.SurplusBand;
import deadband.trade.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is shown of a loop that hunts: at which surplus, how often, for how long, and its price. */
final class HuntingEvidence {

  private static final String LOOP = "control loop arithmetic";

  private final Setup setup;
  private final RelayLoop loop;
  private final RelayLoop.Timing timing;

  HuntingEvidence(Setup setup, RelayLoop loop) {
    this.setup = setup;
    this.loop = loop;
    this.timing = loop.timing();
  }

  /**
   * Starts an hour as the heat pump's own timers let them through, each with one closure of the
   * relay: it opens during the run and closes during the pause.
   */
  double startsPerHour() {
    return timing.withTimers().startsPerHour();
  }

  /** Closures an hour of a relay that waits for nothing but its own delays. */
  double callsOnDelays() {
    return timing.onDelays().startsPerHour();
  }

  /** How a loop that hunts under the heat pump's own draw was calculated. */
  String basis() {
    String assumed = loop.assumedTiming();
    boolean atLimit = loop.form().filter(LoopForm::heaterAtLimit).isPresent();
    return LOOP
        + (atLimit ? ", heater off at the tank limit" : "")
        + (assumed.isEmpty() ? "" : "; for the rates assumed " + assumed);
  }

  /** About a relay that hunts on its delays alone: the band, and its closures. */
  Measure[] onDelays(Optional<LoopForm> form) {
    List<Measure> evidence = band(form);
    evidence.add(Measure.of("relay closures per hour", callsOnDelays(), "1/h"));
    return evidence.toArray(new Measure[0]);
  }

  /** Everything about a loop that hunts under the heat pump's own draw. */
  Measure[] ofHeatPump() {
    List<Measure> evidence = band(loop.form());
    HuntingCycle cycle = timing.withTimers();
    evidence.add(Measure.of("starts per hour", startsPerHour(), "1/h"));
    evidence.add(Measure.of("run", cycle.run_min(), Unit.MINUTE));
    evidence.add(Measure.of("period", cycle.period_min(), Unit.MINUTE));
    loop.form().filter(form -> seesWholeDraw()).ifPresent(form -> addImport(form, evidence));
    startsInARow(cycle).ifPresent(evidence::add);
    return evidence.toArray(new Measure[0]);
  }

  private static List<Measure> band(Optional<LoopForm> form) {
    List<Measure> evidence = new ArrayList<>();
    List<SurplusBand> bands = form.map(LoopForm::hunting).orElse(List.of());
    if (!bands.isEmpty()) {
      addEdge("short-cycling from", bands.get(0).from_kW(), evidence);
      addEdge("short-cycling to", bands.get(bands.size() - 1).to_kW(), evidence);
    }
    return evidence;
  }

  private static void addEdge(String edge, double surplus_kW, List<Measure> evidence) {
    if (Double.isFinite(surplus_kW)) {
      evidence.add(Measure.of(edge, surplus_kW, KILOWATT));
    }
  }

  /** What is bought on phases that the sensor does not see depends on how the meter bills. */
  private boolean seesWholeDraw() {
    return loop.draw_kW().is(draw -> loop.seenDraw_kW().is(draw::equals));
  }

  private static void addImport(LoopForm form, List<Measure> evidence) {
    form.importAtStart_kW()
        .ifPresent(power -> evidence.add(Measure.of("import on starting", power, KILOWATT)));
    evidence.add(Measure.of("import while held", form.importWhileHeld_kW(), KILOWATT));
  }

  /**
   * How many such starts the tank lets come in a row, where its programme and output are entered.
   */
  private Optional<Measure> startsInARow(HuntingCycle cycle) {
    Derived<Double> from = Derived.of(setup.heatPump().everyday().start_C());
    Derived<Double> start = Derived.of(setup.heatPump().surplus().start_C());
    Derived<Double> output = Derived.of(setup.heatPump().hotWaterOutput_kW());
    Derived<Double> heated = new HeatedVolume(setup).aboveCoil_L();
    boolean calculable =
        start.isKnown()
            && from.is(Water.RANGE_C::holds)
            && output.is(power -> power > 0)
            && heated.is(volume -> volume > 0);
    if (!calculable) {
      return Optional.empty();
    }
    double rise_K = cycle.rise_K(output.get(), heated.get(), from.get());
    long starts = HuntingCycle.startsInARow(start.get(), from.get(), rise_K);
    return Optional.of(Measure.of("maximum starts in a row", (double) starts, ""));
  }
}
