package deadband.diagnosis;

import java.util.List;
import java.util.Locale;

/**
 * Why a heat pump may short-cycle, import or fail to heat: the causes that are compared.
 *
 * <p>Each names the checks of the rule book that find it in the settings, and what would confirm
 * it.
 */
public enum Cause {
  GAP_BELOW_INPUT(
      "Gap between start and stop is no wider than the heat pump's power input",
      "set relay.stop_kW to 0.1 for a clear day: if this is it, the starts fall to a few a day",
      "gap-below-heat-pump-draw",
      "gap-inside-meter-error",
      "stop-not-below-start",
      "gap-below-element-draw"),
  START_BELOW_INPUT(
      "Start lies below the heat pump's power input: it imports from the first minute",
      "read the supply meter just after a start by the relay: if this is it, it shows import of"
          + " the heat pump's input less relay.start_kW",
      "start-below-heat-pump-draw",
      "stop-lets-grid-in"),
  DELAY_SHORTER_THAN_CLOUD(
      "Relay delays are shorter than a passing cloud",
      "set both delays to 5 min for a cloudy day: if this is it, the stops at passing clouds end",
      "no-cloud-delay"),
  DIFFERENTIAL_TOO_SMALL(
      "Differential of the temperature programme is too small for the heat output",
      "set the start 5 K below the stop: if this is it, each run lasts several times as long",
      "swing-too-small",
      "oversized-for-tank"),
  BUFFER_TOO_SMALL(
      "Heating buffer is too small for the minimum heat output",
      "switch hot water off for an hour: if this is it, the heat pump cycles on",
      "buffer-too-small"),
  SECOND_CONTROLLER(
      "A second controller or writer calls the heat pump too",
      "disconnect the surplus relay for an hour: if this is it, the heat pump starts all the same",
      "two-followers-one-surplus",
      "follower-holds-on-lost-link"),
  BATTERY(
      "Battery supplies the heat pump or takes the surplus first",
      "switch the battery to standby for a day: if this is it, the runs before sunrise show as"
          + " import",
      "battery-feeds-heat-pump",
      "battery-hides-surplus",
      "everyday-run-off-battery"),
  VEHICLE_CHARGER(
      "Vehicle charger follows the same surplus",
      "unplug the vehicle for a sunny hour: if this is it, the relay stays closed",
      "two-followers-one-surplus"),
  TANK_SENSOR(
      "Tank sensor reads off, or sits where it does not see the store",
      "put a reference thermometer in the sensor's pocket: if this is it, the two differ by several"
          + " K",
      "tank-sensor-implausible",
      "tank-sensor-loose",
      "control-sensor-below-heater"),
  METER_ERROR(
      "Controller reads the surplus too high or too low",
      "compare its reading with the supply meter, once with a kettle on and once without: if this"
          + " is it, they differ by as much both times",
      "gap-inside-meter-error",
      "sensor-facing-unchecked"),
  READING_LAG(
      "Controller acts minutes late on what it reads",
      "switch a 2 kW load on: if this is it, the controller's display follows only minutes later",
      "delay-longer-than-useful"),
  SENSOR_BLIND(
      "Grid sensor does not see the heat pump: wrong phase or not upstream of it",
      "switch the heat pump on by hand: if this is it, the controller's reading does not fall by"
          + " the input",
      "heat-pump-outside-meter",
      "sensor-on-wrong-phase",
      "controller-sees-one-phase",
      "pv-on-other-phase"),
  CONTACT_BOUNCE(
      "Call contact opens again by itself: loose terminal or bouncing contact",
      "tighten the terminals, then bridge the call input at the heat pump for an hour of surplus: if"
          + " this is it, it runs through",
      "call-hold-below-minimum"),
  COMPRESSOR_LIMIT(
      "Compressor reaches its flow limit before the programme's stop",
      "lower the stop by 5 K for a day: if this is it, the runs end by the programme and the next"
          + " start waits for the differential",
      "stop-above-compressor-reach"),
  DISINFECTION_RETRIES(
      "Disinfection does not reach its target and is repeated",
      "read the heat pump's record of disinfection: if this is it, cycles are marked as not"
          + " completed",
      "disinfection-never-holds",
      "disinfection-above-compressor-reach",
      "hold-restarts",
      "disinfection-too-rare"),
  SUPPLY_CUT(
      "Supply of the heat pump is cut instead of its call withdrawn",
      "look at the heat pump's display while the relay is open: if this is it, it is dark",
      "call-by-supply-cut"),
  MINIMUM_TIMERS(
      "Heat pump's own minimum run or off time is too short or not in force",
      "withdraw the call 2 min after a start: if this is it, the heat pump stops before the minimum"
          + " run entered",
      "observed-cycle-below-timers"),
  STUCK_VALVE(
      "Diverting valve is stuck: hot water is called but the tank does not warm",
      "measure the pipes at both outlets of the valve during a call for hot water: if this is it,"
          + " the tank's stays cool",
      "call-also-heats-rooms"),
  NOTHING_UNUSUAL(
      "Nothing unusual: weather, draw-off, defrosting or space heating",
      "log another week: if this is it, the runs stay as long and as few");

  private final String meaning;
  private final String reading;

  @SuppressWarnings("ImmutableEnumChecker") // a copy that cannot change
  private final List<String> checks;

  Cause(String meaning, String reading, String... checks) {
    this.meaning = meaning;
    this.reading = reading;
    this.checks = List.of(checks);
  }

  /** Its name: {@code gap-below-input}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What it is, in a sentence without a full stop. */
  public String meaning() {
    return meaning;
  }

  /** One thing to do that shows it, and what to expect. */
  public String reading() {
    return reading;
  }

  /** The checks that find it in the settings. */
  public List<String> checks() {
    return checks;
  }
}
