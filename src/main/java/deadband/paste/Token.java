package deadband.paste;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One piece of a line.
 *
 * @param text as it stands in the clean text; of a word, in small letters and without accents
 * @param start offset in the clean text
 */
record Token(Kind kind, String text, int start, int end, @Nullable Amount amount) {

  enum Kind {
    WORD,
    AMOUNT,
    WINDOW,
    /** A name of the setup file with its sections: relay.start_kW. */
    PLACE,
    /** A date, a telephone number, an address: read as no value. */
    OPAQUE,
    /** A unit in brackets or a cell of its own. */
    UNIT,
    COMMA,
    /** A word that joins clauses: and, but, then. */
    JOIN,
    CELL,
    LINK,
    SLASH,
    OPEN,
    CLOSE,
    STOP,
    QUESTION,
    OTHER
  }

  /**
   * A number with its unit.
   *
   * @param readings one where it is clear what was written, more where a mark may part thousands
   * @param unit null where none is written
   * @param range whether it is one end of a range
   * @param second the second number of a pair such as 3.2/0.3
   */
  record Amount(
      List<BigDecimal> readings,
      @Nullable UnitWord unit,
      boolean range,
      @Nullable BigDecimal second) {
    boolean isClear() {
      return readings.size() == 1 && !range;
    }
  }

  /** The unit written with a number; null where none is. */
  @Nullable UnitWord unit() {
    return amount == null ? null : amount.unit();
  }

  boolean is(Kind other) {
    return kind == other;
  }
}
