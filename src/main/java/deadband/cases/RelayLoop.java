package deadband.cases;

import deadband.document.Pointer;
import deadband.setup.HeatPump;
import deadband.setup.Relay;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import deadband.setup.Unit;
import deadband.trade.ControlLoop;
import deadband.trade.CurrentSensor;
import deadband.trade.HeaterCircuit;
import deadband.trade.HuntingCycle;
import java.util.List;
import java.util.Optional;

/**
 * The loop of relay, immersion heater and heat pump as a setup tells it: the quantities that the
 * checks of thresholds share.
 */
final class RelayLoop {

  private final Setup setup;
  private final Relay relay;
  private final HeatPump heatPump;

  RelayLoop(Setup setup) {
    this.setup = setup;
    this.relay = setup.relay();
    this.heatPump = setup.heatPump();
  }

  Pointer subject() {
    return relay.part().pointer();
  }

  Derived<Boolean> fitted() {
    return Derived.all(Derived.of(relay.part().isFitted()), Derived.of(heatPump.part().isFitted()));
  }

  Derived<Boolean> drivesHeatPump() {
    return Derived.of(relay.drives()).map(drives -> drives == Relay.Drives.HEAT_PUMP);
  }

  Derived<Boolean> counts(Counts power) {
    return Derived.of(relay.counts()).map(counted -> counted.contains(power));
  }

  Derived<Boolean> countsHeatPump() {
    return counts(Counts.HEAT_PUMP);
  }

  Derived<Double> start_kW() {
    return Derived.of(relay.start_kW());
  }

  Derived<Double> stop_kW() {
    return Derived.of(relay.stop_kW());
  }

  /** Whether the stop lies below the start; where it does not, another check owns the fault. */
  Derived<Boolean> stopBelowStart() {
    return gap_kW().map(gap -> gap > 0);
  }

  Derived<Double> gap_kW() {
    return Derived.difference(Unit.KILOWATT, start_kW(), stop_kW());
  }

  /** The most the heat pump draws; where only the least is told, that. */
  Derived<Double> draw_kW() {
    return Derived.toldOnly(heatPump.hotWaterInput_kW())
        .or(Derived.toldOnly(heatPump.minimumInput_kW()));
  }

  /** What must be told before the most the heat pump draws is sure. */
  List<Pointer> openDraw() {
    return Derived.toldOnly(heatPump.hotWaterInput_kW()).provenance().missing();
  }

  /** The least the heat pump draws; where only the most is told, that. */
  Derived<Double> leastDraw_kW() {
    return Derived.toldOnly(heatPump.minimumInput_kW())
        .or(Derived.toldOnly(heatPump.hotWaterInput_kW()));
  }

  /** What must be told before the least the heat pump draws is sure. */
  List<Pointer> openLeastDraw() {
    return Derived.toldOnly(heatPump.minimumInput_kW()).provenance().missing();
  }

  /** Whether a diverter feeds an immersion heater. */
  Derived<Boolean> heaterFitted() {
    return Derived.all(
        Derived.of(setup.diverter().part().isFitted()),
        Derived.of(setup.immersion().part().isFitted()));
  }

  /** Power of the heater at the site's voltage; 0 where there is none. */
  Derived<Double> heater_kW() {
    if (heaterFitted().is(fitted -> !fitted)) {
      return heaterFitted().map(fitted -> 0.0);
    }
    return Derived.of(setup.immersion().power_kW())
        .with(Derived.of(setup.immersion().ratedAt_V()), Rating::new)
        .with(
            Derived.of(setup.supply().voltage_V()),
            (rating, site_V) ->
                Unit.KILOWATT.round(
                    HeaterCircuit.power_kW(rating.power_kW(), rating.at_V(), site_V)));
  }

  private record Rating(double power_kW, double at_V) {}

  /** Whether the relay sees export alone: the heater takes the surplus first, unseen. */
  Derived<Boolean> heaterHidden() {
    return Derived.all(
        heaterFitted(), counts(Counts.EXPORT), Derived.not(counts(Counts.IMMERSION)));
  }

  /**
   * Whether the heat pump may still start while the diverter's sensor stands at its limit: only if
   * its surplus start lies no lower than the temperature at which the diverter closes again, or its
   * sensor sits lower in the tank.
   */
  Derived<Boolean> startsWithHeaterAtLimit() {
    Derived<Boolean> sensorBelow =
        Derived.of(heatPump.sensor_mm())
            .with(
                Derived.of(setup.diverter().sensor().height_mm()),
                (pump_mm, diverter_mm) -> pump_mm < diverter_mm);
    Derived<Boolean> startReached =
        Derived.of(heatPump.surplus().start_C())
            .with(new TankLimit(setup).closing_C(), (start_C, closing_C) -> start_C >= closing_C);
    return Derived.any(sensorBelow, startReached);
  }

  /** Greatest error of the grid sensor at a power, either way; not known beyond its range. */
  Derived<Double> sensorError_kW(Derived<Double> power_kW) {
    return Derived.of(setup.gridSensor().accuracyClass())
        .then(this::knownClass)
        .with(Derived.of(setup.gridSensor().rated_A()), Sensor::new)
        .with(Derived.of(setup.supply().voltage_V()), Powers::new)
        .then(powers -> power_kW.then(power -> error_kW(powers, power)));
  }

  private Derived<CurrentSensor.AccuracyClass> knownClass(double number) {
    return CurrentSensor.AccuracyClass.find(number)
        .map(Derived::constant)
        .orElseGet(() -> Derived.missing(setup.gridSensor().accuracyClass().pointer()));
  }

  private record Sensor(CurrentSensor.AccuracyClass accuracy, double rated_A) {}

  private record Powers(Sensor sensor, double voltage_V) {}

  private Derived<Double> error_kW(Powers at, double power_kW) {
    double rated_A = at.sensor().rated_A();
    if (!CurrentSensor.measures(rated_A, power_kW, at.voltage_V())) {
      return Derived.missing(setup.gridSensor().rated_A().pointer());
    }
    return Derived.constant(
        Unit.KILOWATT.round(
            CurrentSensor.error_kW(at.sensor().accuracy(), rated_A, power_kW, at.voltage_V())));
  }

  /** How the loop hunts with and without the heat pump's own timers. */
  record Timing(HuntingCycle withTimers, HuntingCycle withoutTimers) {}

  /** The timing of a loop that hunts; a delay not told counts as one step of a minute. */
  Timing timing() {
    HuntingCycle.Delays delays =
        new HuntingCycle.Delays(
            orZero(Derived.of(relay.startDelay_min())),
            orZero(Derived.of(relay.stopDelay_min())),
            orZero(Derived.of(heatPump.startLag_min())),
            1);
    return new Timing(
        HuntingCycle.withTimers(
            delays,
            orZero(Derived.of(heatPump.minimumRun_min())),
            orZero(Derived.of(heatPump.minimumOff_min()))),
        HuntingCycle.withoutTimers(delays));
  }

  private static double orZero(Derived<Double> value) {
    return value.isKnown() ? value.get() : 0;
  }

  /** The loop in closed form, where all of it is known. */
  Optional<ControlLoop> closedForm() {
    Derived<List<Counts>> counted = Derived.of(relay.counts());
    boolean known =
        counted.isKnown()
            && start_kW().isKnown()
            && stop_kW().isKnown()
            && draw_kW().isKnown()
            && heater_kW().isKnown();
    return known ? Optional.of(closedForm(counted.get())) : Optional.empty();
  }

  private ControlLoop closedForm(List<Counts> counted) {
    return new ControlLoop(
        new ControlLoop.Counts(
            counted.contains(Counts.EXPORT),
            counted.contains(Counts.IMMERSION),
            counted.contains(Counts.HEAT_PUMP)),
        start_kW().get(),
        stop_kW().get(),
        draw_kW().get(),
        heater_kW().get(),
        orZero(Derived.of(setup.diverter().minimum_kW())));
  }

  /** The most that sun and export limit can ever show the relay. */
  Derived<Double> reach_kW() {
    Derived<Double> sun =
        Derived.of(setup.solar().peak_kW())
            .with(Derived.of(setup.solar().inverter_kW()), Math::min)
            .with(Derived.of(setup.house().baseLoad_kW()), (pv, house) -> pv - house);
    Derived<Double> taken =
        heaterHidden().then(hidden -> hidden ? heater_kW() : Derived.constant(0.0));
    return sun.with(taken, (most, heater) -> Unit.KILOWATT.round(Math.max(0, most - heater)));
  }

  /** The most the export limit lets the relay see; not known where no limit is told. */
  Derived<Double> exportReach_kW() {
    Derived<Double> limit = Derived.of(setup.solar().exportLimit_kW());
    Derived<Double> counted =
        Derived.all(heaterFitted(), counts(Counts.IMMERSION))
            .then(seen -> seen ? heater_kW() : Derived.constant(0.0));
    return Derived.sum(Unit.KILOWATT, limit, counted);
  }
}
