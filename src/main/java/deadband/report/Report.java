package deadband.report;

import deadband.document.Document;
import deadband.document.Place;
import deadband.document.Pointer;
import deadband.judging.Judgement;
import deadband.setup.Setup;
import java.util.Optional;

/**
 * One judged file: all that a renderer needs.
 *
 * @param document the file as it was read; says where each value stands
 */
public record Report(Document document, Setup setup, Judgement judgement) {

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
