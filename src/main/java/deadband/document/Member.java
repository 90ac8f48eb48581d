package deadband.document;

/**
 * One named value of a section.
 *
 * @param nameSpan where the name stands, quotes included
 * @param name the name as meant, escapes undone
 * @param value what it holds
 */
public record Member(Span nameSpan, String name, Node value) {

  /** From the name's opening quote to the end of the value. */
  public Span span() {
    return new Span(nameSpan.start(), value.span().end());
  }
}
