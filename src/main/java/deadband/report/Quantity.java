package deadband.report;

import deadband.dayrun.Result;
import deadband.dayrun.TestDays;
import deadband.days.YearEffect;
import deadband.judging.Effect;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A quantity of a day or a year in which two runs differ.
 *
 * @param of the day or the year
 */
record Quantity(String of, String name, double from, double to, String unit) {

  /** What an example day differs in. */
  static List<Quantity> day(String of, Result from, Result to) {
    List<Quantity> all = new ArrayList<>();
    Optional<Result.Cycles> then = from.cycles();
    Optional<Result.Cycles> now = to.cycles();
    if (then.isPresent() && now.isPresent()) {
      int closings = now.get().relayClosings();
      all.add(new Quantity(of, "relay closures", then.get().relayClosings(), closings, ""));
      int starts = now.get().heatPumpStarts();
      all.add(new Quantity(of, "starts", then.get().heatPumpStarts(), starts, ""));
    }
    all.add(kWh(of, "import", from.import_kWh(), to.import_kWh()));
    all.add(
        kWh(
            of,
            "import on surplus calls",
            from.importWhileOnSurplus_kWh(),
            to.importWhileOnSurplus_kWh()));
    all.add(kWh(of, "heat from PV", from.solarHeat_kWh(), to.solarHeat_kWh()));
    all.add(kWh(of, "export", from.export_kWh(), to.export_kWh()));
    return differing(all);
  }

  /** What a clear day and a cloudy one differ in. */
  static List<Quantity> days(TestDays from, TestDays to) {
    return Stream.of(
            day("clear day", from.clear(), to.clear()), day("cloudy day", from.cloud(), to.cloud()))
        .flatMap(List::stream)
        .toList();
  }

  /** What a year differs in, to whole kilowatt hours. */
  static List<Quantity> year(YearEffect from, YearEffect to) {
    return differing(
        List.of(
            kWh("year", "heat from PV", whole(from.solarHeat_kWh()), whole(to.solarHeat_kWh())),
            new Quantity(
                "year",
                "share of the heat pump",
                whole(100 * from.heatPumpShare()),
                whole(100 * to.heatPumpShare()),
                "%"),
            new Quantity("year", "starts", from.heatPumpStarts(), to.heatPumpStarts(), ""),
            new Quantity("year", "relay closures", from.relayClosings(), to.relayClosings(), ""),
            kWh("year", "import", whole(from.import_kWh()), whole(to.import_kWh()))));
  }

  /** What a trial changes: in a year, else on the example days. */
  static List<Quantity> of(Effect effect) {
    if (effect.yearBefore().isPresent() && effect.yearAfter().isPresent()) {
      return year(effect.yearBefore().get(), effect.yearAfter().get());
    }
    return effect.daysBefore().isPresent() && effect.daysAfter().isPresent()
        ? days(effect.daysBefore().get(), effect.daysAfter().get())
        : List.of();
  }

  private static Quantity kWh(String of, String name, double from, double to) {
    return new Quantity(of, name, from, to, "kWh");
  }

  private static double whole(double value) {
    return Math.rint(value);
  }

  /** Those that differ as they are shown. */
  private static List<Quantity> differing(List<Quantity> all) {
    return all.stream().filter(each -> !each.before().equals(each.after())).toList();
  }

  /** As it was, the unit beside the name. */
  String before() {
    return Words.tenths(from);
  }

  String after() {
    return Words.tenths(to);
  }

  String label() {
    return of + ", " + name + (unit.isEmpty() ? "" : ", " + unit);
  }

  private String words() {
    return (name + " " + before() + " -> " + after() + " " + unit).stripTrailing();
  }

  /** All of them in a line. */
  static String words(List<Quantity> all) {
    return all.stream().map(Quantity::words).collect(Collectors.joining(", "));
  }
}
