package deadband.meterlog;

import java.util.Arrays;
import java.util.List;

/** The rows of a log as a file has them, in its order. A missing value is NaN. */
public final class Readings {

  private final String name;
  private final List<Heading> headings;
  private final boolean local;
  private final boolean dated;
  private long[] at_s = new long[4096];
  private int[] offset_s = new int[4096];
  private double[][] values;
  private int rows;

  /**
   * An empty table.
   *
   * @param name of the file
   * @param local whether times are by a local clock whose offset is not written
   * @param dated whether times have a date
   */
  public Readings(String name, List<Heading> headings, boolean local, boolean dated) {
    this.name = name;
    this.headings = List.copyOf(headings);
    this.local = local;
    this.dated = dated;
    this.values = new double[headings.size()][4096];
  }

  /**
   * One row more.
   *
   * @param instant_s since 1970 [s]; of a local clock as if it showed UTC
   * @param clock_s what the local clock is ahead of it [s]
   * @param row a value a column
   */
  public void add(long instant_s, int clock_s, double[] row) {
    if (rows == at_s.length) {
      int room = rows + rows / 2;
      at_s = Arrays.copyOf(at_s, room);
      offset_s = Arrays.copyOf(offset_s, room);
      for (int column = 0; column < values.length; column++) {
        values[column] = Arrays.copyOf(values[column], room);
      }
    }
    at_s[rows] = instant_s;
    offset_s[rows] = clock_s;
    for (int column = 0; column < values.length; column++) {
      values[column][rows] = row[column];
    }
    rows++;
  }

  /** The same rows under other heads, as many as before. */
  public Readings headed(List<Heading> other) {
    Readings same = new Readings(name, other, local, dated);
    same.at_s = at_s;
    same.offset_s = offset_s;
    same.values = values;
    same.rows = rows;
    return same;
  }

  public String name() {
    return name;
  }

  public List<Heading> headings() {
    return headings;
  }

  public int rows() {
    return rows;
  }

  boolean local() {
    return local;
  }

  boolean dated() {
    return dated;
  }

  /** Instant of a row [s]. */
  public long at_s(int row) {
    return at_s[row];
  }

  /** Sets the instant of a row, where a file shows only later what its dates mean. */
  public void moveTo(int row, long instant_s) {
    at_s[row] = instant_s;
  }

  int offset_s(int row) {
    return offset_s[row];
  }

  void shift(int row, int seconds) {
    at_s[row] += seconds;
    offset_s[row] -= seconds;
  }

  double value(int column, int row) {
    return values[column][row];
  }

  /** Whether two rows have the same values. */
  boolean isSame(int one, int other) {
    return Arrays.stream(values).allMatch(of -> Double.compare(of[one], of[other]) == 0);
  }

  void fill(int column, int row, double value) {
    values[column][row] = value;
  }
}
