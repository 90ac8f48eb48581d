package deadband.report;

import deadband.document.Document;
import deadband.document.Node;
import deadband.document.Place;
import deadband.document.Pointer;
import deadband.document.Source;
import deadband.judging.Judgement;
import deadband.paste.Pasted;
import deadband.setup.DataSheet;
import deadband.setup.Setup;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One judged file: all that a renderer needs.
 *
 * @param document the file as it was read; says where each value stands
 * @param pasted how a text that is no setup file was understood; null for a setup file
 */
public record Report(Document document, Setup setup, Judgement judgement, @Nullable Pasted pasted) {

  /** A setup file that was judged. */
  public Report(Document document, Setup setup, Judgement judgement) {
    this(document, setup, judgement, null);
  }

  /** The name under which the file is reported. */
  String file() {
    return document.name();
  }

  /** The name of the job; empty where it is missing. */
  Optional<String> reference() {
    return setup.site().reference().optional();
  }

  /** Where the value stands: in the file, or in the data sheet that says it. */
  Optional<Place> place(Pointer pointer) {
    return node(pointer).map(node -> source(pointer).place(node.span().start()));
  }

  /** The value as it is written there; empty where nobody enters it. */
  Optional<String> written(Pointer pointer) {
    return node(pointer).map(node -> source(pointer).excerpt(node.span()));
  }

  /** The value as it was read. */
  Optional<Node> node(Pointer pointer) {
    return sheet(pointer).flatMap(sheet -> sheet.at(pointer)).or(() -> document.find(pointer));
  }

  /** The data sheet that says a value which the file itself does not enter. */
  Optional<DataSheet> sheet(Pointer pointer) {
    boolean own =
        document.find(pointer).filter(node -> !(node instanceof Node.Nothing)).isPresent();
    return own ? Optional.empty() : setup.sheetOf(pointer);
  }

  private Source source(Pointer pointer) {
    return sheet(pointer).map(DataSheet::document).orElse(document).source();
  }

  /** The data sheets that are named. */
  List<DataSheet> sheets() {
    return setup.equipment().optional().orElse(List.of());
  }

  /** The values taken from a data sheet. */
  List<Pointer> takenFrom(DataSheet sheet) {
    return sheet.entered().stream()
        .filter(value -> sheet(value).filter(sheet::equals).isPresent())
        .toList();
  }
}
