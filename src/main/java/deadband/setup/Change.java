package deadband.setup;

import deadband.document.Pointer;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One value of a setup set to another.
 *
 * @param pointer the value
 * @param from what was entered, null where nothing was
 * @param to what it is set to: a {@code Double}, {@code Boolean}, {@link Choice} or list of these
 */
public record Change(Pointer pointer, @Nullable Object from, Object to) {

  /** The change that sets this value. */
  public static <T> Change of(Entered<T> entered, T to) {
    return new Change(entered.pointer(), entered.value(), to);
  }

  /** The setup with this value in place; nothing else differs. */
  public Setup applyTo(Setup setup) {
    return (Setup) set(setup, setup.part(), pointer.tokens());
  }

  /**
   * Whether the value can stand in this setup's file: a number within the range of its field, in no
   * section that is said not to be fitted; an input with nothing on it may still be assigned.
   */
  public boolean fits(Setup setup) {
    Object held = setup;
    Field last = null;
    boolean listed = false;
    for (String token : pointer.tokens()) {
      if (held instanceof Entered<?> entered) {
        held = entered.value();
      }
      if (held instanceof List<?> items) {
        held = items.get(Integer.parseInt(token));
        listed = true;
      } else if (held instanceof Record section) {
        Shape shape = Shape.of(section.getClass());
        if (shape.part(section).isFitted().says(false) && !listed) {
          return false;
        }
        last = shape.field(token).orElseThrow(this::unknown);
        held = shape.get(section, last);
      }
    }
    return last == null
        || !(last.kind() instanceof FieldKind.Num range)
        || (to instanceof Double number && range.admits(number));
  }

  /** What a setup tells at a place, null where nothing. */
  public static @Nullable Object entered(Setup setup, Pointer pointer) {
    Object held = setup;
    for (String token : pointer.tokens()) {
      if (held instanceof Entered<?> entered) {
        held = entered.value();
      }
      if (held instanceof List<?> items) {
        int index = Integer.parseInt(token);
        held = index < items.size() ? items.get(index) : null;
      } else if (held instanceof Record section) {
        Shape shape = Shape.of(section.getClass());
        held = shape.get(section, shape.field(token).orElseThrow());
      } else {
        return null;
      }
    }
    return held instanceof Entered<?> entered ? entered.value() : held;
  }

  /** The setup with all of these in place. */
  public static Setup all(List<Change> changes, Setup setup) {
    Setup changed = setup;
    for (Change change : changes) {
      changed = change.applyTo(changed);
    }
    return changed;
  }

  private Record set(Record section, Part part, List<String> path) {
    Shape shape = Shape.of(section.getClass());
    Field field = shape.field(path.get(0)).orElseThrow(this::unknown);
    Object held = shape.get(section, field);
    Part entered = new Part(part.pointer(), true, part.fitted());
    return shape.replacing(section, entered, field, set(held, path.subList(1, path.size()), field));
  }

  private Object set(Object held, List<String> path, Field field) {
    if (held instanceof Record section && !(held instanceof Entered)) {
      return set(section, partOf(section), path);
    }
    Entered<?> entered = (Entered<?>) held;
    if (path.isEmpty()) {
      return Entered.of(entered.pointer(), to, field.assumed());
    }
    return Entered.of(entered.pointer(), setWithin(entered.value(), path), field.assumed());
  }

  private Object setWithin(@Nullable Object value, List<String> path) {
    if (!(value instanceof List<?> items)) {
      throw unknown();
    }
    List<Object> changed = new ArrayList<>(items);
    int index = Integer.parseInt(path.get(0));
    Record item = (Record) changed.get(index);
    changed.set(index, set(item, partOf(item), path.subList(1, path.size())));
    return List.copyOf(changed);
  }

  private static Part partOf(Record section) {
    return Shape.of(section.getClass()).part(section);
  }

  private IllegalArgumentException unknown() {
    return new IllegalArgumentException("no such value in a setup: " + pointer);
  }
}
