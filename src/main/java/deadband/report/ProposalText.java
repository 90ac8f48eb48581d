package deadband.report;

import deadband.document.Pointer;
import deadband.judging.Finding;
import deadband.judging.NotJudged;
import deadband.judging.RulePage;
import deadband.remedy.Proposal;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A proposal as a note to read: the changes, what they bring, and what stands in the way. */
public final class ProposalText {

  private ProposalText() {}

  /**
   * The note, ending in a line end.
   *
   * @param file name of the setup file
   */
  public static String of(String file, Setup setup, Proposal proposal, Layout layout) {
    StringBuilder text = new StringBuilder();
    String verdict = proposal.after().verdict().words().toUpperCase(Locale.ROOT);
    text.append(
        layout.spread(setup.site().reference().optional().orElse("(no reference)"), verdict));
    text.append(layout.spread(file, "as it is: " + proposal.before().verdict().words()))
        .append('\n');
    changes(text, layout, proposal);
    inTheWay(text, layout, proposal);
    proposal
        .before()
        .overrides()
        .forEach(override -> entry(text, layout, "limit", TextReport.override(override)));
    return text.toString();
  }

  private static void changes(StringBuilder text, Layout layout, Proposal proposal) {
    if (proposal.changes().isEmpty()) {
      entry(text, layout, "change", "nothing that can be computed brings it nearer to sign-off");
      return;
    }
    for (Change change : proposal.changes()) {
      entry(text, layout, "change", TextReport.change(change));
    }
    String clears = String.join(", ", proposal.proof().clears());
    String raises = String.join(", ", proposal.proof().raises());
    entry(
        text,
        layout,
        "proven",
        proposal.proof().trust().words()
            + "; clears "
            + (clears.isEmpty() ? "nothing" : clears)
            + (raises.isEmpty() ? " and raises nothing" : ", raises " + raises)
            + ProofWords.days(proposal.proof()));
  }

  private static void inTheWay(StringBuilder text, Layout layout, Proposal proposal) {
    for (Finding finding : proposal.inTheWay()) {
      entry(
          text,
          layout,
          finding.consequence().word(),
          RulePage.of(finding.check()).says()
              + " ("
              + finding.check().name()
              + "): needs your input, "
              + dotted(finding.detail().at()));
    }
    for (NotJudged open : proposal.waitedFor()) {
      entry(
          text,
          layout,
          "untold",
          open.check().name()
              + (open.missing().isEmpty()
                  ? " rests on day runs, which were left out"
                  : " needs " + dotted(open.missing())));
    }
  }

  private static String dotted(List<Pointer> pointers) {
    return pointers.stream().map(Pointer::dotted).collect(Collectors.joining(", "));
  }

  private static void entry(StringBuilder text, Layout layout, String label, String content) {
    text.append(layout.wrapped(Layout.pad(label, Layout.INDENT), content));
  }
}
