package deadband.report;

import deadband.document.Document;
import deadband.document.Place;
import deadband.document.Pointer;
import deadband.judging.Judgement;
import deadband.paste.Pasted;
import deadband.setup.Setup;
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

  Optional<Place> place(Pointer pointer) {
    return document.place(pointer);
  }

  /** The value as it is written in the file; empty where it does not stand there. */
  Optional<String> written(Pointer pointer) {
    return document.find(pointer).map(node -> document.source().excerpt(node.span()));
  }
}
