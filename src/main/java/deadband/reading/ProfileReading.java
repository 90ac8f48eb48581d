package deadband.reading;

import deadband.dayrun.Profile;
import deadband.document.Problem;
import deadband.document.Source;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntToDoubleFunction;

/**
 * A day file, read or not: a CSV whose first row names its columns by quantity and unit.
 *
 * <pre>
 * # Wednesday, from the grid meter's log
 * time,surplus_kW,draw_L
 * 07:00,-0.41,0
 * 07:01,-0.41,8.2
 * </pre>
 *
 * <p>Columns {@code time}, {@code pv_kW}, {@code house_kW}, {@code surplus_kW} (each power also
 * {@code _W}) and {@code draw_L}, in any order and mix; where the surplus is entered, sun and house
 * are taken as in it and may not stand beside it. A time is that at which its step begins: HH:MM,
 * HH:MM:SS, or ISO 8601 with or without offset, all of one kind. With an offset the steps follow
 * the instants, and the first row's clock is that of the run. Steps are regular and divide an hour.
 * Columns are parted by comma, semicolon or tab; beside the latter two, decimals may have a comma.
 * Blank rows and rows that begin with # are passed over.
 *
 * <p>Whatever the bytes are, the outcome is one of the two; nothing is thrown.
 *
 * <pre>{@code
 * if (ProfileReading.ofFile(path) instanceof ProfileReading.Read read) {
 *   Profile profile = read.completedBy(surroundings.clear(date).profile());
 * }
 * }</pre>
 */
public sealed interface ProfileReading {

  /** The most a day file may hold: 64 MiB, three times what a year of minutes needs. */
  int MOST_BYTES = 64 * 1024 * 1024;

  /** The name under which the file is reported. */
  String name();

  /** What a day file may tell. */
  enum Column {
    PV("pv_kW"),
    HOUSE("house_kW"),
    SURPLUS("surplus_kW"),
    DRAW("draw_L");

    private final String header;

    Column(String header) {
      this.header = header;
    }

    /** Its name in a day file. */
    public String header() {
      return header;
    }
  }

  /**
   * A profile; what the file does not tell is zero in it.
   *
   * @param entered what the file gives, in the order of {@link Column}
   * @param filled steps in which something was missing and was filled
   */
  record Read(String name, Profile profile, Set<Column> entered, int filled)
      implements ProfileReading {

    public Read {
      entered = Collections.unmodifiableSet(EnumSet.copyOf(entered));
    }

    /**
     * The profile, with what the file does not tell taken by the clock from a day that does, such
     * as a built-in one; where the surplus is entered, sun and house stay as in it.
     *
     * @throws IllegalArgumentException where that is not one whole day from midnight
     */
    public Profile completedBy(Profile day) {
      Profile other = day.over(profile.step(), profile.start_s(), profile.length());
      double[] draw_L = values((entered.contains(Column.DRAW) ? profile : other)::draw_L);
      if (entered.contains(Column.SURPLUS)) {
        double[] surplus_kW = values(at -> profile.pv_kW(at) - profile.house_kW(at));
        return Profile.ofSurplus(profile.step(), profile.start_s(), surplus_kW, draw_L);
      }
      double[] pv_kW = values((entered.contains(Column.PV) ? profile : other)::pv_kW);
      double[] house_kW = values((entered.contains(Column.HOUSE) ? profile : other)::house_kW);
      return Profile.of(profile.step(), profile.start_s(), pv_kW, house_kW, draw_L);
    }

    private double[] values(IntToDoubleFunction column) {
      double[] values = new double[profile.length()];
      Arrays.setAll(values, column);
      return values;
    }
  }

  /**
   * A file that cannot be run.
   *
   * @param problems at least one, in the order of the file
   */
  record Unreadable(String name, List<Problem> problems) implements ProfileReading {

    public Unreadable {
      problems = List.copyOf(problems);
    }
  }

  /** Reads a file; gaps in it are refused. */
  static ProfileReading ofFile(Path path) {
    return ofFile(path, Gaps.refused());
  }

  static ProfileReading ofFile(Path path, Gaps gaps) {
    return of(Bytes.of(path.toString(), MOST_BYTES).ofFile(path), gaps);
  }

  /** Reads what a stream gives, up to the bound; the stream is left open. */
  static ProfileReading ofStream(String name, InputStream in) {
    return ofStream(name, in, Gaps.refused());
  }

  static ProfileReading ofStream(String name, InputStream in, Gaps gaps) {
    return of(Bytes.of(name, MOST_BYTES).ofStream(in), gaps);
  }

  static ProfileReading ofText(String name, String text) {
    return ofText(name, text, Gaps.refused());
  }

  static ProfileReading ofText(String name, String text, Gaps gaps) {
    return ProfileReader.read(Source.of(name, text), gaps);
  }

  private static ProfileReading of(Bytes.Content content, Gaps gaps) {
    if (content instanceof Bytes.Content.Text text) {
      return ProfileReader.read(text.source(), gaps);
    }
    Problem refusal = ((Bytes.Content.Refused) content).problem();
    return new Unreadable(refusal.source().name(), List.of(refusal));
  }
}
