package deadband.trade;

/**
 * The span in which a formula or a table holds, both ends included. Outside it a value is refused,
 * or clamped where the caller's documentation says so; it is never extrapolated.
 *
 * @param quantity what is bounded, as it is printed
 * @param least lowest value that holds
 * @param most highest value that holds
 * @param unit the unit of both
 */
public record ValidRange(String quantity, double least, double most, String unit) {

  /** Returns whether the value lies in the range; NaN does not. */
  public boolean holds(double value) {
    return value >= least && value <= most;
  }

  /**
   * Returns the value unchanged.
   *
   * @throws IllegalArgumentException with value and range where it lies outside
   */
  public double check(double value) {
    if (holds(value)) {
      return value;
    }
    throw new IllegalArgumentException(
        quantity + " " + value + " " + unit + " is outside " + least + " to " + most + " " + unit);
  }

  /**
   * Returns the value, or the end of the range that it lies beyond.
   *
   * @throws IllegalArgumentException where it is not a number
   */
  public double clamp(double value) {
    if (Double.isNaN(value)) {
      throw new IllegalArgumentException(quantity + " is not a number");
    }
    return Math.min(most, Math.max(least, value));
  }
}
