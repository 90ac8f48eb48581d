package deadband.setup;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What kind of value a field of the setup file holds. */
public sealed interface FieldKind {

  /**
   * A number in a unit.
   *
   * @param least least value that can physically be
   * @param most greatest value that can physically be
   * @param whole whether only whole numbers make sense
   */
  record Num(Unit unit, double least, double most, boolean whole) implements FieldKind {

    public boolean admits(double value) {
      return least <= value && value <= most && (!whole || value == Math.rint(value));
    }
  }

  /** True or false. */
  record Flag() implements FieldKind {}

  /** One word out of a closed set. */
  record Word(List<Choice> choices, List<String> words) implements FieldKind {

    Word(List<Choice> choices) {
      this(choices, choices.stream().map(Choice::word).toList());
    }

    public Optional<Choice> of(String word) {
      int at = words.indexOf(word);
      return at < 0 ? Optional.empty() : Optional.of(choices.get(at));
    }
  }

  /**
   * A text of a certain form.
   *
   * @param form what the text is, in words
   * @param pattern regular expression of the form, empty where any text will do
   * @param example a text of this form
   * @param parse reads the text; empty where it is not of the form
   */
  record Text(String form, String pattern, String example, Function<String, Optional<?>> parse)
      implements FieldKind {}

  /** A section with fields of its own. */
  record Section(Class<? extends Record> type) implements FieldKind {

    public Shape shape() {
      return Shape.of(type);
    }
  }

  /** Several of one kind. */
  record Many(FieldKind of) implements FieldKind {}
}
