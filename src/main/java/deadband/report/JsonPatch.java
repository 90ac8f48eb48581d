package deadband.report;

import deadband.document.Document;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.setup.Change;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Changes as a JSON Patch (RFC 6902): {@code replace} where a value stands, {@code add} where none
 * does, with the sections on the way that are missing.
 */
public final class JsonPatch {

  private final Document document;
  private final Set<Pointer> made = new HashSet<>();
  private final List<Map<String, Object>> operations = new ArrayList<>();

  private JsonPatch(Document document) {
    this.document = document;
  }

  /** The patch, indented, without a line end. */
  public static String of(Document document, List<Change> changes) {
    JsonPatch patch = new JsonPatch(document);
    changes.forEach(patch::operation);
    return JsonText.of(patch.operations);
  }

  private void operation(Change change) {
    change.pointer().parent().ifPresent(this::section);
    add(change.pointer(), change.to());
  }

  /** Makes a section that is missing, after those that hold it. */
  private void section(Pointer pointer) {
    if (pointer.equals(Pointer.root()) || holds(pointer)) {
      return;
    }
    pointer.parent().ifPresent(this::section);
    add(pointer, Map.of());
    made.add(pointer);
  }

  private boolean holds(Pointer pointer) {
    return made.contains(pointer)
        || document.find(pointer).filter(node -> !(node instanceof Node.Nothing)).isPresent();
  }

  private void add(Pointer pointer, Object value) {
    operations.add(
        JsonText.object(
            "op",
            document.find(pointer).isPresent() ? "replace" : "add",
            "path",
            pointer.toString(),
            "value",
            value));
  }
}
