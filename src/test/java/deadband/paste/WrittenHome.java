package deadband.paste;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * A home with settings drawn at random, written by one of twelve people in their own words. The
 * words are those of this test, none are looked up in the vocabulary.
 */
final class WrittenHome {

  static final int WRITERS = 12;

  /** What a person writes of one value. */
  private record Line(String place, double value, String label, String unit, double written) {}

  private record Said(
      String place, String unit, double least, double step, int steps, List<String> names) {}

  private static Said said(
      String place, String unit, double least, double step, int steps, String... names) {
    return new Said(place, unit, least, step, steps, List.of(names));
  }

  private static final List<Said> ENGLISH =
      List.of(
          said(
              "/relay/start_kW",
              "kW",
              2.2,
              0.1,
              20,
              "relay start",
              "surplus relay starts at",
              "relay switch-on point"),
          said(
              "/relay/stop_kW",
              "kW",
              0.1,
              0.1,
              9,
              "relay stop",
              "surplus relay stops at",
              "relay switch-off point"),
          said(
              "/relay/startDelay_min",
              "min",
              2,
              1,
              9,
              "relay start delay",
              "relay on delay",
              "relay delay before start"),
          said(
              "/relay/stopDelay_min",
              "min",
              2,
              1,
              7,
              "relay stop delay",
              "relay off delay",
              "relay delay before stop"),
          said(
              "/tank/volume_L",
              "L",
              150,
              10,
              40,
              "tank volume",
              "cylinder size",
              "hot water tank volume"),
          said(
              "/tank/height_mm",
              "mm",
              1200,
              10,
              80,
              "tank height",
              "cylinder height",
              "height of the tank"),
          said(
              "/immersion/power_kW",
              "kW",
              2,
              0.1,
              12,
              "immersion heater power",
              "immersion",
              "immersion element rated power"),
          said(
              "/immersion/thermostat_C",
              "°C",
              60,
              1,
              8,
              "immersion thermostat",
              "immersion heater thermostat",
              "thermostat of the immersion"),
          said(
              "/diverter/limit_C",
              "°C",
              58,
              1,
              8,
              "diverter tank limit",
              "diverter limit",
              "PV diverter temperature limit"),
          said(
              "/diverter/hysteresis_K",
              "K",
              1,
              1,
              5,
              "diverter hysteresis",
              "hysteresis of the diverter",
              "PV diverter differential"),
          said(
              "/heatPump/hotWaterInput_kW",
              "kW",
              1.5,
              0.1,
              20,
              "heat pump power input",
              "heat pump electrical input on hot water",
              "HP draws"),
          said(
              "/heatPump/maximumFlow_C",
              "°C",
              58,
              1,
              15,
              "heat pump max flow temperature",
              "maximum flow temp of the heat pump",
              "HP max flow"),
          said(
              "/heatPump/minimumRun_min",
              "min",
              5,
              1,
              12,
              "heat pump minimum run time",
              "HP min run",
              "minimum run of the heat pump"),
          said(
              "/heatPump/everyday/start_C",
              "°C",
              42,
              1,
              8,
              "heat pump everyday start",
              "everyday hot water start temperature",
              "normal programme start"),
          said(
              "/heatPump/everyday/stop_C",
              "°C",
              51,
              1,
              5,
              "heat pump everyday stop",
              "everyday hot water stop temperature",
              "normal programme stop"),
          said(
              "/heatPump/surplus/stop_C",
              "°C",
              57,
              1,
              5,
              "heat pump surplus stop",
              "surplus programme stop temperature",
              "surplus hot water stop"),
          said("/solar/peak_kW", "kWp", 3, 0.5, 20, "PV peak power", "solar array", "PV"),
          said(
              "/solar/inverter_kW",
              "kW",
              3,
              0.5,
              12,
              "inverter",
              "solar inverter",
              "PV inverter rating"),
          said(
              "/house/baseLoad_kW",
              "kW",
              0.2,
              0.05,
              8,
              "base load",
              "house base load",
              "background load"),
          said(
              "/heatPump/disinfection/target_C",
              "°C",
              60,
              1,
              5,
              "legionella cycle target",
              "disinfection target temperature",
              "anti-legionella temperature"),
          said(
              "/heatPump/disinfection/every_days",
              "days",
              7,
              1,
              7,
              "legionella cycle every",
              "disinfection interval",
              "disinfection every"),
          said(
              "/tank/coil/area_m2",
              "m²",
              1.5,
              0.1,
              20,
              "coil area",
              "tank coil surface",
              "heat exchanger area"),
          said(
              "/immersion/circuit/breaker_A",
              "A",
              16,
              4,
              3,
              "immersion circuit breaker",
              "immersion breaker",
              "breaker for the immersion heater"),
          said(
              "/immersion/circuit/length_m",
              "m",
              6,
              1,
              20,
              "immersion cable length",
              "immersion circuit length",
              "length of the immersion cable"));

  private static final List<Said> GERMAN =
      List.of(
          said(
              "/relay/start_kW",
              "kW",
              2.2,
              0.1,
              20,
              "Einschaltschwelle Relais",
              "Relais Einschaltpunkt"),
          said(
              "/relay/stop_kW",
              "kW",
              0.1,
              0.1,
              9,
              "Ausschaltschwelle Relais",
              "Relais Ausschaltpunkt"),
          said(
              "/relay/startDelay_min",
              "Minuten",
              2,
              1,
              9,
              "Einschaltverzögerung Relais",
              "Relais Einschaltverzögerung"),
          said(
              "/tank/volume_L",
              "Liter",
              150,
              10,
              40,
              "Speichervolumen",
              "Inhalt Warmwasserspeicher"),
          said("/immersion/power_kW", "kW", 2, 0.1, 12, "Heizstab Leistung", "Heizstab"),
          said(
              "/heatPump/hotWaterInput_kW",
              "kW",
              1.5,
              0.1,
              20,
              "Leistungsaufnahme Wärmepumpe",
              "Wärmepumpe Leistungsaufnahme"),
          said(
              "/heatPump/minimumRun_min",
              "Minuten",
              5,
              1,
              12,
              "Mindestlaufzeit Wärmepumpe",
              "Mindestlaufzeit"),
          said(
              "/heatPump/maximumFlow_C",
              "°C",
              58,
              1,
              12,
              "maximale Vorlauftemperatur",
              "Vorlauftemperatur maximal"),
          said("/solar/peak_kW", "kWp", 3, 0.5, 20, "Photovoltaik", "PV-Anlage"),
          said("/solar/inverter_kW", "kW", 3, 0.5, 12, "Wechselrichter", "PV Wechselrichter"),
          said("/house/baseLoad_kW", "kW", 0.2, 0.05, 8, "Grundlast", "Grundlast Haus"));

  private static final List<Said> DUTCH =
      List.of(
          said(
              "/relay/start_kW",
              "kW",
              2.2,
              0.1,
              20,
              "relais inschakelwaarde",
              "inschakeldrempel relais"),
          said(
              "/relay/stop_kW",
              "kW",
              0.1,
              0.1,
              9,
              "relais uitschakelwaarde",
              "uitschakeldrempel relais"),
          said(
              "/relay/startDelay_min",
              "minuten",
              2,
              1,
              9,
              "inschakelvertraging relais",
              "relais inschakelvertraging"),
          said("/tank/volume_L", "liter", 150, 10, 40, "inhoud boilervat", "boilervat"),
          said(
              "/immersion/power_kW",
              "kW",
              2,
              0.1,
              12,
              "elektrisch verwarmingselement",
              "verwarmingselement vermogen"),
          said(
              "/heatPump/hotWaterInput_kW",
              "kW",
              1.5,
              0.1,
              20,
              "warmtepomp opgenomen vermogen",
              "opgenomen vermogen van de warmtepomp"),
          said(
              "/heatPump/minimumRun_min",
              "minuten",
              5,
              1,
              12,
              "minimale looptijd warmtepomp",
              "minimale draaitijd"),
          said("/solar/peak_kW", "kWp", 3, 0.5, 20, "zonnepanelen", "PV-installatie"),
          said("/solar/inverter_kW", "kW", 3, 0.5, 12, "omvormer", "omvormer vermogen"));

  private static final List<Said> FRENCH =
      List.of(
          said(
              "/relay/start_kW",
              "kW",
              2.2,
              0.1,
              20,
              "seuil d'enclenchement du relais",
              "relais, seuil d’enclenchement"),
          said(
              "/relay/stop_kW",
              "kW",
              0.1,
              0.1,
              9,
              "seuil d'arrêt du relais",
              "relais, seuil d’arrêt"),
          said(
              "/relay/startDelay_min",
              "minutes",
              2,
              1,
              9,
              "temporisation d'enclenchement du relais",
              "délai d'enclenchement du relais"),
          said("/tank/volume_L", "litres", 150, 10, 40, "volume du ballon", "ballon d'eau chaude"),
          said(
              "/immersion/power_kW",
              "kW",
              2,
              0.1,
              12,
              "thermoplongeur",
              "puissance du thermoplongeur"),
          said(
              "/heatPump/hotWaterInput_kW",
              "kW",
              1.5,
              0.1,
              20,
              "puissance absorbée de la pompe à chaleur",
              "PAC, puissance absorbée"),
          said(
              "/heatPump/maximumFlow_C",
              "°C",
              58,
              1,
              12,
              "température de départ maximale",
              "départ maximal de la PAC"),
          said("/solar/inverter_kW", "kW", 3, 0.5, 12, "onduleur", "puissance de l'onduleur"));

  private final Random random;
  private final Map<String, BigDecimal> values = new TreeMap<>();
  private final StringBuilder text = new StringBuilder();

  private WrittenHome(long seed) {
    this.random = new Random(seed);
  }

  /** The text of one writer about one home. */
  static WrittenHome of(int writer, int home) {
    WrittenHome written = new WrittenHome(1000L * writer + home);
    written.write(writer);
    return written;
  }

  String text() {
    return text.toString();
  }

  /** What it says, by place. */
  Map<String, BigDecimal> values() {
    return values;
  }

  private void write(int writer) {
    switch (writer) {
      case 0 -> lines(ENGLISH, "%s: %s %s%n", false);
      case 1 -> lines(ENGLISH, "%s\t%s\t%s%n", false);
      case 2 -> lines(ENGLISH, "%s;%s;%s%n", true);
      case 3 -> {
        text.append("| Setting | Value |\n|---|---|\n");
        lines(ENGLISH, "| %s | %s %s |%n", false);
      }
      case 4 -> {
        text.append("> Hello,\n> see below what I noted:\n>\n");
        lines(ENGLISH, "> - %s = %s%s%n", false);
      }
      case 5 -> lower();
      case 6 -> otherUnits();
      case 7 -> sentence();
      case 8 -> lines(GERMAN, "%s: %s %s%n", true);
      case 9 -> lines(DUTCH, "- %s %s %s%n", true);
      case 10 -> lines(FRENCH, "%s : %s\u00a0%s%n", true);
      default -> html();
    }
  }

  private List<Line> drawn(List<Said> all) {
    List<Line> lines = new ArrayList<>();
    for (Said said : all) {
      if (random.nextInt(4) == 0) {
        continue;
      }
      double value = said.least() + said.step() * random.nextInt(said.steps());
      String name = said.names().get(random.nextInt(said.names().size()));
      lines.add(new Line(said.place(), value, name, said.unit(), value));
      values.put(said.place(), decimal(value));
    }
    return lines;
  }

  private static BigDecimal decimal(double value) {
    return BigDecimal.valueOf(Math.round(value * 1000)).movePointLeft(3).stripTrailingZeros();
  }

  private void lines(List<Said> all, String form, boolean comma) {
    for (Line line : drawn(all)) {
      text.append(
          String.format(
              Locale.ROOT, form, line.label(), number(line.written(), comma), line.unit()));
    }
  }

  private static String number(double value, boolean comma) {
    String digits = decimal(value).toPlainString();
    return comma ? digits.replace('.', ',') : digits;
  }

  private void lower() {
    for (Line line : drawn(ENGLISH)) {
      text.append(line.label().toLowerCase(Locale.ROOT)).append(' ');
      text.append(number(line.written(), false)).append(line.unit()).append('\n');
    }
  }

  /** Watts, seconds, centimetres. */
  private void otherUnits() {
    for (Line line : drawn(ENGLISH)) {
      boolean watts = line.unit().equals("kW");
      boolean seconds = line.unit().equals("min");
      boolean cm = line.unit().equals("mm");
      double factor = watts ? 1000 : seconds ? 60 : cm ? 0.1 : 1;
      String unit = watts ? "W" : seconds ? "s" : cm ? "cm" : line.unit();
      text.append(line.label()).append(": ").append(number(line.value() * factor, false));
      text.append(' ').append(unit).append('\n');
    }
  }

  private void sentence() {
    text.append("Good morning, ");
    int count = 0;
    for (Line line : drawn(ENGLISH)) {
      text.append(count == 0 ? "" : count % 4 == 0 ? ".\n" : ", ");
      text.append("the ")
          .append(line.label())
          .append(line.label().matches(".*( at|draws|every)") ? " " : " is ");
      text.append(number(line.written(), false)).append(' ').append(line.unit());
      count++;
    }
    text.append(".\nKind regards\n");
  }

  private void html() {
    for (Line line : drawn(ENGLISH)) {
      text.append("<tr><td>").append(line.label()).append("</td><td>");
      text.append(number(line.written(), false)).append("&nbsp;");
      text.append(line.unit().replace("°", "&deg;")).append("</td></tr>\n");
    }
  }
}
