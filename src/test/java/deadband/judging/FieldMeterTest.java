package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import deadband.days.DayRuns;
import deadband.document.Pointer;
import deadband.limits.Limits;
import deadband.setup.Blending;
import deadband.setup.Change;
import deadband.setup.CountryCode;
import deadband.setup.Disinfection.Heater;
import deadband.setup.Diverter.HysteresisLies;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The field meter: how many good homes draw each check.
 *
 * <p>The homes are set as an engineer sets them, over the ordinary range: 150 to 500 L, everyday 43
 * to 50 up to 48 to 55 °C, limits 60 to 65 °C, every country of the limits table, one and three
 * phases. {@code mvn -Dtest=FieldMeterTest test} prints the count.
 */
class FieldMeterTest {

  private static final int HOMES = 600;
  private static final int ON_DAYS = 48;
  private static final double MOST_QUERIES = 0.02;

  private static final Judge QUICK = new Judge(Setups.JUDGE.book(), DayRuns.none());
  private static final Setup ONE_PHASE = base("mill-cottage");
  private static final Setup THREE_PHASES = base("zonnedijk");

  private static Setup base(String name) {
    Path file = Path.of("sample-configs/good", name + ".json");
    return Setups.read(name, Setups.text(file)).setup();
  }

  @Test
  void goodHomesDrawNothingAboveAQueryAndFewQueries() {
    Meter meter = new Meter();
    List<Setup> homes = IntStream.range(0, HOMES).mapToObj(FieldMeterTest::home).toList();
    for (Setup home : homes) {
      assertThat(RuleOfThumb.broken(home)).isEmpty();
      meter.count(QUICK.glance(home, Limits.standard(), Setups.AS_OF));
    }
    meter.check("without example days");
  }

  @Test
  void soTheyDoOnExampleDays() {
    Meter meter = new Meter();
    IntStream.range(0, ON_DAYS)
        .mapToObj(FieldMeterTest::home)
        .forEach(home -> meter.count(Setups.JUDGE.glance(home, Limits.standard(), Setups.AS_OF)));
    meter.check("with example days");
  }

  /** The homes of a field trial that an engineer would sign, where that folder is there. */
  @Test
  void homesThatAnEngineerWouldSignDrawNothingAboveAQuery() {
    String data = System.getProperty("deadband.data", "");
    Path folder = Path.of(data, "field", "good");
    assumeTrue(
        !data.isEmpty() && Files.isDirectory(folder), "no field homes without deadband.data");
    for (Path file : Setups.files(folder.toString(), ".json")) {
      Judgement judgement = Setups.judge(Setups.read(file.toString(), Setups.text(file)));
      assertThat(judgement.verdict()).as("%s", file).isNotEqualTo(Verdict.NOT_READY);
    }
    for (String name : List.of("mill4450", "g4-polderhuis-battery-charger")) {
      Path file = folder.resolve(name + ".json");
      assertThat(Setups.judge(Setups.read(name, Setups.text(file))).findings()).as(name).isEmpty();
    }
  }

  /** What the meter has counted. */
  private static final class Meter {

    private final Map<String, Integer> queries = new TreeMap<>();
    private final List<String> graver = new ArrayList<>();
    private int homes;
    private int silent;

    void count(Judgement judgement) {
      homes++;
      silent += judgement.findings().isEmpty() ? 1 : 0;
      for (Finding finding : judgement.findings()) {
        if (finding.consequence().compareTo(Consequence.QUERY) < 0) {
          graver.add(finding.check().name() + " " + finding.detail());
        } else {
          queries.merge(finding.check().name(), 1, Integer::sum);
        }
      }
    }

    void check(String how) {
      System.out.printf("field meter %s: %d of %d homes silent, %s%n", how, silent, homes, queries);
      assertThat(graver).as("above a query").isEmpty();
      assertThat(queries.values())
          .as("each query on fewer than 2 %% of the homes: %s", queries)
          .allMatch(count -> count <= Math.max(1, MOST_QUERIES * homes));
    }
  }

  /** One heat pump of a range: what it takes and gives, and how hot its flow gets. */
  private record Pump(double least_kW, double most_kW, double output_kW) {}

  private static final List<Pump> PUMPS =
      List.of(
          new Pump(0.6, 1.3, 3.4),
          new Pump(0.8, 1.7, 4.5),
          new Pump(0.9, 2.0, 5.4),
          new Pump(1.2, 2.5, 6.8));

  private static final List<String> COUNTRIES = List.of("GB", "NL", "FR", "AU", "NZ");

  private static Setup home(int number) {
    Random random = new Random(20261127L + number);
    boolean three = number % 2 == 1;
    String country = COUNTRIES.get(number % COUNTRIES.size());
    Home home = new Home(three ? THREE_PHASES : ONE_PHASE);
    home.tank(random);
    home.programmes(random);
    home.disinfection(country);
    home.relay(random);
    home.site(country, random);
    return Change.all(home.changes, home.base);
  }

  private static double step(Random random, double least, double most, double step) {
    int steps = (int) Math.round((most - least) / step);
    return Math.round((least + step * random.nextInt(steps + 1)) * 1000) / 1000.0;
  }

  private static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }

  /** Sets a home as an engineer does: the tank, the pump that suits it, then its settings. */
  private static final class Home {

    private final Setup base;
    private final List<Change> changes = new ArrayList<>();
    private double volume_L;
    private double swing_K;
    private double everydayStop_C;
    private double limit_C;
    private double hysteresis_K;
    private boolean both;
    private double reach_C;
    private Pump pump = PUMPS.get(0);

    Home(Setup base) {
      this.base = base;
    }

    private void set(String dotted, Object value) {
      Pointer pointer = Pointer.ofDotted(dotted);
      changes.add(new Change(pointer, null, value));
    }

    void tank(Random random) {
      volume_L = step(random, 150, 500, 10);
      double height_mm = Math.round(700 + volume_L * 2.4);
      set("tank.volume_L", volume_L);
      set("tank.height_mm", height_mm);
      set("tank.loss_kWh_per_day", tenth(0.8 + volume_L * 0.003));
      set("tank.coil.bottom_mm", step(random, 50, 80, 10));
      set("tank.coil.top_mm", Math.round(height_mm * 0.6) + 0.0);
      set("tank.coil.cutOut_C", 80.0);
      set("tank.relief_C", 90.0);
      set("immersion.height_mm", step(random, 60, 90, 10));
      set("diverter.sensor.height_mm", Math.round(height_mm * 0.55) + 0.0);
      set("heatPump.sensor_mm", Math.round(height_mm * 0.4) + 0.0);
      set("heatPump.disinfection.sensor_mm", Math.round(height_mm * 0.4) + 0.0);
      set("house.occupants", Math.max(1, Math.floor(volume_L / 75)));
    }

    void programmes(Random random) {
      swing_K = step(random, 5, 6, 1);
      double start_C = step(random, 43, 50, 1);
      double maximumFlow_C = List.of(60.0, 65.0, 70.0, 75.0).get(random.nextInt(4));
      reach_C = maximumFlow_C - 5 - 1;
      start_C = Math.min(start_C, reach_C - 2 * swing_K);
      everydayStop_C = Math.max(48, Math.min(55, start_C + swing_K));
      double mostStop_C = Math.min(reach_C, step(random, 60, 65, 1));
      double surplusStop_C = Math.max(mostStop_C, everydayStop_C + swing_K);
      set("heatPump.maximumFlow_C", maximumFlow_C);
      set("heatPump.flowAboveTank_K", 5.0);
      set("heatPump.sensorTolerance_K", 1.0);
      set("heatPump.everyday.start_C", start_C);
      set("heatPump.everyday.stop_C", everydayStop_C);
      set("heatPump.surplus.start_C", Math.max(everydayStop_C, surplusStop_C - swing_K));
      set("heatPump.surplus.stop_C", surplusStop_C);
      limit_C = step(random, 60, 65, 1);
      hysteresis_K = step(random, 1, 2, 1);
      both = random.nextBoolean();
      set("diverter.limit_C", limit_C);
      set("diverter.hysteresis_K", hysteresis_K);
      set("diverter.hysteresisLies", both ? HysteresisLies.BOTH : HysteresisLies.BELOW);
      valve(Math.max(opening_C(), surplusStop_C));
      suitable(random);
    }

    private double opening_C() {
      return both ? limit_C + hysteresis_K : limit_C;
    }

    /** A domestic valve up to 64 °C, above it one in line at the store. */
    private void valve(double hottest_C) {
      boolean domestic = hottest_C <= 64;
      set("blending.valve", domestic ? Blending.Valve.TMV2 : Blending.Valve.EN_15092);
      set("blending.hotSupplyMax_C", domestic ? 65.0 : 85.0);
      set("immersion.thermostat_C", 70.0);
      set("immersion.cutOut_C", 80.0);
    }

    /** The largest pump that still runs twelve minutes on this tank. */
    private void suitable(Random random) {
      List<Pump> suitable =
          PUMPS.stream()
              .filter(one -> volume_L * 0.9 * swing_K * 1.16 / 1000 / one.output_kW() >= 0.2)
              .toList();
      pump = suitable.isEmpty() ? pump : suitable.get(random.nextInt(suitable.size()));
      double minimumRun_min = suitable.isEmpty() ? 8 : 10;
      set("heatPump.minimumInput_kW", pump.least_kW());
      set("heatPump.hotWaterInput_kW", pump.most_kW());
      set("heatPump.hotWaterOutput_kW", pump.output_kW());
      set("heatPump.minimumRun_min", minimumRun_min);
      set("heatPump.minimumOff_min", 20 - minimumRun_min);
      set("heatPump.startsPerHour", 3.0);
      set("tank.coil.area_m2", Math.max(1.6, tenth(pump.output_kW() * 0.4)));
    }

    void disinfection(String country) {
      boolean immersion = opening_C() >= 61.5;
      boolean byPump = !immersion && reach_C >= 60;
      if (!immersion && !byPump) {
        limit_C = 62;
        set("diverter.limit_C", limit_C);
        valve(Math.max(opening_C(), 64));
      }
      set("heatPump.disinfection.target_C", 60.0);
      set("heatPump.disinfection.hold_min", 60.0);
      set("heatPump.disinfection.every_days", country.equals("FR") && volume_L >= 400 ? 1.0 : 7.0);
      set("heatPump.disinfection.heater", byPump ? Heater.HEAT_PUMP : Heater.IMMERSION);
      set("heatPump.disinfection.timeAllowed_min", 720.0);
    }

    void relay(Random random) {
      boolean counted = random.nextInt(4) == 0;
      double spare_kW = step(random, 0.3, 0.6, 0.1);
      double stop_kW = counted ? pump.most_kW() : step(random, 0.1, 0.3, 0.1);
      double start_kW = tenth(counted ? stop_kW + spare_kW : stop_kW + pump.most_kW() + spare_kW);
      List<Counts> counts = new ArrayList<>(base.relay().counts().optional().orElseThrow());
      counts.remove(Counts.HEAT_PUMP);
      if (counted) {
        counts.add(Counts.HEAT_PUMP);
      }
      counts.sort(null);
      set("relay.counts", List.copyOf(counts));
      set("relay.start_kW", start_kW);
      set("relay.stop_kW", stop_kW);
      set("relay.startDelay_min", step(random, 3, 5, 1));
      set("relay.stopDelay_min", step(random, 3, 5, 1));
      double base_kW = step(random, 0.2, 0.4, 0.1);
      double inverter_kW = Math.ceil(start_kW * 1.3 + base_kW + 1);
      set("house.baseLoad_kW", base_kW);
      set("solar.peak_kW", tenth(inverter_kW * 1.1));
      set("solar.inverter_kW", inverter_kW);
      set("solar.exportLimit_kW", inverter_kW);
    }

    void site(String country, Random random) {
      set("site.country", CountryCode.parse(country).orElseThrow());
      boolean south = country.equals("AU") || country.equals("NZ");
      set("solar.latitude_deg", south ? -36.0 : step(random, 45, 54, 1));
      set("solar.azimuth_deg", south ? 0.0 : 180.0);
      set("supply.voltage_V", step(random, 230, 240, 2));
      set("immersion.circuit.cableRating_A", 24.0);
      set("immersion.circuit.flexRating_A", 16.0);
      for (int i = 0; i < 3; i++) {
        set("outlets[" + i + "].mixed_C", 41.0);
      }
      set("observed.tap_C", 52.0);
    }
  }

  /** What an engineer looks at, in numbers of his own; none of the tool's code is asked. */
  private static final class RuleOfThumb {

    static List<String> broken(Setup home) {
      List<String> broken = new ArrayList<>();
      double most_kW = value(home, "heatPump.hotWaterInput_kW");
      double start_kW = value(home, "relay.start_kW");
      double stop_kW = value(home, "relay.stop_kW");
      boolean counted = home.relay().counts().optional().orElseThrow().contains(Counts.HEAT_PUMP);
      hold(start_kW >= value(home, "heatPump.minimumInput_kW"), "start covers the pump", broken);
      hold(counted || start_kW - stop_kW >= most_kW + 0.2, "gap above the pump's input", broken);
      hold(stop_kW >= (counted ? most_kW : 0), "stop buys nothing", broken);
      hold(start_kW <= value(home, "solar.inverter_kW") - 1, "the PV reaches the start", broken);
      hold(
          value(home, "heatPump.everyday.stop_C") <= value(home, "heatPump.surplus.start_C"),
          "surplus above everyday",
          broken);
      hold(
          value(home, "heatPump.surplus.stop_C")
              <= value(home, "heatPump.maximumFlow_C")
                  - value(home, "heatPump.flowAboveTank_K")
                  - 1,
          "the compressor reaches its stop",
          broken);
      double opening_C =
          value(home, "diverter.limit_C")
              + (home.diverter().hysteresisLies().says(HysteresisLies.BOTH)
                  ? value(home, "diverter.hysteresis_K")
                  : 0);
      double valve_C = value(home, "blending.hotSupplyMax_C");
      hold(opening_C <= valve_C - 1, "the valve stands the tank", broken);
      hold(value(home, "heatPump.surplus.stop_C") <= valve_C - 1, "and the pump", broken);
      hold(value(home, "immersion.thermostat_C") <= 70, "thermostat as usual", broken);
      hold(value(home, "immersion.cutOut_C") >= opening_C + 10, "cut-out clear", broken);
      hold(value(home, "outlets[0].mixed_C") <= 43, "mixed as usual", broken);
      hold(value(home, "heatPump.disinfection.target_C") >= 60, "disinfected", broken);
      return broken;
    }

    private static void hold(boolean holds, String rule, List<String> broken) {
      if (!holds) {
        broken.add(rule);
      }
    }

    private static double value(Setup home, String dotted) {
      return (Double) Change.entered(home, Pointer.ofDotted(dotted));
    }
  }
}
