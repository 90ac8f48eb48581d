package deadband.diagnosis;

import deadband.meterlog.Assembly;
import deadband.meterlog.Heading;
import deadband.meterlog.LogUnit;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import deadband.meterlog.Readings;
import deadband.reading.SetupReading;
import deadband.setup.Setup;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * A home with a fault, or none, that writes a meter log: a tank of one temperature, a heat pump, a
 * relay, weather and household by chance. It shares nothing with the day run or with the
 * predictions, so that their mistakes are not its own: what is entered in its file is off from what
 * is in force by what a plate or an installer may be off, sensors have offsets, meters noise, the
 * log gaps and a clock of its own.
 */
final class GeneratedHome {

  private static final long MIDNIGHT_S = 1_780_272_000L;
  private static final int DAY_S = 86_400;

  private final Cause fault;
  private final Random chance;
  private final int interval_s;
  private final int step_s;
  private final int days;

  // in force
  private double input_kW;
  private double output_kW;
  private double start_kW;
  private double stop_kW;
  private double startDelay_min;
  private double stopDelay_min;
  private double lag_min;
  private double minimumRun_min;
  private double minimumOff_min;
  private double volume_L;
  private double everydayStart_C;
  private double everydayStop_C;
  private double surplusStart_C;
  private double surplusStop_C;
  private double limit_C;
  private double peak_kW;
  private double base_kW;
  private double drawn_L;
  private double ownOffset_K;
  private double readOffset_kW;
  private double readLag_min;
  private boolean blind;
  private boolean onePhase;
  private boolean sunny;
  private boolean broken;
  private boolean battery;
  private boolean batterySupplies;
  private boolean vehicle;
  private boolean heater;
  private boolean heating;
  private boolean blocked;
  private double standby_kW;
  private boolean tankLogged;

  // entered
  private double enteredRun_min;
  private double enteredOff_min;
  private double enteredStart_kW;
  private double enteredStop_kW;
  private double enteredStartDelay_min;
  private double enteredStopDelay_min;
  private double enteredDifferential_K;
  private double enteredLimit_C;
  private String buffer = "";

  // now
  private double tank_C;
  private double charged_K;
  private double stored_kWh;
  private boolean running;
  private boolean closed;
  private boolean everydayCalls;
  private double aboveStart_s;
  private double belowStop_s;
  private double ran_s;
  private double off_s = 7200;
  private double called_s;
  private double contactOpen_s;
  private double otherCall_s;
  private double otherHold_s;
  private double vehicle_kW;
  private double vehicleWaits_s;
  private double vehicleShort_s;
  private double cloud_s;
  private double shade = 1;
  private double appliance_s;
  private double appliance_kW;
  private double draw_s;
  private double heatingUntil_s;
  private double heatingFrom_s;
  private @Nullable MeterLog written;
  private int acts;
  private double low_s;
  private double closedFor_s;
  private boolean onContact;
  private int retries;
  private double retryAt_s;
  private double valveLocked_s;
  private double defrost_s;
  private final Deque<Double> read = new ArrayDeque<>();

  @SuppressWarnings("EnumOrdinal") // a seed of its own for each fault
  private GeneratedHome(Cause fault, Sizes sizes, long seed, int interval_s) {
    this.fault = fault;
    this.chance = new Random(seed * 7919 + fault.ordinal() * 104_729L);
    this.interval_s = interval_s;
    this.step_s = interval_s == 1 ? 1 : 5;
    this.days = interval_s == 1 ? 1 : 2 + chance.nextInt(4);
    usual();
    if (sizes == Sizes.OTHER) {
      otherSizes();
    }
    faulty();
  }

  /** Sizes of the home: the usual ones, and others, with larger heat pumps and longer times. */
  enum Sizes {
    USUAL,
    OTHER
  }

  /**
   * The home of a seed. A fault that does nothing in the days of the log (no cloud, tank warm) is
   * in no log: then the next of the seed's homes is taken.
   */
  static GeneratedHome of(Cause fault, long seed, int interval_s) {
    return of(fault, Sizes.USUAL, seed, interval_s);
  }

  static GeneratedHome of(Cause fault, Sizes sizes, long seed, int interval_s) {
    for (int again = 0; again < 200; again++) {
      GeneratedHome home = new GeneratedHome(fault, sizes, seed + 100_000L * again, interval_s);
      home.written = home.log();
      if (home.acts >= home.least()) {
        return home;
      }
    }
    throw new IllegalStateException(fault + " does not show, seed " + seed);
  }

  /** A home with a fault whose battery supplies the heat pump, too. */
  static GeneratedHome onBattery(Cause fault, long seed, int interval_s) {
    GeneratedHome home = new GeneratedHome(fault, Sizes.USUAL, seed, interval_s);
    home.battery = true;
    home.batterySupplies = true;
    home.written = home.log();
    return home;
  }

  /** How often a fault must have acted to be in the log. */
  private int least() {
    return switch (fault) {
      case NOTHING_UNUSUAL -> 1;
      case VEHICLE_CHARGER, START_BELOW_INPUT, SENSOR_BLIND, STUCK_VALVE, SUPPLY_CUT -> 2;
      case BUFFER_TOO_SMALL -> 10;
      case DIFFERENTIAL_TOO_SMALL, COMPRESSOR_LIMIT, GAP_BELOW_INPUT -> 4;
      case BATTERY -> 1200;
      default -> 3;
    };
  }

  MeterLog log() {
    return written == null ? write() : written;
  }

  private double between(double low, double high) {
    return low + chance.nextDouble() * (high - low);
  }

  private boolean one(int in) {
    return chance.nextInt(in) == 0;
  }

  private void usual() {
    input_kW = between(1.5, 3.4);
    output_kW = input_kW * between(2.5, 3.4);
    volume_L = between(180, 320);
    start_kW = input_kW + between(0.2, 0.7);
    stop_kW = start_kW - input_kW - between(0.25, 0.6);
    startDelay_min = Math.rint(between(3, 7));
    stopDelay_min = Math.rint(between(4, 8));
    lag_min = Math.rint(between(1, 3));
    minimumRun_min = Math.rint(between(8, 12));
    minimumOff_min = Math.rint(between(8, 15));
    everydayStop_C = Math.rint(between(49, 54));
    everydayStart_C = everydayStop_C - Math.rint(between(5, 8));
    surplusStop_C = everydayStop_C + Math.rint(between(6, 10));
    surplusStart_C = everydayStop_C + Math.rint(between(-1, 2));
    limit_C = surplusStop_C + between(3, 6);
    peak_kW = between(5, 9);
    base_kW = between(0.25, 0.5);
    drawn_L = between(150, 300);
    sunny = one(3);
    broken = !sunny && !one(4);
    heater = one(4);
    heating = one(6);
    blocked = one(3);
    battery = one(6);
    standby_kW = between(0.008, 0.02);
    tankLogged = !one(5);
  }

  /** A larger heat pump and tank, longer delays and timers, other temperatures. */
  private void otherSizes() {
    input_kW = between(2.8, 5.5);
    output_kW = input_kW * between(2.3, 4);
    volume_L = between(280, 600);
    start_kW = input_kW + between(0.2, 1.2);
    stop_kW = start_kW - input_kW - between(0.2, 1);
    startDelay_min = Math.rint(between(3, 12));
    stopDelay_min = Math.rint(between(3, 12));
    lag_min = Math.rint(between(0, 4));
    minimumRun_min = Math.rint(between(5, 20));
    minimumOff_min = Math.rint(between(5, 25));
    everydayStop_C = Math.rint(between(46, 57));
    everydayStart_C = everydayStop_C - Math.rint(between(4, 10));
    surplusStop_C = everydayStop_C + Math.rint(between(4, 11));
    surplusStart_C = everydayStop_C + Math.rint(between(-2, 2));
    limit_C = surplusStop_C + between(3, 8);
    peak_kW = input_kW * between(2.2, 3) + 1;
    base_kW = between(0.15, 0.8);
    drawn_L = between(120, 420);
  }

  private void faulty() {
    switch (fault) {
      case GAP_BELOW_INPUT -> {
        start_kW = input_kW + between(0.1, 0.8);
        stop_kW = Math.max(0.1, start_kW - input_kW * between(0.1, 0.6));
        sunny |= one(2);
        broken = !sunny;
        startDelay_min = Math.rint(between(1, 4));
        stopDelay_min = Math.rint(between(1, 4));
        peak_kW = between(1.5, 2.2) * input_kW + 1;
      }
      case START_BELOW_INPUT -> {
        start_kW = input_kW * between(0.25, 0.6);
        stop_kW = start_kW - input_kW * between(1.15, 1.4);
        battery = false;
      }
      case DELAY_SHORTER_THAN_CLOUD -> {
        startDelay_min = between(0.2, 1);
        stopDelay_min = between(0.2, 1);
        minimumRun_min = Math.rint(between(3, 6));
        minimumOff_min = Math.rint(between(3, 6));
        sunny = false;
        broken = true;
        peak_kW = between(2, 2.6) * input_kW + 1.5;
      }
      case DIFFERENTIAL_TOO_SMALL -> {
        everydayStart_C = everydayStop_C - between(0.5, 1.8);
        surplusStart_C = surplusStop_C - between(0.5, 2);
        volume_L = between(120, 200);
        output_kW = Math.max(output_kW, 6.5);
        minimumRun_min = Math.rint(between(2, 6));
        tankLogged = true;
      }
      case BUFFER_TOO_SMALL -> {
        heating = false;
        double litres = between(60, 160);
        double load_kW = between(0.35, 0.6) * output_kW;
        double swing_K = Math.rint(between(3, 5));
        buffer =
            one(3)
                ? ""
                : ("\"buffer\":{\"volume_L\":%.0f,\"systemVolume_L\":%.0f,\"swing_K\":%.0f,"
                        + "\"leastHeatOutput_kW\":%.1f,\"leastHeatDemand_kW\":%.1f},")
                    .formatted(litres * 0.6, litres * 0.4, swing_K, output_kW, load_kW);
        double held_kWh = litres * 1.163e-3 * swing_K;
        heatingFrom_s = 3600 * held_kWh / load_kW;
        heatingUntil_s = 3600 * held_kWh / (output_kW - load_kW);
        minimumRun_min = 3;
        minimumOff_min = 3;
        tankLogged = true;
      }
      case BATTERY -> {
        battery = true;
        batterySupplies = true;
        blocked = true;
      }
      case VEHICLE_CHARGER -> {
        vehicle = true;
        heater = false;
        battery = false;
        sunny = true;
        stop_kW = Math.max(0.12, stop_kW);
        start_kW = stop_kW + input_kW + between(0.15, 0.4);
        peak_kW = (3.7 + input_kW + between(0.6, 1.8)) / 0.76;
      }
      case TANK_SENSOR -> {
        ownOffset_K = (one(2) ? 1 : -1) * between(4.5, 8);
        tankLogged = true;
      }
      case METER_ERROR -> readOffset_kW = between(0.6, 1.2);
      case READING_LAG -> {
        readLag_min = between(3, 12);
        sunny = false;
        broken = true;
        peak_kW = between(2, 2.6) * input_kW + 1.5;
      }
      case SENSOR_BLIND -> {
        blind = true;
        onePhase = one(3);
        sunny = false;
        broken = true;
        heater = false;
      }
      case CONTACT_BOUNCE -> {
        peak_kW = 2 * input_kW + between(2, 4);
        sunny = true;
      }
      case COMPRESSOR_LIMIT -> {
        limit_C = everydayStop_C - between(2.5, 6);
        everydayStart_C = Math.min(everydayStart_C, limit_C - 3);
        surplusStart_C = Math.max(surplusStart_C, limit_C);
        tankLogged = true;
      }
      case DISINFECTION_RETRIES -> {
        limit_C = surplusStop_C + between(1, 3);
        tankLogged = true;
      }
      case SUPPLY_CUT -> {
        sunny = false;
        broken = true;
        heating = false;
      }
      case MINIMUM_TIMERS -> {
        minimumRun_min = between(0, 2);
        minimumOff_min = between(0, 3);
        stopDelay_min = Math.rint(between(2.6, 4));
        startDelay_min = Math.rint(between(2.6, 4));
        sunny = false;
        broken = true;
        peak_kW = between(2, 2.6) * input_kW + 1.5;
      }
      case STUCK_VALVE -> tankLogged = true;
      case SECOND_CONTROLLER -> tankLogged = true;
      case NOTHING_UNUSUAL -> {}
    }
    boolean timers = fault == Cause.MINIMUM_TIMERS;
    enteredRun_min = timers ? Math.rint(between(10, 15)) : minimumRun_min;
    enteredOff_min = timers ? Math.rint(between(10, 15)) : minimumOff_min;
    enteredStart_kW = start_kW;
    enteredStop_kW = stop_kW;
    enteredStartDelay_min = startDelay_min;
    enteredStopDelay_min = stopDelay_min;
    enteredDifferential_K = everydayStop_C - everydayStart_C;
    enteredLimit_C = limit_C;
    if (fault == Cause.COMPRESSOR_LIMIT && one(3)) {
      enteredLimit_C = surplusStop_C + 4;
    }
    if (fault == Cause.GAP_BELOW_INPUT && one(5)) {
      enteredStop_kW = start_kW - 1.2 * input_kW;
    }
    tank_C = everydayStart_C + between(0, 3);
    stored_kWh = 5;
  }

  /** The file, as an installer may have filled it in. */
  Setup setup() {
    String json =
        String.format(
            Locale.ROOT,
            "{\"deadband\":1,\"supply\":{\"phases\":1},"
                + "\"solar\":{\"peak_kW\":%.1f},"
                + "\"tank\":{\"volume_L\":%.0f},"
                + "\"immersion\":%s,\"diverter\":%s,"
                + "\"relay\":{\"drives\":\"heat pump\",\"counts\":[\"export\"%s%s],"
                + "\"start_kW\":%.2f,\"stop_kW\":%.2f,\"startDelay_min\":%.1f,"
                + "\"stopDelay_min\":%.1f},"
                + "\"heatPump\":{\"hotWaterInput_kW\":%.1f,\"hotWaterOutput_kW\":%.1f,"
                + "\"maximumFlow_C\":%.0f,\"flowAboveTank_K\":5,\"startLag_min\":%.0f,"
                + "\"minimumRun_min\":%.0f,\"minimumOff_min\":%.0f,\"startsPerHour\":3,"
                + "\"everyday\":{\"start_C\":%.1f,\"stop_C\":%.1f},"
                + "\"surplus\":{\"start_C\":%.1f,\"stop_C\":%.1f}},%s"
                + "\"battery\":%s,\"vehicleCharger\":%s}",
            peak_kW,
            volume_L * between(0.92, 1.08),
            heater ? "{\"power_kW\":3,\"ratedAt_V\":230}" : "{\"fitted\":false}",
            heater ? "{\"minimum_kW\":0.15}" : "{\"fitted\":false}",
            heater ? ",\"immersion\"" : "",
            battery ? ",\"battery\"" : "",
            enteredStart_kW,
            enteredStop_kW,
            enteredStartDelay_min,
            enteredStopDelay_min,
            input_kW * between(0.95, 1.05),
            output_kW * between(0.85, 1.15),
            enteredLimit_C + 5,
            lag_min,
            enteredRun_min,
            enteredOff_min,
            everydayStop_C - enteredDifferential_K,
            everydayStop_C,
            surplusStart_C,
            surplusStop_C,
            buffer,
            battery ? "{\"capacity_kWh\":8,\"power_kW\":3}" : "{\"fitted\":false}",
            vehicle ? "{\"followsSurplus\":true}" : "{\"fitted\":false}");
    return ((SetupReading.Read) SetupReading.ofText("home.json", json)).setup();
  }

  /** The settings as somebody may write them in a letter. */
  String pasted(String name) {
    StringBuilder text = new StringBuilder("Site: " + name + "\n");
    line(text, "PV: %.1f kW peak", peak_kW);
    line(text, "Tank: %.0f litres", volume_L);
    line(text, heater ? "Immersion heater: 3 kW at 230 V" : "No immersion heater");
    line(text, heater ? "Diverter minimum: 0.15 kW" : "No diverter");
    line(text, "Relay calls the heat pump");
    line(
        text,
        "Relay counts: export" + (heater ? ", immersion" : "") + (battery ? ", battery" : ""));
    line(text, "Relay start: %.2f kW", enteredStart_kW);
    line(text, "Relay stop: %.2f kW", enteredStop_kW);
    line(text, "Relay start delay: %.1f min", enteredStartDelay_min);
    line(text, "Relay stop delay: %.1f min", enteredStopDelay_min);
    line(text, "Heat pump power input on hot water: %.1f kW", input_kW);
    line(text, "Heat pump heat output on hot water: %.1f kW", output_kW);
    line(text, "Heat pump maximum flow: %.0f °C", enteredLimit_C + 5);
    line(text, "Flow above tank: 5 K");
    line(text, "Heat pump start lag: %.0f min", lag_min);
    line(text, "Heat pump minimum run: %.0f min", enteredRun_min);
    line(text, "Heat pump minimum off: %.0f min", enteredOff_min);
    line(text, "Heat pump starts per hour: 3");
    line(
        text,
        "Everyday hot water: start %.1f °C, stop %.1f °C",
        everydayStop_C - enteredDifferential_K,
        everydayStop_C);
    line(text, "Surplus hot water: start %.1f °C, stop %.1f °C", surplusStart_C, surplusStop_C);
    line(text, battery ? "Battery: 8 kWh, 3 kW" : "No battery");
    line(text, vehicle ? "Vehicle charger follows surplus" : "No vehicle charger");
    return text.toString();
  }

  private static void line(StringBuilder text, String form, Object... values) {
    text.append(String.format(Locale.ROOT, form, values)).append('\n');
  }

  /** What its meters wrote. */
  private MeterLog write() {
    List<Meaning> columns = new ArrayList<>(List.of(Meaning.GRID, Meaning.HEAT_PUMP, Meaning.PV));
    if (tankLogged) {
      columns.add(Meaning.TANK);
    }
    if (heater) {
      columns.add(Meaning.IMMERSION);
    }
    if (battery) {
      columns.add(Meaning.BATTERY);
    }
    if (vehicle) {
      columns.add(Meaning.VEHICLE);
    }
    List<Heading> headings =
        columns.stream()
            .map(
                meaning ->
                    new Heading(
                        meaning.word(),
                        meaning,
                        meaning == Meaning.TANK ? LogUnit.C : LogUnit.KW,
                        "generated"))
            .toList();
    Readings readings = new Readings("generated", headings, false, true);
    double[] sum = new double[columns.size()];
    double clock_s = Math.rint(between(-900, 900));
    int from_s = 0;
    int until_s = days * DAY_S;
    long[] gaps = gaps(from_s, until_s);
    double logOffset_K = between(-0.5, 0.5);
    int steps = interval_s / step_s;
    for (int second = from_s - 6 * 3600; second < until_s; second += step_s) {
      acts = second == from_s ? 0 : acts;
      step(second);
      if (second < from_s) {
        continue;
      }
      for (int column = 0; column < sum.length; column++) {
        sum[column] += value(columns.get(column), logOffset_K) / steps;
      }
      if ((second + step_s - from_s) % interval_s == 0) {
        int begin_s = second + step_s - interval_s;
        if (!within(gaps, begin_s)) {
          readings.add(
              MIDNIGHT_S + begin_s + Math.round(clock_s),
              0,
              Arrays.stream(sum).map(v -> Math.rint(v * 1000) / 1000).toArray());
        }
        Arrays.fill(sum, 0);
      }
    }
    return Assembly.of(readings);
  }

  private long[] gaps(int from_s, int until_s) {
    long[] gaps = new long[2 * chance.nextInt(3)];
    for (int gap = 0; gap < gaps.length; gap += 2) {
      gaps[gap] = (long) from_s + chance.nextInt(until_s - from_s);
      gaps[gap + 1] = gaps[gap] + 300L + chance.nextInt(4800);
    }
    return gaps;
  }

  private static boolean within(long[] gaps, int second) {
    for (int gap = 0; gap < gaps.length; gap += 2) {
      if (second >= gaps[gap] && second < gaps[gap + 1]) {
        return true;
      }
    }
    return false;
  }

  // powers of this step
  private double pv_kW;
  private double house_kW;
  private double pump_kW;
  private double heater_kW;
  private double discharge_kW;
  private double grid_kW;

  private double value(Meaning meaning, double logOffset_K) {
    return switch (meaning) {
      case GRID -> grid_kW + chance.nextGaussian() * 0.02;
      case HEAT_PUMP -> Math.max(0, pump_kW);
      case PV -> pv_kW;
      case TANK -> Math.rint(10 * (sensor_C() + logOffset_K)) / 10;
      case IMMERSION -> heater_kW;
      case BATTERY -> discharge_kW;
      case VEHICLE -> vehicle_kW;
      default -> throw new IllegalArgumentException(meaning.word());
    };
  }

  /** The sensor feels the charging layer somewhat before the tank. */
  private double sensor_C() {
    return tank_C + charged_K;
  }

  private void step(int second) {
    double hour = Math.floorMod(second, DAY_S) / 3600.0;
    weather(hour);
    household(hour);
    powers(hour);
    relay();
    heatPump(second, hour);
    tank(hour);
  }

  private void weather(double hour) {
    double sun = hour > 5.5 && hour < 20 ? Math.sin(Math.PI * (hour - 5.5) / 14.5) : 0;
    cloud_s -= step_s;
    if (cloud_s <= 0) {
      boolean shaded = shade < 1;
      shade = shaded || sunny ? 1 : broken ? between(0.15, 0.5) : between(0.1, 0.3);
      double minutes =
          shade < 1
              ? broken ? (one(6) ? between(12, 30) : between(1, 6)) : between(60, 300)
              : broken ? between(4, 25) : between(20, 90);
      cloud_s = 60 * minutes;
    }
    pv_kW = peak_kW * 0.82 * Math.pow(sun, 1.25) * shade;
  }

  private void household(double hour) {
    appliance_s -= step_s;
    if (appliance_s <= 0) {
      boolean day = hour > 6.5 && hour < 22.5;
      boolean on = appliance_kW == 0 && day;
      appliance_kW = on ? between(1.2, 2.6) : 0;
      appliance_s = 60 * (on ? between(2, 9) : between(40, 200));
    }
    house_kW = base_kW + appliance_kW + chance.nextGaussian() * 0.015;
  }

  private void powers(double hour) {
    double wanted_kW = input_kW * (0.9 + 0.1 * (tank_C - 40) / 15);
    boolean slow = defrost_s > 0;
    pump_kW = running ? (slow ? 0.35 * wanted_kW : wanted_kW) : standby_kW;
    if (fault == Cause.SUPPLY_CUT && !running && !supplied(hour)) {
      pump_kW = 0;
    }
    double export_kW = pv_kW - house_kW - pump_kW;
    vehicle(export_kW);
    export_kW -= vehicle_kW;
    heater_kW =
        heater && sensor_C() < surplusStop_C + 1 && export_kW > 0.15 ? Math.min(3, export_kW) : 0;
    export_kW -= heater_kW;
    discharge_kW = 0;
    if (battery) {
      double needs_kW =
          batterySupplies ? -export_kW : Math.min(-export_kW, Math.max(0, house_kW - pv_kW));
      double gives_kW = Math.max(-3, Math.min(3, needs_kW));
      boolean can = gives_kW > 0 ? stored_kWh > 0.8 : stored_kWh < 8;
      discharge_kW = can ? gives_kW : 0;
      stored_kWh -= discharge_kW * step_s / 3600;
    }
    grid_kW = -(export_kW + discharge_kW);
  }

  private void vehicle(double export_kW) {
    if (!vehicle) {
      return;
    }
    vehicleWaits_s -= step_s;
    if (vehicle_kW == 0) {
      if (vehicleWaits_s <= 0 && export_kW > 1.5) {
        vehicle_kW = Math.min(3.7, export_kW - 0.05);
      }
      return;
    }
    vehicleShort_s = export_kW < 1.4 ? vehicleShort_s + step_s : 0;
    vehicle_kW = Math.max(1.4, Math.min(3.7, export_kW - 0.05));
    if (vehicleShort_s > 60) {
      vehicle_kW = 0;
      vehicleShort_s = 0;
      vehicleWaits_s = 60 * between(3, 10);
    }
  }

  private void relay() {
    double seen_kW = -grid_kW + heater_kW - discharge_kW;
    if (blind) {
      seen_kW = onePhase ? pv_kW - house_kW / 3 : seen_kW + pump_kW;
    }
    seen_kW += readOffset_kW + chance.nextGaussian() * 0.02;
    read.addLast(seen_kW);
    if (read.size() * step_s > readLag_min * 60 + step_s) {
      seen_kW = read.removeFirst();
    }
    closedFor_s = closed ? closedFor_s + step_s : 0;
    aboveStart_s = seen_kW >= start_kW ? aboveStart_s + step_s : 0;
    belowStop_s = seen_kW <= stop_kW ? belowStop_s + step_s : 0;
    if (!closed && aboveStart_s >= Math.max(step_s, 60 * startDelay_min)) {
      closed = true;
    } else if (closed && belowStop_s >= Math.max(step_s, 60 * stopDelay_min)) {
      closed = false;
      relayOpened();
    }
  }

  private void relayOpened() {
    double surplus_kW = pv_kW - house_kW;
    boolean steady = surplus_kW >= start_kW - 0.1;
    acts +=
        switch (fault) {
          case GAP_BELOW_INPUT -> running && onContact && steady ? 1 : 0;
          case DELAY_SHORTER_THAN_CLOUD -> running && onContact && !steady ? 1 : 0;
          case READING_LAG -> running && onContact ? 1 : 0;
          case VEHICLE_CHARGER -> running && onContact && vehicle_kW > 0 ? 1 : 0;
          case SUPPLY_CUT -> running ? 1 : 0;
          default -> 0;
        };
  }

  private void started(boolean contact, boolean other) {
    double surplus_kW = pv_kW - house_kW;
    onContact = contact && !everydayCalls;
    acts +=
        switch (fault) {
          case START_BELOW_INPUT ->
              onContact && closedFor_s < 900 && surplus_kW < input_kW - 0.3 ? 1 : 0;
          case METER_ERROR -> onContact && surplus_kW < start_kW - 0.4 ? 1 : 0;
          case TANK_SENSOR -> everydayCalls && !contact ? 1 : 0;
          case SECOND_CONTROLLER -> onContact && other && surplus_kW < start_kW ? 1 : 0;
          case BUFFER_TOO_SMALL -> !everydayCalls && !contact ? 1 : 0;
          case STUCK_VALVE, NOTHING_UNUSUAL -> 1;
          default -> 0;
        };
  }

  private void ran(boolean contact) {
    double surplus_kW = pv_kW - house_kW;
    boolean held =
        fault == Cause.SENSOR_BLIND
            && onContact
            && contact
            && ran_s > 60 * (minimumRun_min + 2)
            && surplus_kW < stop_kW + input_kW - 0.3;
    low_s = held ? low_s + step_s : 0;
    acts += low_s == 60 * 15 ? 1 : 0;
    if (fault == Cause.BATTERY && surplus_kW < 0 && grid_kW < 0.3 * input_kW) {
      acts += step_s;
    }
  }

  private boolean contactCalls() {
    boolean call = closed;
    if (fault == Cause.CONTACT_BOUNCE && closed) {
      contactOpen_s -= step_s;
      if (contactOpen_s <= -60 * 3) {
        contactOpen_s = one(60 * 4 / step_s) ? between(10, 60) : contactOpen_s;
      }
      call = contactOpen_s <= 0;
    }
    if (fault == Cause.SECOND_CONTROLLER) {
      otherCall_s -= step_s;
      otherHold_s -= step_s;
      if (otherCall_s < -60 * 20 && one(60 * 25 / step_s)) {
        otherCall_s = 60 * between(4, 18);
      }
      if (otherHold_s < -60 * 15 && one(60 * 15 / step_s)) {
        otherHold_s = 60 * between(5, 20);
      }
      call = otherCall_s > 0 || (closed && otherHold_s <= 0);
    }
    return call;
  }

  /** Where the relay cuts the supply: on with it, and by a clock before dawn. */
  private boolean supplied(double hour) {
    return closed || (hour >= 2.5 && hour < 4.5);
  }

  private void heatPump(int second, double hour) {
    double own_C = sensor_C() + ownOffset_K;
    boolean bars = blocked && hour > 8 && hour < 17;
    if (own_C <= everydayStart_C && !bars) {
      everydayCalls = true;
    } else if (own_C >= everydayStop_C || bars) {
      everydayCalls = false;
    }
    boolean contact = contactCalls();
    boolean supply = fault != Cause.SUPPLY_CUT || supplied(hour);
    boolean surplusCall = contact && own_C < surplusStop_C && (running || own_C <= surplusStart_C);
    boolean disinfects = disinfects(hour);
    boolean locked = valveLocked_s > 0;
    valveLocked_s -= step_s;
    boolean calls =
        supply && !locked && (everydayCalls || surplusCall || disinfects || heats(second));
    defrost_s -= step_s;
    if (running) {
      ran_s += step_s;
      if (heating && fault == Cause.NOTHING_UNUSUAL && one(2400 / step_s)) {
        defrost_s = 240;
      }
      boolean atLimit = sensor_C() >= limit_C;
      boolean longEnough = ran_s >= 60 * minimumRun_min;
      boolean satisfied = own_C >= surplusStop_C && !disinfects && !heats(second);
      ran(contact);
      if (!supply || atLimit || satisfied || (!calls && longEnough)) {
        withdrawn(atLimit, satisfied);
        stopped(atLimit);
      }
      if (fault == Cause.STUCK_VALVE && ran_s > 60 * 75) {
        stopped(false);
        valveLocked_s = 60 * between(40, 90);
      }
    } else {
      off_s += step_s;
      called_s = calls && sensor_C() < limit_C - 0.3 ? called_s + step_s : 0;
      double least_s = fault == Cause.SUPPLY_CUT ? 0 : 60 * minimumOff_min;
      if (called_s >= Math.max(step_s, 60 * lag_min) && off_s >= least_s) {
        running = true;
        ran_s = 0;
        started(contact, otherCall_s > 0);
      }
    }
  }

  private void withdrawn(boolean atLimit, boolean satisfied) {
    boolean atStop = atLimit || satisfied;
    acts +=
        switch (fault) {
          case DIFFERENTIAL_TOO_SMALL -> 1;
          case COMPRESSOR_LIMIT, DISINFECTION_RETRIES -> atLimit ? 1 : 0;
          case CONTACT_BOUNCE -> !atStop && closed && onContact ? 1 : 0;
          case MINIMUM_TIMERS -> !atStop && ran_s < 60 * (enteredRun_min - 1.5) ? 1 : 0;
          default -> 0;
        };
  }

  private void stopped(boolean atLimit) {
    running = false;
    off_s = 0;
    called_s = 0;
    if (fault == Cause.DISINFECTION_RETRIES && atLimit) {
      retries++;
      retryAt_s = 60 * between(25, 45);
    }
  }

  private boolean disinfects(double hour) {
    if (fault != Cause.DISINFECTION_RETRIES) {
      return false;
    }
    if (hour < 1) {
      retries = 0;
    }
    retryAt_s -= step_s;
    return hour >= 1.5 && hour < 6 && retries < 5 && retryAt_s <= 0;
  }

  private double spaceHeats_s;

  /** Space heating: of a healthy home in long runs, with too small a buffer in short ones. */
  private boolean heats(int second) {
    if (fault == Cause.BUFFER_TOO_SMALL) {
      double period_s = heatingFrom_s + heatingUntil_s;
      return Math.floorMod(second, (int) period_s) < heatingUntil_s;
    }
    if (!heating || fault != Cause.NOTHING_UNUSUAL) {
      return false;
    }
    spaceHeats_s -= step_s;
    if (spaceHeats_s < -3600 * 2 && one(3600 * 2 / step_s)) {
      spaceHeats_s = 60 * between(40, 100);
    }
    return spaceHeats_s > 0;
  }

  private void tank(double hour) {
    boolean toRooms =
        fault == Cause.STUCK_VALVE
            || (spaceHeats_s > 0 && !everydayCalls)
            || (fault == Cause.BUFFER_TOO_SMALL && !everydayCalls);
    double heat_kW = running && !toRooms && defrost_s <= 0 ? output_kW * factor() : 0;
    double capacity_kWh_per_K = volume_L * 1.16e-3;
    tank_C += (heat_kW + heater_kW) * step_s / 3600 / capacity_kWh_per_K;
    tank_C -= (tank_C - 20) * 0.0022 * step_s / 3600;
    double aim_K = running && !toRooms ? 0.9 : 0;
    charged_K += (aim_K - charged_K) * step_s / 240.0;
    draw_s -= step_s;
    if (draw_s <= 0 && hour > 6 && hour < 23) {
      double litres = one(4) ? between(20, 45) : between(2, 10);
      tank_C -= litres / volume_L * (tank_C - 11) * 0.9;
      draw_s = DAY_S * 0.7 * 13 / drawn_L * between(0.4, 1.6);
    }
  }

  private double factor() {
    return 1 - 0.1 * (tank_C - 45) / 15;
  }
}
