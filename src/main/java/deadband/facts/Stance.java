package deadband.facts;

import static deadband.facts.Reading.SURELY;
import static deadband.facts.Reading.WITHOUT_DEFAULTS;

import java.util.concurrent.atomic.AtomicReference;

/**
 * Whether the values of one fact are open, in the reading in force for the facts of its setup.
 *
 * @param reading in force; shared by all facts of a setup
 * @param unprovenIfFound whether something is missing without which a match proves nothing
 * @param unprovenIfClear whether something is missing without which its absence proves nothing
 */
public record Stance(
    AtomicReference<Reading> reading, boolean unprovenIfFound, boolean unprovenIfClear) {

  /** Whether a value may be anything, in the reading in force. */
  public boolean opens(boolean known, boolean assumed) {
    Reading now = reading.getPlain();
    return !known
        || (now == SURELY ? unprovenIfFound : unprovenIfClear)
        || (now == WITHOUT_DEFAULTS && assumed);
  }

  /** What a comparison with an open value comes to. */
  public boolean holdsOpen() {
    return reading.getPlain() != SURELY;
  }
}
