package deadband.topics.ladder;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KILOWATT;
import static deadband.setup.Unit.KILOWATT_HOUR;

import deadband.document.Pointer;
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
import deadband.loop.TankLimit;
import deadband.plant.Dial;
import deadband.plant.HeatedVolume;
import deadband.plant.Programmes;
import deadband.provenance.Derived;
import deadband.provenance.Provenance;
import deadband.setup.Change;
import deadband.setup.Entered;
import deadband.setup.Programme;
import deadband.setup.Setup;
import deadband.trade.HotWaterUse;
import deadband.trade.StoredHeat;
import deadband.trade.SunnyDay;
import deadband.trade.Water;
import java.util.ArrayList;
import java.util.List;

/** The case about the room that the everyday programme leaves in the tank for the sun. */
public final class RoomForSun {

  private static final double LEAST_L = 0.001;
  private static final int MIDSUMMER = 6;

  @Says("PV surplus heats the tank: through a diverter, or by the surplus programme in use.")
  public record SurplusHeatsTank(Answer answer) implements Condition {}

  /** The heat the tank can still take above the everyday stop, against what a sunny day needs. */
  public record SunRoom(Evidence evidence, Quantity room_kWh, Quantity needed_kWh)
      implements Case {}

  private final Setup setup;
  private final Limits limits;
  private final Programme everyday;
  private final Programmes programmes;
  private final TankLimit limit;
  private final HeatedVolume volume;

  private RoomForSun(Setup setup, Limits limits) {
    this.setup = setup;
    this.limits = limits;
    this.everyday = setup.heatPump().everyday();
    this.programmes = new Programmes(setup);
    this.limit = new TankLimit(setup);
    this.volume = new HeatedVolume(setup);
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    new RoomForSun(setup, limits).derive(facts);
  }

  private void derive(Facts facts) {
    facts.add(
        new SurplusHeatsTank(
            facts.answer(Derived.any(programmes.surplusIsCalled(), diverterFitted()))));
    Derived<Double> room = heated_L().with(swing(), RoomForSun::heat_kWh);
    Derived<Double> needed = usable_kWh().map(this::shareOf_kWh);
    facts
        .into(SunRoom.class, everyday.part().pointer())
        .given(room, needed)
        .foundOnlyWith(open())
        .clearOnlyWith(openSide(needed))
        .makes(
            because ->
                new SunRoom(
                    because.explained(() -> full(room.get(), needed.get())),
                    because.quantity(room),
                    because.quantity(needed)));
  }

  private Derived<Boolean> diverterFitted() {
    return Derived.of(setup.diverter().part().isFitted());
  }

  /** What the coil heats; without a coil, what the element does; without either, all of it. */
  private Derived<Double> heated_L() {
    boolean noCoil = setup.tank().coil().part().isFitted().says(false);
    boolean noElement = setup.immersion().part().isFitted().says(false);
    if (noElement) {
      return noCoil ? Derived.of(setup.tank().volume_L()) : volume.aboveCoil_L();
    }
    Derived<Double> aboveElement_L = volume.above_L(Derived.of(setup.immersion().height_mm()));
    return noCoil ? aboveElement_L : volume.aboveCoil_L().or(aboveElement_L);
  }

  private record Swing(double from_C, double to_C) {}

  private Derived<Swing> swing() {
    return Derived.of(everyday.stop_C()).with(top_C(), Swing::new);
  }

  private static double heat_kWh(double heated_L, Swing swing) {
    double heat_kWh =
        StoredHeat.heat_kWh(
            Math.max(LEAST_L, heated_L),
            Water.RANGE_C.clamp(swing.from_C()),
            Water.RANGE_C.clamp(swing.to_C()));
    return KILOWATT_HOUR.round(Math.max(0, heat_kWh));
  }

  /** The hottest that sun may make the tank, by whichever takes it further. */
  private Derived<Double> top_C() {
    return Derived.highestKnown(tops_C());
  }

  private List<Derived<Double>> tops_C() {
    return tops_C(limit.highestOpening_C().or(limit.limit_C()));
  }

  private List<Derived<Double>> tops_C(Derived<Double> opening_C) {
    List<Derived<Double>> tops = new ArrayList<>();
    if (!programmes.surplusIsCalled().is(called -> !called)) {
      tops.add(Derived.of(setup.heatPump().surplus().stop_C()));
    }
    if (!diverterFitted().is(fitted -> !fitted)) {
      tops.add(opening_C);
    }
    return tops;
  }

  /** The side of the hysteresis, where the lower opening alone leaves too little room. */
  private List<Pointer> openSide(Derived<Double> needed_kWh) {
    Derived<Double> lowest = limit.lowestOpening_C().or(limit.limit_C());
    boolean raised = top_C().is(top -> highestBut(lowest).is(lower -> lower < top));
    Derived<Double> room =
        heated_L()
            .with(
                Derived.of(everyday.stop_C()).with(highestBut(lowest), Swing::new),
                RoomForSun::heat_kWh);
    boolean tight = room.is(least -> needed_kWh.is(needed -> least < needed));
    return raised && tight ? limit.open() : List.of();
  }

  private Derived<Double> highestBut(Derived<Double> opening_C) {
    return Derived.highestKnown(tops_C(opening_C));
  }

  /** What a sunny day has over, or the hot water of a day, whichever is less. */
  private Derived<Double> usable_kWh() {
    Derived<Double> surplus = surplus_kWh();
    Derived<Double> use = use_kWh();
    return surplus.isKnown() && use.isKnown() ? surplus.with(use, Math::min) : surplus.or(use);
  }

  private Derived<Double> surplus_kWh() {
    return Derived.of(setup.solar().peak_kW())
        .with(
            Derived.of(setup.house().baseLoad_kW()),
            (peak, load) -> KILOWATT_HOUR.round(SunnyDay.surplus_kWh(peak, load)));
  }

  private Derived<Double> use_kWh() {
    return Derived.of(setup.house().occupants())
        .map(people -> KILOWATT_HOUR.round(HotWaterUse.daily_kWh(people, MIDSUMMER)));
  }

  private double shareOf_kWh(double usable_kWh) {
    return KILOWATT_HOUR.round(usable_kWh * limits.value(Limit.SUN_ROOM_SHARE));
  }

  /** Each of these may still lower what is needed, or raise the top. */
  private List<Pointer> open() {
    List<Derived<Double>> all = new ArrayList<>(tops_C());
    all.add(surplus_kWh());
    all.add(use_kWh());
    return diverterFitted().is(fitted -> !fitted)
        ? Derived.missingOf(all)
        : Provenance.union(Derived.missingOf(all), limit.open());
  }

  private Detail full(double room_kWh, double needed_kWh) {
    Limits.Entry share = limits.of(Limit.SUN_ROOM_SHARE);
    double short_kWh = KILOWATT_HOUR.round(needed_kWh - room_kWh);
    return Detail.at(everyday.stop_C(), decidesTheTop())
        .observed(
            Measure.of("heat the tank takes above the everyday stop", room_kWh, KILOWATT_HOUR))
        .limit(Bound.of("heat to leave for PV", needed_kWh, share, KILOWATT_HOUR))
        .size(Size.kilowatts(KILOWATT.round(short_kWh / SunnyDay.FULL_SUN_H.value())))
        .evidence(evidence())
        .cures(lowered(needed_kWh))
        .basis("heat between everyday stop and maximum tank temperature, properties of water")
        .done();
  }

  /** The setting by which PV makes the tank hottest. */
  private Entered<Double> decidesTheTop() {
    Entered<Double> stop = setup.heatPump().surplus().stop_C();
    boolean byStop = top_C().is(top -> stop.optional().filter(top::equals).isPresent());
    boolean called = !programmes.surplusIsCalled().is(is -> !is);
    return byStop && called ? stop : setup.diverter().limit_C();
  }

  private Measure[] evidence() {
    List<Measure> evidence = new ArrayList<>();
    evidence.add(Measure.of("everyday stop", swing().get().from_C(), CELSIUS));
    evidence.add(Measure.of("maximum tank temperature on PV", swing().get().to_C(), CELSIUS));
    add("surplus of a sunny day", surplus_kWh(), evidence);
    add("hot water of a summer's day", use_kWh(), evidence);
    return evidence.toArray(new Measure[0]);
  }

  private static void add(String quantity, Derived<Double> heat, List<Measure> evidence) {
    if (heat.isKnown()) {
      evidence.add(Measure.of(quantity, heat.get(), KILOWATT_HOUR));
    }
  }

  /** A lower everyday stop; with its start moved along, where its swing would become too small. */
  private List<List<Change>> lowered(double needed_kWh) {
    double capacity_kWh_per_K =
        Math.max(LEAST_L, heated_L().get())
            * Water.heatCapacity_kWh_per_LK(Water.RANGE_C.clamp(swing().get().to_C()));
    double stop_C =
        Dial.down_C(CELSIUS.round(swing().get().to_C() - needed_kWh / capacity_kWh_per_K));
    Change stop = Change.of(everyday.stop_C(), stop_C);
    if (!everyday.start_C().isEntered()) {
      return List.of(List.of(stop));
    }
    double moved_C =
        CELSIUS.round(everyday.start_C().optional().orElse(0.0) + stop_C - swing().get().from_C());
    return List.of(List.of(stop), List.of(stop, Change.of(everyday.start_C(), moved_C)));
  }
}
