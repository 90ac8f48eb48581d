package deadband.diagnosis;

import deadband.meterlog.MeterLog;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The runs found in a log, in order.
 *
 * @param list the runs
 * @param how they were found, in words
 * @param standby_kW power while it does not run [kW]
 * @param running_kW usual power while it runs [kW]
 */
public record Cycles(List<Cycle> list, String how, double standby_kW, double running_kW) {

  private static final double HOUR_S = 3600;

  public Cycles {
    list = List.copyOf(list);
  }

  static Cycles none(String why) {
    return new Cycles(List.of(), why, 0, 0);
  }

  public int count() {
    return list.size();
  }

  /** Pauses between runs without a gap in the log [min]. */
  public List<Double> pauses_min() {
    List<Double> pauses = new ArrayList<>();
    for (int index = 1; index < list.size(); index++) {
      Cycle before = list.get(index - 1);
      Cycle after = list.get(index);
      if (!before.cut() && !after.cut()) {
        pauses.add((after.start_s() - before.end_s()) / 60);
      }
    }
    return pauses;
  }

  /** The most starts within any 60 minutes. */
  public int startsInWorstHour() {
    int most = 0;
    int from = 0;
    for (int index = 0; index < list.size(); index++) {
      while (list.get(index).start_s() - list.get(from).start_s() >= HOUR_S) {
        from++;
      }
      most = Math.max(most, index - from + 1);
    }
    return most;
  }

  /** Start of the hour with the most starts; empty where there are none. */
  public List<Cycle> worstHour() {
    List<Cycle> worst = List.of();
    for (Cycle first : list) {
      List<Cycle> hour =
          list.stream()
              .filter(c -> c.start_s() >= first.start_s() && c.start_s() < first.start_s() + HOUR_S)
              .toList();
      worst = hour.size() > worst.size() ? hour : worst;
    }
    return worst;
  }

  /**
   * What a day held.
   *
   * @param starts runs that start on it
   * @param hours for which it runs on it, at its usual power
   */
  public record PerDay(LocalDate date, int starts, double hours) {}

  /** Day by day by the local clock; a run through midnight belongs to both days by its time. */
  public List<PerDay> perDay(MeterLog log) {
    Map<LocalDate, PerDay> days = new TreeMap<>();
    for (int row = 0; row < log.rows(); row++) {
      days.computeIfAbsent(log.clock(row).toLocalDate(), date -> new PerDay(date, 0, 0));
    }
    for (Cycle cycle : list) {
      LocalDate date = log.clock(cycle.first()).toLocalDate();
      days.merge(date, new PerDay(date, 1, 0), Cycles::sum);
      double all_s = Math.max(1, cycle.end_s() - cycle.start_s());
      for (int row = cycle.first(); row <= cycle.last(); row++) {
        double from_s = Math.max(cycle.start_s(), (double) log.at_s(row));
        double until_s = Math.min(cycle.end_s(), (double) log.end_s(row));
        double share = Math.max(0, until_s - from_s) / all_s;
        LocalDate on = log.clock(row).toLocalDate();
        days.merge(on, new PerDay(on, 0, share * cycle.running_h()), Cycles::sum);
      }
    }
    return List.copyOf(days.values());
  }

  private static PerDay sum(PerDay one, PerDay other) {
    return new PerDay(one.date, one.starts + other.starts, one.hours + other.hours);
  }
}
