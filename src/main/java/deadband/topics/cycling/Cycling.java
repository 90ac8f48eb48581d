package deadband.topics.cycling;

import static deadband.setup.Unit.KELVIN;
import static deadband.setup.Unit.LITRE;
import static deadband.setup.Unit.MINUTE;
import static deadband.setup.Unit.SQUARE_METRE;

import deadband.document.Pointer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.plant.Dial;
import deadband.plant.HeatedVolume;
import deadband.plant.Programmes;
import deadband.provenance.Derived;
import deadband.setup.Buffer;
import deadband.setup.Change;
import deadband.setup.Programme;
import deadband.setup.Setup;
import deadband.setup.Tank;
import deadband.trade.BufferVolume;
import deadband.trade.StoredHeat;
import deadband.trade.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Facts about what keeps the heat pump running long enough: buffer, tank and coil. */
public final class Cycling {

  /** Mean temperature of heating water, for its properties alone. */
  private static final double HEATING_WATER_C = 35;

  /** Mean temperature of hot water, for its properties alone. */
  private static final double HOT_WATER_C = 50;

  /** Less than any swing and any power: keeps a time finite where there is none. */
  private static final double LEAST = 0.001;

  /** A buffer that swings by more than this is no longer one a house can be heated from. */
  private static final double MOST_BUFFER_SWING_K = 10;

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final Buffer buffer;
  private final Programmes programmes;

  /** What buffer and system hold, against what the minimum run of the heat pump takes. */
  public record BufferSize(Evidence evidence, Quantity held_L, Quantity needed_L) implements Case {}

  /** How long the heat pump can at most heat the tank, against its minimum run. */
  public record TankOutput(Evidence evidence, Quantity run_min, Quantity least_min)
      implements Case {}

  /** Surface of the coil against what a heat pump of that output needs. */
  public record CoilSurface(Evidence evidence, Quantity area_m2, Quantity least_m2)
      implements Case {}

  private Cycling(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.buffer = setup.buffer();
    this.programmes = new Programmes(setup);
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    Cycling topic = new Cycling(setup, limits, facts);
    topic.buffer();
    topic.tank();
    topic.coil();
  }

  private Derived<Double> minimumRun_min() {
    return Derived.of(setup.heatPump().minimumRun_min());
  }

  /** What the buffer is to even out: the least the source gives, the least the house takes. */
  private record Load(double source_kW, double demand_kW, double swing_K) {

    double needed_L(double run_min) {
      return LITRE.round(
          BufferVolume.volume_L(run_min, source_kW, demand_kW, swing_K, HEATING_WATER_C));
    }

    double swingFor_K(double run_min, double held_L) {
      return BufferVolume.swing_K(run_min, source_kW, demand_kW, held_L, HEATING_WATER_C);
    }

    double run_min(double held_L) {
      return BufferVolume.runTime_min(held_L, source_kW, demand_kW, swing_K, HEATING_WATER_C);
    }

    double startsPerHour(double held_L) {
      return BufferVolume.startsPerHour(held_L, source_kW, demand_kW, swing_K, HEATING_WATER_C);
    }
  }

  private Derived<Load> load() {
    return Derived.of(buffer.leastHeatOutput_kW())
        .with(
            Derived.of(buffer.leastHeatDemand_kW()),
            (source, demand) -> new Load(source, demand, 0))
        .with(
            Derived.of(buffer.swing_K()),
            (load, swing) -> new Load(load.source_kW(), load.demand_kW(), Math.max(LEAST, swing)));
  }

  private Derived<Double> held_L() {
    return Derived.sum(LITRE, Derived.of(buffer.volume_L()), Derived.of(buffer.systemVolume_L()));
  }

  private void buffer() {
    Derived<Double> held = held_L();
    Derived<Double> needed = load().with(minimumRun_min(), Load::needed_L);
    facts
        .into(BufferSize.class, buffer.part().pointer())
        .given(held, needed)
        .makes(
            because ->
                new BufferSize(
                    because.explained(() -> tooSmall(held.get(), needed.get())),
                    because.quantity(held),
                    because.quantity(needed)));
  }

  private Detail tooSmall(double held_L, double needed_L) {
    Load load = load().get();
    Detail.Builder detail =
        Detail.at(
                buffer.volume_L(),
                buffer.systemVolume_L(),
                buffer.swing_K(),
                setup.heatPump().minimumRun_min())
            .observed(Measure.of("volume of buffer and system", held_L, LITRE))
            .limit(bufferBound(needed_L))
            .size(Size.startsPerHour(load.startsPerHour(held_L)))
            .evidence(
                Measure.of("short by", needed_L - held_L, LITRE),
                Measure.of("resulting run", load.run_min(held_L), MINUTE),
                Measure.of("starts per hour", load.startsPerHour(held_L), "1/h"))
            .basis("heat between the switching points, properties of water at 35 °C");
    return widerSwing(load, held_L).map(detail::cure).orElse(detail).done();
  }

  private Bound bufferBound(double needed_L) {
    String quantity = "volume for the minimum run";
    String how = "minimum run × (minimum output − minimum demand), over the differential";
    return setup.heatPump().minimumRun_min().isEntered()
        ? Bound.calculated(quantity, needed_L, LITRE, how)
        : Bound.assumed(quantity, needed_L, LITRE, how + "; minimum run assumed");
  }

  /** The swing that the water held would need, as long as the house can be heated from it. */
  private Optional<Change> widerSwing(Load load, double held_L) {
    double needed_K = load.swingFor_K(minimumRun_min().get(), held_L);
    double dial_K = Dial.up_C(KELVIN.round(needed_K));
    return dial_K <= MOST_BUFFER_SWING_K
        ? Optional.of(Change.of(buffer.swing_K(), dial_K))
        : Optional.empty();
  }

  private void tank() {
    Tank tank = setup.tank();
    Derived<Double> run =
        new HeatedVolume(setup)
            .aboveCoil_L()
            .with(Derived.of(setup.heatPump().hotWaterOutput_kW()), this::longestRun_min);
    Derived<Double> least = minimumRun_min();
    facts
        .into(TankOutput.class, tank.part().pointer())
        .given(run, least)
        .foundOnlyWith(openSwings())
        .makes(
            because ->
                new TankOutput(
                    because.explained(() -> oversized(run.get(), least.get())),
                    because.quantity(run),
                    because.quantity(least)));
  }

  private double longestRun_min(double heated_L, double output_kW) {
    double half_K = widestSwing_K() / 2;
    return MINUTE.round(
        StoredHeat.heatingTime_min(
            Math.max(LEAST, heated_L),
            Water.RANGE_C.clamp(HOT_WATER_C - half_K),
            Water.RANGE_C.clamp(HOT_WATER_C + half_K),
            Math.max(LEAST, output_kW)));
  }

  /** The widest that is usual, or a wider one that is entered. */
  private double widestSwing_K() {
    double widest_K = limits.value(Limit.WIDEST_SWING);
    for (Programme programme : inUse()) {
      Derived<Double> swing =
          Derived.difference(
              KELVIN, Derived.of(programme.stop_C()), Derived.of(programme.start_C()));
      widest_K = swing.isKnown() ? Math.max(widest_K, swing.get()) : widest_K;
    }
    return widest_K;
  }

  private List<Programme> inUse() {
    return programmes.all().stream()
        .filter(named -> !named.used().is(used -> !used))
        .map(Programmes.Named::programme)
        .toList();
  }

  private List<Pointer> openSwings() {
    List<Derived<Double>> ends = new ArrayList<>();
    for (Programme programme : inUse()) {
      ends.add(Derived.of(programme.start_C()));
      ends.add(Derived.of(programme.stop_C()));
    }
    return Derived.missingOf(ends);
  }

  private Detail oversized(double run_min, double least_min) {
    return Detail.at(
            setup.heatPump().hotWaterOutput_kW(),
            setup.tank().volume_L(),
            setup.tank().coil().bottom_mm())
        .observed(Measure.of("longest run", run_min, MINUTE))
        .limit(runBound(least_min))
        .size(Size.startsPerHour(programmes.startsPerHour()))
        .evidence(
            Measure.of("volume the coil heats", new HeatedVolume(setup).aboveCoil_L().get(), LITRE),
            Measure.of("maximum differential", widestSwing_K(), KELVIN))
        .basis("heat from the coil over the maximum differential, properties of water at 50 °C")
        .done();
  }

  /** How wide a swing is usual is common practice; one that is entered is not. */
  private Bound runBound(double least_min) {
    return widestSwing_K() > limits.value(Limit.WIDEST_SWING)
        ? programmes.minimumRun(least_min)
        : Bound.of("minimum run", least_min, limits.of(Limit.WIDEST_SWING), MINUTE);
  }

  /** A coil made for a boiler is smaller than any made for a heat pump, however small that is. */
  private void coil() {
    Derived<Double> area = Derived.of(setup.tank().coil().area_m2());
    double each_m2 = limits.value(Limit.COIL_AREA_FOR_EACH_KILOWATT);
    double least_m2 = limits.value(Limit.COIL_AREA_OF_HEAT_PUMP);
    Derived<Double> needed =
        Derived.of(setup.heatPump().hotWaterOutput_kW())
            .map(output -> SQUARE_METRE.round(Math.max(least_m2, each_m2 * output)));
    Derived<Double> least =
        needed.or(area.is(m2 -> m2 < least_m2) ? Derived.constant(least_m2) : needed);
    facts
        .into(CoilSurface.class, setup.tank().coil().area_m2().pointer())
        .fitted(Derived.notAbsent(setup.tank().part()))
        .given(area, least)
        .makes(
            because ->
                new CoilSurface(
                    because.explained(() -> cramped(area.get(), least.get())),
                    because.quantity(area),
                    because.quantity(least)));
  }

  private Detail cramped(double area_m2, double least_m2) {
    Limits.Entry whole = limits.of(Limit.COIL_AREA_OF_HEAT_PUMP);
    Limits.Entry each = limits.of(Limit.COIL_AREA_FOR_EACH_KILOWATT);
    return Detail.at(setup.tank().coil().area_m2(), setup.heatPump().hotWaterOutput_kW())
        .observed(Measure.of("coil area", area_m2, SQUARE_METRE))
        .limit(
            Bound.of(
                "coil area needed",
                least_m2,
                least_m2 > whole.value() ? each : whole,
                SQUARE_METRE))
        .done();
  }
}
