package deadband.dayrun;

import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * A run of one installation through one day or many, step by step.
 *
 * <p>What a setting does shows only over a day: how often the compressor starts, what is bought on
 * a "surplus" call, how much sun the tank keeps. The smallest use:
 *
 * <pre>{@code
 * Result result = DayRun.of(installation, StepLength.MINUTE).through(day).result();
 * }</pre>
 *
 * <p>Within a step: sun less house; what stands first; the compressor if it runs; the back-up
 * heater; the immersion heater; what stands after; the battery into what is still wanted; export
 * limit and meter; what the relay counts. Then the relay decides, after it the heat pump, the
 * disinfection and the back-up heater, all for the next step. Last the tank: heated, cooled, drawn
 * from. The diverter sees the back-up heater, as its sensor does. No step allocates.
 */
public final class DayRun {
  private static final Trace UNWATCHED = step -> {};

  /** Room for so many times the heat of a step limits nothing, however it is rounded. */
  private static final double AMPLE = 2;

  private final Installation installation;
  private final StepLength step;
  private final double step_h;
  private final SupplyModel supply;
  private final GridSensorModel sensor;
  private final Stores stores;
  private final SelfConsumption used;
  private final DiverterModel diverter;
  private final ImmersionModel immersion;
  private final RelayModel relay;
  private final HeatPumpModel heatPump;
  private final Performance performance;
  private final BackupHeaterModel backup;
  private final DisinfectionModel disinfection;
  private final TankModel tank;
  private final int elementLayer;
  private final int diverterLayer;
  private final int heatPumpLayer;
  private final int disinfectionLayer;
  private final BooleanSupplier limit = this::atLimit;
  private final Step now = new Step();

  private Tally tally;
  private Trace trace = UNWATCHED;
  private StepLength coarsest;
  private boolean coilCutOut;
  private double earlyCharge_kW;
  private double earlyCharger_kW;

  private DayRun(Installation installation, StepLength step, double start_C) {
    this.installation = installation;
    this.step = step;
    step_h = step.hours();
    coarsest = step;
    supply = new SupplyModel(installation.supply());
    sensor = new GridSensorModel(installation);
    stores = new Stores(installation, step);
    used = new SelfConsumption(installation.supply());
    diverter = new DiverterModel(installation.diverter());
    immersion = new ImmersionModel(installation.immersion());
    relay = new RelayModel(installation.relay(), step);
    heatPump = new HeatPumpModel(installation.heatPump(), step);
    performance = new Performance(installation.heatPump().performance());
    backup = new BackupHeaterModel(installation.backup());
    disinfection = new DisinfectionModel(installation.disinfection(), step);
    tank = new TankModel(installation.tank(), start_C, step);
    elementLayer = tank.at(installation.immersion().height_mm());
    diverterLayer = tank.at(installation.diverter().sensor_mm());
    heatPumpLayer = tank.at(installation.heatPump().sensor_mm());
    disinfectionLayer = tank.at(installation.disinfection().sensor_mm());
    tally = new Tally(step, start_C, start_C, start_C);
  }

  /** A run that starts with the tank at the everyday stop throughout. */
  public static DayRun of(Installation installation, StepLength step) {
    return startingAt(installation.heatPump().everyday().stop_C(), installation, step);
  }

  /** A run that starts with the tank at a temperature [°C] throughout. */
  public static DayRun startingAt(double start_C, Installation installation, StepLength step) {
    if (!Double.isFinite(start_C)) {
      throw new IllegalArgumentException("a tank at " + start_C + " °C cannot start a run");
    }
    return new DayRun(installation, step, start_C);
  }

  /** Has every further step watched. */
  public DayRun watchedBy(Trace trace) {
    this.trace = trace;
    return this;
  }

  /** Goes through a day; its profile is brought to the step of the run. */
  public DayRun through(Day day) {
    performance.source(day.source_C());
    if (day.profile().step().seconds() > coarsest.seconds()) {
      coarsest = day.profile().step();
    }
    Profile profile = day.profile().at(step);
    double inverter_kW =
        profile.surplusGiven() ? Double.POSITIVE_INFINITY : installation.generator().inverter_kW();
    now.secondOfDay = profile.start_s();
    for (int index = 0; index < profile.length(); index++) {
      now.pv_kW = Math.min(profile.pv_kW(index), inverter_kW);
      now.house_kW = profile.house_kW(index);
      now.draw_L = profile.draw_L(index);
      step(day.coldWater_C());
    }
    return this;
  }

  /**
   * Counts from here on, with everything as it stands now: for a disinfection cycle or a day that
   * is to be judged after days of ordinary use.
   */
  public DayRun countingFromHere() {
    tank.accountAfresh();
    tally = new Tally(step, tank.top_C(), tank.layer_C(diverterLayer), tank.bottom_C());
    return this;
  }

  /** What the run has come to so far. */
  public Result result() {
    boolean trusted = coarsest.minutes() <= installation.shortestDelay_min();
    int goingOn = heatPump.running() ? heatPump.ran() : 0;
    return tally.result(
        tank,
        trusted ? Optional.of(tally.cycles(goingOn)) : Optional.empty(),
        immersion.cutOutOpened() || coilCutOut);
  }

  TankModel tank() {
    return tank;
  }

  private void step(double coldWater_C) {
    note();
    takePower();
    meter();
    decide();
    double drawnAt_C = tank.top_C();
    heat(coldWater_C);
    tally.add(now, drawnAt_C);
    trace.step(now);
    now.secondOfDay = (now.secondOfDay + step.seconds()) % StepLength.SECONDS_PER_DAY;
  }

  /** Notes the states that the last step decided. */
  private void note() {
    now.relayClosed = relay.closed();
    now.heatPump = heatPump.state();
    now.onSurplus = heatPump.running() && heatPump.onSurplus();
    now.disinfecting = disinfection.active();
  }

  /** Shares the sun out in its order; {@code left_kW} is what is left of it, negative for want. */
  private void takePower() {
    stores.begin(now);
    double left_kW = now.pv_kW - stores.take_kW(Load.HOUSE.place(), now.pv_kW, now);
    left_kW -= now.house_kW;
    left_kW -= stores.take_kW(Load.HEAT_PUMP.place(), left_kW, now);
    takeHeatPump();
    left_kW -= now.heatPump_kW + now.backup_kW;
    left_kW -= stores.take_kW(Load.IMMERSION.place(), left_kW, now);
    earlyCharge_kW = now.charge_kW;
    earlyCharger_kW = now.charger_kW;
    takeImmersion();
    left_kW -= now.immersion_kW;
    stores.take_kW(Stores.LAST, left_kW, now);
    stores.discharge(now, earlyCharge_kW + earlyCharger_kW);
  }

  /**
   * What of the PV, curtailed as it is, goes into the heaters: first come battery, charger, house.
   */
  private void shareOut() {
    used.begin(installation.generator().line(), now.pv_kW - now.curtailed_kW);
    used.use_kW(installation.battery().line(), earlyCharge_kW);
    used.use_kW(installation.charger().line(), earlyCharger_kW);
    used.use_kW(installation.supply().house(), now.house_kW);
    now.keptByHeatPump_kW =
        used.use_kW(installation.heatPump().line(), now.heatPump_kW + now.backup_kW);
    double immersion_kW = used.use_kW(installation.diverter().line(), now.immersion_kW);
    now.kept_kW = now.keptByHeatPump_kW + immersion_kW;
  }

  private void takeHeatPump() {
    now.heatPump_kW = 0;
    now.heatPumpHeat_kW = 0;
    if (heatPump.running()) {
      performance.at(tank.coil_C());
      double room_kW = tank.coilRoom_kWh(performance.maximumFlow_C()) / step_h;
      now.heatPumpHeat_kW = Math.min(performance.output_kW(), room_kW);
      now.heatPump_kW = now.heatPumpHeat_kW / performance.cop();
    }
    takeBackup();
  }

  private void takeBackup() {
    now.backup_kW = backup.power_kW();
    if (now.backup_kW > 0) {
      double room_kW = tank.coilRoom_kWh(installation.tank().coilCutOut_C()) / step_h;
      double most_kW = Math.max(0, room_kW - now.heatPumpHeat_kW);
      coilCutOut |= now.backup_kW > most_kW;
      now.backup_kW = Math.min(now.backup_kW, most_kW);
    }
  }

  private void takeImmersion() {
    diverter.follow(tank.layer_C(diverterLayer));
    drawAll();
    double available_kW = immersion.available_kW(tank.layer_C(elementLayer));
    boolean timed = immersion.isTimed(now.secondOfDay);
    now.immersion_kW = timed ? available_kW : diverted_kW(available_kW);
    if (now.immersion_kW > 0) {
      double coil_kW = now.heatPumpHeat_kW + now.backup_kW;
      double ample_kWh = AMPLE * (now.immersion_kW + coil_kW) * step_h;
      double room_kW = tank.room_kWh(elementLayer, immersion.cutOut_C(), ample_kWh) / step_h;
      now.immersion_kW = immersion.limited_kW(now.immersion_kW, Math.max(0, room_kW - coil_kW));
    }
    now.diverted_kW = timed ? 0 : now.immersion_kW;
  }

  private double diverted_kW(double available_kW) {
    if (available_kW == 0 || !diverter.mayHeat()) {
      return 0;
    }
    boolean demanded = disinfection.calls(DisinfectionModel.Heater.IMMERSION);
    double surplus_kW = sensor.leaving_kW(supply, now);
    double seen_kW = surplus_kW;
    double toCurtail_kW = supply.toCurtail_kW(now.pv_kW);
    if (toCurtail_kW > 0) {
      supply.draw(installation.generator().line(), toCurtail_kW);
      seen_kW = sensor.leaving_kW(supply, now);
      drawAll();
    }
    return diverter.power_kW(demanded, available_kW, surplus_kW, seen_kW);
  }

  /** Puts on the lines what feeds and draws, the immersion heater apart. */
  private void drawAll() {
    supply.clear();
    supply.draw(installation.generator().line(), -now.pv_kW);
    supply.draw(installation.supply().house(), now.house_kW);
    supply.draw(installation.battery().line(), now.charge_kW - now.discharge_kW);
    supply.draw(installation.charger().line(), now.charger_kW);
    supply.draw(installation.heatPump().line(), now.heatPump_kW + now.backup_kW);
  }

  private void meter() {
    if (stores.fitted()) {
      drawAll();
    }
    supply.draw(installation.diverter().line(), now.immersion_kW);
    now.curtailed_kW = supply.toCurtail_kW(now.pv_kW);
    supply.draw(installation.generator().line(), now.curtailed_kW);
    now.import_kW = supply.import_kW();
    now.export_kW = supply.export_kW();
    if (now.heats()) {
      shareOut();
    } else {
      now.keptByHeatPump_kW = 0;
      now.kept_kW = 0;
    }
  }

  /** Decides the states of the next step: relay first, then the heat pump and its helpers. */
  private void decide() {
    now.counted_kW = sensor.counted_kW(supply, now);
    if (relay.closes(now.counted_kW)) {
      tally.closed();
    }
    disinfection.decide(tank.layer_C(disinfectionLayer), now.secondOfDay);
    coilCutOut |= tank.coilTop_C() >= installation.tank().coilCutOut_C();
    decideHeatPump();
    backup.decide(heatPump, coilCutOut, disinfection.calls(DisinfectionModel.Heater.BACKUP_HEATER));
  }

  private void decideHeatPump() {
    boolean started =
        heatPump.starts(
            relay.calls(),
            tank.layer_C(heatPumpLayer),
            limit,
            disinfection.calls(DisinfectionModel.Heater.HEAT_PUMP),
            now.secondOfDay);
    if (started) {
      tally.started();
    }
    now.runEnded = heatPump.end();
    if (heatPump.end() != HeatPumpModel.End.NONE) {
      tally.ended(heatPump.ran(), heatPump.end());
    }
  }

  private void heat(double coldWater_C) {
    double coil_kWh = (now.heatPumpHeat_kW + now.backup_kW) * step_h;
    if (coil_kWh > 0) {
      tank.heatCoil(coil_kWh, performance.flowAboveTank_K(), flowLimit_C());
    }
    if (now.immersion_kW > 0) {
      tank.heatElement(elementLayer, now.immersion_kW * step_h);
    }
    tank.cool();
    tank.draw(now.draw_L, coldWater_C);
    now.top_C = tank.top_C();
    now.sensor_C = tank.layer_C(diverterLayer);
    now.heatPumpSensor_C = tank.layer_C(heatPumpLayer);
    now.bottom_C = tank.bottom_C();
  }

  /** Whether the compressor can heat the coil no further; while it runs that is worked out. */
  private boolean atLimit() {
    if (performance.fitted() && !heatPump.running()) {
      performance.at(tank.coil_C());
    }
    return coilCutOut || performance.atLimit();
  }

  private double flowLimit_C() {
    return now.backup_kW > 0 ? installation.tank().coilCutOut_C() : performance.maximumFlow_C();
  }
}
