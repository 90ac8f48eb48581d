package deadband.setup;

import deadband.document.Document;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Source;
import deadband.document.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An equipment file that a setup names: what a data sheet says of a thing, wherever it is fitted.
 *
 * @param file its name within the equipment folder
 * @param document the file as it was read; empty until it is
 * @param values what it says, as a setup of which nothing else is entered
 * @param contradicted the values that the setup enters otherwise
 */
public record DataSheet(String file, Document document, Setup values, List<Pointer> contradicted) {

  private static final String NAME = "[^./\\\\:*?\"<>|\\x00-\\x1F][^/\\\\:*?\"<>|\\x00-\\x1F]*";

  /** A path within the folder: no way up, no absolute one, nothing hidden. */
  static final String PATTERN = "(" + NAME + "/)*" + NAME + "\\.jsonc?";

  /** A sheet that is yet to be read; empty where no file in a folder can have the name. */
  static Optional<DataSheet> named(String file) {
    return file.matches(PATTERN)
        ? Optional.of(
            new DataSheet(
                file,
                Document.of(Source.named(file), new Node.Section(Span.at(0), List.of())),
                (Setup) Shape.of(Setup.class).allOpen(Pointer.root()),
                List.of()))
        : Optional.empty();
  }

  /** The same name with what stands in the file. */
  public DataSheet read(Document read, Setup setup) {
    return new DataSheet(file, read, setup, contradicted);
  }

  /** This sheet beside the values that a setup enters itself. */
  DataSheet beside(Setup own) {
    List<Pointer> differing = new ArrayList<>();
    for (Pointer at : entered()) {
      Object entered = Change.entered(own, at);
      if (entered != null && !entered.equals(Change.entered(values, at))) {
        differing.add(at);
      }
    }
    Shape.partsOf(own).stream()
        .filter(part -> part.isFitted().says(false) && says(part.pointer()))
        .forEach(part -> differing.add(part.isFitted().pointer()));
    return new DataSheet(file, document, values, List.copyOf(differing));
  }

  private boolean says(Pointer section) {
    return entered().stream().anyMatch(value -> value.startsWith(section));
  }

  /** What the file says at a place. */
  public Optional<Node> at(Pointer place) {
    return document.find(place).filter(node -> !(node instanceof Node.Nothing));
  }

  /** The values it says, in the order of the shape. */
  public List<Pointer> entered() {
    List<Pointer> entered = new ArrayList<>();
    for (Field field : Shape.of(Setup.class).fields()) {
      // what stands beside the sections is about the file itself
      if (!field.optional()) {
        entered((Record) Shape.of(Setup.class).get(values, field), entered);
      }
    }
    return entered;
  }

  private static void entered(Record section, List<Pointer> entered) {
    Shape shape = Shape.of(section.getClass());
    for (Field field : shape.fields()) {
      Object held = shape.get(section, field);
      if (held instanceof Entered<?> value) {
        value.optional().ifPresent(known -> entered.add(value.pointer()));
      } else {
        entered((Record) held, entered);
      }
    }
  }

  /** The same file with the same text in it, whatever a setup enters beside it. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DataSheet that
        && file.equals(that.file)
        && document.source().equals(that.document.source());
  }

  @Override
  public int hashCode() {
    return file.hashCode();
  }

  @Override
  public String toString() {
    return file;
  }
}
