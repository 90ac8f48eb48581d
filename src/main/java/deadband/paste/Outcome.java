package deadband.paste;

import deadband.document.Pointer;
import java.util.List;
import java.util.Optional;

/** What came of a label and a value. */
sealed interface Outcome {

  /**
   * One value, beyond doubt.
   *
   * @param value empty where it is said not to be known
   */
  record Taken(Pointer pointer, Optional<Object> value, String unit) implements Outcome {}

  /** Several are possible. */
  record Ask(List<String> choices) implements Outcome {}

  /** None is. */
  record None() implements Outcome {}

  default boolean isNone() {
    return this instanceof None;
  }
}
