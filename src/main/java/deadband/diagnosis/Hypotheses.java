package deadband.diagnosis;

import deadband.setup.Buffer;
import deadband.setup.Entered;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import deadband.trade.Water;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.function.Consumer;

/**
 * The causes as what each changes of the home as it should run, in one or several sizes.
 *
 * <p>A setting that has a fault is as it should be in every hypothesis but that of its own cause:
 * there it is as entered. What is entered right may be otherwise in force, in the sizes given.
 *
 * <p>The sizes are our own choice: a grid about as far apart as the noise of {@link RunLikelihood}
 * lets two sizes be told apart. How much a finer grid would change is not measured.
 */
final class Hypotheses {

  /**
   * Before anything is seen: of homes whose log is read, four in five have no fault. Our own
   * choice, counted nowhere. With half or twice as much, 2 of 200 generated homes without a fault
   * changed their verdict, and with half as much 8 of 359 with one, in other sizes than usual,
   * their first cause.
   */
  private static final double USUAL = 100;

  /** Each of some twenty causes, where the settings do not have it. */
  private static final double NOT_ENTERED = 1;

  /** Where the settings have it. */
  private static final double AS_ENTERED = 4;

  /** Where the file says that what it needs is not fitted. */
  private static final double SAID_ABSENT = 0.05;

  /** A setting that was read off the device is seldom otherwise in force. */
  private static final double OTHERWISE_IN_FORCE = 0.05;

  /**
   * Delays up to this are shorter than a passing cloud; a longer one bridges it: common practice.
   */
  private static final double SHORT_DELAY_MIN = 2;

  private static final double CLOUD_MIN = 10;

  /** A differential up to this is small, and one that suffices: common practice [K]. */
  private static final double SMALL_DIFFERENTIAL_K = 3;

  private static final double DIFFERENTIAL_K = 5;

  /** Delay taken where none is entered [min]. */
  private static final double DELAY_MIN = 5;

  /** Room that a sufficient gap, and a sufficient start, have above the input [kW]. */
  private static final double ROOM_KW = 0.15;

  /** Compressor limit above every stop [K]. */
  private static final double ROOM_K = 1;

  /** Share of a run without surplus that a battery supplies which is large enough. */
  private static final double FED = 0.9;

  private static final double NO_LIMIT_C = 200;
  private static final double BUFFER_C = 35;

  /**
   * A cause in one size, or two causes together.
   *
   * @param differs what is other than entered, in words; empty where the file has it
   * @param before its probability before anything is seen, up to a common factor
   */
  record Hypothesis(
      List<Cause> causes,
      String differs,
      double before,
      Consumer<Behaviour> change,
      Behaviour acts) {

    Cause first() {
      return causes.get(0);
    }

    /** Both together, as likely as two that have nothing to do with each other. */
    Hypothesis and(Hypothesis other) {
      Behaviour both = acts.copy();
      other.change.accept(both);
      String words =
          differs.isEmpty() || other.differs.isEmpty()
              ? differs + other.differs
              : differs + "; " + other.differs;
      return new Hypothesis(
          List.of(first(), other.first()),
          words,
          before * other.before / USUAL,
          change.andThen(other.change),
          both);
    }
  }

  private final Setup setup;
  private final AsSet set;
  private final Behaviour entered;
  private final Behaviour sound;
  private final List<Hypothesis> all = new ArrayList<>();

  private Hypotheses(Setup setup, AsSet set) {
    this.setup = setup;
    this.set = set;
    this.entered = entered();
    this.sound = sound();
  }

  /** All, the usual home first. */
  static List<Hypothesis> of(Setup setup, AsSet set) {
    Hypotheses made = new Hypotheses(setup, set);
    made.add(Cause.NOTHING_UNUSUAL, "", USUAL, usual -> {});
    made.relay();
    made.readings();
    made.heatPump();
    made.others();
    return List.copyOf(made.all);
  }

  private Behaviour entered() {
    Behaviour b = new Behaviour();
    EnumSet<Counts> counts = EnumSet.of(Counts.EXPORT);
    counts.addAll(setup.relay().counts().optional().orElse(List.of(Counts.IMMERSION)));
    b.counts = counts;
    b.input_kW = set.input_kW();
    b.start_kW = or(setup.relay().start_kW(), set.closes_kW());
    b.stop_kW = or(setup.relay().stop_kW(), b.start_kW - needed_kW(b) - ROOM_KW);
    b.startDelay_min = or(setup.relay().startDelay_min(), DELAY_MIN);
    b.stopDelay_min = or(setup.relay().stopDelay_min(), DELAY_MIN);
    b.lag_min = set.orZero(set.startLag_min());
    b.minimumRun_min = set.orZero(set.minimumRun_min());
    b.minimumOff_min = set.orZero(set.minimumOff_min());
    b.everydayStart_C = set.everydayStart_C();
    b.everydayStop_C = set.everydayStop_C();
    b.surplusStart_C = or(setup.heatPump().surplus().start_C(), set.everydayStop_C());
    b.surplusStop_C = or(setup.heatPump().surplus().stop_C(), set.everydayStop_C());
    b.limit_C = Double.isNaN(set.limit_C()) ? NO_LIMIT_C : set.limit_C();
    b.rise_K_per_h = set.rise_K_per_h();
    b.vehicleSeen = true;
    return b;
  }

  private static double or(Entered<Double> entered, double other) {
    return entered.optional().orElse(other);
  }

  /** Gap that the heat pump's own input must not close: none where the relay counts it. */
  private static double needed_kW(Behaviour b) {
    return b.counts.contains(Counts.HEAT_PUMP) ? 0 : b.input_kW;
  }

  private Behaviour sound() {
    Behaviour b = entered.copy();
    b.start_kW = Math.max(b.start_kW, b.input_kW + ROOM_KW);
    b.stop_kW = Math.min(b.stop_kW, b.start_kW - needed_kW(b) - ROOM_KW);
    b.bridged_min = hasShortDelays() ? CLOUD_MIN : 0;
    if (hasSmallDifferential()) {
      b.everydayStart_C = b.everydayStop_C - DIFFERENTIAL_K;
      b.surplusStart_C = Math.min(b.surplusStart_C, b.surplusStop_C - DIFFERENTIAL_K);
    }
    b.limit_C = Math.max(b.limit_C, highestStop_C(b) + ROOM_K);
    b.vehicleSeen = false;
    return b;
  }

  private static double highestStop_C(Behaviour b) {
    return Math.max(b.surplusStop_C, b.everydayStop_C);
  }

  private boolean hasShortDelays() {
    return entered.startDelay_min <= SHORT_DELAY_MIN && entered.stopDelay_min <= SHORT_DELAY_MIN;
  }

  private boolean hasSmallDifferential() {
    return entered.everydayStop_C - entered.everydayStart_C <= SMALL_DIFFERENTIAL_K;
  }

  private void add(Cause cause, String differs, double before, Consumer<Behaviour> change) {
    Behaviour b = sound.copy();
    change.accept(b);
    all.add(new Hypothesis(List.of(cause), differs, before, change, b));
  }

  /** How a size changes the home. */
  private interface Sized {
    void change(Behaviour b, double size);
  }

  /** One cause in several sizes shares its probability among them; its words may name the size. */
  private void addEach(Cause cause, String differs, double before, Sized sized, double... sizes) {
    for (double size : sizes) {
      String words = differs.replace("#", Values.number(Math.abs(size)));
      add(cause, words, before / sizes.length, b -> sized.change(b, size));
    }
  }

  private void relay() {
    boolean narrow = entered.stop_kW > entered.start_kW - needed_kW(entered);
    Consumer<Behaviour> asEntered =
        b -> {
          b.start_kW = entered.start_kW;
          b.stop_kW = entered.stop_kW;
        };
    Consumer<Behaviour> untimed =
        b -> {
          b.minimumRun_min = 0;
          b.minimumOff_min = 0;
        };
    if (narrow) {
      add(Cause.GAP_BELOW_INPUT, "", AS_ENTERED, asEntered);
      add(
          Cause.GAP_BELOW_INPUT,
          "minimum times of the heat pump not in force",
          NOT_ENTERED,
          asEntered.andThen(untimed));
    } else {
      addEach(
          Cause.GAP_BELOW_INPUT,
          "stop in force nearer to the start, or the input not counted",
          NOT_ENTERED,
          (b, share) -> b.stop_kW = b.start_kW - share * b.input_kW,
          0.2,
          0.4,
          0.6,
          0.8);
    }
    if (entered.start_kW < sound.start_kW - ROOM_KW) {
      add(
          Cause.START_BELOW_INPUT,
          "",
          AS_ENTERED,
          b -> {
            b.start_kW = entered.start_kW;
            b.stop_kW = Math.min(entered.stop_kW, b.start_kW - needed_kW(b) - ROOM_KW);
          });
    } else {
      addEach(
          Cause.START_BELOW_INPUT,
          "start in force lower than entered",
          OTHERWISE_IN_FORCE,
          (b, share) -> {
            b.start_kW = share * b.input_kW;
            b.stop_kW = Math.min(b.stop_kW, b.start_kW - needed_kW(b) - ROOM_KW);
          },
          0.3,
          0.45,
          0.6);
    }
    if (hasShortDelays()) {
      add(Cause.DELAY_SHORTER_THAN_CLOUD, "", AS_ENTERED, b -> b.bridged_min = 0);
    } else {
      addEach(
          Cause.DELAY_SHORTER_THAN_CLOUD,
          "delays in force shorter than entered, about # min",
          NOT_ENTERED,
          (b, minutes) -> {
            b.startDelay_min = minutes;
            b.stopDelay_min = minutes;
          },
          0.5,
          1);
    }
  }

  private void readings() {
    for (int sign : new int[] {1, -1}) {
      addEach(
          Cause.METER_ERROR,
          "surplus read about # kW too " + (sign > 0 ? "high" : "low"),
          NOT_ENTERED / 2,
          (b, off_kW) -> b.readsHigh_kW = sign * off_kW,
          0.5,
          0.65,
          0.8,
          0.95,
          1.1,
          1.25,
          1.4);
    }
    addEach(
        Cause.READING_LAG,
        "reading about # min late",
        NOT_ENTERED,
        (b, minutes) -> b.readsLate_min = minutes,
        3,
        4,
        5,
        6,
        7,
        8,
        9,
        10,
        11,
        12,
        14);
    boolean outside = setup.gridSensor().heatPumpBehind().says(false);
    add(
        Cause.SENSOR_BLIND,
        outside ? "" : "heat pump not downstream of the sensor",
        outside ? AS_ENTERED : NOT_ENTERED / 2,
        b -> b.sees = Behaviour.Sees.NOT_THE_HEAT_PUMP);
    add(
        Cause.SENSOR_BLIND,
        "sensor on one phase, the heat pump on another",
        NOT_ENTERED / 2,
        b -> b.sees = Behaviour.Sees.ONE_PHASE);
    for (String high : List.of("high", "low")) {
      addEach(
          Cause.TANK_SENSOR,
          "sensor reads about # K " + high,
          NOT_ENTERED / 2,
          (b, off_K) -> b.sensorHigh_K = high.equals("high") ? off_K : -off_K,
          4,
          5,
          6,
          7,
          8);
    }
    boolean follows = setup.vehicleCharger().followsSurplus().says(true);
    add(
        Cause.VEHICLE_CHARGER,
        follows ? "" : "vehicle takes the surplus in turn",
        follows ? AS_ENTERED : unless(setup.vehicleCharger().part().isFitted()),
        b -> b.vehicleSeen = true);
  }

  private void heatPump() {
    if (hasSmallDifferential()) {
      add(
          Cause.DIFFERENTIAL_TOO_SMALL,
          "",
          AS_ENTERED,
          b -> {
            b.everydayStart_C = entered.everydayStart_C;
            b.surplusStart_C = entered.surplusStart_C;
          });
    } else {
      addEach(
          Cause.DIFFERENTIAL_TOO_SMALL,
          "differential in force about # K",
          NOT_ENTERED,
          (b, small_K) -> {
            b.everydayStart_C = b.everydayStop_C - small_K;
            b.surplusStart_C = b.surplusStop_C - small_K;
          },
          1,
          2);
    }
    if (entered.limit_C < sound.limit_C - ROOM_K) {
      add(Cause.COMPRESSOR_LIMIT, "", AS_ENTERED, b -> b.limit_C = entered.limit_C);
    } else {
      addEach(
          Cause.COMPRESSOR_LIMIT,
          "flow limit in force lower than entered",
          NOT_ENTERED,
          (b, below_K) -> b.limit_C = b.everydayStop_C - below_K,
          -4,
          -2,
          2,
          3,
          4,
          5,
          6);
    }
    addEach(
        Cause.DISINFECTION_RETRIES,
        "disinfection does not reach its target",
        NOT_ENTERED,
        (b, above_K) -> {
          b.disinfects = true;
          b.limit_C = Math.min(b.limit_C, highestStop_C(b) + above_K);
        },
        0,
        2,
        3.5,
        20);
    add(
        Cause.SUPPLY_CUT,
        "supply cut with the call",
        NOT_ENTERED,
        b -> {
          b.supplyCut = true;
          b.minimumOff_min = 0;
        });
    addEach(
        Cause.MINIMUM_TIMERS,
        "minimum times in force shorter than entered, about # min",
        NOT_ENTERED,
        (b, minutes) -> {
          b.minimumRun_min = Math.min(b.minimumRun_min, minutes);
          b.minimumOff_min = Math.min(b.minimumOff_min, minutes);
        },
        0,
        2);
    add(
        Cause.STUCK_VALVE,
        "no heat reaches the tank",
        NOT_ENTERED,
        b -> {
          b.tankStaysCold = true;
          b.givesUp_min = 60;
        });
    buffer();
  }

  /** Cycling of the heating circuit, t = V·c·ΔT/(Q − q) running and V·c·ΔT/q resting. */
  private void buffer() {
    Buffer buffer = setup.buffer();
    double litres = number(buffer.volume_L()) + buffer.systemVolume_L().optional().orElse(0.0);
    double load_kW = number(buffer.leastHeatDemand_kW());
    double held_kWh = litres * Water.heatCapacity_kWh_per_LK(BUFFER_C) * number(buffer.swing_K());
    double run_min = 60 * held_kWh / (number(buffer.leastHeatOutput_kW()) - load_kW);
    double before = unless(buffer.part().isFitted());
    if (run_min > 0 && load_kW > 0) {
      add(
          Cause.BUFFER_TOO_SMALL,
          "",
          before,
          b -> {
            b.heatingRun_min = run_min;
            b.heatingPause_min = 60 * held_kWh / load_kW;
          });
      return;
    }
    double[] pauses_min = {5, 8, 12, 18};
    for (double short_min : new double[] {4, 6, 9, 13}) {
      addEach(
          Cause.BUFFER_TOO_SMALL,
          "size of the buffer not entered",
          before / pauses_min.length,
          (b, pause_min) -> {
            b.heatingRun_min = short_min;
            b.heatingPause_min = pause_min;
          },
          pauses_min);
    }
  }

  private static double number(Entered<Double> entered) {
    return entered.optional().orElse(Double.NaN);
  }

  private void others() {
    addEach(
        Cause.CONTACT_BOUNCE,
        "contact opens again by itself",
        NOT_ENTERED,
        (b, minutes) -> b.bounce_min = minutes,
        3,
        6,
        12);
    addEach(
        Cause.SECOND_CONTROLLER,
        "call set and reset by another",
        NOT_ENTERED,
        (b, minutes) -> {
          b.otherCalls_min = minutes;
          b.otherRuns_min = 8;
          b.otherHolds_min = 20;
        },
        30,
        60,
        120);
    add(
        Cause.BATTERY,
        "battery supplies it",
        unless(setup.battery().part().isFitted()),
        b -> b.batteryShare = batteryShare());
  }

  /** Part of the input that the battery can supply; all of it where its power is not entered. */
  private double batteryShare() {
    double share = or(setup.battery().power_kW(), entered.input_kW) / entered.input_kW;
    return Double.isNaN(share) ? FED : Math.min(FED, share);
  }

  private static double unless(Entered<Boolean> fitted) {
    return fitted.says(false) ? SAID_ABSENT : NOT_ENTERED;
  }
}
