package deadband.report;

import deadband.judging.Check;
import deadband.judging.Consequence;
import deadband.judging.Judgement;
import deadband.judging.NotJudged;
import java.util.List;

/** The cautions that go with a report, each said once: those of the work, and those of the tank. */
final class Cautions {

  private static final String WORK =
      "Isolate, lock off and prove dead before opening any cover. Water above 50 °C scalds.";

  private static final String HEAT =
      "Legionella grows in lukewarm water, and heat is one control among several.";

  private static final String OTHERS =
      "Local codes, the water undertaker and the equipment's own instructions take precedence over"
          + " every number here; electrical and unvented work is for licensed people.";

  private Cautions() {}

  /** All of them where a hazard is in play; that of heat wherever there is a tank. */
  static List<String> of(Report report) {
    if (isHazardInPlay(report.judgement())) {
      return List.of(WORK, HEAT, OTHERS);
    }
    boolean tank = report.setup().tank().part().isFitted().says(true);
    return tank ? List.of(HEAT, OTHERS) : List.of();
  }

  private static boolean isHazardInPlay(Judgement judgement) {
    return judgement.findings().stream()
            .anyMatch(
                finding -> isHazard(finding.check()) || finding.consequence() == Consequence.HAZARD)
        || judgement.notJudged().stream().map(NotJudged::check).anyMatch(Cautions::isHazard);
  }

  private static boolean isHazard(Check check) {
    return check.consequence() == Consequence.HAZARD;
  }
}
