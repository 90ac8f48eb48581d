package deadband.report;

import static deadband.report.JsonText.object;

import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.setup.Unit;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The JSON Schema (draft 2020-12) of the setup file, made from the described shape. */
public final class SetupSchema {

  private static final Map<String, Object> NULL = object("type", "null");

  private SetupSchema() {}

  /** The schema, indented, without a line end. */
  public static String text() {
    Shape root = Shape.of(Setup.class);
    Map<String, Object> sections = new LinkedHashMap<>();
    for (Shape shape : reachable(root, new LinkedHashSet<>())) {
      sections.put(name(shape), section(shape));
    }
    return JsonText.of(
        object(
            "$schema",
            "https://json-schema.org/draft/2020-12/schema",
            "$id",
            "urn:deadband:setup:1",
            "title",
            "Deadband setup file, version 1",
            "$ref",
            reference(root),
            "$defs",
            sections));
  }

  private static Set<Shape> reachable(Shape shape, Set<Shape> found) {
    if (found.add(shape)) {
      shape.fields().forEach(field -> reachable(field.kind(), found));
    }
    return found;
  }

  private static void reachable(FieldKind kind, Set<Shape> found) {
    if (kind instanceof FieldKind.Section section) {
      reachable(section.shape(), found);
    } else if (kind instanceof FieldKind.Many many) {
      reachable(many.of(), found);
    }
  }

  private static String name(Shape shape) {
    String type = shape.type().getSimpleName();
    return Character.toLowerCase(type.charAt(0)) + type.substring(1);
  }

  private static String reference(Shape shape) {
    return "#/$defs/" + name(shape);
  }

  private static Map<String, Object> section(Shape shape) {
    Map<String, Object> properties = new LinkedHashMap<>();
    if (shape.isEquipment()) {
      properties.put(
          Shape.FITTED,
          object("description", "false where it is not there", "type", List.of("boolean", "null")));
    }
    shape.fields().forEach(field -> properties.put(field.name(), property(field)));
    return object(
        "type", List.of("object", "null"), "properties", properties, "additionalProperties", false);
  }

  /** A value may be null, which is the same as missing. */
  private static Map<String, Object> property(Field field) {
    return object("description", description(field), "anyOf", List.of(kind(field.kind()), NULL));
  }

  private static String description(Field field) {
    String unit =
        field.kind() instanceof FieldKind.Num number && number.unit() != Unit.NONE
            ? " [" + number.unit().printed() + "]"
            : "";
    String assumed =
        field.assumed() == null
            ? ""
            : "; if missing: "
                + Words.value(field.assumed().value())
                + ", "
                + field.assumed().because();
    String usual = field.asked().usual();
    return field.means()
        + unit
        + assumed
        + "; "
        + field.asked().where().words()
        + (usual.isEmpty() ? "" : "; usual: " + usual);
  }

  private static Map<String, Object> kind(FieldKind kind) {
    if (kind instanceof FieldKind.Num number) {
      return object(
          "type", number.whole() ? "integer" : "number",
          "minimum", number.least(),
          "maximum", number.most());
    }
    if (kind instanceof FieldKind.Word word) {
      return object("enum", word.words());
    }
    if (kind instanceof FieldKind.Text text) {
      return text.pattern().isEmpty()
          ? object("type", "string")
          : object("type", "string", "pattern", "^" + text.pattern() + "$");
    }
    if (kind instanceof FieldKind.Section section) {
      return object("$ref", reference(section.shape()));
    }
    return kind instanceof FieldKind.Many many
        ? object("type", "array", "items", kind(many.of()))
        : object("type", "boolean");
  }
}
