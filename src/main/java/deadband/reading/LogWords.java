package deadband.reading;

import deadband.meterlog.Heading;
import deadband.meterlog.LogUnit;
import deadband.meterlog.Meaning;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the words of a header mean, in English, German, Dutch and French. */
final class LogWords {

  private static final Pattern UNIT =
      Pattern.compile(
          "(?<![a-zA-Z])(kWh|Wh|kW|W|°C|°F|degC|C|F)(?![a-zA-Z])", Pattern.CASE_INSENSITIVE);

  private static final Pattern TIME =
      Pattern.compile(
          "\\b(time|timestamp|datetime|date|zeit|zeitpunkt|zeitstempel|datum|uhrzeit|tijd|tijdstip"
              + "|heure|horodate|horodatage|start|begin|beginn|from|von|van|day|epoch)\\b");

  private static final Pattern TIME_END = Pattern.compile("\\b(end|ende|until|bis|tot|fin)\\b");

  private static final Pattern METER =
      Pattern.compile(
          "id|(meter|entity|device|sensor|channel|register|point|tag|kanal|messstelle|zähler)( id| name)?"
              + "|name|mpan|series|topic");

  private static final Pattern UNITS =
      Pattern.compile("unit|units|einheit|eenheid|unité|unit of .*");

  /** In the order in which they are tried: a heat pump's import is the heat pump's. */
  private static final Map<Meaning, Pattern> MEANINGS = meanings();

  private LogWords() {}

  private static Map<Meaning, Pattern> meanings() {
    Map<Meaning, Pattern> all = new LinkedHashMap<>();
    List.of(
            words(Meaning.CALL, "relay", "relais", "call", "contact", "sg ready"),
            words(
                Meaning.HEAT_PUMP,
                "heat ?pump",
                "hp",
                "ashp",
                "gshp",
                "compressor",
                "wärmepumpe\\w*",
                "waermepumpe\\w*",
                "wp",
                "warmtepomp",
                "pac",
                "pompe à chaleur"),
            words(
                Meaning.IMMERSION,
                "immersion",
                "element",
                "heater",
                "heizstab\\w*",
                "diverter",
                "diverted",
                "boiler",
                "résistance"),
            words(Meaning.VEHICLE, "ev", "car", "vehicle", "charger", "ladestation", "laadpaal"),
            words(Meaning.BATTERY, "battery", "batterie\\w*", "akku\\w*", "accu", "batt"),
            words(
                Meaning.EXPORT,
                "export",
                "exported",
                "feed ?in",
                "fed in",
                "\\w*einspeis\\w*",
                "2 8 0",
                "returned",
                "teruglevering",
                "injection"),
            words(
                Meaning.IMPORT,
                "import",
                "imported",
                "bezug",
                "netzbezug\\w*",
                "1 8 0",
                "from grid",
                "delivered",
                "afname",
                "soutirage"),
            words(Meaning.SURPLUS, "surplus", "überschuss\\w*", "overschot", "excess"),
            words(
                Meaning.PV,
                "pv",
                "solar",
                "photovoltaic",
                "inverter",
                "generation",
                "production",
                "\\w*erzeugung\\w*",
                "wechselrichter",
                "zonnepanelen",
                "opwek",
                "solaire"),
            words(
                Meaning.GRID,
                "grid",
                "net",
                "mains",
                "netz\\w*",
                "supply",
                "réseau",
                "smart ?meter"),
            words(
                Meaning.HOUSE,
                "house",
                "home",
                "household",
                "load",
                "consumption",
                "haus",
                "haus\\w*",
                "\\w*verbrauch",
                "huis",
                "verbruik",
                "usage",
                "maison",
                "consommation"))
        .forEach(all::putAll);
    return all;
  }

  private static Map<Meaning, Pattern> words(Meaning meaning, String... words) {
    return Map.of(meaning, compiled("\\b(" + String.join("|", words) + ")\\b"));
  }

  private static Pattern compiled(String words) {
    return Pattern.compile(words, Pattern.UNICODE_CHARACTER_CLASS);
  }

  /** Lower case, marks as blanks: {@code heatPump_kW} becomes {@code heat pump kw}. */
  static String plain(String header) {
    return header
        .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
        .replaceAll("[_()\\[\\]/.:,-]+", " ")
        .strip()
        .toLowerCase(Locale.ROOT);
  }

  static boolean isTime(String header) {
    return TIME.matcher(plain(header)).find() && unit(header) == LogUnit.NONE;
  }

  static boolean isEndOfInterval(String header) {
    return TIME_END.matcher(plain(header)).find();
  }

  static boolean isMeter(String header) {
    return METER.matcher(plain(header)).matches();
  }

  /** Whether a column gives the unit of each row. */
  static boolean isUnits(String header) {
    return UNITS.matcher(plain(header)).matches();
  }

  static LogUnit unit(String header) {
    LogUnit found = LogUnit.NONE;
    Matcher units = UNIT.matcher(header.replace('_', ' '));
    while (units.find()) {
      found = unitOf(units.group(1));
    }
    return found;
  }

  private static LogUnit unitOf(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "kwh" -> LogUnit.KWH;
      case "wh" -> LogUnit.WH;
      case "kw" -> LogUnit.KW;
      case "w" -> LogUnit.W;
      case "°f", "f" -> LogUnit.F;
      default -> LogUnit.C;
    };
  }

  static boolean isUnit(String cell) {
    return UNIT.matcher(cell.replaceAll("[\\[\\]()]", "").strip()).matches();
  }

  /** What a header means. */
  static Heading heading(String header, LogOptions options) {
    LogUnit unit = unit(header);
    Meaning said = options.meanings().get(header);
    if (said != null) {
      return new Heading(header, said, unit, "as said");
    }
    String plain = plain(header);
    if (unit == LogUnit.C
        || unit == LogUnit.F
        || plain.matches(".*(\\b(temp|temperature|tmp)|temperatur)\\b.*")) {
      return temperature(header, plain, unit == LogUnit.NONE ? LogUnit.C : unit);
    }
    return new Heading(header, meaning(plain), unit, "by its name");
  }

  /** The meaning of words in a header, of a meter's or a file's name. */
  static Meaning meaning(String plain) {
    return MEANINGS.entrySet().stream()
        .filter(words -> words.getValue().matcher(plain).find())
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(Meaning.UNKNOWN);
  }

  private static Heading temperature(String header, String plain, LogUnit unit) {
    Meaning meaning = Meaning.UNKNOWN;
    if (plain.matches(
        ".*\\b(tank|cylinder|dhw|hot water|store|speicher\\S*|warmwasser\\S*|boiler|ballon)\\b.*")) {
      meaning = Meaning.TANK;
    } else if (plain.matches(".*\\b(flow|vorlauf\\S*|supply|aanvoer)\\b.*")) {
      meaning = Meaning.FLOW;
    } else if (plain.matches(
        ".*\\b(outdoor|outside|ambient|außen\\S*|aussen\\S*|buiten\\S*|air)\\b.*")) {
      meaning = Meaning.OUTDOOR;
    }
    return new Heading(header, meaning, unit, "by its name");
  }
}
