package deadband.meterlog;

import deadband.meterlog.Column.Form;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Brings each column to mean powers, temperatures or states. */
@SuppressWarnings("ArrayRecordComponent") // a million rows
record Conversion(Readings raw, int[] rows, MeterLog.Times times) {

  private static final int HOUR_S = 3600;

  /** Rows that show the resolution. */
  private static final int SHOWN = 20_000;

  /** Nothing but a counter rises for as long as this [s]. */
  private static final int LONG_S = 20 * HOUR_S;

  /** No home takes or gives more [kW]. */
  private static final double MOST_KW = 60;

  List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    for (int index = 0; index < raw.headings().size(); index++) {
      columns.add(column(index));
    }
    return new GridPower(times, new OneEach(columns).columns()).columns();
  }

  private Column column(int index) {
    Heading heading = raw.headings().get(index);
    double[] values = new double[rows.length];
    Arrays.setAll(values, row -> raw.value(index, rows[row]));
    if (heading.meaning() == Meaning.CALL) {
      return new Column(heading, Form.STATE, "", 0, values);
    }
    if (heading.unit().isDegrees() || heading.meaning().isTemperature()) {
      Arrays.setAll(values, row -> heading.unit().brought(values[row]));
      return new Column(heading, Form.TEMPERATURE, "", resolution(values), values);
    }
    return power(heading, values);
  }

  private Column power(Heading heading, double[] values) {
    LogUnit unit = heading.unit();
    String remark = "";
    if (unit == LogUnit.NONE) {
      unit = likely(heading.name(), values);
      remark = "no unit in the header, taken as " + unit.word();
    }
    LogUnit in = unit;
    Arrays.setAll(values, row -> in.brought(values[row]));
    double resolution = resolution(values);
    if (!unit.isEnergy()) {
      return new Column(heading, Form.POWER, remark, resolution, values);
    }
    boolean counter = isCounter(values);
    double[] power_kW = counter ? fromCounter(values) : fromEnergy(values);
    return new Column(
        heading,
        counter ? Form.COUNTER : Form.ENERGY,
        remark,
        resolution * HOUR_S / times.interval_s(),
        power_kW);
  }

  /** The unit of a column that names none: homes stay below 60 kW. */
  private LogUnit likely(String name, double[] values) {
    double most = Arrays.stream(values).filter(Double::isFinite).map(Math::abs).max().orElse(0);
    if (name.toLowerCase(Locale.ROOT).contains("energ")) {
      return most > MOST_KW && !isCounter(values) ? LogUnit.WH : LogUnit.KWH;
    }
    return most > MOST_KW ? LogUnit.W : LogUnit.KW;
  }

  /** Smallest difference between two values that is met again and again. */
  private static double resolution(double[] values) {
    Map<Long, Integer> steps = new TreeMap<>();
    for (int row = 1; row < Math.min(values.length, SHOWN); row++) {
      double step = Math.abs(values[row] - values[row - 1]);
      if (step > 1e-6) {
        steps.merge(Math.round(step * 1e6), 1, Integer::sum);
      }
    }
    return steps.isEmpty() ? 0 : steps.keySet().iterator().next() / 1e6;
  }

  /**
   * Whether energies are readings of a counter: they rise, but for an exchange. Where the log is
   * short an energy in the interval may rise too, as PV does in the morning: then a counter is
   * known by readings that no home reaches in an interval.
   */
  private boolean isCounter(double[] values) {
    double first = Double.NaN;
    double last = 0;
    double before = Double.NaN;
    double most = 0;
    int rises = 0;
    int falls = 0;
    int seen = 0;
    for (double value : values) {
      if (Double.isNaN(value)) {
        continue;
      }
      if (seen++ == 0) {
        first = value;
      } else {
        rises += value > before ? 1 : 0;
        falls += value < before ? 1 : 0;
        most = Math.max(most, value - before);
      }
      before = value;
      last = Math.max(last, value);
    }
    // an energy in the interval falls about as often as it rises
    boolean rising = rises > 0 && first >= 0 && 20 * falls <= rises;
    boolean isLong = (double) seen * times.interval_s() >= LONG_S;
    boolean high = last * HOUR_S / times.interval_s() > MOST_KW || first > 10 * most;
    return rising && (isLong || high);
  }

  private double[] fromEnergy(double[] energy_kWh) {
    double[] power_kW = new double[energy_kWh.length];
    Arrays.setAll(power_kW, row -> energy_kWh[row] * HOUR_S / times.span_s()[row]);
    return power_kW;
  }

  private double[] fromCounter(double[] counter_kWh) {
    double[] power_kW = new double[counter_kWh.length];
    for (int row = 0; row < power_kW.length; row++) {
      boolean last = row + 1 == power_kW.length;
      boolean next = !last && times.at_s()[row] + times.span_s()[row] == times.at_s()[row + 1];
      double rise_kWh = next ? counter_kWh[row + 1] - counter_kWh[row] : Double.NaN;
      // a counter that falls was reset or exchanged
      power_kW[row] = rise_kWh >= 0 ? rise_kWh * HOUR_S / times.span_s()[row] : Double.NaN;
    }
    return power_kW;
  }

  /** One column a meaning: phases are added up, a power is preferred to an energy. */
  private record OneEach(List<Column> all) {

    List<Column> columns() {
      List<Column> chosen = new ArrayList<>();
      for (Column column : all) {
        if (column.meaning() == Meaning.TANK || column.meaning() == Meaning.UNKNOWN) {
          chosen.add(column);
        } else if (chosen.stream().noneMatch(other -> other.meaning() == column.meaning())) {
          chosen.add(best(all.stream().filter(c -> c.meaning() == column.meaning()).toList()));
        }
      }
      return chosen;
    }

    private static Column best(List<Column> same) {
      List<Column> phases = same.stream().filter(OneEach::isPhase).toList();
      if (phases.size() > 1 && phases.size() == same.size()) {
        double[] sum = phases.get(0).values();
        for (Column phase : phases.subList(1, phases.size())) {
          Arrays.setAll(sum, row -> sum[row] + phase.value(row));
        }
        Column first = phases.get(0);
        return new Column(
            first.heading(),
            first.form(),
            "sum of " + phases.size() + " columns",
            first.resolution(),
            sum);
      }
      return same.stream()
          .filter(column -> column.form() == Form.POWER)
          .findFirst()
          .orElse(same.get(0));
    }

    private static boolean isPhase(Column column) {
      return column
          .heading()
          .name()
          .toLowerCase(Locale.ROOT)
          .matches(".*(\\b|_)([lt][123]|phase|tariff|tarif)(\\b|_| ).*");
    }
  }
}
