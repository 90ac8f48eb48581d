package deadband.setup;

import java.util.Locale;

/** A closed set of words that the setup file knows. */
public interface Choice {

  /** The constant's own name. */
  String name();

  /**
   * The word as it stands in the file: the name in small letters, unless the trade writes it
   * otherwise.
   */
  default String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
