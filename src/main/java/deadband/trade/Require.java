package deadband.trade;

/** Guards that name the value and what would be right. */
final class Require {
  private Require() {}

  static double positive(String name, double value) {
    if (value > 0 && value < Double.POSITIVE_INFINITY) {
      return value;
    }
    throw new IllegalArgumentException(name + " is " + value + ", must be above 0 and finite");
  }

  static double notNegative(String name, double value) {
    if (value >= 0 && value < Double.POSITIVE_INFINITY) {
      return value;
    }
    throw new IllegalArgumentException(name + " is " + value + ", must be 0 or more and finite");
  }

  static double finite(String name, double value) {
    if (Double.isFinite(value)) {
      return value;
    }
    throw new IllegalArgumentException(name + " is " + value + ", must be finite");
  }

  static double above(String name, double value, String floorName, double floor) {
    if (value > floor) {
      return value;
    }
    throw new IllegalArgumentException(
        name + " is " + value + ", must be above " + floorName + ", which is " + floor);
  }
}
