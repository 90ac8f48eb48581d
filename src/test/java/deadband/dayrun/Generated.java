package deadband.dayrun;

import deadband.trade.HeatPumpCop;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Installations and days made up at random, sensible and senseless ones. The seed is printed;
 * {@code -Ddeadband.seed=…} runs the same ones again.
 */
final class Generated {
  private static final long SEED = Long.getLong("deadband.seed", System.nanoTime());

  private final SplittableRandom random;

  private Generated(SplittableRandom random) {
    this.random = random;
  }

  /** A stream of made-up things for one test. */
  static Generated forTest(String name) {
    System.out.println(name + ": -Ddeadband.seed=" + SEED);
    return new Generated(new SplittableRandom(SEED));
  }

  /** What to say when a made-up case fails. */
  static String seed() {
    return "-Ddeadband.seed=" + SEED;
  }

  double between(double least, double most) {
    return random.nextDouble(least, most);
  }

  int between(int least, int most) {
    return random.nextInt(least, most + 1);
  }

  boolean chance(double share) {
    return random.nextDouble() < share;
  }

  <T> T oneOf(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  private <E extends Enum<E>> Set<E> someOf(Class<E> kind) {
    Set<E> some = EnumSet.noneOf(kind);
    for (E each : kind.getEnumConstants()) {
      if (random.nextBoolean()) {
        some.add(each);
      }
    }
    return some;
  }

  private Line line(boolean threePhase) {
    return threePhase ? oneOf(List.of(Line.values())) : Line.L1;
  }

  /** A decimal with steps of a tenth, as a dial has them. */
  private double dial(double least, double most) {
    return Math.rint(between(least, most) * 10) / 10;
  }

  private double minutes(int most) {
    return chance(0.3) ? 0 : between(1, most);
  }

  Given installation() {
    Given given = new Given();
    boolean threePhase = chance(0.4);
    given.perPhase = chance(0.5);
    given.exportLimit_kW = chance(0.5) ? dial(0, 6) : Double.POSITIVE_INFINITY;
    given.house = threePhase ? Line.ALL : Line.L1;
    given.inverter_kW = dial(1, 12);
    given.generator = line(threePhase);
    given.sensor = threePhase && chance(0.5) ? line(true) : Line.ALL;
    given.seesHeatPump = chance(0.8);
    controls(given, threePhase);
    heatPump(given, threePhase);
    tank(given);
    helpers(given, threePhase);
    return given;
  }

  private void controls(Given given, boolean threePhase) {
    given.opening_C = dial(40, 75);
    given.closing_C = given.opening_C - dial(0.1, 8);
    given.minimum_kW = dial(0, 0.4);
    given.exportMargin_kW = dial(0, 0.5);
    given.answersDemand = chance(0.8);
    given.diverter = line(threePhase);
    given.immersion_kW = chance(0.2) ? 0 : dial(0.5, 6);
    given.thermostat_C = dial(45, 78);
    given.thermostatDifferential_K = dial(1, 12);
    given.cutOut_C = dial(70, 90);
    given.timed = chance(0.2) ? List.of(window()) : List.of();
    given.call =
        chance(0.8) ? RelayModel.Call.WHILE_CLOSED : oneOf(List.of(RelayModel.Call.values()));
    given.counts = someOf(Counted.class);
    given.start_kW = dial(-0.5, 5);
    given.stop_kW = dial(-1, 5);
    given.startDelay_min = minutes(12);
    given.stopDelay_min = minutes(12);
  }

  private void heatPump(Given given, boolean threePhase) {
    given.startLag_min = minutes(5);
    given.minimumRun_min = minutes(25);
    given.minimumOff_min = minutes(25);
    given.everydayStart_C = chance(0.1) ? Double.NEGATIVE_INFINITY : dial(30, 58);
    given.everydayStop_C = dial(40, 62);
    given.blocked =
        chance(0.3) ? List.of(new Window(between(0, 1439), between(0, 1440))) : List.of();
    given.surplusBlocked =
        chance(0.2) ? List.of(new Window(between(0, 1439), between(0, 1440))) : List.of();
    given.surplusStart_C = dial(40, 65);
    given.surplusStop_C = dial(45, 72);
    given.heatPump = line(threePhase);
    given.fit = oneOf(List.of(HeatPumpCop.Fit.values()));
    given.factor = between(0.6, 1.1);
    given.hotWaterInput_kW = dial(0.5, 5);
    given.minimumInput_kW = chance(0.3) ? given.hotWaterInput_kW : dial(0, given.hotWaterInput_kW);
    given.maximumFlow_C = dial(50, 80);
    given.flowAboveTank_K = dial(1, 12);
  }

  private void tank(Given given) {
    given.volume_L = between(30, 600);
    given.height_mm = between(600, 2000);
    given.loss_kWh_per_day = between(0, 4);
    given.element_mm = between(0, given.height_mm);
    given.diverterSensor_mm = between(0, given.height_mm);
    given.heatPumpSensor_mm = between(0, given.height_mm);
    given.coilBottom_mm = between(0, given.height_mm * 0.8);
    given.coilTop_mm = between(given.coilBottom_mm + 20, given.height_mm);
    given.coilCutOut_C = dial(70, 90);
    given.room_C = between(5, 30);
    given.layers = between(1, 30);
  }

  private void helpers(Given given, boolean threePhase) {
    if (chance(0.4)) {
      given.backup = new BackupHeaterModel.Spec(dial(1, 9), chance(0.5));
    }
    if (chance(0.3)) {
      given.disinfection = disinfection(given);
    }
    if (chance(0.4)) {
      given.battery =
          new BatteryModel.Spec(
              dial(1, 15),
              dial(0, 1),
              dial(0.5, 6),
              between(0.7, 1),
              someOf(Load.class),
              someOf(Load.class),
              line(threePhase));
    }
    if (chance(0.3)) {
      given.charger =
          new Charger.Spec(
              chance(0.7),
              dial(1.4, 4),
              dial(4, 11),
              dial(0, 40),
              new Window(between(0, 1439), between(0, 1440)),
              someOf(Load.class),
              line(threePhase));
    }
  }

  private DisinfectionModel.Spec disinfection(Given given) {
    return new DisinfectionModel.Spec(
        oneOf(List.of(DisinfectionModel.Heater.values())),
        dial(55, 70),
        minutes(60),
        between(0.5, 7),
        between(0, 900),
        between(0, given.height_mm),
        between(30, 400),
        chance(0.3) ? List.of(window(), window()) : List.of());
  }

  private Window window() {
    return new Window(between(0, 1439), between(0, 1440));
  }

  /** A day of clouds, kettles and taps at a step. */
  Day day(StepLength step) {
    int length = 1440 * 60 / step.seconds();
    double[] pv_kW = new double[length];
    double[] house_kW = new double[length];
    double[] draw_L = new double[length];
    double peak_kW = between(0, 10);
    double cloud = 1;
    for (int index = 0; index < length; index++) {
      cloud = chance(0.1) ? between(0.1, 1) : cloud;
      double sun = Math.max(0, -Math.cos(2 * Math.PI * index / length));
      pv_kW[index] = peak_kW * sun * cloud;
      house_kW[index] = chance(0.02) ? between(1.0, 4) : between(0.1, 0.6);
      draw_L[index] = chance(0.03) ? between(0.0, 15) * step.minutes() : 0;
    }
    int start_s = between(0, 23) * 3600;
    Profile profile = Profile.of(step, start_s, pv_kW, house_kW, draw_L);
    return new Day(profile, between(2.0, 18), between(-10.0, 20));
  }
}
