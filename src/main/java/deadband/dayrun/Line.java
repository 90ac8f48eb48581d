package deadband.dayrun;

/** Where a device sits on the supply: one line conductor, or balanced on all three. */
public enum Line {
  L1(0),
  L2(1),
  L3(2),
  /** A third on each; on a single-phase supply everything is on {@link #L1}. */
  ALL(-1);

  private final int index;

  Line(int index) {
    this.index = index;
  }

  /** Index of a single line, from 0. */
  int index() {
    return index;
  }

  /** Share of this device's power that a sensor on {@code sensed} sees, 0 to 1. */
  double shareOn(Line sensed) {
    if (sensed == ALL || sensed == this) {
      return 1;
    }
    return this == ALL ? 1 / 3.0 : 0;
  }
}
