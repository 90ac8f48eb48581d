package deadband.facts;

/**
 * A condition that says whether a thing is there; where it is not, a check about it is not made.
 */
public interface Presence extends Condition {

  default boolean isAbsent() {
    return answer().isKnownToBe(false);
  }
}
