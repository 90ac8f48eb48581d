package deadband.days;

import deadband.dayrun.BackupHeaterModel;
import deadband.dayrun.Counted;
import deadband.dayrun.DisinfectionModel;
import deadband.dayrun.HeatPumpModel;
import deadband.dayrun.Performance;
import deadband.dayrun.RelayModel;
import deadband.loop.Gathered;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.setup.ClockWindow;
import deadband.setup.Disinfection;
import deadband.setup.HeatPump;
import deadband.setup.HeatPump.Source;
import deadband.setup.Programme;
import deadband.setup.Relay;
import deadband.setup.Setup;
import deadband.setup.SurplusInput;
import deadband.setup.SurplusInput.ClosedMeans;
import deadband.setup.SurplusInput.Via;
import deadband.trade.HeatPumpCop;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The relay, the heat pump it calls, and the heat pump's helpers as the day run takes them. */
public final class ModelledHeatPump {

  /** Flow at which a heat pump's plate states what it gives and takes [°C]: EN 14511, memory. */
  private static final double PLATE_FLOW_C = 55;

  /** Air and brine at which it does [°C]: A7, B0, from memory; for ground water that of the day. */
  private static final double PLATE_AIR_C = 7;

  private static final double PLATE_BRINE_C = 0;

  /** A compressor that is entered no limit reaches so far above its highest programme [K]. */
  private static final double OUT_OF_THE_WAY_K = 10;

  private static final double LONGEST_MIN = 1440;

  /** SG Ready states from here on ask for more heat; those below block or leave as it is. */
  private static final double SG_SURPLUS = 3;

  private static final String USUAL = "common practice, for the day run only";

  private final Setup setup;
  private final HeatPump pump;
  private final ModelledPower power;
  private final ModelledTank tank;

  public ModelledHeatPump(Setup setup, ModelledPower power, ModelledTank tank) {
    this.setup = setup;
    this.pump = setup.heatPump();
    this.power = power;
    this.tank = tank;
  }

  public Derived<RelayModel.Spec> relay() {
    Relay relay = setup.relay();
    Gathered parts = new Gathered();
    var counts = parts.with(relay.counts());
    var start_kW = parts.with(relay.start_kW());
    var stop_kW = parts.with(relay.stop_kW());
    var startDelay_min = parts.with(relay.startDelay_min());
    var stopDelay_min = parts.with(relay.stopDelay_min());
    return parts.into(
        () ->
            new RelayModel.Spec(
                counted(counts.get()),
                start_kW.get(),
                stop_kW.get(),
                startDelay_min.get(),
                stopDelay_min.get(),
                call()));
  }

  /** When the heat pump takes the contact for a call; as meant where its sense is not entered. */
  private RelayModel.Call call() {
    SurplusInput input = pump.surplusInput();
    boolean selectsOther = input.sgReadyState().optional().orElse(SG_SURPLUS) < SG_SURPLUS;
    if (input.closedMeans().says(ClosedMeans.BLOCK) || selectsOther) {
      return RelayModel.Call.NEVER;
    }
    boolean crossed = new RelayLoop(setup).senseReversed().is(is -> is);
    boolean onContact = !input.via().isEntered() || input.via().says(Via.CONTACT);
    return crossed && onContact ? RelayModel.Call.WHILE_OPEN : RelayModel.Call.WHILE_CLOSED;
  }

  private static Set<Counted> counted(List<Relay.Counts> counts) {
    return counts.stream()
        .map(
            power ->
                switch (power) {
                  case EXPORT -> Counted.EXPORT;
                  case IMMERSION -> Counted.IMMERSION;
                  case HEAT_PUMP -> Counted.HEAT_PUMP;
                  case BATTERY -> Counted.BATTERY;
                })
        .collect(Collectors.toSet());
  }

  public Derived<HeatPumpModel.Spec> heatPump() {
    Gathered parts = new Gathered();
    var lag_min = parts.with(pump.startLag_min());
    var run_min = parts.with(pump.minimumRun_min());
    var off_min = parts.with(pump.minimumOff_min());
    var sensor_mm = parts.with(tank.sensor_mm(pump.sensor_mm()));
    var timed = parts.with(pump.everyday().timed(), List.<ClockWindow>of(), USUAL);
    var everyday = parts.with(programme(pump.everyday(), timed));
    var surplus = parts.with(programme(pump.surplus(), Derived.constant(List.of())));
    var line = parts.with(power.line(Derived.of(pump.phases()), pump.phase()));
    var performance = parts.with(performance());
    return parts.into(
        () ->
            new HeatPumpModel.Spec(
                lag_min.get(),
                run_min.get(),
                off_min.get(),
                sensor_mm.get(),
                everyday.get(),
                surplus.get(),
                line.get(),
                performance.get()));
  }

  private static Derived<HeatPumpModel.Programme> programme(
      Programme entered, Derived<List<ClockWindow>> timed) {
    Gathered parts = new Gathered();
    // Temperatures entered say that it runs; only a plain no says otherwise.
    boolean off = entered.enabled().isEntered() && !parts.with(entered.enabled()).get();
    var start_C = parts.with(entered.start_C());
    var stop_C = parts.with(entered.stop_C());
    var blocked = parts.with(entered.blocked(), List.<ClockWindow>of(), USUAL);
    return parts.into(
        () ->
            new HeatPumpModel.Programme(
                off ? Double.NEGATIVE_INFINITY : start_C.get(),
                stop_C.get(),
                ModelledTank.windows(blocked.get()),
                ModelledTank.windows(timed.get())));
  }

  public Derived<Source> source() {
    return Derived.of(pump.source())
        .or(Derived.assumed(pump.source().pointer(), Source.AIR, USUAL));
  }

  private Derived<Performance.Spec> performance() {
    Gathered parts = new Gathered();
    var fit = parts.with(source().map(ModelledHeatPump::fit));
    var stop_C = parts.with(pump.surplus().stop_C());
    var flow_K =
        parts.with(DayModel.above(0, Derived.of(pump.flowAboveTank_K()), pump.flowAboveTank_K()));
    var most_kW =
        parts.with(DayModel.above(0, Derived.of(pump.hotWaterInput_kW()), pump.hotWaterInput_kW()));
    var least_kW = parts.with(leastInput_kW(most_kW));
    var reach_C = parts.with(reach_C(stop_C, flow_K));
    var full_C = parts.into(() -> Math.min(stop_C.get(), PLATE_FLOW_C - flow_K.get()));
    var plateCop = parts.into(() -> plateCop(fit.get(), full_C.get() + flow_K.get()));
    var output_kW =
        parts.with(DayModel.above(0, output_kW(most_kW, plateCop), pump.hotWaterOutput_kW()));
    return parts.into(
        () ->
            new Performance.Spec(
                fit.get(),
                HeatPumpCop.fieldFactor(output_kW.get() / most_kW.get(), plateCop.get()),
                Math.min(least_kW.get(), most_kW.get()),
                most_kW.get(),
                full_C.get(),
                reach_C.get(),
                flow_K.get()));
  }

  private Derived<Double> leastInput_kW(Derived<Double> most_kW) {
    return Derived.of(pump.minimumInput_kW())
        .or(
            most_kW.then(
                most ->
                    Derived.assumed(
                        pump.minimumInput_kW().pointer(), most, "assumed not to modulate")));
  }

  private Derived<Double> reach_C(Derived<Double> stop_C, Derived<Double> flow_K) {
    return Derived.of(pump.maximumFlow_C())
        .or(
            stop_C
                .with(flow_K, (stop, above) -> stop + above + OUT_OF_THE_WAY_K)
                .then(
                    flow ->
                        Derived.assumed(
                            pump.maximumFlow_C().pointer(),
                            flow,
                            "assumed to reach its programme")));
  }

  /** Entered or assumed, it is taken for what a test bench says: the field gets less of it. */
  private Derived<Double> output_kW(Derived<Double> most_kW, Derived<Double> plateCop) {
    return Derived.of(pump.hotWaterOutput_kW())
        .or(
            most_kW
                .with(plateCop, (most, cop) -> Math.round(10 * most * cop) / 10.0)
                .then(
                    heat ->
                        Derived.assumed(
                            pump.hotWaterOutput_kW().pointer(), heat, "Ruhnau et al. 2019")));
  }

  private static HeatPumpCop.Fit fit(Source source) {
    return switch (source) {
      case AIR -> HeatPumpCop.Fit.RUHNAU_AIR;
      case GROUND -> HeatPumpCop.Fit.RUHNAU_GROUND;
      case WATER -> HeatPumpCop.Fit.RUHNAU_WATER;
    };
  }

  private static double plateCop(HeatPumpCop.Fit fit, double flow_C) {
    return fit.copClamped(
        flow_C
            - switch (fit) {
              case RUHNAU_AIR, STAFFELL_AIR -> PLATE_AIR_C;
              case RUHNAU_GROUND, STAFFELL_GROUND -> PLATE_BRINE_C;
              case RUHNAU_WATER -> HeatPumpCop.brine_C();
            });
  }

  public Derived<BackupHeaterModel.Spec> backup() {
    return DayModel.isThere(pump.backupHeater().part().isFitted())
        .then(there -> there ? fittedBackup() : Derived.constant(BackupHeaterModel.Spec.none()));
  }

  private Derived<BackupHeaterModel.Spec> fittedBackup() {
    Gathered parts = new Gathered();
    var power_kW = parts.with(pump.backupHeater().power_kW());
    var joins = parts.with(pump.backupHeater().allowedOnSurplus());
    return parts.into(() -> new BackupHeaterModel.Spec(power_kW.get(), joins.get()));
  }

  /** The disinfection programme; none where it is off or nothing is entered of it. */
  public Derived<DisinfectionModel.Spec> disinfection() {
    return DayModel.isThere(pump.disinfection().enabled())
        .then(enabled -> enabled ? enabled() : Derived.constant(DisinfectionModel.Spec.none()));
  }

  private Derived<DisinfectionModel.Spec> enabled() {
    Disinfection entered = pump.disinfection();
    Gathered parts = new Gathered();
    var heater = parts.with(entered.heater());
    var target_C = parts.with(entered.target_C());
    var hold_min = parts.with(entered.hold_min());
    var every_days = parts.with(entered.every_days());
    var sensor_mm =
        parts.with(Derived.of(entered.sensor_mm()).or(tank.sensor_mm(pump.sensor_mm())));
    var allowed_min =
        parts.with(entered.timeAllowed_min(), LONGEST_MIN, "not entered: no limit in the day run");
    var allowed =
        parts.with(entered.allowed(), List.of(), "not entered: at any time in the day run");
    return parts.into(
        () ->
            new DisinfectionModel.Spec(
                heater(heater.get()),
                target_C.get(),
                hold_min.get(),
                every_days.get(),
                0,
                sensor_mm.get(),
                allowed_min.get(),
                ModelledTank.windows(allowed.get())));
  }

  private static DisinfectionModel.Heater heater(Disinfection.Heater entered) {
    return switch (entered) {
      case IMMERSION -> DisinfectionModel.Heater.IMMERSION;
      case HEAT_PUMP -> DisinfectionModel.Heater.HEAT_PUMP;
      case BACKUP_HEATER -> DisinfectionModel.Heater.BACKUP_HEATER;
      case NONE, SURPLUS -> DisinfectionModel.Heater.NONE;
    };
  }
}
