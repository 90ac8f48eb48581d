package deadband.report;

import deadband.dayrun.Result;
import deadband.dayrun.TestDays;
import deadband.judging.Finding;
import deadband.judging.Proof;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What came of trying a remedy, in a line: what it clears and raises, and what a day makes of it.
 */
final class ProofWords {

  private ProofWords() {}

  /** The line; empty where nothing could be computed. */
  static String of(Finding finding) {
    Proof proof = finding.proof();
    if (proof == null) {
      return "";
    }
    List<String> others =
        proof.clears().stream().filter(name -> !name.equals(finding.check().name())).toList();
    return proof.trust().words()
        + "; clears this"
        + (others.isEmpty() ? "" : " and " + String.join(", ", others))
        + (proof.raises().isEmpty()
            ? " and raises nothing"
            : ", raises " + String.join(", ", proof.raises()))
        + days(proof);
  }

  static String days(Proof proof) {
    if (proof.before().isEmpty() || proof.after().isEmpty()) {
      return "";
    }
    TestDays before = proof.before().get();
    TestDays after = proof.after().get();
    return differences("clear", before.clear(), after.clear())
        + differences("cloud", before.cloud(), after.cloud());
  }

  /** What a day's story changes in; empty where it does not. */
  static String differences(String name, Result before, Result after) {
    List<String> differences = new ArrayList<>();
    add(differences, "calls", before, after, ProofWords::calls);
    add(differences, "starts", before, after, ProofWords::starts);
    add(differences, "bought", before, after, day -> DayWords.kWh(day.import_kWh()));
    add(
        differences,
        "bought on surplus",
        before,
        after,
        day -> DayWords.kWh(day.importWhileOnSurplus_kWh()));
    add(differences, "heat from the sun", before, after, day -> DayWords.kWh(day.solarHeat_kWh()));
    add(differences, "exported", before, after, day -> DayWords.kWh(day.export_kWh()));
    return differences.isEmpty() ? "" : "; " + name + ": " + String.join(", ", differences);
  }

  private static void add(
      List<String> differences,
      String quantity,
      Result before,
      Result after,
      Function<Result, String> shown) {
    String from = shown.apply(before);
    String to = shown.apply(after);
    if (!from.equals(to)) {
      differences.add(quantity + " " + from + " -> " + to);
    }
  }

  private static String calls(Result result) {
    return result.cycles().map(cycles -> "" + cycles.relayClosings()).orElse("not counted");
  }

  private static String starts(Result result) {
    return result.cycles().map(cycles -> "" + cycles.heatPumpStarts()).orElse("not counted");
  }
}
