package deadband.cli;

import deadband.document.Place;
import deadband.document.Pointer;
import deadband.document.Printable;
import deadband.document.Span;
import deadband.reading.Corrections;
import deadband.reading.Corrections.Corrected;
import deadband.reading.Corrections.Made;
import deadband.reading.SetupReading;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The corrections of one setup file that cannot be read, written beside it.
 *
 * @param path the file, which stays as it is
 */
record Fixing(Path path, SetupReading.Unreadable reading) {

  /** Corrects each; false where one could not be written. */
  static boolean all(List<Fixing> files, Outputs writer, Console console) {
    boolean written = true;
    for (Fixing file : files) {
      written &= file.fix(writer, console);
    }
    return written;
  }

  private boolean fix(Outputs writer, Console console) {
    Corrected corrected = Corrections.of(reading);
    if (corrected.made().isEmpty()) {
      console.tell(path + ": nothing in it can be corrected beyond doubt");
      return true;
    }
    Path fixed = fixed();
    if (!writer.write(fixed, text -> text.append(corrected.text()))) {
      return false;
    }
    console.tell(fixed + ": " + count(corrected.made().size(), "correction"));
    corrected.made().forEach(made -> console.tell("  " + Printable.of(words(made))));
    String state =
        corrected.left().isEmpty()
            ? "it can be read now"
            : count(corrected.left().size(), "problem") + " left to decide";
    String name = ShellWord.of(fixed.toString()).orElse("FILE");
    console.tell(state + "; next: deadband check " + name);
    return true;
  }

  private static String count(int number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }

  /** home.json is corrected as home.fixed.json. */
  private Path fixed() {
    String name = path.getFileName().toString().replaceFirst("(?i)\\.jsonc?$", "");
    return path.resolveSibling(name + ".fixed.json");
  }

  private static String words(Made made) {
    Optional<Place> place = made.problem().place();
    Pointer pointer = made.problem().pointer();
    return place.map(Place::toString).orElse("")
        + (pointer == null ? "" : "  " + pointer)
        + "  "
        + found(made)
        + " -> "
        + made.to();
  }

  /** What stood there; where a mark is put in, what it stands before. */
  private static String found(Made made) {
    Span span = made.problem().span();
    boolean put = span != null && span.start() == span.end();
    return (put ? "before " : "") + made.problem().found();
  }
}
