package deadband.dayrun;

/** What takes power, in the order in which it has a claim on the sun. */
public enum Load {
  HOUSE(0),
  HEAT_PUMP(1),
  IMMERSION(2),
  CHARGER(3);

  private final int place;

  Load(int place) {
    this.place = place;
  }

  /** Place in that order, from 0. */
  int place() {
    return place;
  }
}
