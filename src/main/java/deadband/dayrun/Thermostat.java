package deadband.dayrun;

/**
 * A contact that opens on a rising temperature and closes on a falling one. Set the wrong way
 * round, opening wins.
 */
final class Thermostat {
  private final double opening_C;
  private final double closing_C;
  private boolean closed;

  private Thermostat(double opening_C, double closing_C, boolean closed) {
    this.opening_C = opening_C;
    this.closing_C = closing_C;
    this.closed = closed;
  }

  /** Closed until the temperature reaches {@code opening_C}. */
  static Thermostat closed(double opening_C, double closing_C) {
    return new Thermostat(opening_C, closing_C, true);
  }

  /** Open until the temperature has fallen to {@code closing_C}. */
  static Thermostat open(double opening_C, double closing_C) {
    return new Thermostat(opening_C, closing_C, false);
  }

  /** Follows the temperature; true where the contact is closed. */
  boolean follow(double temperature_C) {
    if (temperature_C >= opening_C) {
      closed = false;
    } else if (temperature_C <= closing_C) {
      closed = true;
    }
    return closed;
  }

  boolean isClosed() {
    return closed;
  }
}
