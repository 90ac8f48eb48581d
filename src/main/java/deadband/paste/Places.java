package deadband.paste;

import deadband.document.Pointer;
import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Setup;
import deadband.setup.Shape;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The places of a setup file as they are named in it: relay.start_kW, /tank/volume_L. */
final class Places {

  /** A value of the described shape. */
  record Found(Pointer pointer, FieldKind kind) {}

  private Places() {}

  static boolean isKnown(String written) {
    return find(written).isPresent();
  }

  /** The value named with its sections, with points or slashes between them. */
  static Optional<Found> find(String written) {
    boolean whole = written.indexOf('.') >= 0 || written.indexOf('/') >= 0;
    return whole
        ? at(Pointer.parse("/" + written.replaceAll("^/", "").replace('.', '/')))
        : Optional.empty();
  }

  /** The kind of value at a place of the setup file; empty where it has none. */
  static Optional<Found> at(Pointer pointer) {
    FieldKind kind = new FieldKind.Section(Setup.class);
    for (String token : pointer.tokens()) {
      FieldKind next = next(kind, token);
      if (next == null) {
        return Optional.empty();
      }
      kind = next;
    }
    return Optional.of(new Found(pointer, kind));
  }

  private static @Nullable FieldKind next(FieldKind kind, String token) {
    if (kind instanceof FieldKind.Section section) {
      boolean fitted = section.shape().isEquipment() && token.equals(Shape.FITTED);
      return fitted
          ? new FieldKind.Flag()
          : section.shape().field(token).map(Field::kind).orElse(null);
    }
    boolean item = kind instanceof FieldKind.Many && token.matches("\\d{1,2}");
    return item ? ((FieldKind.Many) kind).of() : null;
  }
}
