package deadband.paste;

import deadband.setup.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A unit as people write it. One way of writing can mean several units ({@code °} a temperature or
 * an angle, {@code m} a length); the value it is written for decides.
 *
 * @param written how it is written
 * @param exact whether capitals matter
 * @param ways the units of a setup that it can stand for
 */
record UnitWord(String written, boolean exact, List<Way> ways) {

  /**
   * From a number as written to a unit of the setup: {@code (number + shift) × factor}.
   *
   * @param shift added first, for degrees Fahrenheit
   */
  record Way(Unit unit, BigDecimal factor, BigDecimal shift) {
    BigDecimal of(BigDecimal number) {
      return number.add(shift).multiply(factor, MathContext.DECIMAL64);
    }
  }

  private static final BigDecimal FIVE_NINTHS =
      BigDecimal.valueOf(5).divide(BigDecimal.valueOf(9), MathContext.DECIMAL64);

  private static final Map<String, UnitWord> ALL = all();

  /** Longest first, each with what may not follow it. */
  static final Pattern PATTERN =
      Pattern.compile(
          ALL.keySet().stream()
              .sorted(Comparator.comparing(String::length).reversed())
              .map(Pattern::quote)
              .collect(Collectors.joining("|", "(?:", ")(?![\\p{L}\\p{N}/²³^])")),
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  /** The unit written this way. */
  static Optional<UnitWord> of(String written) {
    UnitWord same = ALL.get(written);
    if (same != null) {
      return Optional.of(same);
    }
    return Optional.ofNullable(ALL.get(written.toLowerCase(Locale.ROOT)))
        .filter(unit -> !unit.exact());
  }

  /** The way that leads to a unit. */
  Optional<Way> to(Unit unit) {
    return ways.stream().filter(way -> way.unit() == unit).findFirst();
  }

  boolean isPeakPower() {
    return written.equals("kwp") || written.equals("kwc") || written.equals("wp");
  }

  /** The ways of writing a unit that a number without one may have been meant in. */
  static List<UnitWord> meantFor(Unit unit) {
    List<String> usual =
        switch (unit) {
          case KILOWATT -> List.of("kw", "watt");
          case KILOWATT_HOUR -> List.of("kwh", "wh");
          case CELSIUS -> List.of("°c", "°f");
          case MINUTE -> List.of("min", "sec", "hours");
          case MILLIMETRE -> List.of("mm", "cm", "metre");
          case METRE -> List.of("metre");
          default -> List.of();
        };
    return usual.stream().map(word -> ALL.get(word)).toList();
  }

  private static Map<String, UnitWord> all() {
    Map<String, UnitWord> all = new LinkedHashMap<>();
    put(
        all,
        Unit.KILOWATT,
        "1",
        "kw",
        "kwp",
        "kwc",
        "kilowatt",
        "kilowatts",
        "kw el",
        "kw elec",
        "kw_e");
    put(all, Unit.KILOWATT, "0.001", "watt", "watts", "wp");
    exact(all, Unit.KILOWATT, "0.001", "W", "w");
    put(all, Unit.KILOWATT_HOUR, "1", "kwh", "kilowatt hours");
    put(all, Unit.KILOWATT_HOUR, "0.001", "wh");
    put(
        all,
        Unit.KILOWATT_HOUR_A_DAY,
        "1",
        "kwh/day",
        "kwh/d",
        "kwh/24h",
        "kwh/24 h",
        "kwh per day",
        "kwh a day",
        "kwh in 24 h",
        "kwh/tag",
        "kwh pro tag",
        "kwh/dag",
        "kwh per dag",
        "kwh/jour",
        "kwh par jour",
        "kwh per 24 h",
        "kwh_per_day",
        "kwh in 24h",
        "kwh per 24h",
        "kwh/j",
        "kwh / day",
        "kwh / 24 h",
        "kwh / 24h");
    put(
        all,
        Unit.CELSIUS,
        "1",
        "°c",
        "° c",
        "degc",
        "deg c",
        "celsius",
        "degrees c",
        "degrees celsius",
        "deg",
        "degrees",
        "degree",
        "grad",
        "graden",
        "degrés",
        "°",
        "ºc",
        "º",
        "grad celsius",
        "graden c",
        "c°");
    exact(all, Unit.CELSIUS, "1", "C");
    fahrenheit(all, "°f", "° f", "degf", "deg f", "fahrenheit", "degrees f", "degrees fahrenheit");
    fahrenheit(all, "F");
    put(all, Unit.KELVIN, "1", "kelvin");
    exact(all, Unit.KELVIN, "1", "K");
    put(
        all,
        Unit.MINUTE,
        "1",
        "min",
        "mins",
        "min.",
        "minute",
        "minutes",
        "minuten",
        "minuut",
        "mn");
    put(
        all,
        Unit.MINUTE,
        "0.0166666666666666667",
        "sec",
        "secs",
        "second",
        "seconds",
        "sek",
        "sekunden",
        "seconden",
        "seconde",
        "secondes",
        "sec.",
        "sek.");
    exact(all, Unit.MINUTE, "0.0166666666666666667", "s");
    put(
        all,
        Unit.MINUTE,
        "60",
        "hr",
        "hrs",
        "hour",
        "hours",
        "std",
        "stunden",
        "stunde",
        "uur",
        "heure",
        "heures",
        "std.");
    exact(all, Unit.MINUTE, "60", "h");
    put(all, Unit.DAY, "1", "day", "days", "tage", "tag", "tagen", "dag", "dagen", "jour", "jours");
    exact(all, Unit.DAY, "1", "d");
    put(all, Unit.DAY, "7", "week", "weeks", "wochen", "woche", "weken", "semaine", "semaines");
    put(all, Unit.MILLIMETRE, "1", "mm", "millimetre", "millimetres", "millimeter");
    put(all, Unit.MILLIMETRE, "10", "cm", "centimetre", "centimetres");
    put(all, Unit.MILLIMETRE, "1000", "metre", "metres", "meter", "meters", "mètre", "mètres");
    exact(all, Unit.MILLIMETRE, "1000", "m");
    put(all, Unit.MILLIMETRE, "25.4", "inch", "inches");
    put(
        all,
        Unit.SQUARE_MILLIMETRE,
        "1",
        "mm²",
        "mm2",
        "mm^2",
        "sqmm",
        "sq mm",
        "square mm",
        "qmm",
        "mm sq",
        "mmq",
        "millimetres squared",
        "square millimetres");
    put(
        all,
        Unit.SQUARE_METRE,
        "1",
        "m²",
        "m2",
        "m^2",
        "sqm",
        "sq m",
        "qm",
        "square metres",
        "square metre",
        "m sq");
    put(
        all,
        Unit.LITRE,
        "1",
        "l",
        "lt",
        "ltr",
        "ltrs",
        "litre",
        "litres",
        "liter",
        "liters",
        "liters.",
        "lit");
    put(all, Unit.LITRE, "1000", "m³", "m3");
    exact(all, Unit.AMPERE, "1", "A");
    put(all, Unit.AMPERE, "1", "amp", "amps", "ampere", "amperes", "ampère");
    exact(all, Unit.VOLT, "1", "V", "v");
    put(all, Unit.VOLT, "1", "volt", "volts");
    put(all, Unit.OHM, "1", "ohm", "ohms", "ω", "Ω", "Ω");
    put(all, Unit.OHM, "1000", "kohm", "kω", "kΩ", "kiloohm");
    also(all, Unit.METRE, "1", "metre", "metres", "meter", "meters", "mètre", "mètres", "m");
    also(all, Unit.METRE, "0.01", "cm");
    // as the trade says it of a cable
    also(all, Unit.SQUARE_MILLIMETRE, "1", "mm");
    also(all, Unit.DEGREE, "1", "°", "deg", "degrees", "degree", "grad", "graden", "degrés", "º");
    for (String celsius :
        List.of(
            "°c",
            "° c",
            "deg c",
            "degc",
            "celsius",
            "degrees c",
            "degrees",
            "deg",
            "degree",
            "grad",
            "graden",
            "degrés",
            "°",
            "C",
            "degrees celsius",
            "ºc",
            "º")) {
      also(all, Unit.KELVIN, "1", celsius);
    }
    also(all, Unit.DAY, "0.0416666666666666667", "hours", "h", "hour", "stunden", "uur", "heures");
    return all;
  }

  private static void put(Map<String, UnitWord> all, Unit unit, String factor, String... written) {
    for (String word : written) {
      all.put(word, new UnitWord(word, false, List.of(way(unit, factor))));
    }
  }

  private static void exact(
      Map<String, UnitWord> all, Unit unit, String factor, String... written) {
    for (String word : written) {
      all.put(word, new UnitWord(word, true, List.of(way(unit, factor))));
    }
  }

  private static void fahrenheit(Map<String, UnitWord> all, String... written) {
    for (String word : written) {
      Way degree = new Way(Unit.CELSIUS, FIVE_NINTHS, BigDecimal.valueOf(-32));
      Way difference = new Way(Unit.KELVIN, FIVE_NINTHS, BigDecimal.ZERO);
      all.put(word, new UnitWord(word, word.length() == 1, List.of(degree, difference)));
    }
  }

  private static void also(Map<String, UnitWord> all, Unit unit, String factor, String... written) {
    for (String word : written) {
      UnitWord known = all.get(word);
      if (known != null) {
        List<Way> ways = new ArrayList<>(known.ways());
        ways.add(way(unit, factor));
        all.put(word, new UnitWord(word, known.exact(), List.copyOf(ways)));
      }
    }
  }

  private static Way way(Unit unit, @Nullable String factor) {
    return new Way(unit, new BigDecimal(factor), BigDecimal.ZERO);
  }
}
