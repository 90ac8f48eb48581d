package deadband.diagnosis;

import deadband.diagnosis.Hypotheses.Hypothesis;
import deadband.meterlog.Assembly;
import deadband.meterlog.Heading;
import deadband.meterlog.LogUnit;
import deadband.meterlog.Meaning;
import deadband.meterlog.Readings;
import deadband.setup.Setup;
import java.util.ArrayList;
import java.util.List;

/**
 * What each cause would lead to in this home on a clear day and on one of broken cloud, by running
 * relay and heat pump with it: for what a person has seen, and for readings too far apart to show
 * single runs.
 */
final class Signatures {

  /** Where a person reports what was seen, about one home in four has no fault. */
  private static final double USUAL_REPORTED = 8;

  private static final long MIDNIGHT_S = 1_780_272_000L;
  private static final int MINUTES = 1440;

  /** Power of the house without flexible loads [kW]. */
  private static final double HOUSE_KW = 0.4;

  /** PV power at noon of a clear day, above the input: enough for every relay [kW]. */
  private static final double NOON_KW = 3;

  /** The sun is up from 6 to 20 h; broken cloud leaves a third of it, 4 of 16 minutes. */
  private static final int SUNRISE_MIN = 360;

  private static final int SUNSET_MIN = 1200;
  private static final double CLOUD = 0.35;
  private static final int CLOUD_EACH_MIN = 16;
  private static final int CLOUD_MIN = 4;

  /** Fall of the tank in standby, and by a shower or a bath [K]. */
  private static final double STANDBY_K_PER_MIN = 0.8 / 60;

  private static final double DRAWN_K = 5;
  private static final List<Integer> DRAWN_AT_MIN = List.of(410, 440, 770, 1130, 1180);

  /** Errors of shares, and of the logarithm of the tank's rise. */
  private static final double SHARE = 0.18;

  private static final double RISE = 0.35;

  /** Typical run of space heating, and its spread: assumed. */
  private static final double ROOMS_MIN = 60;

  private static final double ROOMS = 0.5;

  /**
   * A cause in one size, and what it leads to.
   *
   * @param differs what is other than entered, in words; empty where the file itself has it
   * @param before its probability before anything is seen, up to a common factor
   */
  record Candidate(Cause cause, String differs, double before, Prediction prediction) {}

  private Signatures() {}

  /** Of every cause in every size. */
  static List<Candidate> of(Setup setup, AsSet set, boolean reported) {
    Watched days = exampleDays(set.input_kW());
    List<Hypothesis> all = Hypotheses.of(setup, set);
    List<Candidate> candidates = new ArrayList<>();
    for (Hypothesis one : all) {
      boolean usual = one.first() == Cause.NOTHING_UNUSUAL;
      double before = usual && reported ? USUAL_REPORTED : one.before();
      Prediction predicted = predicted(days, one);
      candidates.add(
          new Candidate(one.first(), one.differs(), usual ? before / 2 : before, predicted));
      if (usual) {
        // half of the usual homes heat their rooms, too, in long runs
        Prediction rooms = predicted(days, one).with(Feature.RUN, ROOMS_MIN, ROOMS);
        candidates.add(new Candidate(one.first(), one.differs(), before / 2, rooms));
      }
    }
    return List.copyOf(candidates);
  }

  private static Prediction predicted(Watched days, Hypothesis hypothesis) {
    Behaviour b = hypothesis.acts();
    boolean held = b.sees != Behaviour.Sees.ALL;
    boolean vehicle = hypothesis.first() == Cause.VEHICLE_CHARGER;
    boolean clouds = hypothesis.first() == Cause.DELAY_SHORTER_THAN_CLOUD;
    double cold = Double.isNaN(b.heatingRun_min) ? b.rise_K_per_h : 0.3 * b.rise_K_per_h;
    Prediction runs = FreeRun.predicted(days, b);
    // how long a heat pump tries in vain is not known
    return (b.tankStaysCold ? runs.without(Feature.RUN) : runs)
        .with(Feature.BRIEF_CLOUD, clouds ? 0.8 : 0.1, SHARE)
        .with(Feature.HELD, held ? 0.85 : 0.02, SHARE)
        .with(Feature.VEHICLE, vehicle ? 0.7 : 0, SHARE)
        .with(Feature.BATTERY, b.batteryShare, SHARE)
        .with(Feature.STANDBY_LOST, b.supplyCut ? 0.7 : 0, SHARE)
        .with(Feature.RISE, b.tankStaysCold ? 0.1 : cold, RISE);
  }

  /** A clear day and one of broken cloud, without a heat pump. */
  private static Watched exampleDays(double input_kW) {
    List<Heading> columns =
        List.of(
            new Heading("grid", Meaning.GRID, LogUnit.KW, ""),
            new Heading("heat pump", Meaning.HEAT_PUMP, LogUnit.KW, ""),
            new Heading("pv", Meaning.PV, LogUnit.KW, ""),
            new Heading("tank", Meaning.TANK, LogUnit.C, ""));
    Readings readings = new Readings("example days", columns, false, true);
    double tank_C = 0;
    for (int minute = 0; minute < 2 * MINUTES; minute++) {
      int ofDay = minute % MINUTES;
      boolean cloud = minute >= MINUTES && ofDay % CLOUD_EACH_MIN < CLOUD_MIN;
      double height =
          Math.sin(Math.PI * (ofDay - SUNRISE_MIN) / (double) (SUNSET_MIN - SUNRISE_MIN));
      double pv_kW = Math.max(0, height) * (input_kW + NOON_KW) * (cloud ? CLOUD : 1);
      tank_C -= STANDBY_K_PER_MIN + (DRAWN_AT_MIN.contains(ofDay) ? DRAWN_K : 0);
      readings.add(MIDNIGHT_S + 60L * minute, 0, new double[] {HOUSE_KW - pv_kW, 0, pv_kW, tank_C});
    }
    return Watched.of(Assembly.of(readings), Cycles.none(""));
  }
}
