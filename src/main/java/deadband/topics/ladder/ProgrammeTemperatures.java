package deadband.topics.ladder;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KELVIN;
import static deadband.setup.Unit.KILOWATT_HOUR;
import static deadband.setup.Unit.LITRE;
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
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.loop.TankLimit;
import deadband.plant.Dial;
import deadband.plant.HeatedVolume;
import deadband.plant.Programmes;
import deadband.plant.Programmes.Named;
import deadband.plant.SensorTolerance;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.HeatPump;
import deadband.setup.Programme;
import deadband.setup.Setup;
import deadband.trade.StoredHeat;
import deadband.trade.Water;
import java.util.List;
import java.util.Optional;

/** Facts about the heat pump's hot water programmes, each by itself and against the other top. */
public final class ProgrammeTemperatures {

  private static final double SWING_K = 5;
  private static final double MINUTES_PER_HOUR = 60;

  /** What the coil heats and what it is given are known to about a tenth (our own tolerance). */
  private static final double RUN_TOLERANCE = 0.1;

  /** The stop of a programme, and the most the compressor reaches. */
  public record ProgrammeReach(Evidence evidence, Answer inUse, Quantity stop_C, Quantity reach_C)
      implements Case {}

  /** Start and stop of a temperature programme. */
  public record ProgrammeSwing(Evidence evidence, Answer inUse, Quantity start_C, Quantity stop_C)
      implements Case {}

  /** The run that one swing of the tank gives the compressor. */
  public record TankRun(
      Evidence evidence,
      Answer inUse,
      Quantity start_C,
      Quantity stop_C,
      Quantity output_kW,
      Quantity run_min,
      Quantity minimumRun_min)
      implements Case {}

  /** How far the heat pump stops below the diverter's opening, and what that may be. */
  public record TankTops(
      Evidence evidence,
      Quantity reach_C,
      Quantity opening_C,
      Quantity apart_K,
      Quantity tolerated_K)
      implements Case {}

  /** The start of the surplus programme, and where the everyday one leaves the tank. */
  public record SurplusCall(Evidence evidence, Quantity start_C, Quantity everydayStop_C)
      implements Case {}

  private final Setup setup;
  private final Limits limits;
  private final HeatPump heatPump;
  private final Facts facts;
  private final Programmes programmes;
  private final TankLimit limit;
  private final HeatedVolume volume;

  private ProgrammeTemperatures(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.heatPump = setup.heatPump();
    this.facts = facts;
    this.programmes = new Programmes(setup);
    this.limit = new TankLimit(setup);
    this.volume = new HeatedVolume(setup);
  }

  static void derive(Setup setup, Limits limits, Facts facts) {
    ProgrammeTemperatures topic = new ProgrammeTemperatures(setup, limits, facts);
    for (Named named : topic.programmes.all()) {
      topic.reach(named);
      topic.swing(named);
      topic.run(named);
    }
    topic.tops();
    topic.surplusCall();
  }

  private void reach(Named named) {
    Programme programme = named.programme();
    Derived<Double> stop = Derived.of(programme.stop_C());
    Derived<Double> reach = programmes.reach_C();
    facts
        .into(ProgrammeReach.class, programme.part().pointer())
        .given(named.used(), stop, reach)
        .clearOnlyWith(programmes.toleranceAtReach_K().provenance().missing())
        .makes(
            because ->
                new ProgrammeReach(
                    because.explained(() -> outOfReach(named, stop.get(), reach.get())),
                    facts.answer(named.used()),
                    because.quantity(stop),
                    because.quantity(reach)));
  }

  private Detail outOfReach(Named named, double stop_C, double reach_C) {
    Programme programme = named.programme();
    double dial_C = Dial.down_C(reach_C);
    Bound most = programmes.reachBound(stop_C);
    double over_K = KELVIN.round(stop_C - most.measure().value());
    return Detail.at(programme.stop_C(), heatPump.maximumFlow_C())
        .observed(Measure.of(named.name() + " stop", stop_C, CELSIUS))
        .limit(most)
        .evidence(Measure.of("out of reach by", over_K, KELVIN))
        .cure(Change.of(programme.stop_C(), dial_C))
        .cures(movedTo(programme, dial_C))
        .done();
  }

  /** The whole programme moved down, so that it keeps its swing. */
  private static List<List<Change>> movedTo(Programme programme, double stop_C) {
    if (!programme.start_C().isEntered() || !programme.stop_C().isEntered()) {
      return List.of();
    }
    double by_K = stop_C - Derived.of(programme.stop_C()).get();
    double start_C = CELSIUS.round(Derived.of(programme.start_C()).get() + by_K);
    return List.of(
        List.of(Change.of(programme.stop_C(), stop_C), Change.of(programme.start_C(), start_C)));
  }

  private void swing(Named named) {
    Programme programme = named.programme();
    Derived<Double> start = Derived.of(programme.start_C());
    Derived<Double> stop = Derived.of(programme.stop_C());
    facts
        .into(ProgrammeSwing.class, programme.part().pointer())
        .given(named.used(), start, stop)
        .makes(
            because ->
                new ProgrammeSwing(
                    because.explained(() -> inverted(named, start.get(), stop.get())),
                    facts.answer(named.used()),
                    because.quantity(start),
                    because.quantity(stop)));
  }

  private Detail inverted(Named named, double start_C, double stop_C) {
    Programme programme = named.programme();
    Detail.Builder detail =
        Detail.at(programme.start_C(), programme.stop_C())
            .observed(Measure.of(named.name() + " stop", stop_C, CELSIUS))
            .limit(Bound.entered(named.name() + " start", start_C, CELSIUS, programme.start_C()))
            .size(Size.startsPerHour(programmes.startsPerHour()))
            .evidence(Measure.of("starts per hour", programmes.startsPerHour(), "1/h"));
    if (stop_C < start_C) {
      return detail
          .cure(Change.of(programme.start_C(), stop_C), Change.of(programme.stop_C(), start_C))
          .done();
    }
    return detail.cure(Change.of(programme.start_C(), CELSIUS.round(stop_C - SWING_K))).done();
  }

  private void run(Named named) {
    Programme programme = named.programme();
    Derived<Double> output = Derived.of(heatPump.hotWaterOutput_kW());
    Derived<Double> start = Derived.of(programme.start_C());
    Derived<Double> stop = Derived.of(programme.stop_C());
    Derived<Double> run =
        volume
            .aboveCoil_L()
            .with(output, Heating::new)
            .with(start.with(stop, Swing::new), Heating::run_min);
    Derived<Double> least = Derived.of(heatPump.minimumRun_min());
    facts
        .into(TankRun.class, programme.part().pointer())
        .fitted(Derived.notAbsent(setup.tank().part()))
        .given(named.used(), run, least)
        .makes(
            because ->
                new TankRun(
                    because.explained(() -> shortRun(named, run.get(), least.get())),
                    facts.answer(named.used()),
                    because.quantity(start),
                    because.quantity(stop),
                    because.quantity(output),
                    because.quantity(run),
                    because.quantity(least)));
  }

  /** A run this little too short may be long enough. */
  private Bound runBound(double run_min, double least_min) {
    Bound least = programmes.minimumRun(least_min);
    return run_min < least_min * (1 - RUN_TOLERANCE) ? least : least.brokenByToleranceAlone();
  }

  private record Swing(double start_C, double stop_C) {}

  /** What the coil heats, and with how much. */
  private record Heating(double heated_L, double output_kW) {

    /** Time from start to stop; none where there is nothing to heat, or nothing to heat it. */
    double run_min(Swing swing) {
      if (heated_L <= 0 || output_kW <= 0) {
        return 0;
      }
      return MINUTE.round(
          StoredHeat.heatingTime_min(
              heated_L,
              Water.RANGE_C.clamp(swing.start_C()),
              Water.RANGE_C.clamp(swing.stop_C()),
              output_kW));
    }

    /** The swing that a run needs, calculated a little warmer than it is, so that it is enough. */
    double swingFor_K(double run_min, double stop_C) {
      double warm_C = Water.RANGE_C.clamp(stop_C + 2 * SWING_K);
      return output_kW
          * run_min
          / MINUTES_PER_HOUR
          / (heated_L * Water.heatCapacity_kWh_per_LK(warm_C));
    }
  }

  private Detail shortRun(Named named, double run_min, double least_min) {
    Programme programme = named.programme();
    Swing swing =
        new Swing(Derived.of(programme.start_C()).get(), Derived.of(programme.stop_C()).get());
    double heated_L = volume.aboveCoil_L().get();
    return Detail.at(programme.start_C(), programme.stop_C(), heatPump.hotWaterOutput_kW())
        .observed(Measure.of("run from start to stop", run_min, MINUTE))
        .limit(runBound(run_min, least_min))
        .size(Size.startsPerHour(programmes.startsPerHour()))
        .evidence(
            Measure.of("volume the coil heats", heated_L, LITRE),
            Measure.of("differential", swing.stop_C() - swing.start_C(), KELVIN))
        .cures(heated_L > 0 ? widened(named, swing, heated_L, least_min) : List.of())
        .basis("heat from the coil between start and stop, properties of water")
        .done();
  }

  /**
   * A lower start or a higher stop: comfort decides the everyday one, the sun the other. None where
   * it would take a wider swing than programmes are run with.
   */
  private List<List<Change>> widened(Named named, Swing swing, double heated_L, double least_min) {
    Programme programme = named.programme();
    double needed_K =
        new Heating(heated_L, Derived.of(heatPump.hotWaterOutput_kW()).get())
            .swingFor_K(least_min, swing.stop_C());
    if (needed_K > limits.value(Limit.WIDEST_SWING)) {
      return List.of();
    }
    List<Change> lower =
        List.of(Change.of(programme.start_C(), Dial.down_C(swing.stop_C() - needed_K)));
    List<Change> higher =
        List.of(Change.of(programme.stop_C(), Dial.up_C(swing.start_C() + needed_K)));
    return programme.equals(heatPump.surplus()) ? List.of(higher, lower) : List.of(lower, higher);
  }

  /**
   * A pump that stops well below the diverter's opening, though it could go further, leaves the
   * rest to the element. The other way round is the usual order: the element trickles, the pump
   * finishes.
   */
  private void tops() {
    Derived<Double> stop = Derived.of(heatPump.surplus().stop_C());
    Derived<Double> opening = limit.opening_C();
    Derived<Double> below = Derived.difference(KELVIN, opening, stop);
    Derived<Double> tolerated = tolerated_K();
    facts
        .into(TankTops.class, heatPump.surplus().part().pointer())
        .given(programmes.reach_C(), below, tolerated)
        .makes(
            because ->
                new TankTops(
                    because.explained(() -> apart(stop.get(), opening.get(), tolerated.get())),
                    because.quantity(programmes.reach_C()),
                    because.quantity(opening),
                    because.quantity(below),
                    because.quantity(tolerated)));
  }

  /** The usual distance, with the hysteresis of the one and the tolerance of both. */
  private Derived<Double> tolerated_K() {
    double usual_K = limits.value(Limit.TOPS_APART);
    return Derived.sum(
            KELVIN,
            Derived.of(setup.diverter().hysteresis_K()),
            new SensorTolerance(setup).diverter_K(limit.opening_C()))
        .map(more_K -> KELVIN.round(usual_K + more_K));
  }

  private Detail apart(double stop_C, double opening_C, double tolerated_K) {
    Detail.Builder detail =
        Detail.at(heatPump.surplus().stop_C(), setup.diverter().limit_C())
            .observed(Measure.of("stops lower by", KELVIN.round(opening_C - stop_C), KELVIN))
            .limit(Bound.of("permitted difference", tolerated_K, limits.of(Limit.TOPS_APART)))
            .size(Size.share((opening_C - stop_C) / opening_C))
            .evidence(
                Measure.of("surplus stop", stop_C, CELSIUS),
                Measure.of("diverter opens at", opening_C, CELSIUS))
            .cure(Change.of(heatPump.surplus().stop_C(), Dial.down_C(opening_C)))
            .basis("heat between the two temperatures in the volume the coil heats");
    leftToElement_kWh(stop_C, opening_C)
        .ifPresent(
            heat_kWh ->
                detail.evidence(
                    Measure.of("left to the immersion heater", heat_kWh, KILOWATT_HOUR)));
    return detail.done();
  }

  private Optional<Double> leftToElement_kWh(double stop_C, double opening_C) {
    Derived<Double> heated = volume.aboveCoil_L();
    return heated.is(litres -> litres > 0)
            && Water.RANGE_C.holds(stop_C)
            && Water.RANGE_C.holds(opening_C)
        ? Optional.of(KILOWATT_HOUR.round(StoredHeat.heat_kWh(heated.get(), stop_C, opening_C)))
        : Optional.empty();
  }

  private void surplusCall() {
    Derived<Double> start = Derived.of(heatPump.surplus().start_C());
    Derived<Double> stop = Derived.of(heatPump.everyday().stop_C());
    facts
        .into(SurplusCall.class, heatPump.surplus().part().pointer())
        .given(start, stop)
        .makes(
            because ->
                new SurplusCall(
                    because.explained(() -> unanswered(start.get(), stop.get())),
                    because.quantity(start),
                    because.quantity(stop)));
  }

  private Detail unanswered(double start_C, double everydayStop_C) {
    return Detail.at(heatPump.surplus().start_C(), heatPump.everyday().stop_C())
        .observed(Measure.of("surplus start", start_C, CELSIUS))
        .limit(
            Bound.entered("everyday stop", everydayStop_C, CELSIUS, heatPump.everyday().stop_C()))
        .size(Size.kilowatts(heatPump.hotWaterInput_kW().optional()))
        .evidence(
            Measure.of("call has no effect above", start_C, CELSIUS),
            Measure.of("out of use", KELVIN.round(everydayStop_C - start_C), KELVIN))
        .cure(Change.of(heatPump.surplus().start_C(), Dial.up_C(everydayStop_C)))
        .cure(Change.of(heatPump.everyday().stop_C(), Dial.down_C(start_C)))
        .done();
  }
}
