package deadband.diagnosis;

import deadband.setup.Battery;
import deadband.setup.Buffer;
import deadband.setup.Consumer;
import deadband.setup.Entered;
import deadband.setup.Setup;
import deadband.setup.SurplusInput;
import deadband.trade.HuntingCycle;
import deadband.trade.Water;
import java.util.ArrayList;
import java.util.List;

/**
 * What each cause would lead to in one home, in closed form: with the file's own settings where
 * they have the fault, else with settings or parts other than entered.
 *
 * <p>Every cause is the undisturbed home with what the fault changes. Spreads stand beside the
 * values: of a logarithm where {@link Feature} compares by it, so that 0.3 is about 30 %.
 */
final class Causes {

  /** Delays up to this are shorter than a passing cloud: common practice [min]. */
  private static final double SHORT_DELAY_MIN = 2;

  /** A differential up to this is small: common practice [K]. */
  private static final double SMALL_DIFFERENTIAL_K = 3;

  /** Water temperature of a heating buffer, for its properties [°C]. */
  private static final double BUFFER_C = 35;

  /**
   * A cause in one form.
   *
   * @param differs what is other than entered, in words; empty where the file itself has it
   * @param before its share of the probability before anything is seen, up to a common factor
   */
  record Candidate(Cause cause, String differs, double before, Prediction prediction) {}

  private static final double AS_ENTERED = 4;

  /** With some twenty causes: of the homes that are logged, four in five have no fault. */
  private static final double USUAL = 90;

  /** Where a person reports what was seen, about one in four. */
  private static final double USUAL_REPORTED = 8;

  private static final double SAID_ABSENT = 0.05;

  private final double usual;
  private final Setup setup;
  private final AsSet set;
  private final List<Candidate> all = new ArrayList<>();

  private Causes(Setup setup, AsSet set, boolean reported) {
    this.usual = reported ? USUAL_REPORTED : USUAL;
    this.setup = setup;
    this.set = set;
  }

  /**
   * The causes compared.
   *
   * @param reported whether a person said what was seen
   */
  static List<Candidate> of(Setup setup, AsSet set, boolean reported) {
    Causes causes = new Causes(setup, set, reported);
    causes.relay();
    causes.programmes();
    causes.heatPump();
    causes.others();
    return List.copyOf(causes.all);
  }

  /** The home as it should run: a few starts a day, for surplus or by temperature. */
  private Prediction usual() {
    boolean brief = shortDelays();
    return new Prediction()
        .begins(60, 2, 35, 1, 2)
        .ends(76, 2, 12, 3, 7)
        .with(Feature.RUN, 20, 0.5)
        .with(Feature.CUT_RUN, 20, 0.8)
        .with(Feature.STARTS, 1.7, 0.25)
        .with(Feature.STARTS_DAY, 4, 0.5)
        .with(Feature.BY_DAY, 0.6, 0.25)
        .with(Feature.DEFICIT, 0.03, 0.06)
        .with(Feature.BRIEF_CLOUD, brief ? 0.4 : 0.08, brief ? 0.3 : 0.15)
        .with(Feature.HELD, 0.01, 0.03)
        .with(Feature.LATE, 0.7, 1.7)
        .with(Feature.BRIEF, 0, 0.01)
        .with(Feature.RISE, set.rise_K_per_h(), 0.35)
        .with(Feature.DIFFERENTIAL, 1.15 * set.differential_K(), 0.35)
        .with(Feature.START_OFF, -0.9, 1)
        .with(Feature.START_SPREAD, 1.4, 1.2)
        .with(Feature.STOP_OFF, 0, 0.7)
        .with(Feature.STANDBY_LOST, 0, 0.01)
        .with(Feature.BATTERY, 0.08, 0.1)
        .with(Feature.VEHICLE, 0, 0.02);
  }

  /** The same home on days on which clouds end many of the runs. */
  private Prediction cloudy() {
    return usual()
        .begins(70, 3, 24, 1, 2)
        .ends(42, 1, 49, 3, 5)
        .with(Feature.CUT_RUN, 18, 0.6)
        .with(Feature.STARTS, 2.1, 0.3)
        .with(Feature.STARTS_DAY, 5, 0.5)
        .with(Feature.BY_DAY, 0.75, 0.2);
  }

  private void add(Cause cause, String differs, Prediction prediction) {
    double before = differs.isEmpty() ? AS_ENTERED : isSaidAbsent(cause) ? SAID_ABSENT : 1;
    all.add(new Candidate(cause, differs, before, prediction));
  }

  /** Whether the file says that what the cause needs is not there. */
  private boolean isSaidAbsent(Cause cause) {
    return switch (cause) {
      case COMPRESSOR_LIMIT -> !set.stopBeyondReach() && !Double.isNaN(set.limit_C());
      case BATTERY -> setup.battery().part().isFitted().says(false);
      case VEHICLE_CHARGER -> setup.vehicleCharger().part().isFitted().says(false);
      case BUFFER_TOO_SMALL -> setup.buffer().part().isFitted().says(false);
      default -> false;
    };
  }

  /** One cause in several sizes shares its probability among them. */
  private void addEach(Cause cause, List<String> differs, List<Prediction> predictions) {
    for (int index = 0; index < predictions.size(); index++) {
      all.add(
          new Candidate(
              cause, differs.get(index), 1.0 / predictions.size(), predictions.get(index)));
    }
  }

  private void relay() {
    all.add(new Candidate(Cause.NOTHING_UNUSUAL, "", usual / 2, usual()));
    all.add(new Candidate(Cause.NOTHING_UNUSUAL, "", usual / 2, cloudy()));
    add(
        Cause.GAP_BELOW_INPUT,
        set.hunts() ? "" : "stop in force nearer to the start, or the input not counted",
        hunting(set.cycle()));
    add(
        Cause.GAP_BELOW_INPUT,
        "minimum times of the heat pump not in force"
            + (set.hunts() ? "" : ", stop in force nearer to the start"),
        hunting(set.onDelays()).without(Feature.BRIEF));
    startBelowInput();
    delays();
    meters();
    double run_min = Math.max(3, set.orZero(set.minimumRun_min()));
    add(
        Cause.CONTACT_BOUNCE,
        "contact opens again by itself",
        usual()
            .begins(82, 2, 14, 1, 1)
            .ends(40, 1, 4, 36, 19)
            .with(Feature.RUN, 1.25 * run_min, 0.3)
            .with(Feature.CUT_RUN, 1.2 * run_min, 0.25)
            .with(Feature.UNEVEN, 0.3, 0.14)
            .with(Feature.PAUSE, 1.7 * set.cycle().pause_min(), 0.5)
            .with(Feature.STARTS, 2.3, 0.25)
            .with(Feature.STARTS_DAY, 6.5, 0.45)
            .with(Feature.BY_DAY, 0.78, 0.15)
            .without(Feature.BRIEF_CLOUD));
  }

  private boolean shortDelays() {
    return set.startDelay_min() <= SHORT_DELAY_MIN && set.stopDelay_min() <= SHORT_DELAY_MIN;
  }

  /** In its band the loop keeps the time that delays and timers give it. */
  private Prediction hunting(HuntingCycle cycle) {
    return usual()
        .begins(71, 2, 25, 1, 1)
        .ends(26, 1, 28, 42, 3)
        .with(Feature.RUN, 1.05 * cycle.run_min(), 0.3)
        .with(Feature.CUT_RUN, cycle.run_min(), 0.15)
        .with(Feature.UNEVEN, 0.01, 0.07)
        .with(Feature.PAUSE, 1.4 * cycle.pause_min(), 0.45)
        .with(Feature.STARTS, cycle.startsPerHour() + 0.4, 0.3)
        .with(Feature.STARTS_DAY, 8, 0.5)
        .with(Feature.BY_DAY, 0.78, 0.15)
        .without(Feature.BRIEF_CLOUD);
  }

  private void delays() {
    boolean brief = shortDelays();
    add(
        Cause.DELAY_SHORTER_THAN_CLOUD,
        brief ? "" : "delays in force shorter than entered",
        usual()
            .begins(78, 1, 19, 1, 1)
            .ends(33, 2, 54, 6, 5)
            .with(Feature.RUN, 11, 0.45)
            .with(Feature.CUT_RUN, Math.max(7, 1.2 * set.orZero(set.minimumRun_min())), 0.45)
            .with(Feature.UNEVEN, 0.9, 0.5)
            .with(Feature.STARTS, 2.9, 0.3)
            .with(Feature.STARTS_DAY, 7.5, 0.4)
            .with(Feature.BY_DAY, 0.8, 0.13)
            .with(Feature.BRIEF_CLOUD, brief ? 0.75 : 0.6, brief ? 0.18 : 0.25));
  }

  private void startBelowInput() {
    double entered = (set.input_kW() - set.closes_kW()) / set.input_kW();
    if (entered > 0.1) {
      add(
          Cause.START_BELOW_INPUT,
          "",
          usual()
              .begins(84, 1, 13, 1, 1)
              .with(Feature.DEFICIT, 0.9 * entered, 0.2)
              .with(Feature.BY_DAY, 0.5, 0.25)
              .with(Feature.START_OFF, 2, 2.7)
              .with(Feature.STOP_OFF, 1.3, 2.1)
              .without(Feature.START_SPREAD));
    } else {
      addEach(
          Cause.START_BELOW_INPUT,
          List.of("start in force lower than entered", "start in force much lower than entered"),
          List.of(
              usual().begins(20, 40, 30, 4, 6).with(Feature.DEFICIT, 0.3, 0.12),
              usual().begins(20, 30, 30, 4, 16).with(Feature.DEFICIT, 0.55, 0.2)));
    }
  }

  private void meters() {
    add(
        Cause.METER_ERROR,
        "surplus read too high",
        usual()
            .begins(48, 24, 22, 4, 2)
            .ends(77, 2, 5, 1, 15)
            .with(Feature.DEFICIT, 0.11, 0.09)
            .without(Feature.START_OFF)
            .without(Feature.START_SPREAD)
            .without(Feature.STOP_OFF));
    addEach(
        Cause.READING_LAG,
        List.of("reading about 3 min late", "reading about 6 min late", "reading 10 min late"),
        List.of(late(3.5), late(6), late(9.5)));
    add(
        Cause.SENSOR_BLIND,
        setup.gridSensor().heatPumpBehind().says(false)
            ? ""
            : "heat pump not downstream of the sensor, or sensor on another phase",
        usual()
            .begins(70, 4, 22, 2, 2)
            .ends(87, 1, 4, 2, 6)
            .with(Feature.RUN, 29, 0.35)
            .with(Feature.HELD, 0.85, 0.25)
            .with(Feature.DEFICIT, 0.07, 0.1)
            .with(Feature.LATE, 4, 5)
            .with(Feature.START_OFF, 0.5, 2.5)
            .with(Feature.STOP_OFF, 1.5, 2.5));
  }

  private Prediction late(double minutes) {
    return usual()
        .begins(71, 2, 25, 1, 1)
        .ends(73, 1, 19, 3, 4)
        .with(Feature.LATE, minutes, 1.3)
        .with(Feature.HELD, 0, 0.06)
        .with(Feature.DEFICIT, 0.06, 0.09)
        .with(Feature.BRIEF_CLOUD, 0.4, 0.3)
        .with(Feature.BY_DAY, 0.69, 0.12);
  }

  private void programmes() {
    double entered_K = set.differential_K();
    boolean small = entered_K <= SMALL_DIFFERENTIAL_K;
    double small_K = small ? entered_K : 1.5;
    double heating_min = 60 * small_K / set.rise_K_per_h();
    double run_min = Math.max(set.orZero(set.minimumRun_min()), heating_min + 1);
    add(
        Cause.DIFFERENTIAL_TOO_SMALL,
        small ? "" : "differential in force smaller than entered",
        usual()
            .begins(58, 1, 39, 1, 1)
            .ends(76, 2, 3, 2, 17)
            .with(Feature.RUN, run_min, 0.35)
            .with(Feature.CUT_RUN, run_min, 0.4)
            .with(Feature.STARTS, 2.8, 0.25)
            .with(Feature.STARTS_DAY, 12, 0.45)
            .with(Feature.DIFFERENTIAL, small_K + 1.6, 0.3)
            .with(Feature.START_SPREAD, 3.5, 2)
            .with(Feature.STOP_OFF, 0.9, 1.1)
            .with(Feature.BRIEF, 0.22, 0.25)
            .without(Feature.BRIEF_CLOUD));
    boolean beyond = set.stopBeyondReach();
    add(
        Cause.COMPRESSOR_LIMIT,
        beyond ? "" : "flow limit in force lower than entered",
        usual()
            .begins(45, 3, 12, 2, 38)
            .ends(2, 91, 1, 1, 5)
            .with(Feature.RUN, 2, 0.8)
            .with(Feature.STARTS, 3.8, 0.45)
            .with(Feature.STARTS_DAY, 18, 0.9)
            .with(Feature.DIFFERENTIAL, 0.8, 0.6)
            .with(Feature.START_OFF, 2.5, 1.5)
            .with(Feature.STOP_OFF, beyond ? set.limit_C() - set.everydayStop_C() : -4, 1.5)
            .without(Feature.RISE));
    add(
        Cause.DISINFECTION_RETRIES,
        "disinfection does not reach its target",
        usual()
            .begins(26, 1, 9, 54, 10)
            .ends(36, 53, 5, 2, 4)
            .with(Feature.RUN, 7, 0.9)
            .with(Feature.STARTS, 2, 0.25)
            .with(Feature.STARTS_DAY, 6, 0.4)
            .with(Feature.BY_DAY, 0.25, 0.2)
            .with(Feature.START_OFF, 14, 3.5)
            .with(Feature.START_SPREAD, 7, 5)
            .with(Feature.STOP_OFF, set.limit_C() - set.everydayStop_C(), 2)
            .without(Feature.DIFFERENTIAL));
    List<Integer> off_K = List.of(5, 7, -5, -7);
    addEach(
        Cause.TANK_SENSOR,
        off_K.stream().map(Causes::sensorReads).toList(),
        off_K.stream().map(this::sensorOff).toList());
  }

  private static String sensorReads(int off_K) {
    return "sensor reads about " + Math.abs(off_K) + " K " + (off_K > 0 ? "low" : "high");
  }

  /** The tank is that much warmer than the heat pump's own sensor has it, at start and stop. */
  private Prediction sensorOff(int off_K) {
    Prediction off =
        off_K > 0
            ? usual().begins(66, 3, 4, 9, 18).ends(50, 8, 14, 3, 25)
            : usual().begins(66, 3, 29, 1, 1).ends(24, 2, 18, 24, 32);
    return off.with(Feature.START_OFF, off_K - 0.9, 1.1).with(Feature.STOP_OFF, off_K, 1);
  }

  private void heatPump() {
    boolean supply = setup.heatPump().surplusInput().via().says(SurplusInput.Via.SUPPLY);
    add(
        Cause.SUPPLY_CUT,
        supply ? "" : "supply cut with the call",
        usual()
            .begins(82, 1, 15, 1, 1)
            .ends(60, 1, 30, 2, 7)
            .with(Feature.CUT_RUN, 14, 0.6)
            .with(Feature.UNEVEN, 0.9, 0.5)
            .with(Feature.BRIEF, 0.38, 0.3)
            .with(Feature.START_OFF, -3, 3)
            .with(Feature.STANDBY_LOST, 0.48, 0.2));
    add(
        Cause.MINIMUM_TIMERS,
        "minimum times in force shorter than entered",
        usual()
            .begins(76, 1, 21, 1, 1)
            .ends(50, 1, 43, 2, 4)
            .with(Feature.RUN, 14, 0.4)
            .with(Feature.CUT_RUN, 8.5, 0.5)
            .with(Feature.UNEVEN, 1, 0.5)
            .with(Feature.STARTS, 2.4, 0.3)
            .with(Feature.STARTS_DAY, 6, 0.45)
            .with(Feature.BRIEF, 0.55, 0.24));
    add(
        Cause.STUCK_VALVE,
        "no heat reaches the tank",
        usual()
            .begins(34, 2, 60, 2, 2)
            .ends(2, 1, 16, 12, 69)
            .without(Feature.RUN)
            .without(Feature.CUT_RUN)
            .with(Feature.STARTS_DAY, 7, 0.7)
            .with(Feature.RISE, 0.1, 0.25)
            .with(Feature.DIFFERENTIAL, 0.2, 0.5)
            .without(Feature.START_OFF)
            .without(Feature.START_SPREAD)
            .without(Feature.STOP_OFF));
    buffer();
  }

  /** Cycling of the heating circuit, t = V·c·ΔT/(Q − q) running and V·c·ΔT/q resting. */
  private void buffer() {
    Buffer buffer = setup.buffer();
    double litres = number(buffer.volume_L()) + buffer.systemVolume_L().optional().orElse(0.0);
    double load_kW = number(buffer.leastHeatDemand_kW());
    double held_kWh = litres * Water.heatCapacity_kWh_per_LK(BUFFER_C) * number(buffer.swing_K());
    double run_min = 60 * held_kWh / (number(buffer.leastHeatOutput_kW()) - load_kW);
    boolean known = run_min > 0 && load_kW > 0;
    add(
        Cause.BUFFER_TOO_SMALL,
        known ? "" : "size of the buffer not entered",
        usual()
            .begins(18, 8, 16, 17, 41)
            .ends(20, 1, 6, 4, 69)
            .with(Feature.RUN, known ? run_min : 7, known ? 0.35 : 0.5)
            .with(Feature.CUT_RUN, known ? run_min : 7, known ? 0.35 : 0.5)
            .with(Feature.PAUSE, known ? 60 * held_kWh / load_kW : 11, known ? 0.4 : 0.5)
            .with(Feature.UNEVEN, 0.02, 0.08)
            .with(Feature.STARTS, 4.2, 0.35)
            .with(Feature.STARTS_DAY, 55, 0.6)
            .with(Feature.BY_DAY, 0.35, 0.15)
            .with(Feature.DEFICIT, 0.25, 0.15)
            .with(Feature.RISE, 0.9, 0.4)
            .with(Feature.DIFFERENTIAL, 0.05, 0.3)
            .with(Feature.START_OFF, 4, 2.5)
            .with(Feature.START_SPREAD, 3.3, 2)
            .with(Feature.STOP_OFF, -2, 2.5)
            .without(Feature.LATE)
            .without(Feature.BRIEF_CLOUD));
  }

  private static double number(Entered<Double> entered) {
    return entered.optional().orElse(Double.NaN);
  }

  private void others() {
    double run_min = Math.max(8, set.orZero(set.minimumRun_min()));
    add(
        Cause.SECOND_CONTROLLER,
        "call set and reset by another",
        usual()
            .begins(44, 8, 6, 24, 18)
            .ends(46, 2, 8, 9, 35)
            .with(Feature.RUN, 1.1 * run_min, 0.35)
            .with(Feature.CUT_RUN, run_min, 0.35)
            .with(Feature.UNEVEN, 0.4, 0.35)
            .with(Feature.STARTS, 1.9, 0.25)
            .with(Feature.STARTS_DAY, 6, 0.5)
            .with(Feature.BY_DAY, 0.48, 0.2)
            .with(Feature.DEFICIT, 0.2, 0.18)
            .with(Feature.DIFFERENTIAL, 5, 0.3)
            .with(Feature.START_OFF, 6, 1.8)
            .with(Feature.START_SPREAD, 2.8, 1.6)
            .with(Feature.STOP_OFF, 4, 1.8)
            .without(Feature.LATE)
            .without(Feature.BRIEF_CLOUD));
    add(
        Cause.BATTERY,
        mayFeedHeatPump() ? "" : "battery supplies it",
        usual().with(Feature.BATTERY, 0.9, 0.15).with(Feature.BY_DAY, 0.45, 0.35));
    add(
        Cause.VEHICLE_CHARGER,
        setup.vehicleCharger().followsSurplus().says(true)
            ? ""
            : "vehicle takes the surplus in turn",
        usual()
            .begins(68, 1, 29, 1, 1)
            .ends(66, 1, 4, 17, 12)
            .with(Feature.CUT_RUN, 14, 0.45)
            .with(Feature.UNEVEN, 0.7, 0.5)
            .with(Feature.STARTS_DAY, 5, 0.45)
            .with(Feature.VEHICLE, 0.7, 0.3)
            .without(Feature.BRIEF_CLOUD));
  }

  /** Whether a battery is entered that nothing keeps from the heat pump. */
  private boolean mayFeedHeatPump() {
    Battery battery = setup.battery();
    return battery.capacity_kWh().isEntered()
        && battery
            .mayDischargeInto()
            .optional()
            .map(loads -> loads.contains(Consumer.HEAT_PUMP))
            .orElse(true);
  }
}
