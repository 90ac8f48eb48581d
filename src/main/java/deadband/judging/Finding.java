package deadband.judging;

import deadband.document.Pointer;
import deadband.facts.Bound;
import deadband.facts.Detail;
import deadband.facts.Measure;
import deadband.facts.Size;
import deadband.limits.LimitOverride;
import deadband.provenance.Provenance;
import deadband.setup.Accepted;
import deadband.setup.Change;
import deadband.setup.ChangeKind;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A violation, with all that a report says of it.
 *
 * @param check that found it
 * @param consequence its class here: a hazard that rests on an assumption, or on a limit that is
 *     not firm, is a query
 * @param subject the thing it is about
 * @param detail where, how much, and what would cure it
 * @param provenance where its numbers come from
 * @param answer what there is to do about it, and whether that is needed
 */
public record Finding(
    Check check,
    Consequence consequence,
    Pointer subject,
    Detail detail,
    Provenance provenance,
    Answer answer) {

  /** Sizes that differ by less are the same, rounded otherwise. */
  private static final double SAME_SIZE = 1e-6;

  /** What tells one finding from another. */
  public record Key(String check, Pointer subject) {}

  /**
   * What is known of a finding once remedies were tried, causes linked and acceptances read.
   *
   * @param remedies what proved to cure it, the one to take first; empty where nothing did
   * @param causedBy the finding whose cure makes this one go away too, null where there is none
   * @param accepted the entry that accepts it, null where it is open
   */
  public record Answer(List<Remedy> remedies, @Nullable Key causedBy, @Nullable Accepted accepted) {
    static final Answer NONE = new Answer(List.of(), null, null);
  }

  /** A finding of which nothing more is known yet. */
  Finding(
      Check check, Consequence consequence, Pointer subject, Detail detail, Provenance provenance) {
    this(check, consequence, subject, detail, provenance, Answer.NONE);
  }

  /** What proved to cure it, the one to take first; empty where nothing did. */
  public List<Remedy> remedies() {
    return answer.remedies;
  }

  /** The finding whose cure makes this one go away too; null where there is none. */
  public @Nullable Key causedBy() {
    return answer.causedBy;
  }

  /** The entry that accepts it; null where it is open. */
  public @Nullable Accepted accepted() {
    return answer.accepted;
  }

  public Key key() {
    return new Key(check.name(), subject);
  }

  /** How large it is. */
  public Size size() {
    return detail.size();
  }

  /** The changes of the remedy to take; empty where nothing proved to cure it. */
  public List<Change> changes() {
    return remedies().isEmpty() ? List.of() : remedies().get(0).changes();
  }

  /** What came of trying them; null where there are none. */
  public @Nullable Proof proof() {
    return remedies().isEmpty() ? null : remedies().get(0).proof();
  }

  /** How far its remedy can be trusted; without one, what it takes to clear it. */
  public Trust trust() {
    if (!remedies().isEmpty()) {
      return remedies().get(0).trust();
    }
    boolean byHand =
        detail.at().stream()
            .findFirst()
            .map(ChangeKind::of)
            .filter(kind -> kind == ChangeKind.WORK_ON_SITE)
            .isPresent();
    return byHand ? Trust.WORK_ON_SITE : Trust.NEEDS_INPUT;
  }

  /** Whether it still counts for the verdict. */
  public boolean isOpen() {
    return accepted() == null;
  }

  /** Whether it is of a worse class than the same finding was, or larger in its own class. */
  boolean isWorseThan(Finding other) {
    int byClass = consequence.compareTo(other.consequence);
    return byClass < 0 || (byClass == 0 && size().severity() > other.size().severity() + SAME_SIZE);
  }

  /** Whether nothing in it was assumed. */
  boolean isCertain() {
    return !provenance.restsOnDefaults();
  }

  /**
   * This finding, linked to another as its cause where curing the other takes it away too.
   *
   * @param after the outcomes once the other is cured
   */
  Finding linkedTo(Finding other, Outcomes after) {
    boolean caused =
        causedBy() == null && check.causes().contains(other.check().name()) && after.isSilent(this);
    return caused ? causedBy(other.key()) : this;
  }

  /** This finding with those of the measures that its page quotes as a day's story. */
  Finding withEvidence(List<Measure> onDays) {
    Set<String> quoted = onDays.isEmpty() ? Set.of() : RulePage.of(check).quotedOfDays();
    List<Measure> more =
        onDays.stream().filter(measure -> quoted.contains(measure.quantity())).toList();
    return more.isEmpty() ? this : as(consequence, detail.withEvidence(more));
  }

  /** This hazard as a query: it is one by the rule book, and a site lets more of it pass. */
  Finding passedBy(List<LimitOverride> weakened) {
    String named =
        weakened.stream()
            .filter(override -> isHeldBy(override) || weakened.stream().noneMatch(this::isHeldBy))
            .map(LimitOverride::words)
            .collect(Collectors.joining("; "));
    return as(
        Consequence.QUERY,
        detail.withBasis(
            detail.basis() + "; a hazard by the rule book, whose limit is loosened: " + named));
  }

  private boolean isHeldBy(LimitOverride override) {
    Bound limit = detail.limit();
    return limit != null && limit.name().equals(override.limit().entry().name());
  }

  Finding causedBy(@Nullable Key cause) {
    return with(new Answer(answer.remedies, cause, answer.accepted));
  }

  Finding curedBy(List<Remedy> proven) {
    return with(new Answer(proven, answer.causedBy, answer.accepted));
  }

  Finding accepted(Accepted entry) {
    return with(new Answer(answer.remedies, answer.causedBy, entry));
  }

  private Finding with(Answer other) {
    return new Finding(check, consequence, subject, detail, provenance, other);
  }

  private Finding as(Consequence other, Detail more) {
    return new Finding(check, other, subject, more, provenance, answer);
  }
}
