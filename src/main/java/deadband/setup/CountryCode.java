package deadband.setup;

import java.util.Optional;

/**
 * A country by its ISO 3166-1 alpha-2 code.
 *
 * @param code two capital letters
 */
public record CountryCode(String code) {

  /** The form of a code. */
  public static final String PATTERN = "[A-Z]{2}";

  /** Reads a code; empty where the text is not of its form. */
  public static Optional<CountryCode> parse(String text) {
    return text.matches(PATTERN) ? Optional.of(new CountryCode(text)) : Optional.empty();
  }

  @Override
  public String toString() {
    return code;
  }
}
