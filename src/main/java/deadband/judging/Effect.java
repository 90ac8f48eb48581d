package deadband.judging;

import deadband.dayrun.Result;
import deadband.dayrun.TestDays;
import deadband.days.YearEffect;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What changes make of a year, or of the example days where no year was run.
 *
 * @param known whether it could be run, or the changes touch nothing that a day depends on
 * @param daysBefore the days without the changes; empty where none were run
 * @param daysAfter the days with them
 * @param yearBefore the year without the changes; empty where none was run
 * @param yearAfter the year with them
 */
public record Effect(
    boolean known,
    Optional<TestDays> daysBefore,
    Optional<TestDays> daysAfter,
    Optional<YearEffect> yearBefore,
    Optional<YearEffect> yearAfter) {

  /** A difference in a day's energy that is worth a word [kWh]: our own choice. */
  private static final double NOTICED_KWH = 0.1;

  /** A share of a year's import that is below what a built-in year resolves: our own choice. */
  private static final double NOTICED_IMPORT_SHARE = 0.005;

  /** Heat from PV that may be given up for a remedy to be called safe: our own choice. */
  private static final double HEAT_SHARE = 0.02;

  /** The same of the heat pump's share of it. */
  private static final double PUMP_SHARE = 0.05;

  /** Something given up, in its unit. */
  public record Loss(String quantity, double before, double after, String unit) {}

  /** No effect at all. */
  static Effect none() {
    return new Effect(true, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** Whether a year was run with the changes and without. */
  public boolean isOfYear() {
    return yearBefore.isPresent() && yearAfter.isPresent();
  }

  private boolean isOfDays() {
    return daysBefore.isPresent() && daysAfter.isPresent();
  }

  /** Whether there is anything to compare remedies by. */
  boolean isComparable() {
    return isOfYear() || isOfDays();
  }

  /** What is given up; empty where nothing is. */
  public List<Loss> losses() {
    List<Loss> losses = new ArrayList<>();
    if (isOfYear()) {
      addYear(yearBefore.get(), yearAfter.get(), losses);
    }
    if (isOfDays()) {
      addStarts(daysBefore.get().clear(), daysAfter.get().clear(), losses);
      addDay("clear day", daysBefore.get().clear(), daysAfter.get().clear(), losses);
      addDay("cloudy day", daysBefore.get().cloud(), daysAfter.get().cloud(), losses);
    }
    return losses;
  }

  private static void addYear(YearEffect before, YearEffect after, List<Loss> losses) {
    add("heat from PV, year", before.solarHeat_kWh(), after.solarHeat_kWh(), HEAT_SHARE, losses);
    if (after.heatPumpShare() < (1 - PUMP_SHARE) * before.heatPumpShare()) {
      losses.add(
          new Loss(
              "heat pump's share of it",
              100 * before.heatPumpShare(),
              100 * after.heatPumpShare(),
              "%"));
    }
    if (after.import_kWh() > (1 + NOTICED_IMPORT_SHARE) * before.import_kWh() + NOTICED_KWH) {
      losses.add(new Loss("import, year", before.import_kWh(), after.import_kWh(), "kWh"));
    }
  }

  private static void addStarts(Result before, Result after, List<Loss> losses) {
    if (before.heatPumpOnSurplus_kWh() > 0 && after.heatPumpOnSurplus_kWh() <= 0) {
      losses.add(
          new Loss(
              "heat pump on surplus calls, clear day", before.heatPumpOnSurplus_kWh(), 0, "kWh"));
    }
  }

  /** A day is held to more only where no year tells. */
  private void addDay(String day, Result before, Result after, List<Loss> losses) {
    if (isOfYear()) {
      return;
    }
    add("heat from PV, " + day, before.solarHeat_kWh(), after.solarHeat_kWh(), HEAT_SHARE, losses);
    addHigher("import, " + day, before.import_kWh(), after.import_kWh(), losses);
    addHigher(
        "import on surplus calls, " + day,
        before.importWhileOnSurplus_kWh(),
        after.importWhileOnSurplus_kWh(),
        losses);
  }

  private static void add(
      String quantity, double before, double after, double share, List<Loss> losses) {
    if (after < (1 - share) * before && before - after > NOTICED_KWH) {
      losses.add(new Loss(quantity, before, after, "kWh"));
    }
  }

  private static void addHigher(String quantity, double before, double after, List<Loss> losses) {
    if (after - before > NOTICED_KWH) {
      losses.add(new Loss(quantity, before, after, "kWh"));
    }
  }

  /** Whether the relay gets the heat pump started on either day; so too where none was run. */
  boolean startsPump() {
    return daysAfter.isEmpty() || startsPump(daysAfter.get());
  }

  /** Whether it did before. */
  boolean startedPump() {
    return daysBefore.isPresent() && startsPump(daysBefore.get());
  }

  private static boolean startsPump(TestDays days) {
    return both(days, Result::heatPumpOnSurplus_kWh) > 0;
  }

  /** Whether the relay closes on a clear day; so too where none was run. */
  boolean closesRelay() {
    return daysAfter
        .flatMap(days -> days.clear().cycles())
        .map(cycles -> cycles.relayClosings() > 0)
        .orElse(true);
  }

  /** Whether the relay starts the heat pump in the year; so too where none was run. */
  boolean startsInTheYear() {
    return yearAfter.map(year -> year.heatPumpOnSurplus_kWh() > 0).orElse(true);
  }

  /** Whether it did before. */
  boolean startedInTheYear() {
    return yearBefore.map(year -> year.heatPumpOnSurplus_kWh() > 0).orElse(false);
  }

  /** Heat from PV made by the heat pump, else by anything [kWh]; more is better. */
  double heatByPump_kWh() {
    if (isOfYear()) {
      return yearAfter.get().solarHeatByHeatPump_kWh();
    }
    return daysAfter.map(days -> both(days, Result::solarHeat_kWh)).orElse(0.0);
  }

  /** Compressor starts; fewer is better. */
  double starts() {
    if (isOfYear()) {
      return yearAfter.get().heatPumpStarts();
    }
    return daysAfter.map(days -> both(days, Effect::starts)).orElse(0.0);
  }

  /** Energy bought [kWh]; less is better. */
  double import_kWh() {
    if (isOfYear()) {
      return yearAfter.get().import_kWh();
    }
    return daysAfter.map(days -> both(days, Result::import_kWh)).orElse(0.0);
  }

  private static double both(TestDays days, ToDoubleFunction<Result> quantity) {
    return quantity.applyAsDouble(days.clear()) + quantity.applyAsDouble(days.cloud());
  }

  private static double starts(Result day) {
    return day.cycles().map(Result.Cycles::heatPumpStarts).orElse(0);
  }
}
