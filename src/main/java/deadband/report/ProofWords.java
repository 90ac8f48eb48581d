package deadband.report;

import deadband.dayrun.Result;
import deadband.dayrun.TestDays;
import deadband.judging.Effect;
import deadband.judging.Finding;
import deadband.judging.Proof;
import deadband.judging.Remedy;
import deadband.setup.Change;
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
    return outcome(finding, remedy, ProofWords::loss) + effect(remedy.proof().effect());
  }

  /** The same where a table beside it shows the effect. */
  static String besideTable(Finding finding, Remedy remedy) {
    return outcome(finding, remedy, Effect.Loss::quantity) + whereSame(remedy.proof().effect());
  }

  private static String outcome(
      Finding finding, Remedy remedy, Function<Effect.Loss, String> loss) {
    Proof proof = remedy.proof();
    List<String> others =
        proof.clears().stream().filter(name -> !name.equals(finding.check().name())).toList();
    return remedy.trust().words()
        + work(remedy)
        + "; clears this"
        + (others.isEmpty() ? "" : " and " + String.join(", ", others))
        + costs(proof, loss);
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
    return costs(proof, ProofWords::loss);
  }

  /** The same where a table beside it shows the numbers. */
  static String costsBesideTable(Proof proof) {
    return costs(proof, Effect.Loss::quantity) + whereSame(proof.effect());
  }

  private static String costs(Proof proof, Function<Effect.Loss, String> loss) {
    StringBuilder costs = new StringBuilder();
    costs.append(
        proof.raises().isEmpty()
            ? ", no new findings"
            : ", new: " + String.join(", ", proof.raises()));
    append(costs, ", larger: ", proof.enlarges());
    append(costs, ", no longer judged: ", proof.opens());
    append(costs, ", costs ", proof.effect().losses().stream().map(loss).toList());
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

  /** A table has no rows where nothing differs, so that it is said. */
  private static String whereSame(Effect effect) {
    return Quantity.of(effect).isEmpty() ? effect(effect) : "";
  }

  /** What a year changes in, else what the example days do. */
  static String effect(Effect effect) {
    if (effect.yearBefore().isPresent() && effect.yearAfter().isPresent()) {
      String year = Quantity.words(Quantity.of(effect));
      return "; year: " + (year.isEmpty() ? "no difference" : year);
    }
    if (effect.daysBefore().isEmpty() || effect.daysAfter().isEmpty()) {
      return "";
    }
    TestDays before = effect.daysBefore().get();
    TestDays after = effect.daysAfter().get();
    return differences("clear", before.clear(), after.clear())
        + differences("cloud", before.cloud(), after.cloud());
  }

  /** What an example day changes in; empty where it does not. */
  private static String differences(String name, Result before, Result after) {
    String said = Quantity.words(Quantity.day(name, before, after));
    return said.isEmpty() ? "" : "; " + name + ": " + said;
  }
}
