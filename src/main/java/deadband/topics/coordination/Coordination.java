package deadband.topics.coordination;

import static deadband.setup.Unit.KILOWATT;
import static deadband.setup.Unit.KILOWATT_HOUR;
import static deadband.setup.Unit.MINUTE;

import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Condition;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.facts.Says;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.loop.RelayLoop;
import deadband.plant.HeatedVolume;
import deadband.plant.ThresholdCures;
import deadband.provenance.Derived;
import deadband.setup.Battery;
import deadband.setup.Change;
import deadband.setup.ClockWindow;
import deadband.setup.Consumer;
import deadband.setup.Entered;
import deadband.setup.Programme;
import deadband.setup.Relay;
import deadband.setup.Setup;
import deadband.setup.VehicleCharger;
import deadband.trade.BatteryShadow;
import deadband.trade.StoredHeat;
import deadband.trade.Water;
import java.util.ArrayList;
import java.util.List;

/** Facts about what else takes the surplus or stands in for it: a battery, a vehicle charger. */
public final class Coordination {

  private static final double LEAST = 0.001;

  @Says("The relay adds the power that charges the battery back to the surplus.")
  public record RelayCountsBattery(Answer answer) implements Condition {}

  @Says("The battery may discharge into the heat pump.")
  public record BatteryFeedsHeatPump(Answer answer) implements Condition {}

  @Says("The battery is meant to charge before the heat pump runs.")
  public record BatteryMeantFirst(Answer answer) implements Condition {}

  @Says("The vehicle charger follows the surplus.")
  public record ChargerFollowsSurplus(Answer answer) implements Condition {}

  /** What the relay sees while a battery carries the heat pump, against the stop. */
  public record BatteryFeed(Evidence evidence, Quantity seen_kW, Quantity stop_kW)
      implements Case {}

  /** The surplus that a battery takes before the relay sees it. */
  public record BatteryShade(Evidence evidence, Quantity hidden_kW) implements Case {}

  /** How long at night the everyday programme may start. */
  public record NightRun(Evidence evidence, Quantity free_min) implements Case {}

  /** Whether two that follow one surplus have an order between them. */
  public record SharedSurplus(Evidence evidence, Answer ordered) implements Case {}

  /** Whether the battery may discharge into the immersion heater. */
  public record BatteryHeat(Evidence evidence, Answer discharges) implements Case {}

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final Battery battery;
  private final RelayLoop loop;

  private Coordination(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.battery = setup.battery();
    this.loop = new RelayLoop(setup);
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    Coordination topic = new Coordination(setup, limits, facts);
    topic.conditions();
    topic.feed();
    topic.shade();
    topic.night();
    topic.followers();
    topic.batteryHeat();
  }

  private void conditions() {
    facts.add(new RelayCountsBattery(facts.answer(loop.counts(Relay.Counts.BATTERY))));
    facts.add(new BatteryFeedsHeatPump(holds(battery.mayDischargeInto(), Consumer.HEAT_PUMP)));
    facts.add(new BatteryMeantFirst(holds(battery.chargesBefore(), Consumer.HEAT_PUMP)));
    facts.add(
        new ChargerFollowsSurplus(
            facts.answer(Derived.of(setup.vehicleCharger().followsSurplus()))));
  }

  private Answer holds(Entered<List<Consumer>> consumers, Consumer consumer) {
    return facts.answer(Derived.of(consumers).map(all -> all.contains(consumer)));
  }

  /**
   * A battery that carries the heat pump keeps the export at zero: the relay sees nothing, or the
   * pump itself where that is counted.
   */
  private void feed() {
    Derived<Boolean> counted = loop.countsHeatPump();
    Derived<Double> seen = counted.then(is -> is ? loop.draw_kW() : Derived.constant(0.0));
    Derived<Double> stop = loop.stop_kW();
    facts
        .into(BatteryFeed.class, battery.part().pointer())
        .given(seen, stop)
        .clearOnlyWith(counted.is(is -> is) ? loop.openDraw() : List.of())
        .makes(
            because ->
                new BatteryFeed(
                    because.explained(() -> emptied(seen.get(), stop.get())),
                    because.quantity(seen),
                    because.quantity(stop)));
  }

  private Detail emptied(double seen_kW, double stop_kW) {
    Derived<Double> covered = covered_kW();
    Detail.Builder detail =
        Detail.at(battery.mayDischargeInto(), setup.relay().stop_kW())
            .observed(Measure.of("seen while the battery supplies it", seen_kW, KILOWATT))
            .limit(Bound.entered("stop threshold", stop_kW, KILOWATT, setup.relay().stop_kW()))
            .cures(without(Consumer.HEAT_PUMP))
            .cures(ThresholdCures.ofHeatPump(setup).candidates())
            .basis("control loop arithmetic, no PV, battery charged");
    addDrain(covered, detail);
    return detail.size(Size.kilowatts(covered)).done();
  }

  /** What the battery gives a running heat pump when there is no sun. */
  private Derived<Double> covered_kW() {
    return loop.draw_kW()
        .with(
            Derived.of(battery.power_kW()),
            (draw, power) -> KILOWATT.round(BatteryShadow.covered_kW(draw, 0, power)));
  }

  private void addDrain(Derived<Double> covered, Detail.Builder detail) {
    if (covered.is(power -> power > 0)) {
      detail.evidence(Measure.of("power from the battery", covered.get(), KILOWATT));
      battery
          .capacity_kWh()
          .optional()
          .ifPresent(
              capacity ->
                  detail.evidence(
                      Measure.of("full battery empty after", capacity / covered.get(), "h")));
    }
  }

  private List<List<Change>> without(Consumer consumer) {
    List<Consumer> rest = new ArrayList<>(battery.mayDischargeInto().optional().orElse(List.of()));
    rest.remove(consumer);
    return List.of(List.of(Change.of(battery.mayDischargeInto(), List.copyOf(rest))));
  }

  /** Where the battery is meant to come first, the relay may wait for it. */
  private void shade() {
    Derived<Double> hidden = Derived.of(battery.power_kW());
    facts
        .into(BatteryShade.class, battery.part().pointer())
        .given(hidden)
        .makes(
            because ->
                new BatteryShade(
                    because.explained(() -> takesFirst(hidden.get())), because.quantity(hidden)));
  }

  private Detail takesFirst(double power_kW) {
    Detail.Builder detail =
        Detail.at(setup.relay().counts(), battery.power_kW(), battery.chargesBefore())
            .observed(Measure.of("surplus taken by the battery", power_kW, KILOWATT))
            .size(Size.kilowatts(power_kW))
            .cure(countingBattery())
            .basis("control loop arithmetic, battery not yet full");
    return loop.start_kW().isKnown()
        ? detail
            .evidence(
                Measure.of(
                    "surplus at which it closes", loop.start_kW().get() + power_kW, KILOWATT))
            .done()
        : detail.done();
  }

  private Change countingBattery() {
    Entered<List<Relay.Counts>> counts = setup.relay().counts();
    List<Relay.Counts> counted = new ArrayList<>(counts.optional().orElse(List.of()));
    counted.add(Relay.Counts.BATTERY);
    counted.sort(null);
    return Change.of(counts, List.copyOf(counted));
  }

  private void night() {
    Programme everyday = setup.heatPump().everyday();
    Derived<Double> free = Derived.of(everyday.blocked()).map(this::freeAtNight_min);
    facts
        .into(NightRun.class, everyday.part().pointer())
        .given(free)
        .makes(
            because ->
                new NightRun(because.explained(() -> drains(free.get())), because.quantity(free)));
  }

  /** Minutes of the night that lie in no blocked window. */
  private double freeAtNight_min(List<ClockWindow> blocked) {
    ClockWindow night =
        new ClockWindow(
            (int) limits.value(Limit.NIGHT_FROM), (int) limits.value(Limit.NIGHT_UNTIL));
    return night.length_min() - night.sharedWith_min(blocked);
  }

  private Detail drains(double free_min) {
    Programme everyday = setup.heatPump().everyday();
    Detail.Builder detail =
        Detail.at(battery.mayDischargeInto(), everyday.blocked())
            .observed(Measure.of("night hours in which it may start", free_min, MINUTE))
            .cures(without(Consumer.HEAT_PUMP))
            .basis("times of day as entered, battery charged");
    Derived<Double> covered = covered_kW();
    if (covered.is(power -> power > 0)) {
      detail.evidence(Measure.of("power from the battery", covered.get(), KILOWATT));
    }
    Derived<Double> run = run_kWh();
    if (run.isKnown()) {
      detail.evidence(Measure.of("electricity per run", run.get(), KILOWATT_HOUR));
    }
    return detail.size(Size.kilowatts(covered)).done();
  }

  private record Power(double input_kW, double output_kW) {}

  private record Swing(double start_C, double stop_C) {}

  /** What one everyday run draws: its heat by the plate's input and output. */
  private Derived<Double> run_kWh() {
    Programme everyday = setup.heatPump().everyday();
    Derived<Power> power =
        loop.draw_kW().with(Derived.of(setup.heatPump().hotWaterOutput_kW()), Power::new);
    Derived<Swing> swing =
        Derived.of(everyday.start_C()).with(Derived.of(everyday.stop_C()), Swing::new);
    return new HeatedVolume(setup)
        .aboveCoil_L()
        .with(swing, Coordination::heat_kWh)
        .with(
            power,
            (heat, plate) ->
                KILOWATT_HOUR.round(heat * plate.input_kW() / Math.max(LEAST, plate.output_kW())));
  }

  private static double heat_kWh(double heated_L, Swing swing) {
    return Math.max(
        0,
        StoredHeat.heat_kWh(
            Math.max(LEAST, heated_L),
            Water.RANGE_C.clamp(swing.start_C()),
            Water.RANGE_C.clamp(swing.stop_C())));
  }

  private void followers() {
    VehicleCharger charger = setup.vehicleCharger();
    Derived<Boolean> ordered = ordered(charger);
    facts
        .into(SharedSurplus.class, charger.part().pointer())
        .given(ordered)
        .makes(
            because ->
                new SharedSurplus(
                    because.explained(() -> chase(charger)), because.answer(ordered)));
  }

  /** Heat at the element is the poorest use of what a battery stored. */
  private void batteryHeat() {
    Entered<List<Consumer>> into = battery.mayDischargeInto();
    Derived<Boolean> discharges =
        Derived.of(into).map(consumers -> consumers.contains(Consumer.IMMERSION));
    facts
        .into(BatteryHeat.class, into.pointer())
        .given(discharges)
        .makes(
            because ->
                new BatteryHeat(because.explained(this::intoElement), because.answer(discharges)));
  }

  private Detail intoElement() {
    Derived<Double> power = Derived.of(battery.power_kW()).with(loop.element_kW(), Math::min);
    Detail.Builder detail =
        Detail.at(battery.mayDischargeInto(), setup.immersion().power_kW())
            .cures(without(Consumer.IMMERSION));
    if (power.isKnown()) {
      detail
          .size(Size.kilowatts(power.get()))
          .evidence(Measure.of("from the battery into the element", power.get(), KILOWATT));
      battery
          .capacity_kWh()
          .optional()
          .ifPresent(
              capacity ->
                  detail.evidence(
                      Measure.of("full battery empty after", capacity / power.get(), "h")));
    }
    return detail.done();
  }

  /** An order is entered; or, where none is, the charger is entered to come first. */
  private static Derived<Boolean> ordered(VehicleCharger charger) {
    boolean first =
        charger.before().optional().filter(all -> all.contains(Consumer.HEAT_PUMP)).isPresent();
    return charger.ordered().isEntered() || !first
        ? Derived.of(charger.ordered())
        : Derived.of(charger.before()).map(before -> true);
  }

  private Detail chase(VehicleCharger charger) {
    List<Measure> powers = new ArrayList<>();
    add("minimum charger power", Derived.of(charger.minimum_kW()), powers);
    add("maximum charger power", Derived.of(charger.maximum_kW()), powers);
    add("power input of the heat pump", loop.draw_kW(), powers);
    double starts = loop.timing().withTimers().startsPerHour();
    powers.add(Measure.of("starts per hour", starts, "1/h"));
    return Detail.at(charger.ordered(), setup.relay().start_kW())
        .size(Size.startsPerHour(starts))
        .evidence(powers.toArray(new Measure[0]))
        .basis("starts as the heat pump's own timers allow")
        .done();
  }

  private static void add(String quantity, Derived<Double> power, List<Measure> powers) {
    if (power.isKnown()) {
      powers.add(Measure.of(quantity, power.get(), KILOWATT));
    }
  }
}
