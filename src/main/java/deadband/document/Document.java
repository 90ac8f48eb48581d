package deadband.document;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A setup file whose every value knows its place, and which can be edited without losing a comment.
 *
 * <pre>{@code
 * Pointer stop = Pointer.parse("/relay/stop_kW");
 * document.find(stop);                       // the value, where one stands
 * document.place(stop);                      // line and column
 * document.with(stop, Literal.of(0.1));      // the new text, every other byte as it was
 * }</pre>
 */
public final class Document {

  private final Source source;
  private final Node.Section root;

  private Document(Source source, Node.Section root) {
    this.source = source;
    this.root = root;
  }

  /**
   * A text that was read.
   *
   * @param root what the text says, its spans being those of the text
   */
  public static Document of(Source source, Node.Section root) {
    return new Document(source, root);
  }

  public Source source() {
    return source;
  }

  /** The file's name as it is shown. */
  public String name() {
    return source.name();
  }

  public String text() {
    return source.text();
  }

  public Node.Section root() {
    return root;
  }

  /** The value at a pointer; a {@code null} in the file is found, as nothing entered. */
  public Optional<Node> find(Pointer pointer) {
    Node at = root;
    for (String token : pointer.tokens()) {
      Node inside = child(at, token);
      if (inside == null) {
        return Optional.empty();
      }
      at = inside;
    }
    return Optional.of(at);
  }

  /** The named value a pointer ends in; empty too for an item of a list, which has no name. */
  public Optional<Member> member(Pointer pointer) {
    Optional<Node> holder = pointer.parent().flatMap(this::find);
    return holder.isPresent() && holder.get() instanceof Node.Section section
        ? section.member(pointer.last())
        : Optional.empty();
  }

  /** The longest beginning of a pointer that leads to something in the file. */
  public Pointer nearest(Pointer pointer) {
    Pointer reached = Pointer.root();
    Node at = root;
    for (String token : pointer.tokens()) {
      Node inside = child(at, token);
      if (inside == null) {
        return reached;
      }
      at = inside;
      reached = reached.child(token);
    }
    return reached;
  }

  /** Where the value at a pointer begins. */
  public Optional<Place> place(Pointer pointer) {
    return find(pointer).map(node -> source.place(node.span().start()));
  }

  public Place place(int offset) {
    return source.place(offset);
  }

  /** Whether another document says the same; names, places and layout do not count. */
  public boolean same(Document other) {
    return root.same(other.root);
  }

  /**
   * The text after an edit.
   *
   * @throws IllegalArgumentException where the edit does not fit this document
   */
  public String with(Edit edit) {
    return edit.apply(this);
  }

  /**
   * The text with a value set, replaced where one stands and else inserted.
   *
   * @throws IllegalArgumentException where no value can stand there
   */
  public String with(Pointer pointer, Literal value) {
    return Edit.set(this, pointer, value).apply(this);
  }

  /**
   * The text without a value.
   *
   * @throws IllegalArgumentException where no value stands there
   */
  public String without(Pointer pointer) {
    return new Edit.Remove(pointer).apply(this);
  }

  /** What a section or list holds under a name or index. */
  static @Nullable Node child(Node holder, String token) {
    if (holder instanceof Node.Section section) {
      return section.get(token).orElse(null);
    }
    int index = holder instanceof Node.Sequence sequence ? index(sequence.items(), token) : -1;
    return index < 0 ? null : ((Node.Sequence) holder).items().get(index);
  }

  /** The index a token means in a list; −1 where it has no such item. */
  static int index(List<Node> items, String token) {
    // an index of ten digits or more is beyond any list that was read
    if (!Pointer.isIndex(token) || token.length() > 9) {
      return -1;
    }
    int index = Integer.parseInt(token);
    return index < items.size() ? index : -1;
  }
}
