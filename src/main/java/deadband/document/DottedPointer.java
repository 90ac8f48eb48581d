package deadband.document;

/** A pointer as people read it: {@code relay.start_kW}, {@code outlets[0].at}. */
final class DottedPointer {

  private static final String WHOLE = "the whole file";

  private final String text;
  private int at;

  private DottedPointer(String text) {
    this.text = text;
  }

  static String write(Pointer pointer) {
    if (pointer.isRoot()) {
      return WHOLE;
    }
    StringBuilder out = new StringBuilder();
    for (String token : pointer.tokens()) {
      append(out, token);
    }
    return out.toString();
  }

  static Pointer parse(String text) {
    return text.equals(WHOLE) ? Pointer.root() : new DottedPointer(text).read();
  }

  private static void append(StringBuilder out, String token) {
    if (Pointer.isIndex(token)) {
      out.append('[').append(token).append(']');
    } else if (isPlain(token)) {
      out.append(out.isEmpty() ? "" : ".").append(token);
    } else {
      out.append("[\"").append(token.replace("\\", "\\\\").replace("\"", "\\\"")).append("\"]");
    }
  }

  /** Whether a name can stand without quotes: letters, digits, {@code _} and {@code -}. */
  private static boolean isPlain(String token) {
    for (int i = 0; i < token.length(); i++) {
      if (!isPlain(token.charAt(i))) {
        return false;
      }
    }
    return !token.isEmpty();
  }

  private static boolean isPlain(char c) {
    return Character.isLetterOrDigit(c) || c == '_' || c == '-';
  }

  private Pointer read() {
    Pointer pointer = text.startsWith("[") ? Pointer.root() : Pointer.root().child(name());
    while (at < text.length()) {
      pointer = pointer.child(step());
    }
    return pointer;
  }

  private String step() {
    char c = text.charAt(at++);
    if (c == '.') {
      return name();
    }
    if (c != '[') {
      throw bad();
    }
    return text.startsWith("\"", at) ? quoted() : index();
  }

  private String name() {
    int from = at;
    while (at < text.length() && isPlain(text.charAt(at))) {
      at++;
    }
    return taken(from, at, 0);
  }

  private String index() {
    int close = text.indexOf(']', at);
    String token = close < 0 ? "" : taken(at, close, 1);
    if (!Pointer.isIndex(token)) {
      throw bad();
    }
    return token;
  }

  private String quoted() {
    StringBuilder name = new StringBuilder();
    for (at++; at < text.length() && text.charAt(at) != '"'; at++) {
      if (text.charAt(at) == '\\') {
        at++;
      }
      if (at < text.length()) {
        name.append(text.charAt(at));
      }
    }
    if (!text.startsWith("\"]", at)) {
      throw bad();
    }
    at += 2;
    return name.toString();
  }

  private String taken(int from, int to, int more) {
    if (from == to) {
      throw bad();
    }
    at = to + more;
    return text.substring(from, to);
  }

  private IllegalArgumentException bad() {
    return new IllegalArgumentException(
        "\""
            + text
            + "\" is not a place in a setup; write it like relay.start_kW or outlets[0].at");
  }
}
