package deadband.reading;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.meterlog.Assembly;
import deadband.meterlog.Heading;
import deadband.meterlog.LogUnit;
import deadband.meterlog.Meaning;
import deadband.meterlog.Readings;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A log of DSMR P1 telegrams (also of the Belgian and Luxembourg ports): time 0-0:1.0.0, power to
 * the home 1-0:1.7.0, from it 1-0:2.7.0, in kW.
 *
 * <p>A time ends in S or W, summer or winter time: UTC+2 or UTC+1. A telegram whose line is torn is
 * left out.
 */
final class Telegrams {

  private static final Pattern LINE =
      Pattern.compile("(\\d-\\d:\\d+\\.\\d+\\.\\d+)\\(([0-9.]+)([SW]|\\*kW)\\)");

  private final String name;
  private final Readings readings;
  private long time_s = Long.MIN_VALUE;
  private int clock_s;
  private double in_kW = Double.NaN;
  private double out_kW = Double.NaN;
  private int torn;

  Telegrams(String name, LogOptions options) {
    this.name = name;
    this.readings =
        new Readings(
            name,
            List.of(
                heading("1-0:1.7.0", Meaning.IMPORT, options),
                heading("1-0:2.7.0", Meaning.EXPORT, options)),
            false,
            true);
  }

  private static Heading heading(String code, Meaning usual, LogOptions options) {
    return new Heading(
        code, options.meanings().getOrDefault(code, usual), LogUnit.KW, "by its OBIS code");
  }

  /** Whether a text begins as a telegram does. */
  static boolean begin(String start) {
    return start.startsWith("/") && start.lines().limit(40).anyMatch(l -> LINE.matcher(l).find());
  }

  LogReading read(InputStream in) throws IOException {
    BufferedReader lines =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.ISO_8859_1));
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      if (line.startsWith("/")) {
        keep();
      } else {
        take(line);
      }
    }
    keep();
    if (readings.rows() < 2) {
      return LogReading.unreadable(
          Problem.of(
              Source.named(name),
              Kind.MISSING,
              readings.rows() + " whole telegrams",
              "two telegrams or more, each with 0-0:1.0.0 and 1-0:1.7.0"));
    }
    List<String> skipped = torn == 0 ? List.of() : List.of(torn + " incomplete telegrams left out");
    return new LogReading.Read(name, Assembly.of(readings), skipped);
  }

  private void take(String line) {
    Matcher found = LINE.matcher(line);
    if (!found.lookingAt()) {
      return;
    }
    String value = found.group(2);
    switch (found.group(1)) {
      case "0-0:1.0.0" -> time(value, found.group(3));
      case "1-0:1.7.0" -> in_kW = power(value);
      case "1-0:2.7.0" -> out_kW = power(value);
      default -> {}
    }
  }

  private static double power(String value) {
    try {
      return Double.parseDouble(value);
    } catch (NumberFormatException torn) {
      return Double.NaN;
    }
  }

  private void time(String digits, String season) {
    LogClock clock = new LogClock();
    if (digits.length() == 12 && clock.take("20" + digits)) {
      clock_s = season.equals("S") ? 7200 : 3600;
      time_s = clock.instant_s() - clock_s;
    }
  }

  private void keep() {
    boolean any = time_s != Long.MIN_VALUE || !Double.isNaN(in_kW);
    if (time_s != Long.MIN_VALUE && !Double.isNaN(in_kW)) {
      readings.add(time_s, clock_s, new double[] {in_kW, out_kW});
    } else if (any) {
      torn++;
    }
    time_s = Long.MIN_VALUE;
    in_kW = Double.NaN;
    out_kW = Double.NaN;
  }
}
