package deadband.reading;

import deadband.document.Document;
import deadband.document.Edit;
import deadband.document.Problem;
import deadband.document.Source;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;

/**
 * What came of reading a file as JSON (RFC 8259) in which comments ({@code //}, {@code /* *}{@code
 * /}) and trailing commas are allowed.
 *
 * <pre>{@code
 * JsonReading reading = JsonReading.ofFile(path);
 * if (reading instanceof JsonReading.Read read) {
 *   use(read.document(), read.problems());
 * }
 * }</pre>
 *
 * <p>Whatever the bytes are, the outcome is one of the two; nothing is thrown, and no more than
 * {@link #MOST_BYTES} are read.
 */
public sealed interface JsonReading {

  /** The most a setup file may hold: 4 MiB, some hundred times what one needs. */
  int MOST_BYTES = 4 * 1024 * 1024;

  /** The most brackets that may stand inside each other; a setup has about six. */
  int MOST_DEEP = 64;

  /** The file's name as it is shown. */
  String name();

  /** What is wrong, in the order of the file. */
  List<Problem> problems();

  /**
   * Read, with no doubt about what was meant.
   *
   * @param problems such as a decimal comma or a name entered twice; where there are any, the
   *     document serves to find the others and not to judge
   */
  record Read(Document document, List<Problem> problems) implements JsonReading {

    public Read {
      problems = List.copyOf(problems);
    }

    @Override
    public String name() {
      return document.name();
    }
  }

  /**
   * Not read, or read with guesses at what was meant, under which nothing more is to be judged.
   *
   * @param problems at least one
   */
  record Unreadable(String name, List<Problem> problems) implements JsonReading {

    public Unreadable {
      problems = List.copyOf(problems);
    }
  }

  /** Reads a file and shows its path as it is given. */
  static JsonReading ofFile(Path path) {
    return ofFile(path.toString(), path);
  }

  /** Reads a file and shows it under another name. */
  static JsonReading ofFile(String name, Path path) {
    return of(Bytes.of(name, MOST_BYTES).ofFile(path));
  }

  /** Reads what a stream gives, up to the bound; the stream is left open. */
  static JsonReading ofStream(String name, InputStream in) {
    return of(Bytes.of(name, MOST_BYTES).ofStream(in));
  }

  static JsonReading ofBytes(String name, byte[] bytes) {
    return of(Bytes.of(name, MOST_BYTES).ofBytes(bytes));
  }

  static JsonReading ofText(String name, String text) {
    return JsonParser.read(Source.of(name, text));
  }

  private static JsonReading of(Bytes.Content content) {
    return content instanceof Bytes.Content.Text text
        ? JsonParser.read(text.source())
        : refused(((Bytes.Content.Refused) content).problem());
  }

  private static JsonReading refused(Problem refusal) {
    return new Unreadable(refusal.source().name(), List.of(refusal));
  }

  /**
   * The document after some edits, each read again before the next.
   *
   * @throws IllegalArgumentException where an edit does not fit
   */
  static Document edited(Document document, List<Edit> edits) {
    Document edited = document;
    for (Edit edit : edits) {
      edited = again(edited, edit);
    }
    return edited;
  }

  private static Document again(Document document, Edit edit) {
    JsonReading reading = ofText(document.name(), document.with(edit));
    if (reading instanceof Read read) {
      return read.document();
    }
    throw new IllegalStateException(
        edit + " left a text that cannot be read: " + reading.problems());
  }
}
