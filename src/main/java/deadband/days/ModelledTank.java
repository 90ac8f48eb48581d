package deadband.days;

import deadband.dayrun.DiverterModel;
import deadband.dayrun.ImmersionModel;
import deadband.dayrun.Line;
import deadband.dayrun.TankModel;
import deadband.dayrun.Window;
import deadband.loop.Gathered;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.setup.ClockWindow;
import deadband.setup.DemandInput;
import deadband.setup.Diverter;
import deadband.setup.Diverter.HysteresisLies;
import deadband.setup.Entered;
import deadband.setup.Immersion;
import deadband.setup.Setup;
import deadband.setup.Tank;
import deadband.trade.SafetyChain;
import deadband.trade.StandingLoss;
import java.util.List;

/** The tank, its immersion heater and the diverter that feeds it, as the day run takes them. */
public final class ModelledTank {

  /** Room around the tank [°C]: indoors, common practice. */
  private static final double ROOM_C = 20;

  /** A rod thermostat closes about so far below its setting [K]: common practice, from memory. */
  private static final double ROD_DIFFERENTIAL_K = 5;

  private static final double NEVER_C = Double.NEGATIVE_INFINITY;
  private static final double USUAL_HEIGHT_MM = 1500;
  private static final double ELEMENT_SHARE = 0.08;
  private static final double COIL_BOTTOM_SHARE = 0.06;
  private static final double LEAST_COIL_SHARE = 0.05;
  private static final double COIL_TOP_SHARE = 0.6;
  private static final double SENSOR_SHARE = 0.5;
  private static final double USUAL_HYSTERESIS_K = 2;
  private static final String USUAL = "common practice, for the day run only";
  private static final String NOT_OPENING = "not entered: assumed not to open first in the day run";

  private final Setup setup;
  private final Tank tank;

  public ModelledTank(Setup setup) {
    this.setup = setup;
    this.tank = setup.tank();
  }

  public Derived<Double> height_mm() {
    return DayModel.above(0, Derived.of(tank.height_mm()), tank.height_mm())
        .or(Derived.assumed(tank.height_mm().pointer(), USUAL_HEIGHT_MM, USUAL));
  }

  /** A height entered, or a usual share of the tank's. */
  public Derived<Double> heightOr(Entered<Double> entered, double share) {
    return Derived.of(entered)
        .or(
            height_mm()
                .then(
                    whole ->
                        Derived.assumed(
                            entered.pointer(), (double) Math.round(share * whole), USUAL)));
  }

  /** The height of a tank sensor, half-way up where it is not entered. */
  public Derived<Double> sensor_mm(Entered<Double> entered) {
    return heightOr(entered, SENSOR_SHARE);
  }

  public Derived<TankModel.Spec> tank() {
    Gathered parts = new Gathered();
    var volume_L = parts.with(tank.volume_L());
    var height_mm = parts.with(height_mm());
    var loss_kWh_per_day = parts.with(loss_kWh_per_day(volume_L));
    var bottom_mm = parts.with(heightOr(tank.coil().bottom_mm(), COIL_BOTTOM_SHARE));
    var top_mm = parts.with(heightOr(tank.coil().top_mm(), COIL_TOP_SHARE));
    var cutOut_C = parts.with(tank.coil().cutOut_C(), SafetyChain.CUT_OUT_C.value(), NOT_OPENING);
    return parts.into(
        () ->
            new TankModel.Spec(
                volume_L.get(),
                height_mm.get(),
                loss_kWh_per_day.get(),
                bottom(bottom_mm.get(), height_mm.get()),
                top(bottom_mm.get(), top_mm.get(), height_mm.get()),
                cutOut_C.get(),
                ROOM_C,
                TankModel.LAYERS));
  }

  /** A coil lies within the tank, whatever is entered of it. */
  private static double bottom(double bottom_mm, double height_mm) {
    return Math.min(bottom_mm, (1 - LEAST_COIL_SHARE) * height_mm);
  }

  private static double top(double bottom_mm, double top_mm, double height_mm) {
    double least_mm = bottom(bottom_mm, height_mm) + LEAST_COIL_SHARE * height_mm;
    return Math.min(height_mm, Math.max(top_mm, least_mm));
  }

  private Derived<Double> loss_kWh_per_day(Derived<Double> volume_L) {
    return Derived.of(tank.loss_kWh_per_day())
        .or(
            volume_L.then(
                volume ->
                    Derived.assumed(
                        tank.loss_kWh_per_day().pointer(),
                        Math.round(
                                StandingLoss.perDay_kWh(
                                        StandingLoss.ecodesignLimit_W(
                                            StandingLoss.ECODESIGN_VOLUME_L.clamp(volume)))
                                    * 10)
                            / 10.0,
                        "ecodesign limit at its volume, Reg. (EU) 814/2013")));
  }

  public Derived<ImmersionModel.Spec> immersion() {
    return DayModel.isThere(setup.immersion().part().isFitted())
        .then(there -> there ? fittedImmersion() : Derived.constant(ImmersionModel.Spec.none()));
  }

  private Derived<ImmersionModel.Spec> fittedImmersion() {
    Immersion immersion = setup.immersion();
    Gathered parts = new Gathered();
    var power_kW = parts.with(new RelayLoop(setup).element_kW());
    var height_mm = parts.with(heightOr(immersion.height_mm(), ELEMENT_SHARE));
    var thermostat_C =
        parts.with(immersion.thermostat_C(), SafetyChain.CUT_OUT_C.value(), NOT_OPENING);
    var cutOut_C = parts.with(immersion.cutOut_C(), SafetyChain.CUT_OUT_C.value(), NOT_OPENING);
    var timed = parts.with(immersion.timed(), List.of(), "not entered: no timer in the day run");
    return parts.into(
        () ->
            new ImmersionModel.Spec(
                power_kW.get(),
                height_mm.get(),
                thermostat_C.get(),
                ROD_DIFFERENTIAL_K,
                cutOut_C.get(),
                windows(timed.get())));
  }

  public static List<Window> windows(List<ClockWindow> entered) {
    return entered.stream().map(each -> new Window(each.from_min(), each.until_min())).toList();
  }

  public Derived<DiverterModel.Spec> diverter(ModelledPower power) {
    return DayModel.isThere(setup.diverter().part().isFitted())
        .then(there -> there ? fittedDiverter(power) : idleDiverter());
  }

  /** One that never feeds; its sensor then stands for the heat pump's. */
  private Derived<DiverterModel.Spec> idleDiverter() {
    return sensor_mm(setup.heatPump().sensor_mm())
        .map(
            sensor_mm -> new DiverterModel.Spec(NEVER_C, NEVER_C, 0, 0, false, sensor_mm, Line.L1));
  }

  private Derived<DiverterModel.Spec> fittedDiverter(ModelledPower power) {
    Diverter diverter = setup.diverter();
    Gathered parts = new Gathered();
    var limit_C = parts.with(diverter.limit_C());
    var hysteresis_K = parts.with(diverter.hysteresis_K(), USUAL_HYSTERESIS_K, USUAL);
    var lies = parts.with(diverter.hysteresisLies(), HysteresisLies.BELOW, USUAL);
    var minimum_kW = parts.with(diverter.minimum_kW());
    var margin_kW = parts.with(diverter.exportMargin_kW());
    var answers = parts.with(answersDemand());
    var sensor_mm = parts.with(sensor_mm(diverter.sensor().height_mm()));
    var line = parts.with(power.line(Derived.constant(1.0), diverter.phase()));
    return parts.into(
        () -> {
          double above_K = lies.get() == HysteresisLies.BOTH ? hysteresis_K.get() : 0;
          return new DiverterModel.Spec(
              limit_C.get() + above_K,
              limit_C.get() - hysteresis_K.get(),
              minimum_kW.get(),
              margin_kW.get(),
              answers.get(),
              sensor_mm.get(),
              line.get());
        });
  }

  private Derived<Boolean> answersDemand() {
    DemandInput input = setup.diverter().demandInput();
    return DayModel.isThere(input.part().isFitted())
        .then(
            there ->
                there
                    ? Derived.of(input.action()).map(does -> does == DemandInput.Action.FULL_POWER)
                    : Derived.constant(false));
  }
}
