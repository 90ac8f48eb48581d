package deadband.setup;

import deadband.document.Pointer;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The section a record was read from: where it stands, and whether it is entered to be fitted.
 *
 * <p>A section that holds a value says that the thing is there; {@code "fitted": false} says that
 * it is not; a section that is missing, or holds nothing, says neither.
 *
 * @param pointer where the section stands, or would stand
 * @param entered whether the section holds any value
 * @param fitted what {@code fitted} says, null where it is not entered
 */
public record Part(Pointer pointer, boolean entered, @Nullable Boolean fitted) {

  @Override
  public boolean entered() {
    Reads.note(pointer);
    return entered;
  }

  @Override
  public @Nullable Boolean fitted() {
    Reads.note(pointer);
    return fitted;
  }

  /** Whether it says the same, wherever it stands. */
  boolean isLike(Part other) {
    return entered == other.entered && Objects.equals(fitted, other.fitted);
  }

  /** Whether the thing is there: true, false or not entered. */
  public Entered<Boolean> isFitted() {
    Reads.note(pointer);
    if (fitted != null) {
      return new Entered<>(pointer.child(Shape.FITTED), fitted, null);
    }
    return new Entered<>(pointer, entered ? Boolean.TRUE : null, null);
  }

  /** This part laid over another: what it says, else what the other says. */
  Part over(Part other) {
    boolean decides = fitted != null || (entered && Boolean.FALSE.equals(other.fitted));
    return decides ? this : new Part(other.pointer, entered || other.entered, other.fitted);
  }
}
