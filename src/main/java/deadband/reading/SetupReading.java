package deadband.reading;

import deadband.document.Document;
import deadband.document.Problem;
import deadband.document.Source;
import deadband.paste.Pasted;
import deadband.setup.Setup;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A setup file, or a text with settings in it, read or not.
 *
 * <p>Every problem of a file is told at once; a file with a problem is not judged, since what is
 * wrong in it may be what matters.
 */
public sealed interface SetupReading {

  /** The name under which the file is reported. */
  String name();

  /**
   * A setup and the document it stands in.
   *
   * @param pasted how a text that is no setup file was understood; null for a setup file
   */
  record Read(Document document, Setup setup, @Nullable Pasted pasted) implements SetupReading {

    @Override
    public String name() {
      return document.name();
    }

    /** How a pasted text was understood; empty for a setup file. */
    public Optional<Pasted> paste() {
      return Optional.ofNullable(pasted);
    }

    /** The setup file to which changes are made; one is written for a pasted text. */
    public Document file() {
      return pasted == null
          ? document
          : ChangedText.read(document.name() + ".json", PastedSetup.text(pasted));
    }
  }

  /**
   * A file that cannot be judged.
   *
   * @param problems at least one, in the order of the file
   */
  record Unreadable(String name, List<Problem> problems) implements SetupReading {}

  static SetupReading ofFile(Path path) {
    return of(Bytes.of(path.toString(), JsonReading.MOST_BYTES).ofFile(path));
  }

  static SetupReading ofStream(String name, InputStream in) {
    return of(Bytes.of(name, JsonReading.MOST_BYTES).ofStream(in));
  }

  /** Reads a line of JSON Lines, which is a setup and no other text. */
  static SetupReading ofLine(String name, InputStream in) {
    return of(JsonReading.ofStream(name, in), null);
  }

  static SetupReading ofText(String name, String text) {
    return of(Source.of(name, text));
  }

  private static SetupReading of(Bytes.Content content) {
    if (content instanceof Bytes.Content.Text text) {
      return of(text.source());
    }
    Problem refusal = ((Bytes.Content.Refused) content).problem();
    return new Unreadable(refusal.source().name(), List.of(refusal));
  }

  private static SetupReading of(Source source) {
    if (PastedText.mayBe(source)) {
      SetupReading pasted = PastedText.read(source);
      if (pasted != null) {
        return pasted;
      }
    }
    return of(JsonParser.read(source), null);
  }

  /** Reads an equipment file, which says what a data sheet does and no more. */
  static SetupReading ofSheet(String name, Path path) {
    return of(JsonReading.ofFile(name, path), null, true);
  }

  /** Reads the records out of a document, or says what is wrong in it. */
  static SetupReading of(JsonReading json, @Nullable Pasted pasted) {
    return of(json, pasted, false);
  }

  private static SetupReading of(JsonReading json, @Nullable Pasted pasted, boolean sheet) {
    if (!(json instanceof JsonReading.Read read)) {
      return new Unreadable(json.name(), json.problems().stream().map(Corrections::of).toList());
    }
    Document document = read.document();
    ShapeReader reader = new ShapeReader(document.source(), sheet);
    Setup setup = reader.read(document.root());
    List<Problem> problems = new ArrayList<>(read.problems());
    reader.problems().stream()
        .filter(p -> !isToldAlready(p, read.problems()))
        .forEach(problems::add);
    if (problems.isEmpty()) {
      return new Read(document, setup, pasted);
    }
    problems.sort(Problem.inOrder());
    return new Unreadable(document.name(), problems.stream().map(Corrections::of).toList());
  }

  /** A number in watts is told with its unit, and not that it is too large in kilowatts. */
  private static boolean isToldAlready(Problem problem, List<Problem> told) {
    return problem.kind() == Problem.Kind.UNIT_DOUBTED
        && told.stream()
            .filter(other -> Objects.equals(other.span(), problem.span()))
            .anyMatch(other -> Corrections.of(other).correction() != null);
  }
}
