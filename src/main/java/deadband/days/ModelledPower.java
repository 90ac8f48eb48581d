package deadband.days;

import deadband.dayrun.BatteryModel;
import deadband.dayrun.Charger;
import deadband.dayrun.GridSensorModel;
import deadband.dayrun.Installation.Generator;
import deadband.dayrun.Line;
import deadband.dayrun.Load;
import deadband.dayrun.SupplyModel;
import deadband.dayrun.Window;
import deadband.loop.Gathered;
import deadband.loop.SensedPhases;
import deadband.provenance.Derived;
import deadband.setup.Consumer;
import deadband.setup.Entered;
import deadband.setup.Phase;
import deadband.setup.Setup;
import deadband.setup.Supply.Billing;
import deadband.setup.VehicleCharger;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Supply, sun, meter, battery and charger as the day run takes them. */
public final class ModelledPower {

  /** Round trip of a home battery and its inverter: common practice, from memory. */
  private static final double BATTERY_EFFICIENCY = 0.9;

  /** Least current of a charging point, 6 A at 230 V (IEC 61851-1, from memory) [kW]. */
  private static final double LEAST_CHARGE_KW = 1.4;

  /** What a vehicle takes in a day: common practice, about 50 km [kWh]. */
  private static final double VEHICLE_KWH = 8;

  private static final String USUAL = "common practice, for the day run only";

  private final Setup setup;

  public ModelledPower(Setup setup) {
    this.setup = setup;
  }

  private Derived<Boolean> threePhase() {
    return Derived.of(setup.supply().phases())
        .or(Derived.assumed(setup.supply().phases().pointer(), 1.0, USUAL))
        .map(phases -> phases > 1);
  }

  /**
   * Where a device sits: on one phase, or balanced on three. On a single-phase supply everything is
   * on one line.
   */
  public Derived<Line> line(Derived<Double> phases, Entered<Phase> phase) {
    return threePhase()
        .then(
            several ->
                several
                    ? phases.then(drawn -> drawn > 1 ? all() : line(phase))
                    : Derived.constant(Line.L1));
  }

  private static Derived<Line> all() {
    return Derived.constant(Line.ALL);
  }

  private static Derived<Line> line(Entered<Phase> phase) {
    return Derived.of(phase)
        .or(Derived.assumed(phase.pointer(), Phase.L1, USUAL))
        .map(ModelledPower::line);
  }

  private static Line line(Phase phase) {
    return switch (phase) {
      case L1 -> Line.L1;
      case L2 -> Line.L2;
      case L3 -> Line.L3;
    };
  }

  private Derived<Line> balanced() {
    return threePhase().map(several -> several ? Line.ALL : Line.L1);
  }

  public Derived<SupplyModel.Spec> supply() {
    Gathered parts = new Gathered();
    var house = parts.with(balanced());
    var billing = parts.with(billing());
    var export_kW = parts.with(export_kW());
    return parts.into(
        () ->
            new SupplyModel.Spec(billing.get() == Billing.PER_PHASE, export_kW.get(), house.get()));
  }

  /** On one phase both ways of counting come to the same. */
  private Derived<Billing> billing() {
    return threePhase()
        .then(
            several ->
                several ? Derived.of(setup.supply().billing()) : Derived.constant(Billing.NETTED));
  }

  /** The inverter, as large as the modules where it is not entered. */
  public Derived<Double> inverter_kW() {
    return orAll(setup.solar().inverter_kW(), Derived.of(setup.solar().peak_kW()));
  }

  private Derived<Double> export_kW() {
    return orAll(setup.solar().exportLimit_kW(), inverter_kW());
  }

  private static Derived<Double> orAll(Entered<Double> limit, Derived<Double> all_kW) {
    return Derived.of(limit)
        .or(
            all_kW.then(
                all -> Derived.assumed(limit.pointer(), all, "not entered: assumed not to limit")));
  }

  public Derived<Generator> generator() {
    Gathered parts = new Gathered();
    var inverter_kW = parts.with(inverter_kW());
    var line = parts.with(line(Derived.of(setup.solar().phases()), setup.solar().phase()));
    return parts.into(() -> new Generator(inverter_kW.get(), line.get()));
  }

  public Derived<GridSensorModel.Spec> sensor() {
    Gathered parts = new Gathered();
    var line = parts.with(line(new SensedPhases(setup).measured(), setup.gridSensor().phase()));
    var behind = parts.with(setup.gridSensor().heatPumpBehind(), true, USUAL);
    return parts.into(() -> new GridSensorModel.Spec(line.get(), behind.get()));
  }

  public Derived<BatteryModel.Spec> battery() {
    return DayModel.isThere(setup.battery().part().isFitted())
        .then(there -> there ? fittedBattery() : Derived.constant(BatteryModel.Spec.none()));
  }

  private Derived<BatteryModel.Spec> fittedBattery() {
    Gathered parts = new Gathered();
    var capacity_kWh = parts.with(setup.battery().capacity_kWh());
    var power_kW = parts.with(setup.battery().power_kW());
    var before = parts.with(setup.battery().chargesBefore(), List.of(), USUAL);
    var into = parts.with(setup.battery().mayDischargeInto(), List.of(Consumer.HOUSE), USUAL);
    var line = parts.with(balanced());
    return parts.into(
        () ->
            new BatteryModel.Spec(
                capacity_kWh.get(),
                0,
                power_kW.get(),
                BATTERY_EFFICIENCY,
                loads(before.get()),
                loads(into.get()),
                line.get()));
  }

  public Derived<Charger.Spec> charger() {
    return DayModel.isThere(setup.vehicleCharger().part().isFitted())
        .then(there -> there ? fittedCharger() : Derived.constant(Charger.Spec.none()));
  }

  private Derived<Charger.Spec> fittedCharger() {
    VehicleCharger charger = setup.vehicleCharger();
    Gathered parts = new Gathered();
    var follows = parts.with(charger.followsSurplus());
    var minimum_kW = parts.with(charger.minimum_kW(), LEAST_CHARGE_KW, USUAL);
    var maximum_kW = parts.with(charger.maximum_kW());
    var before = parts.with(charger.before(), List.of(), USUAL);
    var line = parts.with(balanced());
    return parts.into(
        () ->
            new Charger.Spec(
                follows.get(),
                minimum_kW.get(),
                maximum_kW.get(),
                VEHICLE_KWH,
                Window.ALWAYS,
                loads(before.get()),
                line.get()));
  }

  private static Set<Load> loads(List<Consumer> consumers) {
    return consumers.stream().map(ModelledPower::load).collect(Collectors.toSet());
  }

  private static Load load(Consumer consumer) {
    return switch (consumer) {
      case HOUSE -> Load.HOUSE;
      case HEAT_PUMP -> Load.HEAT_PUMP;
      case IMMERSION -> Load.IMMERSION;
      case CHARGER -> Load.CHARGER;
    };
  }
}
