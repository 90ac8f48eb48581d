package deadband.report;

import deadband.dayrun.Result;
import deadband.dayrun.TestDays;
import deadband.days.YearEffect;
import deadband.judging.Effect;
import deadband.judging.Finding;
import deadband.judging.Proof;
import deadband.judging.Remedy;
import deadband.setup.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What came of trying a remedy, in a line: what it clears and raises, and what a day makes of it.
 */
final class ProofWords {

  private ProofWords() {}

  /** What came of trying a remedy of a finding. */
  static String of(Finding finding, Remedy remedy) {
    Proof proof = remedy.proof();
    List<String> others =
        proof.clears().stream().filter(name -> !name.equals(finding.check().name())).toList();
    return remedy.trust().words()
        + work(remedy)
        + "; clears this"
        + (others.isEmpty() ? "" : " and " + String.join(", ", others))
        + costs(proof)
        + effect(proof.effect());
  }

  /** The same in short, with its changes, for one that stands beside another. */
  static String shortly(Remedy remedy) {
    return remedy.changes().stream().map(TextReport::inline).collect(Collectors.joining(", "))
        + ": "
        + remedy.trust().words()
        + work(remedy)
        + costs(remedy.proof())
        + effect(remedy.proof().effect());
  }

  private static String work(Remedy remedy) {
    List<String> said =
        remedy.work().stream()
            .filter(work -> remedy.changes().stream().noneMatch(change -> names(change, work)))
            .toList();
    return said.isEmpty() ? "" : ", needs " + String.join(", ", said);
  }

  private static boolean names(Change change, String work) {
    return change.pointer().dotted().equals(work);
  }

  /** What it raises, enlarges, leaves open and gives up. */
  static String costs(Proof proof) {
    StringBuilder costs = new StringBuilder();
    costs.append(
        proof.raises().isEmpty()
            ? ", no new findings"
            : ", new: " + String.join(", ", proof.raises()));
    append(costs, ", larger: ", proof.enlarges());
    append(costs, ", no longer judged: ", proof.opens());
    append(costs, ", costs ", proof.effect().losses().stream().map(ProofWords::loss).toList());
    if (!proof.effect().known()) {
      costs.append(", effect on heat from PV not known");
    }
    return costs.toString();
  }

  private static void append(StringBuilder costs, String beginning, List<String> names) {
    if (!names.isEmpty()) {
      costs.append(beginning).append(String.join(", ", names));
    }
  }

  private static String loss(Effect.Loss loss) {
    return loss.quantity()
        + " "
        + DayWords.tenths(loss.before())
        + " -> "
        + DayWords.tenths(loss.after())
        + " "
        + loss.unit();
  }

  /** What a year changes in, else what the example days do. */
  static String effect(Effect effect) {
    if (effect.yearBefore().isPresent() && effect.yearAfter().isPresent()) {
      return year(effect.yearBefore().get(), effect.yearAfter().get());
    }
    if (effect.daysBefore().isEmpty() || effect.daysAfter().isEmpty()) {
      return "";
    }
    TestDays before = effect.daysBefore().get();
    TestDays after = effect.daysAfter().get();
    return differences("clear", before.clear(), after.clear())
        + differences("cloud", before.cloud(), after.cloud());
  }

  private static String year(YearEffect before, YearEffect after) {
    List<String> parts = new ArrayList<>();
    add(parts, "heat from PV", before, after, year -> whole(year.solarHeat_kWh(), "kWh"));
    add(parts, "by the heat pump", before, after, year -> pump(year));
    add(parts, "starts", before, after, year -> "" + year.heatPumpStarts());
    add(parts, "relay closures", before, after, year -> "" + year.relayClosings());
    add(parts, "import", before, after, year -> whole(year.import_kWh(), "kWh"));
    return "; year: " + (parts.isEmpty() ? "no difference" : String.join(", ", parts));
  }

  private static String pump(YearEffect year) {
    return whole(100 * year.heatPumpShare(), "%");
  }

  private static String whole(double value, String unit) {
    return Words.number(Math.rint(value)) + " " + unit;
  }

  /** What an example day changes in; empty where it does not. */
  static String differences(String name, Result before, Result after) {
    List<String> differences = new ArrayList<>();
    add(differences, "relay closures", before, after, ProofWords::closures);
    add(differences, "starts", before, after, ProofWords::starts);
    add(differences, "import", before, after, day -> DayWords.kWh(day.import_kWh()));
    add(
        differences,
        "import on surplus calls",
        before,
        after,
        day -> DayWords.kWh(day.importWhileOnSurplus_kWh()));
    add(differences, "heat from PV", before, after, day -> DayWords.kWh(day.solarHeat_kWh()));
    add(differences, "export", before, after, day -> DayWords.kWh(day.export_kWh()));
    return differences.isEmpty() ? "" : "; " + name + ": " + String.join(", ", differences);
  }

  private static <T> void add(
      List<String> differences, String quantity, T before, T after, Function<T, String> shown) {
    String from = shown.apply(before);
    String to = shown.apply(after);
    if (!from.equals(to)) {
      differences.add(quantity + " " + from + " -> " + to);
    }
  }

  private static String closures(Result result) {
    return result.cycles().map(cycles -> "" + cycles.relayClosings()).orElse("not counted");
  }

  private static String starts(Result result) {
    return result.cycles().map(cycles -> "" + cycles.heatPumpStarts()).orElse("not counted");
  }
}
