package deadband.report;

import deadband.document.Document;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.setup.Change;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.core.JsonGenerator;

/**
 * Changes as a JSON Patch (RFC 6902): {@code replace} where a value stands, {@code add} where none
 * does, with the sections on the way that are missing.
 */
public final class JsonPatch {

  private final JsonGenerator json;
  private final Document document;
  private final Set<Pointer> made = new HashSet<>();

  private JsonPatch(JsonGenerator json, Document document) {
    this.json = json;
    this.document = document;
  }

  /** The patch, indented, without a line end. */
  public static String of(Document document, List<Change> changes) {
    return JsonText.of(
        true,
        json -> {
          JsonPatch patch = new JsonPatch(json, document);
          json.writeStartArray();
          changes.forEach(patch::operation);
          json.writeEndArray();
        });
  }

  private void operation(Change change) {
    change.pointer().parent().ifPresent(this::section);
    write(change.pointer(), change.to(), false);
  }

  /** Makes a section that is missing, after those that hold it. */
  private void section(Pointer pointer) {
    if (pointer.equals(Pointer.root()) || holds(pointer)) {
      return;
    }
    pointer.parent().ifPresent(this::section);
    write(pointer, "", true);
    made.add(pointer);
  }

  private boolean holds(Pointer pointer) {
    return made.contains(pointer)
        || document.find(pointer).filter(node -> !(node instanceof Node.Nothing)).isPresent();
  }

  private void write(Pointer pointer, Object value, boolean section) {
    json.writeStartObject();
    JsonText.string(json, "op", document.find(pointer).isPresent() ? "replace" : "add");
    JsonText.string(json, "path", pointer.toString());
    if (section) {
      json.writeName("value");
      json.writeStartObject();
      json.writeEndObject();
    } else {
      JsonText.value(json, "value", value);
    }
    json.writeEndObject();
  }
}
