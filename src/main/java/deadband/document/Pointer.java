package deadband.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a value stands in a setup file: a JSON Pointer (RFC 6901).
 *
 * <pre>{@code
 * Pointer stop = Pointer.root().child("relay").child("stop_kW");
 * stop.toString();   // /relay/stop_kW
 * stop.dotted();     // relay.stop_kW, for people
 * }</pre>
 *
 * <p>A pointer is a way to a place, whether or not anything stands there.
 */
public final class Pointer implements Comparable<Pointer> {

  private static final Pointer ROOT = new Pointer(null, "");

  private final @Nullable Pointer parent;
  private final String token;
  private final int depth;
  private final int hash;

  private Pointer(@Nullable Pointer parent, String token) {
    this.parent = parent;
    this.token = token;
    this.depth = parent == null ? 0 : parent.depth + 1;
    this.hash = parent == null ? 1 : 31 * parent.hash + token.hashCode();
  }

  /** The whole file. */
  public static Pointer root() {
    return ROOT;
  }

  /**
   * Reads a pointer as RFC 6901, section 3 writes it.
   *
   * @param text empty for the whole file, else each name or index after a {@code /}
   * @throws IllegalArgumentException where the text does not begin with {@code /}, or a {@code ~}
   *     is not followed by 0 or 1
   */
  public static Pointer parse(String text) {
    if (text.isEmpty()) {
      return ROOT;
    }
    if (text.charAt(0) != '/') {
      throw new IllegalArgumentException(
          "pointer \"" + text + "\" must begin with /, as in \"/" + text + "\"");
    }
    Pointer pointer = ROOT;
    int from = 1;
    for (int slash; (slash = text.indexOf('/', from)) >= 0; from = slash + 1) {
      pointer = pointer.child(unescaped(text, from, slash));
    }
    return pointer.child(unescaped(text, from, text.length()));
  }

  /**
   * Reads a pointer as {@link #dotted()} writes it.
   *
   * @param text names parted by dots, indexes in brackets: {@code outlets[0].at}
   * @throws IllegalArgumentException where the text is not of that form
   */
  public static Pointer ofDotted(String text) {
    return DottedPointer.parse(text);
  }

  public Pointer child(String name) {
    return new Pointer(this, name);
  }

  /**
   * The item of a list.
   *
   * @param index counted from 0
   * @throws IllegalArgumentException where the index is negative
   */
  public Pointer child(int index) {
    if (index < 0) {
      throw new IllegalArgumentException("index " + index + " must be 0 or more");
    }
    return new Pointer(this, Integer.toString(index));
  }

  /** This pointer continued by another. */
  public Pointer append(Pointer rest) {
    Pointer whole = this;
    for (String name : rest.tokens()) {
      whole = whole.child(name);
    }
    return whole;
  }

  /** The pointer to what holds this; empty for the whole file. */
  public Optional<Pointer> parent() {
    return Optional.ofNullable(parent);
  }

  /**
   * The last name or index.
   *
   * @throws IllegalStateException for the whole file, which has no name
   */
  public String last() {
    if (parent == null) {
      throw new IllegalStateException("the pointer to the whole file has no last name");
    }
    return token;
  }

  public boolean isRoot() {
    return parent == null;
  }

  /** Names and indexes from the outermost to the last; empty for the whole file. */
  public List<String> tokens() {
    List<String> tokens = new ArrayList<>(depth);
    for (Pointer at = this; at.parent != null; at = at.parent) {
      tokens.add(at.token);
    }
    Collections.reverse(tokens);
    return Collections.unmodifiableList(tokens);
  }

  /** True where the other is this pointer or leads to something that holds it. */
  public boolean startsWith(Pointer other) {
    Pointer at = this;
    while (at.depth > other.depth && at.parent != null) {
      at = at.parent;
    }
    return at.equals(other);
  }

  /** For people: {@code relay.start_kW}, {@code outlets[0].at}; the whole file is called so. */
  public String dotted() {
    return DottedPointer.write(this);
  }

  /**
   * Order token by token: what holds comes before what it holds; indexes go by number and before
   * names; names by their characters.
   */
  @Override
  public int compareTo(Pointer other) {
    Pointer ours = this;
    Pointer theirs = other;
    while (ours.depth > theirs.depth && ours.parent != null) {
      ours = ours.parent;
    }
    while (theirs.depth > ours.depth && theirs.parent != null) {
      theirs = theirs.parent;
    }
    int order = compareLevel(ours, theirs);
    return order != 0 ? order : Integer.compare(depth, other.depth);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    if (!(other instanceof Pointer that) || that.hash != hash || that.depth != depth) {
      return false;
    }
    return compareLevel(this, that) == 0;
  }

  @Override
  public int hashCode() {
    return hash;
  }

  /** As RFC 6901 writes it: {@code /relay/start_kW}, empty for the whole file. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (String name : tokens()) {
      text.append('/').append(name.replace("~", "~0").replace("/", "~1"));
    }
    return text.toString();
  }

  /** Whether a token can be an index: digits without a leading zero (RFC 6901, section 4). */
  static boolean isIndex(String token) {
    if (token.isEmpty() || (token.length() > 1 && token.charAt(0) == '0')) {
      return false;
    }
    for (int i = 0; i < token.length(); i++) {
      if (token.charAt(i) < '0' || token.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  /** Of two pointers as deep as one another, from the outermost token on. */
  private static int compareLevel(Pointer ours, Pointer theirs) {
    if (ours.parent == null || theirs.parent == null) {
      return 0;
    }
    int order = compareLevel(ours.parent, theirs.parent);
    return order != 0 ? order : compareTokens(ours.token, theirs.token);
  }

  private static int compareTokens(String ours, String theirs) {
    boolean index = isIndex(ours);
    if (index != isIndex(theirs)) {
      return index ? -1 : 1;
    }
    if (index && ours.length() != theirs.length()) {
      return Integer.compare(ours.length(), theirs.length());
    }
    return ours.compareTo(theirs);
  }

  private static String unescaped(String text, int from, int to) {
    String token = text.substring(from, to);
    if (token.indexOf('~') < 0) {
      return token;
    }
    for (int tilde = token.indexOf('~'); tilde >= 0; tilde = token.indexOf('~', tilde + 1)) {
      if (!token.startsWith("0", tilde + 1) && !token.startsWith("1", tilde + 1)) {
        throw new IllegalArgumentException(
            "pointer \"" + text + "\": ~ must be written ~0, and / inside a name ~1");
      }
    }
    // ~1 first, so that ~01 becomes ~1 and not / (RFC 6901, section 4)
    return token.replace("~1", "/").replace("~0", "~");
  }
}
