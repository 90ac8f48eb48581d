package deadband.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A value as it is written into a setup file. */
public final class Literal {

  private static final int MOST_PLAIN_DIGITS = 20;
  private static final Literal NOTHING = new Literal("null");
  private static final Literal TRUE = new Literal("true");
  private static final Literal FALSE = new Literal("false");

  private final String json;

  private Literal(String json) {
    this.json = json;
  }

  /**
   * A number in its shortest decimal form: 0.1, 62, -3.5.
   *
   * @throws IllegalArgumentException where it is not finite: JSON has no such number (RFC 8259,
   *     section 6)
   */
  public static Literal of(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          value + " cannot be written; a setup holds finite numbers");
    }
    return of(value == 0 ? BigDecimal.ZERO : BigDecimal.valueOf(value).stripTrailingZeros());
  }

  /** A number with the decimals it has; with an exponent only where it would be very long. */
  public static Literal of(BigDecimal value) {
    boolean plain =
        Math.abs((long) value.precision() - value.scale()) <= MOST_PLAIN_DIGITS
            && Math.abs(value.scale()) <= MOST_PLAIN_DIGITS;
    return new Literal(plain ? value.toPlainString() : value.toString());
  }

  public static Literal of(long value) {
    return new Literal(Long.toString(value));
  }

  public static Literal of(boolean value) {
    return value ? TRUE : FALSE;
  }

  /** A text in quotes, escaped as RFC 8259, section 7 asks. */
  public static Literal of(String value) {
    StringBuilder out = new StringBuilder(value.length() + 2).append('"');
    for (int i = 0; i < value.length(); i++) {
      appendEscaped(out, value, i);
    }
    return new Literal(out.append('"').toString());
  }

  /** A value of a file, on one line and without its comments; numbers keep their digits. */
  public static Literal of(Node node) {
    if (node instanceof Node.Section section) {
      return section(section);
    }
    if (node instanceof Node.Sequence sequence) {
      return list(sequence.items().stream().map(Literal::of).toList());
    }
    if (node instanceof Node.Text text) {
      return of(text.value());
    }
    if (node instanceof Node.Truth truth) {
      return of(truth.value());
    }
    return node instanceof Node.Numeral numeral ? new Literal(numeral.literal()) : NOTHING;
  }

  /** {@code null}: not entered. */
  public static Literal nothing() {
    return NOTHING;
  }

  public static Literal list(List<Literal> items) {
    if (items.isEmpty()) {
      return new Literal("[]");
    }
    List<String> parts = new ArrayList<>(items.size());
    for (Literal item : items) {
      parts.add(item.json);
    }
    return new Literal("[" + String.join(", ", parts) + "]");
  }

  /** A section; its members come in the order of the map. */
  public static Literal section(Map<String, Literal> members) {
    List<String> parts = new ArrayList<>(members.size());
    members.forEach((name, value) -> parts.add(of(name).json + ": " + value.json));
    return joined(parts);
  }

  public String json() {
    return json;
  }

  @Override
  public String toString() {
    return json;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Literal that && that.json.equals(json);
  }

  @Override
  public int hashCode() {
    return json.hashCode();
  }

  private static Literal section(Node.Section section) {
    List<String> parts = new ArrayList<>(section.members().size());
    for (Member member : section.members()) {
      parts.add(of(member.name()).json + ": " + of(member.value()).json);
    }
    return joined(parts);
  }

  private static Literal joined(List<String> parts) {
    return new Literal(parts.isEmpty() ? "{}" : "{ " + String.join(", ", parts) + " }");
  }

  private static void appendEscaped(StringBuilder out, String value, int i) {
    char c = value.charAt(i);
    switch (c) {
      case '"', '\\' -> out.append('\\').append(c);
      case '\n' -> out.append("\\n");
      case '\r' -> out.append("\\r");
      case '\t' -> out.append("\\t");
      default -> {
        if (c < ' ' || isHalf(value, i)) {
          appendCode(out, c);
        } else {
          out.append(c);
        }
      }
    }
  }

  /** Whether a surrogate stands without its other half, which UTF-8 cannot carry. */
  private static boolean isHalf(String value, int i) {
    char c = value.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 == value.length() || !Character.isLowSurrogate(value.charAt(i + 1));
    }
    return Character.isLowSurrogate(c)
        && (i == 0 || !Character.isHighSurrogate(value.charAt(i - 1)));
  }

  private static void appendCode(StringBuilder out, char c) {
    String hex = Integer.toHexString(c);
    out.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
  }
}
