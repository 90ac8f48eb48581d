package deadband.setup;

import deadband.document.Pointer;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One value of the setup file, entered or not, that knows its place.
 *
 * <p>Nothing here turns "not entered" into a value: whoever asks must look at {@link #isEntered()}
 * or at the {@link #optional()}. The documented default, where there is one, travels along so that
 * a use of it can be named.
 *
 * @param pointer where the value stands, or would stand
 * @param value what is entered, null where nothing is
 * @param assumed the documented default, null where there is none
 */
public record Entered<T>(Pointer pointer, @Nullable T value, @Nullable Default<T> assumed) {

  /** A value whose type the described shape vouches for. */
  @SuppressWarnings("unchecked")
  static Entered<?> of(Pointer pointer, @Nullable Object value, @Nullable Default<?> assumed) {
    return new Entered<>(pointer, value, (Default<Object>) assumed);
  }

  @Override
  public @Nullable T value() {
    Reads.note(pointer);
    return value;
  }

  public boolean isEntered() {
    return value() != null;
  }

  public Optional<T> optional() {
    return Optional.ofNullable(value());
  }

  /** True where the value is entered and is this one. */
  public boolean says(T expected) {
    return expected.equals(value());
  }

  /** Whether the same is entered, wherever it stands. */
  boolean isLike(Entered<?> other) {
    return Objects.equals(value, other.value) && Objects.equals(assumed, other.assumed);
  }
}
