package deadband.cli;

import deadband.document.NearestName;
import deadband.document.Pointer;
import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Setup;
import deadband.setup.Shape;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Whether a place that was typed is one that a setup file has. */
final class KnownPlace {

  private KnownPlace() {}

  /**
   * What is wrong with a place, in words, with the nearest that is known; empty where nothing is.
   *
   * @param dotted whether it was typed with dots
   */
  static Optional<String> slip(Pointer place, boolean dotted) {
    FieldKind kind = new FieldKind.Section(Setup.class);
    Pointer passed = Pointer.root();
    for (String token : place.tokens()) {
      FieldKind next = next(kind, token);
      if (next == null) {
        return Optional.of("no such value in a setup" + nearest(kind, passed, token, dotted));
      }
      kind = next;
      passed = passed.child(token);
    }
    return Optional.empty();
  }

  private static @Nullable FieldKind next(FieldKind kind, String token) {
    if (kind instanceof FieldKind.Section section) {
      boolean fitted = section.shape().isEquipment() && token.equals(Shape.FITTED);
      return fitted
          ? new FieldKind.Flag()
          : section.shape().field(token).map(Field::kind).orElse(null);
    }
    boolean item = kind instanceof FieldKind.Many && token.matches("\\d{1,9}");
    return item ? ((FieldKind.Many) kind).of() : null;
  }

  private static String nearest(FieldKind kind, Pointer passed, String token, boolean dotted) {
    List<String> names =
        kind instanceof FieldKind.Section section ? section.shape().names() : List.of();
    return NearestName.of(token, names)
        .map(passed::child)
        .map(near -> "; nearest: " + (dotted ? near.dotted() : near.toString()))
        .orElse("");
  }
}
