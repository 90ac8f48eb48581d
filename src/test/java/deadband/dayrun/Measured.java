package deadband.dayrun;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The measured series, where the data folder is there; where it is not, the test says so. */
final class Measured {
  private static final int MINUTES_PER_DAY = 1440;

  private Measured() {}

  /** The rows of a file as cells, the header left out. */
  static List<String[]> rows(String file) {
    @Nullable String folder = System.getProperty("deadband.data");
    assumeTrue(
        folder != null && !folder.isBlank() && Files.isDirectory(Path.of(folder)),
        "skipped: set -Ddeadband.data to the folder of measured data");
    try {
      return Files.readAllLines(Path.of(folder, file)).stream()
          .skip(1)
          .map(line -> line.split(",", -1))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Global irradiance of one day, minute by minute [W/m²]. */
  static double[] irradiance_W_per_m2(String day) {
    return rows(day + ".csv").stream().mapToDouble(row -> Double.parseDouble(row[1])).toArray();
  }

  /** AC power of the two measured days in one go, minute by minute from 04:33 [kW]. */
  static double[] pv_kW() {
    return rows("pv_ac_1min_2022-03-18_19.csv").stream()
        .mapToDouble(row -> Math.max(0, Double.parseDouble(row[1]) / 1000))
        .toArray();
  }

  /** A year of draw-off, minute by minute [L]. */
  static double[] draw_L() {
    double[] draw_L = new double[365 * MINUTES_PER_DAY];
    for (String[] row : rows("dhw_200L_per_day_1min.csv")) {
      draw_L[Integer.parseInt(row[0])] += Double.parseDouble(row[1]) / 60;
    }
    return draw_L;
  }
}
