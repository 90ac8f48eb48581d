package deadband.report;

import deadband.document.Place;
import deadband.judging.Check;
import deadband.judging.ClearOnAssumption;
import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.Proof;
import deadband.judging.Remedy;
import deadband.judging.RulePage;
import deadband.limits.Limits;
import deadband.setup.Accepted;
import deadband.setup.Change;
import deadband.setup.Setup;
import deadband.setup.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Gathers what the record of a job shows, in the order of its page. */
final class RecordParts {

  private static final String LIMITS = "Limits";

  private final JobRecord job;
  private final Report report;
  private final Judgement judgement;
  private final FindingLines lines;

  private RecordParts(JobRecord job) {
    this.job = job;
    this.report = job.report();
    this.judgement = report.judgement();
    this.lines = FindingLines.besideTables(report);
  }

  static RecordModel of(JobRecord job) {
    RecordParts parts = new RecordParts(job);
    DayPictures days = DayPictures.of(job);
    List<TankLadder.Rung> rungs = TankLadder.of(job.setup(), job.limits());
    return new RecordModel(
        PageStyle.sheet(job.title() + ": record"),
        job.title(),
        job.fileName(),
        parts.judgement.verdict().words(),
        parts.judgement.verdict().word(),
        TextReport.counts(parts.judgement),
        parts.after(),
        parts.findings(),
        parts.changes(),
        parts.noChange(),
        parts.tried(),
        parts.effect(),
        parts.work(),
        QuestionText.rows(parts.judgement),
        rungs.stream().map(RecordParts::rung).toList(),
        PageStyle.picture(size -> LadderPicture.of(rungs, size, "ladder-" + size.word())),
        days.days(),
        TextReport.days(parts.judgement),
        parts.assumed(),
        parts.judgement.overrides().stream().map(TextReport::override).toList(),
        Notes.of(parts.report),
        parts.limits(),
        Cautions.of(parts.report),
        parts.accepted(),
        new RecordModel.Made(
            parts.judgement.asOf().toString(),
            parts.judgement.edition(),
            job.tool(),
            job.sha256()));
  }

  /** How it stands with the settings proposed; empty where none are. */
  private String after() {
    return job.proposal().changes().isEmpty() ? "" : ProposalText.standing(job.proposal().after());
  }

  private List<RecordModel.Found> findings() {
    return judgement.findings().stream().map(this::found).toList();
  }

  private RecordModel.Found found(Finding finding) {
    return new RecordModel.Found(
        judgement.rank(finding.key()),
        id(finding),
        finding.consequence().word(),
        RulePage.of(finding.check()).says(),
        FindingLines.name(finding.check()),
        toDo(finding),
        lines.of(finding),
        effect(finding));
  }

  private String id(Finding finding) {
    return "finding-" + judgement.rank(finding.key());
  }

  /** What is to be done about it, in a few words. */
  private String toDo(Finding finding) {
    if (finding.accepted() != null) {
      return "accepted";
    }
    Finding.Key cause = finding.causedBy();
    if (cause != null) {
      return "cleared with " + judgement.rank(cause);
    }
    return finding.remedies().isEmpty()
        ? finding.trust().words()
        : finding.changes().stream().map(FindingLines::inline).collect(Collectors.joining(", "));
  }

  private List<RecordModel.Setting> changes() {
    return job.proposal().changes().stream().map(this::setting).toList();
  }

  private RecordModel.Setting setting(Change change) {
    return new RecordModel.Setting(
        change.pointer().dotted(),
        Shape.means(Setup.class, change.pointer()),
        report.place(change.pointer()).map(Place::line).map(String::valueOf).orElse("-"),
        change.from() == null ? "missing" : Words.shown(change.pointer(), change.from()),
        Words.shown(change.pointer(), change.to()));
  }

  private String noChange() {
    return judgement.findings().isEmpty()
        ? "None: nothing was found."
        : "No change of settings that can be calculated brings it closer to sign-off.";
  }

  private String tried() {
    return job.proposal()
        .proof()
        .map(proof -> tried(proof, ProposalText.trust(job.proposal(), proof)))
        .orElse("");
  }

  /** What the settings proposed change together; left out where a finding shows the same. */
  private List<Quantity> effect() {
    List<Quantity> all =
        job.proposal().proof().map(proof -> Quantity.of(proof.effect())).orElse(List.of());
    return judgement.findings().stream().map(RecordParts::effect).anyMatch(all::equals)
        ? List.of()
        : all;
  }

  /** What its first remedy changes; one that is cleared with another has none of its own. */
  private static List<Quantity> effect(Finding finding) {
    return finding.causedBy() != null || finding.remedies().isEmpty()
        ? List.of()
        : Quantity.of(finding.remedies().get(0).proof().effect());
  }

  private static String tried(Proof proof, String trust) {
    String clears = String.join(", ", proof.clears());
    return trust
        + "; clears "
        + (clears.isEmpty() ? "no finding" : clears)
        + ProofWords.costsBesideTable(proof);
  }

  /** What no setting cures: work that a remedy names, or values that only the site can say. */
  private List<RecordModel.Work> work() {
    List<RecordModel.Work> all = new ArrayList<>();
    for (Finding finding : judgement.findings()) {
      if (finding.causedBy() == null && finding.isOpen()) {
        work(finding)
            .ifPresent(
                what ->
                    all.add(
                        new RecordModel.Work(
                            judgement.rank(finding.key()),
                            id(finding),
                            RulePage.of(finding.check()).says(),
                            what)));
      }
    }
    return all;
  }

  private static Optional<String> work(Finding finding) {
    if (finding.remedies().isEmpty()) {
      String cure = RulePage.of(finding.check()).cure().replace("`", "");
      String values =
          finding.detail().at().stream().map(Words::named).collect(Collectors.joining("; "));
      return Optional.of(cure.isEmpty() ? "check and enter: " + values : cure);
    }
    Remedy first = finding.remedies().get(0);
    return first.isSetting() ? Optional.empty() : Optional.of(ProofWords.shortly(first));
  }

  private static RecordModel.Rung rung(TankLadder.Rung rung) {
    return new RecordModel.Rung(
        rung.device(), rung.kind().word(), rung.temperature(), rung.source());
  }

  private List<RecordModel.Assumed> assumed() {
    return judgement.assumptions().stream()
        .map(
            each ->
                new RecordModel.Assumed(
                    each.pointer().dotted(),
                    Shape.means(Setup.class, each.pointer()),
                    Words.value(each.value()),
                    each.basis()))
        .toList();
  }

  /** The limits that the pages of the checks judged here name. */
  private List<RecordModel.LimitRow> limits() {
    Set<String> used = new TreeSet<>();
    judged().forEach(check -> used.addAll(namedOn(RulePage.of(check))));
    return job.limits().entries().stream()
        .filter(entry -> used.contains(entry.name()))
        .map(RecordParts::row)
        .toList();
  }

  private Stream<Check> judged() {
    return Stream.of(
            judgement.findings().stream().map(Finding::check),
            judgement.clear().stream(),
            judgement.clearOnAssumption().stream().map(ClearOnAssumption::check))
        .flatMap(checks -> checks);
  }

  private static List<String> namedOn(RulePage page) {
    return page.sections()
        .getOrDefault(LIMITS, "")
        .lines()
        .filter(line -> line.startsWith("|"))
        .map(line -> line.substring(1).split("\\|", -1)[0].replace("`", "").strip())
        .toList();
  }

  private static RecordModel.LimitRow row(Limits.Entry entry) {
    return new RecordModel.LimitRow(
        entry.name(),
        Words.withUnit(entry.value(), entry.unit().printed()),
        entry.what(),
        entry.source().equals("none") ? "-" : entry.source(),
        entry.known().words());
  }

  private List<RecordModel.Accepted> accepted() {
    return Stream.concat(
            judgement.findings().stream()
                .filter(finding -> finding.accepted() != null)
                .map(finding -> accepted(finding.check(), finding.accepted())),
            judgement.notJudged().stream()
                .filter(open -> open.accepted() != null)
                .map(open -> accepted(open.check(), open.accepted())))
        .toList();
  }

  private static RecordModel.Accepted accepted(Check check, @Nullable Accepted entry) {
    Accepted by = Objects.requireNonNull(entry);
    return new RecordModel.Accepted(
        check.name(),
        RulePage.of(check).says(),
        by.reason().optional().orElse(""),
        by.by().optional().orElse(""),
        by.on().optional().map(Object::toString).orElse(""),
        by.until().optional().map(Object::toString).orElse("no end"));
  }
}
