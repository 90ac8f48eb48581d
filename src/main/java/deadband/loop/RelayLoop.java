package deadband.loop;

import deadband.document.Pointer;
import deadband.provenance.Derived;
import deadband.setup.GridSensor;
import deadband.setup.HeatPump;
import deadband.setup.Relay;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import deadband.setup.SurplusInput;
import deadband.setup.Unit;
import deadband.trade.ControlLoop;
import deadband.trade.CurrentSensor;
import deadband.trade.HeaterCircuit;
import deadband.trade.HuntingCycle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The loop of relay, immersion heater and heat pump as a setup tells it: the quantities that the
 * checks of thresholds share.
 */
public final class RelayLoop {

  private static final double STEP_MIN = 1;

  private final Setup setup;
  private final Relay relay;
  private final HeatPump heatPump;

  public RelayLoop(Setup setup) {
    this.setup = setup;
    this.relay = setup.relay();
    this.heatPump = setup.heatPump();
  }

  public Pointer subject() {
    return relay.part().pointer();
  }

  public Derived<Boolean> fitted() {
    return Derived.all(Derived.of(relay.part().isFitted()), Derived.of(heatPump.part().isFitted()));
  }

  /** As entered; assumed where the heat pump has settings for a call on surplus. */
  public Derived<Boolean> drivesHeatPump() {
    Derived<Relay.Drives> drives = Derived.of(relay.drives());
    boolean called =
        heatPump.surplus().start_C().isEntered() || heatPump.surplus().stop_C().isEntered();
    Derived<Relay.Drives> taken =
        drives.isKnown() || !called
            ? drives
            : Derived.assumed(
                relay.drives().pointer(),
                Relay.Drives.HEAT_PUMP,
                "the heat pump has settings for a call on surplus");
    return taken.map(driven -> driven == Relay.Drives.HEAT_PUMP);
  }

  public Derived<Boolean> counts(Counts power) {
    return Derived.of(relay.counts()).map(counted -> counted.contains(power));
  }

  /** Whether a contact pulled on surplus means no surplus to the heat pump, and at rest a call. */
  public Derived<Boolean> senseReversed() {
    return Derived.of(relay.contact())
        .with(
            Derived.of(heatPump.surplusInput().closedMeans()),
            (atRest, closed) ->
                (atRest == Relay.Contact.NORMALLY_OPEN)
                    == (closed == SurplusInput.ClosedMeans.NORMAL));
  }

  public Derived<Boolean> countsHeatPump() {
    return counts(Counts.HEAT_PUMP);
  }

  public Derived<Double> start_kW() {
    return Derived.of(relay.start_kW());
  }

  public Derived<Double> stop_kW() {
    return Derived.of(relay.stop_kW());
  }

  /**
   * Whether the relay sees what goes out to the grid at all; where it does not, see there first.
   */
  public Derived<Boolean> countsExport() {
    return counts(Counts.EXPORT);
  }

  /** Whether the stop lies below the start; where it does not, another check owns the fault. */
  public Derived<Boolean> stopBelowStart() {
    return gap_kW().map(gap -> gap > 0);
  }

  public Derived<Double> gap_kW() {
    return Derived.difference(Unit.KILOWATT, start_kW(), stop_kW());
  }

  /** The most the heat pump draws; where only the least is entered, that. */
  public Derived<Double> draw_kW() {
    return Derived.enteredOnly(heatPump.hotWaterInput_kW())
        .or(Derived.enteredOnly(heatPump.minimumInput_kW()));
  }

  /** What must be entered before the most the heat pump draws is sure. */
  public List<Pointer> openDraw() {
    return Derived.enteredOnly(heatPump.hotWaterInput_kW()).provenance().missing();
  }

  /**
   * The part of the draw that the relay sees vanish when the heat pump starts: all of it, or what
   * falls on the phases its sensor measures. Where that part is open it is all of it, the side on
   * which a gap is judged with caution.
   */
  public Derived<Double> seenDraw_kW() {
    Derived<Double> share = new SensedPhases(setup).shareOfPump();
    return share.isKnown()
        ? draw_kW().with(share, (draw, seen) -> Unit.KILOWATT.round(draw * seen))
        : draw_kW();
  }

  /** What must be entered before it is sure how much of the draw the relay sees. */
  public List<Pointer> openSight() {
    return new SensedPhases(setup).shareOfPump().provenance().missing();
  }

  /** The least the heat pump draws; where only the most is entered, that. */
  public Derived<Double> leastDraw_kW() {
    return Derived.enteredOnly(heatPump.minimumInput_kW())
        .or(Derived.enteredOnly(heatPump.hotWaterInput_kW()));
  }

  /** What must be entered before the least the heat pump draws is sure. */
  public List<Pointer> openLeastDraw() {
    return Derived.enteredOnly(heatPump.minimumInput_kW()).provenance().missing();
  }

  /**
   * What is bought at the stop: as far as the stop lies below zero, or what a counted heat pump
   * hides; nothing where negative.
   */
  public Derived<Double> importWhileHeld_kW() {
    return countsHeatPump()
        .then(
            counted ->
                counted
                    ? Derived.difference(Unit.KILOWATT, draw_kW(), stop_kW())
                    : stop_kW().map(stop -> Unit.KILOWATT.round(-stop)));
  }

  /** Whether a diverter feeds an immersion heater. */
  public Derived<Boolean> heaterFitted() {
    return Derived.all(
        Derived.of(setup.diverter().part().isFitted()),
        Derived.of(setup.immersion().part().isFitted()));
  }

  /** Power of the heater at the site's voltage; 0 where there is none. */
  public Derived<Double> heater_kW() {
    if (heaterFitted().is(fitted -> !fitted)) {
      return heaterFitted().map(fitted -> 0.0);
    }
    return element_kW();
  }

  /** Power of the immersion heater at the site's voltage. */
  public Derived<Double> element_kW() {
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
  public Derived<Boolean> heaterHidden() {
    return Derived.all(
        heaterFitted(), counts(Counts.EXPORT), Derived.not(counts(Counts.IMMERSION)));
  }

  /**
   * Whether the heat pump may still start while the diverter's sensor stands at its limit: only if
   * its surplus start lies no lower than the temperature at which the diverter closes again, or its
   * sensor sits lower in the tank.
   */
  public Derived<Boolean> startsWithHeaterAtLimit() {
    Derived<Boolean> sensorBelow =
        Derived.of(heatPump.sensor_mm())
            .with(
                Derived.of(setup.diverter().sensor().height_mm()),
                (pump_mm, diverter_mm) -> pump_mm < diverter_mm);
    Derived<Boolean> sensed = Derived.notAbsent(setup.diverter().sensor().part());
    Derived<Boolean> startReached =
        Derived.of(heatPump.surplus().start_C())
            .with(new TankLimit(setup).closing_C(), (start_C, closing_C) -> start_C >= closing_C);
    return Derived.any(Derived.all(sensed, sensorBelow), startReached);
  }

  /**
   * Whether a heater that the relay does not count still runs whenever the relay closes: its start
   * lies above what the diverter leaves to export, and the heat pump cannot start once the heater
   * is off at the tank limit.
   */
  public Derived<Boolean> heaterRunsAtStart() {
    Derived<Double> least = Derived.of(setup.diverter().minimum_kW());
    return Derived.all(
        heaterHidden(),
        Derived.not(startsBeforeHeater()),
        heater_kW().with(least, (heater, power) -> heater >= power),
        Derived.not(startsWithHeaterAtLimit()));
  }

  /** Whether the start lies below what the diverter leaves to export before the heater begins. */
  public Derived<Boolean> startsBeforeHeater() {
    Derived<Double> leastSeen =
        Derived.sum(Unit.KILOWATT, exportMargin_kW(), Derived.of(setup.diverter().minimum_kW()));
    return start_kW().with(leastSeen, (start, seen) -> start < seen);
  }

  /**
   * Whether such a heater gives way before the relay opens: the stop lies below what the diverter
   * leaves to export, so that the heater must be off first.
   */
  public Derived<Boolean> heaterGivesWay() {
    return Derived.all(
        heaterRunsAtStart(), stop_kW().with(exportMargin_kW(), (stop, margin) -> stop < margin));
  }

  private Derived<Double> exportMargin_kW() {
    return Derived.of(setup.diverter().exportMargin_kW());
  }

  /** Greatest error of the grid sensor at a power, either way; not known beyond its range. */
  public Derived<Double> sensorError_kW(Derived<Double> power_kW) {
    return sensorError_kW(
        power_kW,
        Derived.of(setup.gridSensor().accuracyClass()),
        Derived.of(setup.gridSensor().rated_A()));
  }

  /** The same, of a coarse sensor where its plate is not entered. */
  public Derived<Double> coarseSensorError_kW(Derived<Double> power_kW) {
    GridSensor sensor = setup.gridSensor();
    return sensorError_kW(
        power_kW,
        Derived.enteredOnly(sensor.accuracyClass())
            .or(
                Derived.assumed(
                    sensor.accuracyClass().pointer(), 1.0, "the lowest accuracy class known")),
        Derived.enteredOnly(sensor.rated_A())
            .or(Derived.assumed(sensor.rated_A().pointer(), 100.0, "common practice")));
  }

  private Derived<Double> sensorError_kW(
      Derived<Double> power_kW, Derived<Double> accuracyClass, Derived<Double> rated_A) {
    return accuracyClass
        .then(this::knownClass)
        .with(rated_A, Sensor::new)
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

  /** The errors of the sensors of all loaded phases may add up. */
  private Derived<Double> error_kW(Powers at, double power_kW) {
    double phases = new SensedPhases(setup).loaded();
    double rated_A = at.sensor().rated_A();
    double each_kW = power_kW / phases;
    if (!CurrentSensor.measures(rated_A, each_kW, at.voltage_V())) {
      return Derived.missing(setup.gridSensor().rated_A().pointer());
    }
    double error_kW =
        CurrentSensor.error_kW(at.sensor().accuracy(), rated_A, each_kW, at.voltage_V());
    return Derived.constant(Unit.KILOWATT.round(phases * error_kW));
  }

  /**
   * How the loop hunts with the heat pump's own timers, and on the relay's delays alone, as a relay
   * without a gap does.
   */
  public record Timing(HuntingCycle withTimers, HuntingCycle onDelays) {}

  /** The timing of a loop that hunts; a delay not entered counts as one step of a minute. */
  public Timing timing() {
    HuntingCycle.Delays delays = delays(orZero(Derived.of(heatPump.startLag_min())));
    return new Timing(
        HuntingCycle.withTimers(
            delays,
            orZero(Derived.of(heatPump.minimumRun_min())),
            orZero(Derived.of(heatPump.minimumOff_min()))),
        HuntingCycle.withoutTimers(delays(0)));
  }

  private HuntingCycle.Delays delays(double startLag_min) {
    return new HuntingCycle.Delays(
        orZero(Derived.of(relay.startDelay_min())),
        orZero(Derived.of(relay.stopDelay_min())),
        startLag_min,
        STEP_MIN);
  }

  /** The defaults that its timing rests on, in words; empty where all of it is entered. */
  public String assumedTiming() {
    return Stream.of(heatPump.startLag_min(), heatPump.minimumRun_min(), heatPump.minimumOff_min())
        .filter(timer -> !timer.isEntered())
        .map(timer -> timer.pointer().dotted())
        .collect(Collectors.joining(", "));
  }

  private static double orZero(Derived<Double> value) {
    return value.isKnown() ? value.get() : 0;
  }

  /** The loop in closed form, where all that its bands depend on is known. */
  public Optional<LoopForm> form() {
    Derived<List<Counts>> counted = Derived.of(relay.counts());
    Derived<Double> heater = heaterHidden().then(is -> is ? heater_kW() : Derived.constant(0.0));
    boolean known =
        counted.isKnown()
            && start_kW().isKnown()
            && stop_kW().isKnown()
            && seenDraw_kW().isKnown()
            && heater.isKnown();
    return known
        ? Optional.of(LoopForm.of(closed(counted.get(), heater.get()), hiddenMargin_kW()))
        : Optional.empty();
  }

  /** What the diverter leaves to export shifts only what a relay sees that counts export alone. */
  private double hiddenMargin_kW() {
    return heaterHidden().is(is -> is) ? orZero(exportMargin_kW()) : 0;
  }

  private ControlLoop closed(List<Counts> counted, double heater_kW) {
    return new ControlLoop(
        new ControlLoop.Counts(
            counted.contains(Counts.EXPORT),
            counted.contains(Counts.IMMERSION),
            counted.contains(Counts.HEAT_PUMP)),
        start_kW().get(),
        stop_kW().get(),
        seenDraw_kW().get(),
        heater_kW,
        orZero(Derived.of(setup.diverter().minimum_kW())));
  }
}
