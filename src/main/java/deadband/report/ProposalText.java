package deadband.report;

import deadband.document.Pointer;
import deadband.judging.Consequence;
import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.NotJudged;
import deadband.judging.Proof;
import deadband.judging.RulePage;
import deadband.judging.Trust;
import deadband.remedy.Proposal;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A proposal as a note to read: how the file stands, the changes, and what is left to do. */
public final class ProposalText {

  private ProposalText() {}

  /**
   * The note, ending in a line end.
   *
   * @param file name of the setup file
   */
  public static String of(String file, Setup setup, Proposal proposal, Layout layout) {
    StringBuilder text = new StringBuilder();
    String verdict = proposal.before().verdict().words().toUpperCase(Locale.ROOT);
    text.append(
        layout.spread(setup.site().reference().optional().orElse("(no reference)"), verdict));
    text.append(layout.wrapped("", file)).append('\n');
    text.append(layout.entry("as it is", standing(proposal.before())));
    changes(text, layout, proposal);
    left(text, layout, proposal);
    proposal
        .before()
        .overrides()
        .forEach(override -> text.append(layout.entry("limit", TextReport.override(override))));
    return text.toString();
  }

  /** The verdict with what decides it; while checks are not judged, of those that could be. */
  static String standing(Judgement judgement) {
    String counts =
        Arrays.stream(Consequence.values())
            .filter(consequence -> judgement.count(consequence) > 0)
            .map(consequence -> Words.count(judgement.count(consequence), consequence))
            .collect(Collectors.joining(", "));
    String found = counts.isEmpty() ? "nothing found" : counts;
    int open = judgement.notJudged().size();
    return judgement.verdict().words()
        + ": "
        + found
        + (open == 0
            ? ""
            : " of those that could be judged; " + Words.count(open, "check") + " not judged");
  }

  private static void changes(StringBuilder text, Layout layout, Proposal proposal) {
    if (proposal.proof().isEmpty()) {
      text.append(
          layout.entry("change", "no calculated change of settings brings it closer to sign-off"));
      return;
    }
    for (Change change : proposal.changes()) {
      text.append(layout.entry("change", FindingLines.change(change)));
    }
    text.append(layout.entry("after", standing(proposal.after())));
    Proof proof = proposal.proof().get();
    String clears = String.join(", ", proof.clears());
    text.append(
        layout.entry(
            "tried",
            trust(proposal, proof)
                + "; clears "
                + (clears.isEmpty() ? "no finding" : clears)
                + ProofWords.costs(proof)
                + ProofWords.effect(proof.effect())));
  }

  static String trust(Proposal proposal, Proof proof) {
    List<String> open = proof.hazardsOpen();
    return proof.trust() == Trust.SAFE && !open.isEmpty()
        ? Words.count(open.size(), "hazard") + " not judged: " + String.join(", ", open)
        : proposal.trust().words();
  }

  /** What is left to do: work on site, what only the site can say, and what is missing. */
  private static void left(StringBuilder text, Layout layout, Proposal proposal) {
    for (Finding finding : proposal.inTheWay()) {
      text.append(
          layout.entry(
              finding.consequence().word(),
              RulePage.of(finding.check()).says()
                  + " ("
                  + finding.check().name()
                  + "): "
                  + todo(finding)));
    }
    for (NotJudged open : proposal.waitedFor()) {
      text.append(
          layout.entry(
              "missing",
              open.check().name()
                  + (open.missing().isEmpty()
                      ? " needs the example days, which were skipped"
                      : " needs " + dotted(open.missing()))));
    }
  }

  private static String todo(Finding finding) {
    return finding.remedies().isEmpty()
        ? finding.trust().words() + ", " + dotted(finding.detail().at())
        : "not applied: " + ProofWords.shortly(finding.remedies().get(0));
  }

  private static String dotted(List<Pointer> pointers) {
    return pointers.stream().map(Pointer::dotted).collect(Collectors.joining(", "));
  }
}
