package deadband.report;

import deadband.document.Place;
import deadband.document.Pointer;
import deadband.facts.Bound;
import deadband.facts.Detail;
import deadband.facts.Measure;
import deadband.judging.Check;
import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.Remedy;
import deadband.judging.RulePage;
import deadband.provenance.Assumption;
import deadband.setup.Accepted;
import deadband.setup.Change;
import deadband.setup.DataSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What every report says below the headline of a finding, each line with its label. */
final class FindingLines {

  /** Other remedies shown beside the first. */
  private static final int MOST_OTHERS = 2;

  private final Report report;
  private final Judgement judgement;
  private final boolean tables;
  private final List<Line> lines = new ArrayList<>();

  /**
   * Lines of a report.
   *
   * @param tables whether a table beside the lines shows what a trial changes
   */
  private FindingLines(Report report, boolean tables) {
    this.report = report;
    this.judgement = report.judgement();
    this.tables = tables;
  }

  static FindingLines of(Report report) {
    return new FindingLines(report, false);
  }

  static FindingLines besideTables(Report report) {
    return new FindingLines(report, true);
  }

  /** One line; its content is never empty. */
  record Line(String label, String content) {

    /** Its label as one word. */
    String kind() {
      return label.replace(' ', '-');
    }
  }

  /** The lines of a finding, in order. */
  List<Line> of(Finding finding) {
    lines.clear();
    Finding.Key cause = finding.causedBy();
    if (cause == null) {
      whole(finding);
    } else {
      folded(finding, cause);
    }
    return List.copyOf(lines);
  }

  /** What is cleared with another finding keeps its rank, and points there. */
  private void folded(Finding finding, Finding.Key cause) {
    line("settings", places(finding.detail().at()));
    line("see", judgement.rank(cause) + " " + cause.check() + ": its change clears this too");
  }

  private void whole(Finding finding) {
    RulePage page = RulePage.of(finding.check());
    Detail detail = finding.detail();
    line("settings", places(detail.at()));
    line("found", observed(detail.observed()));
    line("limit", limit(detail.limit()));
    line("effect", NumberSentence.of(page.inNumbers(), measures(detail)));
    line("example days", NumberSentence.of(page.aDay(), measures(detail)));
    line("why", page.why());
    remedies(finding);
    line("method", method(finding));
    line("accepted", accepted(finding.accepted()));
    line("also cleared", consequences(finding));
  }

  private void line(String label, String content) {
    if (!content.isEmpty()) {
      lines.add(new Line(label, content));
    }
  }

  /** The remedy to take, then others that were tried and hold too. */
  private void remedies(Finding finding) {
    List<Remedy> remedies = finding.remedies();
    if (remedies.isEmpty()) {
      return;
    }
    Remedy first = remedies.get(0);
    String label = first.isSetting() ? "change" : "work";
    first.changes().forEach(change -> line(label, change(change)));
    line("tried", tables ? ProofWords.besideTable(finding, first) : ProofWords.of(finding, first));
    remedies.stream()
        .skip(1)
        .limit(MOST_OTHERS)
        .forEach(other -> line("or", ProofWords.shortly(other)));
  }

  static String name(Check check) {
    return check.name() + (check.isHouse() ? " (house rule)" : "");
  }

  private String places(List<Pointer> pointers) {
    return pointers.stream()
        .map(this::place)
        .flatMap(Optional::stream)
        .collect(Collectors.joining(", "));
  }

  private Optional<String> place(Pointer pointer) {
    return report.written(pointer).map(value -> pointer.dotted() + " " + value + line(pointer));
  }

  private String line(Pointer pointer) {
    String from = report.sheet(pointer).map(sheet -> "from " + sheet + ", ").orElse("");
    return report
        .place(pointer)
        .map(Place::line)
        .map(line -> " (" + from + "line " + line + ")")
        .orElse("");
  }

  private static String observed(@Nullable Measure measure) {
    return measure == null ? "" : Words.withUnit(measure) + ", " + measure.quantity();
  }

  private static String limit(@Nullable Bound bound) {
    if (bound == null) {
      return "";
    }
    boolean sourced = !bound.source().equals("none") && !bound.source().equals(Bound.THIS_SETUP);
    boolean assumed = bound.known().equals(Bound.ASSUMED);
    int remark = bound.known().indexOf("; ");
    return Words.withUnit(bound.measure())
        + ", "
        + bound.measure().quantity()
        + " ("
        + bound.name()
        + (sourced ? ": " + bound.source() : "")
        + (assumed ? ", assumed" : "")
        + (remark < 0 ? "" : bound.known().substring(remark))
        + ")";
  }

  private static List<Measure> measures(Detail detail) {
    List<Measure> measures = new ArrayList<>(detail.evidence());
    if (detail.observed() != null) {
      measures.add(detail.observed());
    }
    if (detail.limit() != null) {
      measures.add(detail.limit().measure());
    }
    return measures;
  }

  /** A change on one line with others. */
  static String inline(Change change) {
    return change(change).replace("   ", " ");
  }

  static String change(Change change) {
    String from = change.from() == null ? "missing" : Words.value(change.from());
    return change.pointer().dotted() + "   " + from + " -> " + Words.value(change.to());
  }

  private String method(Finding finding) {
    List<Assumption> assumed = finding.provenance().assumed();
    return finding.detail().basis()
        + fromSheets(finding)
        + (assumed.isEmpty() ? "" : "; assumed " + assumptions(assumed));
  }

  /** The values of the data sheets that the finding rests on. */
  private String fromSheets(Finding finding) {
    List<Pointer> grounds = finding.provenance().entered();
    return report.sheets().stream()
        .map(sheet -> fromSheet(sheet, report.takenFrom(sheet).stream().filter(grounds::contains)))
        .collect(Collectors.joining());
  }

  private static String fromSheet(DataSheet sheet, Stream<Pointer> values) {
    String named = values.map(Pointer::dotted).collect(Collectors.joining(", "));
    return named.isEmpty() ? "" : "; from " + sheet + ": " + named;
  }

  static String assumptions(List<Assumption> assumptions) {
    return assumptions.stream()
        .map(assumed -> assumed.pointer().dotted() + " " + Words.value(assumed.value()))
        .collect(Collectors.joining(", "));
  }

  static String accepted(@Nullable Accepted entry) {
    if (entry == null) {
      return "";
    }
    return entry.reason().optional().orElse("")
        + entry.by().optional().map(by -> ", by " + by).orElse("")
        + entry.on().optional().map(on -> ", on " + on).orElse("")
        + entry.until().optional().map(until -> ", until " + until).orElse("");
  }

  /** The findings that are cleared with this one. */
  private String consequences(Finding cause) {
    return judgement.findings().stream()
        .filter(finding -> cause.key().equals(finding.causedBy()))
        .map(
            finding ->
                judgement.rank(finding.key())
                    + " "
                    + finding.consequence().word()
                    + " "
                    + finding.check().name())
        .collect(Collectors.joining(", "));
  }
}
