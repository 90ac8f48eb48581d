package deadband.facts;

import static deadband.facts.Reading.SURELY;
import static deadband.facts.Reading.WITHOUT_DEFAULTS;

/**
 * Whether the values of one fact are open, in the reading in force.
 *
 * @param unprovenIfFound whether something is missing without which a match proves nothing
 * @param unprovenIfClear whether something is missing without which its absence proves nothing
 */
public record Stance(boolean unprovenIfFound, boolean unprovenIfClear) {

  /** Whether a value may be anything, in the reading in force. */
  public boolean opens(boolean known, boolean assumed) {
    if (!known || !(unprovenIfFound || unprovenIfClear || assumed)) {
      return !known;
    }
    Reading now = Reading.inForce();
    return (now == SURELY ? unprovenIfFound : unprovenIfClear)
        || (now == WITHOUT_DEFAULTS && assumed);
  }

  /** What a comparison with an open value comes to. */
  public boolean holdsOpen() {
    return Reading.inForce() != SURELY;
  }
}
