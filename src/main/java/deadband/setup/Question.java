package deadband.setup;

import deadband.document.Pointer;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The question to which a value of the setup file is the answer.
 *
 * @param pointer the value, or the section about a thing that may be there or not
 * @param field what it is
 * @param asks the question, in plain words
 */
public record Question(Pointer pointer, Field field, String asks) {

  private static final String IT = "{it}";

  /** The question about a place; empty where a setup has no such value. */
  public static Optional<Question> about(Pointer pointer) {
    Walk walk = new Walk();
    return pointer.tokens().stream().allMatch(walk::step)
        ? Optional.ofNullable(walk.field).map(field -> new Question(pointer, field, walk.asks()))
        : Optional.empty();
  }

  /** The way from the whole setup to one value. */
  private static final class Walk {
    private FieldKind kind = new FieldKind.Section(Setup.class);
    private @Nullable Field field;
    private String holder = "";
    private String entry = "";

    /** Goes on to what stands under a name or an index; whether there is such. */
    private boolean step(String token) {
      if (kind instanceof FieldKind.Many many) {
        kind = many.of();
        entry = token.matches("\\d{1,9}") ? " (entry " + (Integer.parseInt(token) + 1) + ")" : "";
        return !entry.isEmpty();
      }
      Field next =
          kind instanceof FieldKind.Section section
              ? section.shape().field(token).orElse(null)
              : null;
      if (next == null) {
        return false;
      }
      holder = field == null ? "" : field.means();
      field = next;
      kind = next.kind();
      return true;
    }

    private String asks() {
      return field == null ? "" : field.asked().value().replace(IT, holder) + entry;
    }
  }

  /** Where the answer is to be found. */
  public Asked.Where where() {
    return field.asked().where();
  }

  /** What is usual there; empty where nothing is. */
  public String usual() {
    return field.asked().usual();
  }

  /** Whether it is about a thing that may be there or not. */
  public boolean isOfPresence() {
    return field.kind() instanceof FieldKind.Section section && section.shape().isEquipment();
  }
}
