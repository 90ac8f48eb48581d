package deadband.trade;

/**
 * A single number of the trade that carries its unit, its source and how it is known.
 *
 * @param what what the number is, in plain words
 * @param value the number, in {@code unit}
 * @param unit the unit as it is printed
 * @param source the document, its edition and place, or "none" for common practice
 * @param known how it is known
 */
public record Figure(String what, double value, String unit, String source, Known known) {}
