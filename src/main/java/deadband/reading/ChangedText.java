package deadband.reading;

import deadband.document.Document;
import deadband.document.Literal;
import deadband.setup.Change;
import deadband.setup.Choice;
import java.util.List;

/**
 * The text of a setup file with changes in it: comments, order and layout stay as they are, and so
 * does every byte that no change names.
 */
public final class ChangedText {

  private ChangedText() {}

  /**
   * The text after the changes, made one after the other.
   *
   * @throws IllegalArgumentException where a change leads to something that cannot be read
   */
  public static String of(Document document, List<Change> changes) {
    Document now = document;
    for (Change change : changes) {
      String text = now.with(change.pointer(), literal(change.to()));
      now = read(document.name(), text);
    }
    return now.text();
  }

  static Document read(String name, String text) {
    if (SetupReading.ofText(name, text) instanceof SetupReading.Read read) {
      return read.document();
    }
    throw new IllegalArgumentException("a change leaves " + name + " unreadable");
  }

  /** A value of a setup as it is written in a file. */
  public static Literal literal(Object value) {
    if (value instanceof Double number) {
      return Literal.of(number);
    }
    if (value instanceof Boolean truth) {
      return Literal.of(truth);
    }
    if (value instanceof List<?> items) {
      return Literal.list(items.stream().map(ChangedText::literal).toList());
    }
    return Literal.of(value instanceof Choice choice ? choice.word() : value.toString());
  }
}
