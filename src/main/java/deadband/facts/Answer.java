package deadband.facts;

import deadband.provenance.Derived;
import deadband.provenance.Provenance;

/**
 * Yes, no or open, as a rule reads it: {@code isYes} and {@code isNo} say what holds in the reading
 * in force, so that both hold at best of an open one, and neither surely.
 */
public final class Answer {

  private final Derived<Boolean> truth;
  private final Stance stance;

  public Answer(Derived<Boolean> truth, Stance stance) {
    this.truth = truth;
    this.stance = stance;
  }

  public boolean isYes() {
    return holds(true);
  }

  public boolean isNo() {
    return holds(false);
  }

  private boolean holds(boolean wanted) {
    return stance.opens(truth.isKnown(), truth.isAssumed())
        ? stance.holdsOpen()
        : truth.get() == wanted;
  }

  /** Whether it is known, be it by a default, and this. */
  public boolean isKnownToBe(boolean wanted) {
    return truth.is(is -> is == wanted);
  }

  /** Whether it is the same, and rests on the same. */
  public boolean isLike(Answer other) {
    Provenance one = provenance();
    Provenance two = other.provenance();
    return truth.isKnown() == other.truth.isKnown()
        && (!truth.isKnown() || truth.get().equals(other.truth.get()))
        && stance.equals(other.stance)
        && one.missing().equals(two.missing())
        && one.assumed().equals(two.assumed())
        && one.entered().equals(two.entered());
  }

  public Provenance provenance() {
    return truth.provenance();
  }

  @Override
  public String toString() {
    return truth.toString();
  }
}
