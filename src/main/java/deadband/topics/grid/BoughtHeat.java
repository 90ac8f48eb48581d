package deadband.topics.grid;

import static deadband.setup.Unit.KILOWATT;
import static deadband.setup.Unit.KILOWATT_HOUR;
import static deadband.setup.Unit.MINUTE;

import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.facts.Size;
import deadband.loop.RelayLoop;
import deadband.plant.HeatedVolume;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.ClockWindow;
import deadband.setup.DemandInput;
import deadband.setup.Disinfection;
import deadband.setup.Entered;
import deadband.setup.Immersion;
import deadband.setup.Programme;
import deadband.setup.Setup;
import deadband.trade.StoredHeat;
import deadband.trade.SunnyDay;
import deadband.trade.Water;
import java.util.List;

/** Facts about heat that the element takes from the grid, and surplus that is never there. */
public final class BoughtHeat {

  private static final double MIN_PER_H = 60;
  private static final double LEAST_L = 0.001;

  /**
   * How long a timer feeds the element each day against what is needed, and whether its thermostat
   * lets it heat what the heat pump does not heat anyway.
   */
  public record TimedElement(
      Evidence evidence, Answer heatsAboveStart, Quantity timed_min, Quantity needed_min)
      implements Case {}

  /** What is bought while the diverter holds the grid at its margin, against the sensor's error. */
  public record ExportMargin(Evidence evidence, Quantity bought_kW, Quantity error_kW)
      implements Case {}

  /** Whether there is a source of surplus. */
  public record SurplusSource(Evidence evidence, Answer there) implements Case {}

  private final Setup setup;
  private final Facts facts;
  private final Immersion heater;
  private final RelayLoop loop;

  private BoughtHeat(Setup setup, Facts facts) {
    this.setup = setup;
    this.facts = facts;
    this.heater = setup.immersion();
    this.loop = new RelayLoop(setup);
  }

  public static void derive(Setup setup, Facts facts) {
    BoughtHeat topic = new BoughtHeat(setup, facts);
    topic.timedElement();
    topic.exportMargin();
    topic.surplusSource();
  }

  private void timedElement() {
    Derived<Double> timed = Derived.of(heater.timed()).map(BoughtHeat::covered_min);
    Derived<Double> needed = heatPumpHeats().then(heats -> heats ? cycle_min() : oneHeating_min());
    facts
        .into(TimedElement.class, heater.timed().pointer())
        .given(heatsAboveStart(), timed, needed)
        .makes(
            because ->
                new TimedElement(
                    because.explained(() -> timedDaily(timed.get(), needed.get())),
                    because.answer(heatsAboveStart()),
                    because.quantity(timed),
                    because.quantity(needed)));
  }

  private static double covered_min(List<ClockWindow> windows) {
    return new ClockWindow(0, 0).sharedWith_min(windows);
  }

  private Derived<Boolean> heatPumpHeats() {
    return Derived.all(
        Derived.of(setup.heatPump().part().isFitted()),
        Derived.of(setup.heatPump().everyday().enabled()));
  }

  /** Where its thermostat stands no higher than the heat pump starts, a timer feeds it nothing. */
  private Derived<Boolean> heatsAboveStart() {
    Derived<Boolean> above =
        Derived.of(heater.thermostat_C())
            .with(
                Derived.of(setup.heatPump().everyday().start_C()),
                (thermostat, start) -> thermostat > start);
    return Derived.any(Derived.not(heatPumpHeats()), above);
  }

  /** What a disinfection needs of the timer that has no other way to call the element. */
  private Derived<Double> cycle_min() {
    Disinfection cycle = setup.heatPump().disinfection();
    DemandInput demand = setup.diverter().demandInput();
    Derived<Boolean> answered =
        Derived.all(
            Derived.of(setup.diverter().part().isFitted()),
            Derived.of(demand.part().isFitted()),
            Derived.of(demand.action()).map(does -> does == DemandInput.Action.FULL_POWER));
    Derived<Boolean> rests =
        Derived.all(
            Derived.of(cycle.enabled()),
            Derived.of(cycle.heater()).map(by -> by == Disinfection.Heater.IMMERSION),
            Derived.not(answered));
    return rests.then(is -> is ? Derived.of(cycle.timeAllowed_min()) : Derived.constant(0.0));
  }

  /** Time to heat the store once from cold, where nothing but the element does it without sun. */
  private Derived<Double> oneHeating_min() {
    return heat_kWh(Derived.of(setup.house().coldWater_C()))
        .with(
            loop.element_kW(),
            (heat, power) -> MINUTE.round(MIN_PER_H * heat / Math.max(LEAST_L, power)));
  }

  private Derived<Double> heat_kWh(Derived<Double> from_C) {
    return new HeatedVolume(setup)
        .above_L(Derived.of(heater.height_mm()))
        .with(
            from_C.with(Derived.of(heater.thermostat_C()), Lift::new),
            (heated_L, lift) -> KILOWATT_HOUR.round(lift.heat_kWh(heated_L)));
  }

  private record Lift(double from_C, double to_C) {
    double heat_kWh(double heated_L) {
      return Math.max(
          0,
          StoredHeat.heat_kWh(
              Math.max(LEAST_L, heated_L), Water.RANGE_C.clamp(from_C), Water.RANGE_C.clamp(to_C)));
    }
  }

  private Detail timedDaily(double timed_min, double needed_min) {
    Detail.Builder detail =
        Detail.at(heater.timed(), heater.thermostat_C())
            .observed(Measure.of("time on the timer per day", timed_min, MINUTE))
            .limit(
                Bound.calculated(
                    "time needed per day",
                    needed_min,
                    MINUTE,
                    "to heat the store once, or for a disinfection that only it carries"))
            .cures(
                needed_min > 0 ? List.of() : List.of(List.of(Change.of(heater.timed(), List.of()))))
            .basis("heat above the element, from the everyday start to the thermostat setting");
    Derived<Double> bought = bought_kWh(timed_min);
    if (bought.isKnown()) {
      detail.evidence(Measure.of("import per day, up to", bought.get(), KILOWATT_HOUR));
    }
    return detail.size(Size.kilowatts(loop.element_kW())).done();
  }

  /** One heating of what lies above the element, or as much as its power gives in that time. */
  private Derived<Double> bought_kWh(double timed_min) {
    Programme everyday = setup.heatPump().everyday();
    Derived<Double> from_C =
        heatPumpHeats().is(heats -> heats)
            ? Derived.of(everyday.start_C())
            : Derived.of(setup.house().coldWater_C());
    return heat_kWh(from_C)
        .with(
            loop.element_kW(),
            (heat, power) -> KILOWATT_HOUR.round(Math.min(heat, power * timed_min / MIN_PER_H)));
  }

  /** Below zero the diverter keeps that much coming in from the grid while the element runs. */
  private void exportMargin() {
    Entered<Double> entered = setup.diverter().exportMargin_kW();
    Derived<Double> bought =
        loop.heaterFitted()
            .then(
                fitted -> Derived.of(entered).map(margin -> KILOWATT.round(Math.max(0, -margin))));
    facts
        .into(ExportMargin.class, entered.pointer())
        .given(bought, loop.coarseSensorError_kW(bought))
        .makes(
            because ->
                new ExportMargin(
                    because.explained(() -> importing(bought.get())),
                    because.quantity(bought),
                    because.quantity(loop.coarseSensorError_kW(bought))));
  }

  private Detail importing(double bought_kW) {
    Entered<Double> entered = setup.diverter().exportMargin_kW();
    double error_kW = loop.coarseSensorError_kW(Derived.constant(bought_kW)).get();
    Detail.Builder detail =
        Detail.at(entered)
            .observed(Measure.of("import while the element runs", bought_kW, KILOWATT))
            .limit(
                Bound.calculated(
                    "tolerated", error_kW, KILOWATT, "error of the grid sensor by its class"))
            .size(Size.kilowatts(bought_kW))
            .cure(Change.of(entered, 0.0))
            .evidence(
                Measure.of(
                    "import on a clear day, up to",
                    bought_kW * SunnyDay.DAYLIGHT_H.value(),
                    KILOWATT_HOUR))
            .basis("grid held at the margin while the element runs");
    setup
        .house()
        .baseLoad_kW()
        .optional()
        .filter(load -> bought_kW > load)
        .ifPresent(
            load ->
                detail.evidence(
                    Measure.of("fed to the element at night", bought_kW - load, KILOWATT)));
    return detail.done();
  }

  /** A controller of surplus needs something that gives a surplus. */
  private void surplusSource() {
    Derived<Boolean> there =
        Derived.all(
            Derived.of(setup.solar().part().isFitted()),
            gives(setup.solar().peak_kW()),
            gives(setup.solar().inverter_kW()));
    facts
        .into(SurplusSource.class, setup.solar().part().pointer())
        .given(there)
        .makes(
            because ->
                new SurplusSource(
                    because.explained(() -> Detail.at(setup.solar().part().pointer()).done()),
                    because.answer(there)));
  }

  private static Derived<Boolean> gives(Entered<Double> rated_kW) {
    return Derived.constant(!rated_kW.says(0.0));
  }
}
