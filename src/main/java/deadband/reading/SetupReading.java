package deadband.reading;

import deadband.document.Document;
import deadband.document.Problem;
import deadband.setup.Setup;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A setup file, read or not.
 *
 * <p>Every problem of a file is told at once; a file with a problem is not judged, since what is
 * wrong in it may be what matters.
 */
public sealed interface SetupReading {

  /** The name under which the file is reported. */
  String name();

  /** A setup and the document it stands in. */
  record Read(Document document, Setup setup) implements SetupReading {
    @Override
    public String name() {
      return document.name();
    }
  }

  /**
   * A file that cannot be judged.
   *
   * @param problems at least one, in the order of the file
   */
  record Unreadable(String name, List<Problem> problems) implements SetupReading {}

  static SetupReading ofFile(Path path) {
    return of(JsonReading.ofFile(path));
  }

  static SetupReading ofStream(String name, InputStream in) {
    return of(JsonReading.ofStream(name, in));
  }

  static SetupReading ofText(String name, String text) {
    return of(JsonReading.ofText(name, text));
  }

  private static SetupReading of(JsonReading json) {
    if (!(json instanceof JsonReading.Read read)) {
      return new Unreadable(json.name(), json.problems());
    }
    Document document = read.document();
    ShapeReader reader = new ShapeReader(document.source());
    Setup setup = reader.read(document.root());
    List<Problem> problems = new ArrayList<>(read.problems());
    problems.addAll(reader.problems());
    if (problems.isEmpty()) {
      return new Read(document, setup);
    }
    problems.sort(Problem.inOrder());
    return new Unreadable(document.name(), List.copyOf(problems));
  }
}
