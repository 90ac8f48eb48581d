package deadband.topics.disinfection;

import static deadband.setup.Unit.MINUTE;

import deadband.document.Pointer;
import deadband.loop.RelayLoop;
import deadband.plant.HeatedVolume;
import deadband.plant.Programmes;
import deadband.provenance.Derived;
import deadband.setup.Disinfection;
import deadband.setup.Disinfection.Heater;
import deadband.setup.Entered;
import deadband.setup.Setup;
import deadband.trade.StoredHeat;
import deadband.trade.Water;
import java.util.List;

/** The heater that carries a disinfection: where it sits, what it heats, and how long it takes. */
final class DisinfectionHeater {

  /** Less than any heater: keeps a time finite where there is no power or no water. */
  private static final double LEAST = 0.001;

  private final Setup setup;
  private final Disinfection programme;
  private final HeatedVolume volume;
  private final RelayLoop loop;
  private final Programmes programmes;

  DisinfectionHeater(Setup setup) {
    this.setup = setup;
    this.programme = setup.heatPump().disinfection();
    this.volume = new HeatedVolume(setup);
    this.loop = new RelayLoop(setup);
    this.programmes = new Programmes(setup);
  }

  /** Whether the store is heated through something whose height can be entered. */
  Derived<Boolean> inTheTank() {
    return Derived.all(
        Derived.of(setup.tank().part().isFitted()),
        Derived.any(isImmersion(), Derived.of(setup.tank().coil().part().isFitted())));
  }

  /** Whether it waits for surplus instead of heating when the disinfection is due. */
  Derived<Boolean> leftToSurplus() {
    return Derived.of(programme.heater()).map(heater -> heater == Heater.SURPLUS);
  }

  private Derived<Boolean> isImmersion() {
    return Derived.of(programme.heater()).map(heater -> heater == Heater.IMMERSION);
  }

  /** The value that tells its height: of the element, or of the lower end of the coil. */
  Entered<Double> heightEntered() {
    return programme.heater().says(Heater.IMMERSION)
        ? setup.immersion().height_mm()
        : setup.tank().coil().bottom_mm();
  }

  Derived<Double> height_mm() {
    return Derived.of(programme.heater()).then(heater -> Derived.of(heightEntered()));
  }

  /**
   * All of the store where a pump mixes it meanwhile, or where it is heated without a coil in it;
   * else what lies above the heater.
   */
  Derived<Double> heated_L() {
    boolean fromOutside =
        setup.tank().coil().part().isFitted().says(false) && isImmersion().is(is -> !is);
    return programme.mixesStore().says(true) || fromOutside
        ? whole_L()
        : volume.above_L(height_mm());
  }

  private Derived<Double> whole_L() {
    return Derived.of(setup.tank().volume_L())
        .with(
            Derived.of(programme.mixesStore()).or(Derived.constant(true)), (whole, mixed) -> whole);
  }

  /** Power at the end of the heating, which is the power of the heater itself. */
  Derived<Double> power_kW() {
    return Derived.of(programme.heater())
        .then(
            heater ->
                switch (heater) {
                  case IMMERSION -> loop.element_kW();
                  case BACKUP_HEATER -> Derived.of(setup.heatPump().backupHeater().power_kW());
                  case HEAT_PUMP -> Derived.of(setup.heatPump().hotWaterOutput_kW());
                  case SURPLUS, NONE -> Derived.constant(0.0);
                });
  }

  /**
   * Time from the everyday start to the target. A back-up heater takes over where the compressor
   * reaches no further; any other heater is on its own all the way.
   */
  Derived<Double> heatUp_min() {
    return heatUp_min(heated_L());
  }

  private Derived<Double> heatUp_min(Derived<Double> heated_L) {
    Derived<Double> start = Derived.of(setup.heatPump().everyday().start_C());
    Derived<Double> target = Derived.of(programme.target_C());
    if (!programme.heater().says(Heater.BACKUP_HEATER)) {
      return stage_min(heated_L, start, target, power_kW());
    }
    Derived<Double> handover =
        programmes.highestTank_C().with(target, Math::min).with(start, Math::max);
    Derived<Double> output = Derived.of(setup.heatPump().hotWaterOutput_kW());
    return Derived.sum(
        MINUTE,
        stage_min(heated_L, start, handover, output),
        stage_min(heated_L, handover, target, power_kW()));
  }

  private record Stage(double from_C, double to_C) {}

  private record Heating(double heated_L, double power_kW) {

    double time_min(Stage stage) {
      return MINUTE.round(
          StoredHeat.heatingTime_min(
              Math.max(LEAST, heated_L),
              Water.RANGE_C.clamp(stage.from_C()),
              Water.RANGE_C.clamp(stage.to_C()),
              Math.max(LEAST, power_kW)));
    }
  }

  private Derived<Double> stage_min(
      Derived<Double> heated_L, Derived<Double> from, Derived<Double> to, Derived<Double> power) {
    return heated_L.with(power, Heating::new).with(from.with(to, Stage::new), Heating::time_min);
  }

  /** Time from the everyday start to the end of the hold. */
  Derived<Double> needed_min() {
    return Derived.sum(MINUTE, heatUp_min(), Derived.of(programme.hold_min()));
  }

  /** The same where a pump may mix the store: for as long as that is not entered. */
  Derived<Double> longest_min() {
    return programme.mixesStore().isEntered()
        ? needed_min()
        : Derived.sum(MINUTE, heatUp_min(whole_L()), Derived.of(programme.hold_min()));
  }

  /** Whether a pump mixes the store, where it is not entered and would make it take too long. */
  List<Pointer> openMixing(Derived<Double> allowed_min) {
    boolean matters = longest_min().is(needed -> allowed_min.is(allowed -> needed > allowed));
    return matters ? Derived.enteredOnly(programme.mixesStore()).provenance().missing() : List.of();
  }
}
