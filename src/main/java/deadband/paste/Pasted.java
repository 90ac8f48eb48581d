package deadband.paste;

import deadband.document.Document;
import deadband.document.Pointer;
import deadband.document.Span;
import java.util.List;
import java.util.Optional;

/**
 * What was understood of a pasted text, line by line. Nothing is left out: a line is understood,
 * not understood, ambiguous, or one of those without a value.
 *
 * @param document the values understood, as a setup file has them; their places are those of the
 *     text
 * @param otherLines lines that hold neither a number nor a word of the trade
 * @param json whether JSON stood in the text, too, and was read as such
 */
public record Pasted(
    Document document,
    List<Understood> understood,
    List<NotUnderstood> notUnderstood,
    List<Ambiguous> ambiguous,
    int otherLines,
    boolean json) {

  /**
   * A value that was read.
   *
   * @param text the words of the line
   * @param value as the setup file has it; empty where the text says that it is not known
   * @param unit of the value as converted, empty where it has none
   */
  public record Understood(
      int line, String text, Pointer pointer, Optional<Object> value, String unit, Span span) {}

  /** Words with a number or a term of the trade from which no value is taken. */
  public record NotUnderstood(int line, String text) {}

  /**
   * Words that can mean several things.
   *
   * @param choices what can be written in their place
   */
  public record Ambiguous(int line, String text, List<String> choices) {}

  /** Whether nothing at all was recognized. */
  public boolean isEmpty() {
    return understood.isEmpty() && ambiguous.isEmpty();
  }
}
