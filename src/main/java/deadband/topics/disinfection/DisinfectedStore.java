package deadband.topics.disinfection;

import static deadband.setup.Unit.LITRE;
import static deadband.setup.Unit.MILLIMETRE;
import static deadband.setup.Unit.NONE;

import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.plant.DisinfectionDuty;
import deadband.provenance.Derived;
import deadband.setup.Coil;
import deadband.setup.Disinfection;
import deadband.setup.Setup;
import deadband.setup.Unit;
import deadband.trade.DisinfectionCycle;

/** Facts about the part of the store that a disinfection reaches, and the part its sensor sees. */
public final class DisinfectedStore {

  private static final double PERCENT = 100;

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final Disinfection programme;
  private final DisinfectionDuty duty;
  private final DisinfectionHeater heater;

  /** The share of the store that a disinfection heats, against the share its cycle asks for. */
  public record TreatedShare(Evidence evidence, Quantity treated, Quantity needed)
      implements Case {}

  /**
   * The share of the store below the sensor that ends a disinfection.
   *
   * @param aboveCoil whether the sensor sits above the whole coil, where one is fitted
   * @param aboveImmersion whether it sits above the immersion heater, where one is fitted
   */
  public record SensorSight(
      Evidence evidence, Answer aboveCoil, Answer aboveImmersion, Quantity below, double most)
      implements Case {}

  /** The height of the sensor that ends a disinfection, against the lower edge of the heater. */
  public record SensorPlace(Evidence evidence, Quantity sensor_mm, Quantity heater_mm)
      implements Case {}

  private DisinfectedStore(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.programme = setup.heatPump().disinfection();
    this.duty = new DisinfectionDuty(setup, limits);
    this.heater = new DisinfectionHeater(setup);
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    DisinfectedStore topic = new DisinfectedStore(setup, limits, facts);
    topic.treated();
    topic.sight();
    topic.place();
  }

  private Derived<Double> height_mm() {
    return Derived.of(setup.tank().height_mm());
  }

  private void treated() {
    Derived<Double> treated = heater.height_mm().with(height_mm(), DisinfectedStore::shareAbove);
    Derived<Double> needed = duty.cycle().then(this::asked);
    facts
        .into(TreatedShare.class, programme.part().pointer())
        .given(treated, needed)
        .makes(
            because ->
                new TreatedShare(
                    because.explained(() -> leavesCold(treated.get(), needed.get())),
                    because.quantity(treated),
                    because.quantity(needed)));
  }

  private static double shareAbove(double heater_mm, double tank_mm) {
    return tank_mm > 0 ? NONE.round(DisinfectionCycle.treatedShare(heater_mm, tank_mm)) : 0;
  }

  private static double shareBelow(double height_mm, double tank_mm) {
    return NONE.round(1 - shareAbove(height_mm, tank_mm));
  }

  /** The share of the treatment that the programme carries out; of a whole, what counts as one. */
  private Derived<Double> asked(DisinfectionCycle cycle) {
    return Derived.of(programme.every_days())
        .map(cycle::leastShare)
        .map(share -> share < 1 ? share : limits.value(Limit.TREATED_SHARE_OF_WHOLE));
  }

  private Detail leavesCold(double treated, double needed) {
    double volume_L = setup.tank().volume_L().optional().orElse(0.0);
    Detail.Builder detail =
        Detail.at(heater.heightEntered(), setup.tank().height_mm(), programme.heater())
            .observed(percent("share of the store treated", treated))
            .limit(shareBound(needed))
            .size(duty.missed())
            .basis("upright store, treated above the heater's lower edge");
    return volume_L > 0
        ? detail.evidence(Measure.of("volume not heated", (1 - treated) * volume_L, LITRE)).done()
        : detail.done();
  }

  private Bound shareBound(double needed) {
    DisinfectionCycle cycle = duty.cycle().get();
    String quantity = "share required by the cycle";
    boolean whole = cycle.treatments().stream().allMatch(treatment -> treatment.share() == 1);
    Limits.Entry limit = limits.of(Limit.TREATED_SHARE_OF_WHOLE);
    return whole
        ? new Bound(
            percent(quantity, needed),
            limit.name(),
            limit.source(),
            limit.known().words(),
            limit.isFirm() && DisinfectionDuty.isFirm(cycle))
        : Bound.sourced(percent(quantity, needed), cycle.name(), cycle.source(), cycle.known());
  }

  private static Measure percent(String quantity, double share) {
    return Measure.of(quantity, share * PERCENT, "%");
  }

  private Derived<Double> sensor_mm() {
    return Derived.of(programme.sensor_mm());
  }

  private void sight() {
    Derived<Double> below = sensor_mm().with(height_mm(), DisinfectedStore::shareBelow);
    double most = limits.value(Limit.SHARE_BELOW_SENSOR);
    facts
        .into(SensorSight.class, programme.sensor_mm().pointer())
        .given(aboveCoil(), aboveElement(), below)
        .makes(
            because ->
                new SensorSight(
                    because.explained(() -> blind(below.get(), most)),
                    because.answer(aboveCoil()),
                    because.answer(aboveElement()),
                    because.quantity(below),
                    most));
  }

  private Derived<Boolean> aboveCoil() {
    Coil coil = setup.tank().coil();
    return Derived.any(
        Derived.not(Derived.of(coil.part().isFitted())), isAbove(Derived.of(coil.top_mm())));
  }

  private Derived<Boolean> aboveElement() {
    return Derived.any(
        Derived.not(Derived.of(setup.immersion().part().isFitted())),
        isAbove(Derived.of(setup.immersion().height_mm())));
  }

  private Derived<Boolean> isAbove(Derived<Double> heater_mm) {
    return sensor_mm().with(heater_mm, (sensor, heated) -> sensor > heated);
  }

  private Detail blind(double below, double most) {
    Limits.Entry limit = limits.of(Limit.SHARE_BELOW_SENSOR);
    return Detail.at(programme.sensor_mm(), setup.tank().height_mm())
        .observed(percent("share of the store below the sensor", below))
        .limit(
            new Bound(
                percent("permitted share below the sensor", most),
                limit.name(),
                limit.source(),
                limit.known().words(),
                limit.isFirm()))
        .basis("upright store")
        .done();
  }

  private void place() {
    Derived<Double> heater_mm = heater.height_mm();
    facts
        .into(SensorPlace.class, programme.sensor_mm().pointer())
        .given(sensor_mm(), heater_mm)
        .makes(
            because ->
                new SensorPlace(
                    because.explained(() -> neverWarm(sensor_mm().get(), heater_mm.get())),
                    because.quantity(sensor_mm()),
                    because.quantity(heater_mm)));
  }

  private Detail neverWarm(double sensor_mm, double heater_mm) {
    return Detail.at(programme.sensor_mm(), heater.heightEntered())
        .observed(Measure.of("height of the sensor", sensor_mm, MILLIMETRE))
        .limit(
            Bound.entered(
                "lower edge of the heater", heater_mm, MILLIMETRE, heater.heightEntered()))
        .evidence(
            Measure.of("below the heater by", Unit.MILLIMETRE.round(heater_mm - sensor_mm), "mm"))
        .done();
  }
}
