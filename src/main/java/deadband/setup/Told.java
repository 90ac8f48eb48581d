package deadband.setup;

import deadband.document.Pointer;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One value of the setup file, told or not, that knows its place.
 *
 * <p>Nothing here turns "not told" into a value: whoever asks must look at {@link #isTold()} or at
 * the {@link #optional()}. The documented default, where there is one, travels along so that a use
 * of it can be named.
 *
 * @param pointer where the value stands, or would stand
 * @param value what is told, null where nothing is
 * @param assumed the documented default, null where there is none
 */
public record Told<T>(Pointer pointer, @Nullable T value, @Nullable Default<T> assumed) {

  /** A value whose type the described shape vouches for. */
  @SuppressWarnings("unchecked")
  static Told<?> of(Pointer pointer, @Nullable Object value, @Nullable Default<?> assumed) {
    return new Told<>(pointer, value, (Default<Object>) assumed);
  }

  public boolean isTold() {
    return value != null;
  }

  public Optional<T> optional() {
    return Optional.ofNullable(value);
  }

  /** True where the value is told and is this one. */
  public boolean says(T expected) {
    return expected.equals(value);
  }
}
