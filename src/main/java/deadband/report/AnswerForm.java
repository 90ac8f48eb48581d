package deadband.report;

import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Question;
import deadband.setup.Unit;
import org.jspecify.annotations.Nullable;

/** In what form the answer to a question is given: unit and range, choices, what is usual. */
public final class AnswerForm {

  private AnswerForm() {}

  /** For a setup file. */
  static String inFile(Question question) {
    FieldKind kind = question.field().kind();
    if (kind instanceof FieldKind.Section) {
      return "{ \"fitted\": false } where there is none, else its values";
    }
    if (kind instanceof FieldKind.Many many) {
      FieldKind.Word words = words(many);
      return words == null
          ? "[ { \"at\": \"bath\", \"blended\": true, \"mixed_C\": 41 }, ... ]"
          : "[ ] of: " + String.join(", ", words.words());
    }
    return of(kind, "true | false") + usual(question);
  }

  /** For whoever types it. */
  public static String typed(Question question) {
    FieldKind kind = question.field().kind();
    return kind instanceof FieldKind.Many many
        ? items(many.of()) + ", separated by commas, or none" + usual(question)
        : of(kind, "yes | no") + usual(question);
  }

  /** What is typed of each item; of a section, its first value. */
  private static String items(FieldKind kind) {
    if (kind instanceof FieldKind.Section section) {
      Field first = section.shape().fields().get(0);
      return first.means() + ": " + of(first.kind(), "");
    }
    return of(kind, "");
  }

  private static FieldKind.@Nullable Word words(FieldKind.Many many) {
    return many.of() instanceof FieldKind.Word words ? words : null;
  }

  private static String usual(Question question) {
    return question.usual().isEmpty() ? "" : "; usual: " + question.usual();
  }

  private static String of(FieldKind kind, String flag) {
    if (kind instanceof FieldKind.Num number) {
      String unit = number.unit() == Unit.NONE ? "" : " " + number.unit().printed();
      return Words.number(number.least()) + " to " + Words.number(number.most()) + unit;
    }
    if (kind instanceof FieldKind.Word word) {
      return String.join(" | ", word.words());
    }
    return kind instanceof FieldKind.Text text ? text.form() + ", such as " + text.example() : flag;
  }
}
