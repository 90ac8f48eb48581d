package deadband.meterlog;

/**
 * The head of a column as the file has it.
 *
 * @param name as written
 * @param meaning what it measures
 * @param unit as written, or {@link LogUnit#NONE}
 * @param because how the meaning is known, in words
 */
public record Heading(String name, Meaning meaning, LogUnit unit, String because) {

  /** Whether it is a power or an energy. */
  public boolean isPower() {
    return meaning.isPower() && !unit.isDegrees();
  }

  /** The same with another meaning. */
  public Heading as(Meaning other, String because) {
    return new Heading(name, other, unit, because);
  }
}
