package deadband.days;

import deadband.dayrun.Household;
import deadband.dayrun.SolarArray;
import deadband.dayrun.Surroundings;
import deadband.loop.Gathered;
import deadband.provenance.Derived;
import deadband.setup.HeatPump.Source;
import deadband.setup.Setup;

/** Sun and household of the built-in days. */
public final class ModelledHouse {

  /** Modules to meter, losses of a usual array: common practice. */
  private static final double PERFORMANCE_RATIO = 0.85;

  private static final double LATITUDE_DEG = 50;
  private static final double TILT_DEG = 35;
  private static final double SOUTH_DEG = 180;
  private static final double BASE_LOAD_KW = 0.3;
  private static final double OCCUPANTS = 3;
  private static final double LEAST_RISE_K = 1;
  private static final double BOILING_C = 100;
  private static final String USUAL = "common practice, for the day run only";

  private final Setup setup;
  private final ModelledPower power;

  public ModelledHouse(Setup setup, ModelledPower power) {
    this.setup = setup;
    this.power = power;
  }

  public Derived<Surroundings> surroundings() {
    Gathered parts = new Gathered();
    var array = parts.with(array());
    var household = parts.with(household());
    var source = parts.with(setup.heatPump().source(), Source.AIR, USUAL);
    return parts.into(
        () ->
            new Surroundings(
                array.get(),
                household.get(),
                source.get() == Source.AIR ? Surroundings.Source.AIR : Surroundings.Source.GROUND));
  }

  private Derived<SolarArray> array() {
    Gathered parts = new Gathered();
    var latitude_deg = parts.with(setup.solar().latitude_deg(), LATITUDE_DEG, USUAL);
    var tilt_deg = parts.with(setup.solar().tilt_deg(), TILT_DEG, USUAL);
    var towards = latitude_deg.is(degrees -> degrees < 0) ? 0.0 : SOUTH_DEG;
    var azimuth_deg = parts.with(setup.solar().azimuth_deg(), towards, USUAL);
    var peak_kW = parts.with(setup.solar().peak_kW());
    var inverter_kW = parts.with(power.inverter_kW());
    return parts.into(
        () ->
            new SolarArray(
                latitude_deg.get(),
                tilt_deg.get(),
                azimuth_deg.get(),
                peak_kW.get(),
                inverter_kW.get(),
                PERFORMANCE_RATIO));
  }

  private Derived<Household> household() {
    Gathered parts = new Gathered();
    var occupants = parts.with(setup.house().occupants(), OCCUPANTS, USUAL);
    var base_kW = parts.with(setup.house().baseLoad_kW(), BASE_LOAD_KW, USUAL);
    var cold_C = parts.with(setup.house().coldWater_C());
    var stop_C = setup.heatPump().everyday().stop_C();
    double coldest_C = cold_C.get() + LEAST_RISE_K;
    var warm_C = DayModel.above(coldest_C, Derived.of(stop_C), stop_C);
    var stored_C = parts.with(DayModel.below(BOILING_C, warm_C, stop_C));
    return parts.into(
        () -> Household.of(occupants.get(), base_kW.get(), stored_C.get(), cold_C.get()));
  }
}
