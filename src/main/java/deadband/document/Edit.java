package deadband.document;

/**
 * A change to a setup file that keeps its comments, its layout and every other byte.
 *
 * <p>An edit gives a new text; reading that text again gives the changed document.
 */
public sealed interface Edit {

  /** What is changed. */
  Pointer pointer();

  /**
   * The text of the document after the edit.
   *
   * @throws IllegalArgumentException where the edit does not fit the document
   */
  String apply(Document document);

  /** A replacement where a value stands, an insertion where none does. */
  static Edit set(Document document, Pointer pointer, Literal value) {
    return document.find(pointer).isPresent()
        ? new Replace(pointer, value)
        : new Insert(pointer, value);
  }

  /** Writes another value where one stands. */
  record Replace(Pointer pointer, Literal value) implements Edit {

    @Override
    public String apply(Document document) {
      Node old = document.find(pointer).orElseThrow(() -> missing(document, pointer));
      return Splice.one(document.text(), old.span(), value.json());
    }
  }

  /**
   * Writes a value where none stands: after its last sibling, in the same layout. Sections and
   * lists on the way that are missing, or {@code null}, are made. In a list, the index after the
   * last item or {@code -} (RFC 6901, section 4) appends.
   */
  record Insert(Pointer pointer, Literal value) implements Edit {

    @Override
    public String apply(Document document) {
      return Insertion.apply(document, pointer, value);
    }
  }

  /** Takes a value out, with its name and one comma. */
  record Remove(Pointer pointer) implements Edit {

    @Override
    public String apply(Document document) {
      return Removal.apply(document, pointer);
    }
  }

  private static IllegalArgumentException missing(Document document, Pointer pointer) {
    return new IllegalArgumentException(document.name() + " holds no " + pointer.dotted());
  }
}
