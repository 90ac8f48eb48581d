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
    return remedy.changes().stream().map(FindingLines::inline).collect(Collectors.joining(", "))
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
    Differences<YearEffect> year = new Differences<>(before, after);
    year.add("heat from PV", "kWh", each -> whole(each.solarHeat_kWh()));
    year.add("by the heat pump", "%", each -> whole(100 * each.heatPumpShare()));
    year.add("starts", "", each -> "" + each.heatPumpStarts());
    year.add("relay closures", "", each -> "" + each.relayClosings());
    year.add("import", "kWh", each -> whole(each.import_kWh()));
    return "; year: " + (year.all.isEmpty() ? "no difference" : year);
  }

  private static String whole(double value) {
    return Words.number(Math.rint(value));
  }

  /** What an example day changes in; empty where it does not. */
  static String differences(String name, Result before, Result after) {
    Differences<Result> day = new Differences<>(before, after);
    day.add("relay closures", "", each -> counted(each, Result.Cycles::relayClosings));
    day.add("starts", "", each -> counted(each, Result.Cycles::heatPumpStarts));
    day.add("import", "kWh", each -> Words.tenths(each.import_kWh()));
    day.add(
        "import on surplus calls", "kWh", each -> Words.tenths(each.importWhileOnSurplus_kWh()));
    day.add("heat from PV", "kWh", each -> Words.tenths(each.solarHeat_kWh()));
    day.add("export", "kWh", each -> Words.tenths(each.export_kWh()));
    return day.all.isEmpty() ? "" : "; " + name + ": " + day;
  }

  private static String counted(Result result, Function<Result.Cycles, Integer> count) {
    return result.cycles().map(cycles -> "" + count.apply(cycles)).orElse("not counted");
  }

  /** Quantities that differ, with their unit said once. */
  private record Differences<T>(T before, T after, List<String> all) {

    Differences(T before, T after) {
      this(before, after, new ArrayList<>());
    }

    void add(String quantity, String unit, Function<T, String> shown) {
      String from = shown.apply(before);
      String to = shown.apply(after);
      if (!from.equals(to)) {
        all.add((quantity + " " + from + " -> " + to + " " + unit).stripTrailing());
      }
    }

    @Override
    public String toString() {
      return String.join(", ", all);
    }
  }
}
