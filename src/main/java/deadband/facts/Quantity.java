package deadband.facts;

import deadband.provenance.Derived;

/**
 * A number, or an open one, as a rule reads it: a comparison with an open number holds at best and
 * never surely. Comparisons are of numbers in the same unit, as their names say.
 */
public final class Quantity {

  private final Derived<? extends Number> number;
  private final Stance stance;

  public Quantity(Derived<? extends Number> number, Stance stance) {
    this.number = number;
    this.stance = stance;
  }

  /** The same number and so much more. */
  public Quantity plus(double more) {
    return new Quantity(number.map(it -> it.doubleValue() + more), stance);
  }

  public boolean isAbove(Quantity other) {
    return isOpenBeside(other) ? stance.holdsOpen() : value() > other.value();
  }

  public boolean isAtLeast(Quantity other) {
    return isOpenBeside(other) ? stance.holdsOpen() : value() >= other.value();
  }

  public boolean isBelow(Quantity other) {
    return other.isAbove(this);
  }

  public boolean isAtMost(Quantity other) {
    return other.isAtLeast(this);
  }

  public boolean isAbove(double limit) {
    return isOpen() ? stance.holdsOpen() : value() > limit;
  }

  public boolean isAtLeast(double limit) {
    return isOpen() ? stance.holdsOpen() : value() >= limit;
  }

  public boolean isBelow(double limit) {
    return isOpen() ? stance.holdsOpen() : value() < limit;
  }

  public boolean isAtMost(double limit) {
    return isOpen() ? stance.holdsOpen() : value() <= limit;
  }

  private boolean isOpenBeside(Quantity other) {
    return isOpen() || other.isOpen();
  }

  private boolean isOpen() {
    return stance.opens(number.isKnown(), number.isAssumed());
  }

  private double value() {
    return number.get().doubleValue();
  }

  @Override
  public String toString() {
    return number.toString();
  }
}
