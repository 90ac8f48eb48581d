package deadband.judging;

import deadband.cases.Bound;
import deadband.cases.Detail;
import deadband.cases.LimitOverride;
import deadband.cases.Measure;
import deadband.cases.Provenance;
import deadband.document.Pointer;
import deadband.setup.Accepted;
import deadband.setup.Change;
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
 * @param changes what proved to cure it, empty where nothing did
 * @param proof what came of trying them, null where there are none
 * @param provenance where its numbers come from
 * @param causedBy the finding whose cure makes this one go away too, null where there is none
 * @param accepted the entry that accepts it, null where it is open
 */
public record Finding(
    Check check,
    Consequence consequence,
    Pointer subject,
    Detail detail,
    List<Change> changes,
    @Nullable Proof proof,
    Provenance provenance,
    @Nullable Key causedBy,
    @Nullable Accepted accepted) {

  /** What tells one finding from another. */
  public record Key(String check, Pointer subject) {}

  public Key key() {
    return new Key(check.name(), subject);
  }

  /** How large it is. */
  public Size size() {
    return Size.of(detail, check.consequence());
  }

  /** How far its remedy can be trusted. */
  public Trust trust() {
    return proof == null ? Trust.NEEDS_INPUT : proof.trust();
  }

  /** Whether it still counts for the verdict. */
  public boolean isOpen() {
    return accepted == null;
  }

  /** Whether nothing in it was assumed. */
  boolean isCertain() {
    return provenance.assumed().isEmpty();
  }

  /**
   * This finding, linked to another as its cause where curing the other takes it away too.
   *
   * @param after the outcomes once the other is cured
   */
  Finding linkedTo(Finding other, Outcomes after) {
    boolean caused =
        causedBy == null && check.causes().contains(other.check().name()) && after.isSilent(this);
    return caused
        ? new Finding(
            check, consequence, subject, detail, changes, proof, provenance, other.key(), accepted)
        : this;
  }

  /** This finding with those of the measures that its page quotes as a day's story. */
  Finding withEvidence(List<Measure> onDays) {
    Set<String> quoted = onDays.isEmpty() ? Set.of() : RulePage.of(check).quotedOfDays();
    List<Measure> more =
        onDays.stream().filter(measure -> quoted.contains(measure.quantity())).toList();
    return more.isEmpty()
        ? this
        : new Finding(
            check,
            consequence,
            subject,
            detail.withEvidence(more),
            changes,
            proof,
            provenance,
            causedBy,
            accepted);
  }

  /** This hazard as a query: it is one by the rule book, and a site lets more of it pass. */
  Finding passedBy(List<LimitOverride> weakened) {
    String named =
        weakened.stream()
            .filter(override -> isHeldBy(override) || weakened.stream().noneMatch(this::isHeldBy))
            .map(LimitOverride::words)
            .collect(Collectors.joining("; "));
    return new Finding(
        check,
        Consequence.QUERY,
        subject,
        detail.withBasis(
            detail.basis() + "; a hazard by the rule book, whose limit is loosened: " + named),
        changes,
        proof,
        provenance,
        causedBy,
        accepted);
  }

  private boolean isHeldBy(LimitOverride override) {
    Bound limit = detail.limit();
    return limit != null && limit.name().equals(override.limit().entry().name());
  }

  Finding causedBy(@Nullable Key cause) {
    return new Finding(
        check, consequence, subject, detail, changes, proof, provenance, cause, accepted);
  }

  Finding curedBy(List<Change> proven, Proof by) {
    return new Finding(
        check, consequence, subject, detail, proven, by, provenance, causedBy, accepted);
  }

  Finding accepted(Accepted entry) {
    return new Finding(
        check, consequence, subject, detail, changes, proof, provenance, causedBy, entry);
  }
}
