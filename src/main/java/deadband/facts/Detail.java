package deadband.facts;

import deadband.document.Pointer;
import deadband.setup.Change;
import deadband.setup.Entered;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a finding about a case will show: where, how much against what, and what would cure it. Made
 * only where a rule fires.
 *
 * @param at the values concerned, the one to change first
 * @param observed what was found, null where there is no number to it
 * @param limit what it was held against, null where there is none
 * @param size how much of it, for its rank
 * @param evidence quantities that explain it
 * @param cures sets of changes that may cure it, the best first; empty where none can be computed,
 *     and where the values set keep the limit: moving them across a tolerance is no remedy
 * @param basis how it was calculated
 */
public record Detail(
    List<Pointer> at,
    @Nullable Measure observed,
    @Nullable Bound limit,
    Size size,
    List<Measure> evidence,
    List<List<Change>> cures,
    String basis) {

  /** This detail with more to show. */
  public Detail withEvidence(List<Measure> more) {
    List<Measure> all = new ArrayList<>(evidence);
    all.addAll(more);
    return new Detail(at, observed, limit, size, List.copyOf(all), cures, basis);
  }

  /** The same, with more said of how it was calculated. */
  public Detail withBasis(String how) {
    return new Detail(at, observed, limit, size, evidence, cures, how);
  }

  /** The same, held against nothing: for a rule that has a limit of its own. */
  public Detail unlimited() {
    return new Detail(at, observed, null, size, evidence, cures, basis);
  }

  /** A detail about these values. */
  public static Builder at(Entered<?>... values) {
    Builder builder = new Builder();
    for (Entered<?> value : values) {
      builder.at.add(value.pointer());
    }
    return builder;
  }

  /** A detail about these places. */
  public static Builder at(Pointer... pointers) {
    Builder builder = new Builder();
    builder.at.addAll(List.of(pointers));
    return builder;
  }

  /** Collects a detail. */
  public static final class Builder {

    private final List<Pointer> at = new ArrayList<>();
    private final List<Measure> evidence = new ArrayList<>();
    private final List<List<Change>> cures = new ArrayList<>();
    private @Nullable Measure observed;
    private @Nullable Bound limit;
    private @Nullable Size size;
    private String basis = "comparison of the values entered";

    private Builder() {}

    public Builder observed(Measure measure) {
      observed = measure;
      return this;
    }

    public Builder limit(Bound bound) {
      limit = bound;
      return this;
    }

    /** How large it is, where the share by which the limit is missed does not say it. */
    public Builder size(Size own) {
      size = own;
      return this;
    }

    public Builder evidence(Measure... measures) {
      evidence.addAll(List.of(measures));
      return this;
    }

    /** One set of changes that may cure it; the first that proves to is the one shown. */
    public Builder cure(Change... changes) {
      cures.add(List.of(changes));
      return this;
    }

    public Builder cures(List<List<Change>> candidates) {
      cures.addAll(candidates);
      return this;
    }

    public Builder basis(String how) {
      basis = how;
      return this;
    }

    public Detail done() {
      boolean kept = limit != null && limit.byToleranceAlone();
      return new Detail(
          List.copyOf(at),
          observed,
          limit,
          size == null ? Size.missed(observed, limit) : size,
          List.copyOf(evidence),
          kept ? List.of() : List.copyOf(cures),
          basis);
    }
  }
}
