package deadband.diagnosis;

import deadband.meterlog.Column;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import deadband.reading.LogOptions;
import deadband.reading.LogReading;
import deadband.reading.SetupReading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Writes the sample logs: for each cause a {@link GeneratedHome} of a seed, its settings as a text
 * and a day of its meters, in the forms in which meters write. Of the seeds from 1 on it takes the
 * first whose day shows the fault clearly: a sample shows what a story looks like, not how often it
 * is right.
 */
final class SampleLogs {

  private static final int DAY = 1440;
  private static final double CLEAR = 0.92;

  private static final List<String> NAMES =
      List.of(
          "Ashmoor",
          "Birch Row",
          "Coldbrook",
          "Dunnock House",
          "Elderfield",
          "Ferncombe",
          "Gorse End",
          "Hazel Mews",
          "Ivy Bank",
          "Juniper Lane",
          "Kestrel Yard",
          "Larch Close",
          "Medlar Cottage",
          "Nettlebed",
          "Osier Farm",
          "Plover Green",
          "Quince Court",
          "Rowan Hill",
          "Sorrel Bridge");

  private SampleLogs() {}

  /** Writes into a folder all, or that of one cause. */
  public static void main(String[] folder) throws IOException {
    Path logs = Files.createDirectories(Path.of(folder[0]));
    List<Cause> causes = List.of(Cause.values());
    for (int index = 0; index < causes.size(); index++) {
      if (folder.length == 1 || causes.get(index).word().equals(folder[1])) {
        write(logs, causes.get(index), index);
      }
    }
  }

  private static void write(Path logs, Cause cause, int index) throws IOException {
    for (long seed = 1; seed < 400; seed++) {
      GeneratedHome home = GeneratedHome.of(cause, seed, 60);
      MeterLog all = home.log();
      int first = seed % 2 == 0 ? 0 : Math.min(all.rows() - DAY, DAY);
      MeterLog day = all.part(first, Math.min(all.rows(), first + DAY));
      Path text = logs.resolve(cause.word() + ".txt");
      Path csv = logs.resolve(cause.word() + ".csv");
      Files.writeString(text, home.pasted(NAMES.get(index)));
      Files.writeString(csv, csv(day, Form.values()[index % Form.values().length]));
      Diagnosis diagnosis =
          Diagnosis.of(
              Optional.of(((SetupReading.Read) SetupReading.ofFile(text)).setup()),
              Optional.of(((LogReading.Read) LogReading.ofFile(csv, LogOptions.none())).log()),
              ObservedWords.of(""));
      Ranked likeliest = diagnosis.causes().isEmpty() ? null : diagnosis.causes().get(0);
      if (likeliest != null
          && likeliest.causes().equals(List.of(cause))
          && likeliest.likelihood() > CLEAR
          && diagnosis.fits()
          && diagnosis.cycles().count() >= 3) {
        System.out.println(cause.word() + ": seed " + seed);
        return;
      }
    }
    System.out.println(cause.word() + ": no seed shows it");
  }

  /** How a meter writes. */
  private enum Form {
    PLAIN(",", "yyyy-MM-dd'T'HH:mm:ss", '.', 1000, "W"),
    CONTINENTAL(";", "dd/MM/yyyy HH:mm", ',', 1, "kW"),
    EPOCH(",", "", '.', 1000, "W");

    private final String between;
    private final String clock;
    private final char point;
    private final int factor;
    private final String unit;

    Form(String between, String clock, char point, int factor, String unit) {
      this.between = between;
      this.clock = clock;
      this.point = point;
      this.factor = factor;
      this.unit = unit;
    }

    String time(MeterLog log, int row) {
      return clock.isEmpty()
          ? Long.toString(log.at_s(row))
          : log.clock(row).format(DateTimeFormatter.ofPattern(clock, Locale.ROOT));
    }

    String value(double value, boolean power) {
      if (Double.isNaN(value)) {
        return "";
      }
      String format = power ? (factor == 1 ? "%.3f" : "%.0f") : "%.1f";
      double shown = (power ? factor * value : value) + 0.0;
      return String.format(Locale.ROOT, format, shown).replace('.', point);
    }
  }

  private static String csv(MeterLog log, Form form) {
    StringBuilder csv = new StringBuilder(form == Form.EPOCH ? "timestamp" : "time");
    for (Column column : log.columns()) {
      boolean tank = column.meaning() == Meaning.TANK;
      csv.append(form.between).append(name(column)).append(tank ? " (°C)" : " (" + form.unit + ")");
    }
    csv.append('\n');
    for (int row = 0; row < log.rows(); row++) {
      csv.append(form.time(log, row));
      for (Column column : log.columns()) {
        csv.append(form.between)
            .append(form.value(column.value(row), column.meaning() != Meaning.TANK));
      }
      csv.append('\n');
    }
    return csv.toString();
  }

  private static String name(Column column) {
    return column.meaning().word().replace('-', ' ');
  }
}
