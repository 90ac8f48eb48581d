package deadband.paste;

import deadband.document.Literal;
import deadband.document.NearestName;
import deadband.setup.Choice;
import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Question;
import deadband.setup.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is typed in answer to one question, read by the grammar of pasted values.
 *
 * <p>Whether the value is possible is for the reader of the setup to say.
 */
public sealed interface Answer {

  /** A value, as it is written in the file. */
  record Value(Literal json) implements Answer {}

  /** It is not known. */
  record Unknown() implements Answer {}

  /**
   * No answer.
   *
   * @param right what would be one
   */
  record Wrong(String right) implements Answer {}

  static Answer of(Question question, String typed) {
    if (typed.isBlank() || Written.isUnknown(typed)) {
      return new Unknown();
    }
    if (question.isOfPresence()) {
      return yesOrNo(typed);
    }
    return question.field().kind() instanceof FieldKind.Many many
        ? several(question, many.of(), typed)
        : one(question, question.field().kind(), typed.strip());
  }

  private static Answer one(Question question, FieldKind kind, String typed) {
    if (kind instanceof FieldKind.Num number) {
      return number(number.unit(), typed);
    }
    if (kind instanceof FieldKind.Word word) {
      return word(question, word, typed);
    }
    return kind instanceof FieldKind.Text text ? text(text, typed) : yesOrNo(typed);
  }

  private static Answer yesOrNo(String typed) {
    return Written.yesOrNo(typed)
        .<Answer>map(yes -> new Value(Literal.of(yes)))
        .orElseGet(() -> new Wrong("yes or no"));
  }

  private static Answer number(Unit unit, String typed) {
    Written.Figure figure = Written.number(typed, unit).orElse(null);
    if (figure instanceof Written.Figure.One one) {
      return new Value(Literal.of(one.value()));
    }
    if (figure instanceof Written.Figure.Either either) {
      return new Wrong(
          Resolver.plain(either.decimal())
              + " or "
              + Resolver.plain(either.thousands())
              + ": type the one that is meant without a comma");
    }
    if (figure instanceof Written.Figure.Range range) {
      return new Wrong(
          "one number: " + Resolver.plain(range.from()) + " or " + Resolver.plain(range.to()));
    }
    return new Wrong(("a number, " + unit.printed()).replaceFirst(", $", ""));
  }

  private static Answer word(Question question, FieldKind.Word kind, String typed) {
    Optional<String> known =
        kind.words().stream().filter(word -> NearestName.isSame(typed, word)).findFirst();
    Optional<String> synonym =
        Vocabulary.all()
            .entry(question.pointer())
            .map(entry -> entry.words().get(Vocabulary.plain(typed)))
            .map(value -> value instanceof Choice choice ? choice.word() : value.toString());
    return known
        .or(() -> synonym)
        .<Answer>map(word -> new Value(Literal.of(word)))
        .orElseGet(() -> new Wrong("one of: " + String.join(" | ", kind.words())));
  }

  private static Answer text(FieldKind.Text kind, String typed) {
    boolean country = kind.form().startsWith("a country");
    String meant = country ? Written.country(typed).orElse(typed) : typed;
    return kind.parse().apply(meant).isPresent()
        ? new Value(Literal.of(meant))
        : new Wrong(kind.form() + ", such as " + kind.example());
  }

  /** Several values; of sections, the first value of each. */
  private static Answer several(Question question, FieldKind kind, String typed) {
    List<Literal> items = new ArrayList<>();
    boolean any = typed.strip().equalsIgnoreCase("any") && question.usual().equals("any");
    if (!any && !Written.yesOrNo(typed).equals(Optional.of(false))) {
      Field first = kind instanceof FieldKind.Section section ? first(section) : null;
      for (String item : Arrays.asList(typed.split("[,;]|\\band\\b", -1))) {
        Answer answer = one(question, first == null ? kind : first.kind(), item.strip());
        if (!(answer instanceof Value value)) {
          return answer;
        }
        items.add(
            first == null ? value.json() : Literal.section(Map.of(first.name(), value.json())));
      }
    }
    return new Value(Literal.list(items));
  }

  private static Field first(FieldKind.Section section) {
    return section.shape().fields().get(0);
  }
}
