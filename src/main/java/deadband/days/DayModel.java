package deadband.days;

import deadband.dayrun.DisinfectionModel;
import deadband.dayrun.Installation;
import deadband.dayrun.Surroundings;
import deadband.loop.Gathered;
import deadband.provenance.Derived;
import deadband.setup.Entered;
import deadband.setup.Relay;
import deadband.setup.Setup;
import java.util.Arrays;

/**
 * A setup as the day run takes it: every default decided, and named.
 *
 * <p>Sizes and settings must be entered: the sun, the tank, the thresholds and delays, the draws
 * and the programmes. Where something stands in the tank, what the house uses and where it lies may
 * stay open: the day run then takes what is common, and says so.
 *
 * @param installation what is fitted and how it is set, without disinfection
 * @param surroundings sun, household and source of the built-in days
 * @param cycle the disinfection programme, for a run of its own
 */
public record DayModel(
    Installation installation, Surroundings surroundings, DisinfectionModel.Spec cycle) {

  /** The model of a setup; not known where a size or a setting is not entered. */
  public static Derived<DayModel> of(Setup setup) {
    Gathered parts = new Gathered();
    ModelledPower power = new ModelledPower(setup);
    ModelledTank tank = new ModelledTank(setup);
    ModelledHeatPump pump = new ModelledHeatPump(setup, power, tank);
    ModelledHouse house = new ModelledHouse(setup, power);
    var supply = parts.with(power.supply());
    var generator = parts.with(power.generator());
    var sensor = parts.with(power.sensor());
    var diverter = parts.with(tank.diverter(power));
    var immersion = parts.with(tank.immersion());
    var relay = parts.with(pump.relay());
    var heatPump = parts.with(pump.heatPump());
    var backup = parts.with(pump.backup());
    var cycle = parts.with(pump.disinfection());
    var battery = parts.with(power.battery());
    var charger = parts.with(power.charger());
    var column = parts.with(tank.tank());
    var surroundings = parts.with(house.surroundings());
    return parts.into(
        () ->
            new DayModel(
                new Installation(
                    supply.get(),
                    generator.get(),
                    sensor.get(),
                    diverter.get(),
                    immersion.get(),
                    relay.get(),
                    heatPump.get(),
                    backup.get(),
                    DisinfectionModel.Spec.none(),
                    battery.get(),
                    charger.get(),
                    column.get()),
                surroundings.get(),
                cycle.get()));
  }

  /** The same without disinfection, which has a run of its own. */
  DayModel withoutCycle() {
    return new DayModel(installation, surroundings, DisinfectionModel.Spec.none());
  }

  /**
   * Of sizes and settings that homes and remedies differ in. That of a record would look at each of
   * the records in it by code that the JVM makes anew in each process, which takes as long as a
   * day.
   */
  @Override
  public int hashCode() {
    var relay = installation.relay();
    var tank = installation.tank();
    var heatPump = installation.heatPump();
    return Arrays.hashCode(
        new double[] {
          relay.start_kW(),
          relay.stop_kW(),
          relay.startDelay_min(),
          relay.stopDelay_min(),
          tank.volume_L(),
          tank.height_mm(),
          tank.coilCutOut_C(),
          heatPump.minimumRun_min(),
          heatPump.sensor_mm(),
          cycle.target_C(),
          cycle.sensor_mm()
        });
  }

  /**
   * Whether the day run has something to tell of a setup: a tank that a heat pump heats, called by
   * the surplus relay.
   */
  public static Derived<Boolean> fits(Setup setup) {
    return Derived.all(
        Derived.of(setup.relay().part().isFitted()),
        Derived.of(setup.heatPump().part().isFitted()),
        Derived.of(setup.tank().part().isFitted()),
        Derived.of(setup.solar().part().isFitted()));
  }

  /** Whether the relay calls the heat pump; a relay that switches something else is not run. */
  public static Derived<Boolean> callsHeatPump(Setup setup) {
    return Derived.of(setup.relay().drives()).map(drives -> drives == Relay.Drives.HEAT_PUMP);
  }

  /** A value above a bound; one that is not cannot be run, and is as if it were not entered. */
  public static Derived<Double> above(double least, Derived<Double> value, Entered<?> entered) {
    return value.is(known -> known <= least) ? Derived.missing(entered.pointer()) : value;
  }

  /** A value below a bound; one that is not cannot be run either. */
  public static Derived<Double> below(double most, Derived<Double> value, Entered<?> entered) {
    return value.is(known -> known >= most) ? Derived.missing(entered.pointer()) : value;
  }

  /** Whether a thing is there; one of which nothing is entered is taken not to be. */
  public static Derived<Boolean> isThere(Entered<Boolean> fitted) {
    return Derived.of(fitted)
        .or(Derived.assumed(fitted.pointer(), false, "not entered, left out of the day run"));
  }
}
