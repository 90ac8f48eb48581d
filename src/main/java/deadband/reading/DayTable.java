package deadband.reading;

import java.util.Arrays;

/** The rows of a day file as they are read: line, time, values. A value not entered is NaN. */
final class DayTable {

  private int[] line = new int[2048];
  private long[] time_s = new long[2048];
  private final double[][] values;
  private int rows;

  DayTable(int columns) {
    values = new double[columns][2048];
  }

  void add(int atLine, long at_s, double[] row) {
    if (rows == line.length) {
      grow();
    }
    line[rows] = atLine;
    time_s[rows] = at_s;
    for (int column = 0; column < row.length; column++) {
      values[column][rows] = row[column];
    }
    rows++;
  }

  private void grow() {
    int room = 2 * rows;
    line = Arrays.copyOf(line, room);
    time_s = Arrays.copyOf(time_s, room);
    for (int column = 0; column < values.length; column++) {
      values[column] = Arrays.copyOf(values[column], room);
    }
  }

  int rows() {
    return rows;
  }

  int line(int row) {
    return line[row];
  }

  long time_s(int row) {
    return time_s[row];
  }

  double value(int column, int row) {
    return values[column][row];
  }
}
