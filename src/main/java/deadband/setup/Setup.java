package deadband.setup;

import java.util.List;

/** One proposed installation: everything a setup file can tell. */
public record Setup(
    Part part,
    @Described(value = "version of the format", least = 1, most = 1, whole = true)
        Entered<Double> deadband,
    @Described("the home") Site site,
    @Described("the electricity supply") Supply supply,
    @Described("the solar generator") Solar solar,
    @Described("the household") House house,
    @Described("the hot water tank") Tank tank,
    @Described("the outlets the tank feeds") Entered<List<Outlet>> outlets,
    @Described("the thermostatic mixing valve") Blending blending,
    @Described("the immersion heater") Immersion immersion,
    @Described("the controller that feeds surplus into the immersion heater") Diverter diverter,
    @Described("the current sensor at the supply") GridSensor gridSensor,
    @Described("the linked surplus controllers") Entered<List<LinkedController>> group,
    @Described("the surplus relay") Relay relay,
    @Described("the heat pump") HeatPump heatPump,
    @Described("the space-heating buffer") Buffer buffer,
    @Described("the battery") Battery battery,
    @Described("the vehicle charger") VehicleCharger vehicleCharger,
    @Described("the settings as they were found") AsFound asFound,
    @Described("what was isolated and proved dead") Isolation isolation,
    @Described("findings accepted with a reason") Entered<List<Accepted>> accepted,
    @Described("what was observed on site") Observed observed) {

  /**
   * The installation as it was found: every setting that {@code asFound.settings} tells, in place
   * of the one proposed. What was observed on site was observed with these.
   *
   * <p>A value found keeps its place under {@code /asFound/settings}, so that a finding shows where
   * it stands. No remedy is offered for such a value: it is in force no more. Where no settings
   * found are entered, this is the setup itself.
   */
  public Setup asItWasFound() {
    Setup found = asFound.settings().value();
    return found == null ? this : (Setup) Shape.of(Setup.class).over(found, this);
  }
}
