package deadband.report;

import static deadband.report.JsonText.number;
import static deadband.report.JsonText.string;
import static deadband.report.JsonText.texts;

import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.setup.Unit;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.core.JsonGenerator;

/** The JSON Schema (draft 2020-12) of the setup file, made from the described shape. */
public final class SetupSchema {

  private final JsonGenerator json;

  private SetupSchema(JsonGenerator json) {
    this.json = json;
  }

  /** The schema, indented, without a line end. */
  public static String text() {
    return JsonText.of(true, json -> new SetupSchema(json).write());
  }

  private void write() {
    Shape root = Shape.of(Setup.class);
    json.writeStartObject();
    JsonText.string(json, "$schema", "https://json-schema.org/draft/2020-12/schema");
    JsonText.string(json, "$id", "urn:deadband:setup:1");
    JsonText.string(json, "title", "Deadband setup file, version 1");
    JsonText.string(json, "$ref", reference(root));
    json.writeName("$defs");
    json.writeStartObject();
    for (Shape shape : reachable(root, new LinkedHashSet<>())) {
      json.writeName(name(shape));
      section(shape);
    }
    json.writeEndObject();
    json.writeEndObject();
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

  private void section(Shape shape) {
    json.writeStartObject();
    texts(json, "type", List.of("object", "null"));
    json.writeName("properties");
    json.writeStartObject();
    if (shape.isEquipment()) {
      json.writeName(Shape.FITTED);
      json.writeStartObject();
      string(json, "description", "false where it is not there");
      texts(json, "type", List.of("boolean", "null"));
      json.writeEndObject();
    }
    shape.fields().forEach(this::property);
    json.writeEndObject();
    json.writeBooleanProperty("additionalProperties", false);
    json.writeEndObject();
  }

  private void property(Field field) {
    json.writeName(field.name());
    json.writeStartObject();
    string(json, "description", description(field));
    orNull(field.kind());
    json.writeEndObject();
  }

  private static String description(Field field) {
    String unit =
        field.kind() instanceof FieldKind.Num number && number.unit() != Unit.NONE
            ? " [" + number.unit().printed() + "]"
            : "";
    String assumed =
        field.assumed() == null
            ? ""
            : "; not told: "
                + Words.value(field.assumed().value())
                + ", "
                + field.assumed().because();
    return field.means() + unit + assumed;
  }

  /** A value may be null, which is the same as missing. */
  private void orNull(FieldKind kind) {
    json.writeName("anyOf");
    json.writeStartArray();
    json.writeStartObject();
    kind(kind);
    json.writeEndObject();
    json.writeStartObject();
    string(json, "type", "null");
    json.writeEndObject();
    json.writeEndArray();
  }

  private void kind(FieldKind kind) {
    if (kind instanceof FieldKind.Num number) {
      string(json, "type", number.whole() ? "integer" : "number");
      number(json, "minimum", number.least());
      number(json, "maximum", number.most());
    } else if (kind instanceof FieldKind.Word word) {
      texts(json, "enum", word.words());
    } else if (kind instanceof FieldKind.Text ofText) {
      string(json, "type", "string");
      if (!ofText.pattern().isEmpty()) {
        string(json, "pattern", "^" + ofText.pattern() + "$");
      }
    } else if (kind instanceof FieldKind.Section section) {
      string(json, "$ref", reference(section.shape()));
    } else if (kind instanceof FieldKind.Many many) {
      string(json, "type", "array");
      json.writeName("items");
      json.writeStartObject();
      kind(many.of());
      json.writeEndObject();
    } else {
      string(json, "type", "boolean");
    }
  }
}
