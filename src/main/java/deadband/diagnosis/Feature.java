package deadband.diagnosis;

/**
 * One thing that can be seen of how a heat pump runs. A value is compared on the scale on which its
 * noise is even: as it is, or, where errors grow with the value, by the logarithm of it and one
 * whole. The range is what it can be at all; a cause that says nothing of a feature leaves every
 * value in it equally likely.
 */
public enum Feature {
  RUN("typical run", "min", 0.5, 6),
  PAUSE("typical pause", "min", 0.5, 6),
  STARTS("starts in the worst hour", "", 1, 3),
  STARTS_DAY("starts a day", "", 1, 5),
  BY_DAY("runs that start between 8 and 18 h", "%", 0, 1),
  DEFICIT("input not covered by surplus at starts by the relay", "%", 0, 1),
  BRIEF_CLOUD("stops for a fall of the surplus that passes within minutes", "%", 0, 1),
  HELD("runs that go on long after the relay must have opened", "%", 0, 1),
  RISE("tank rise while running", "K/h", 1, 5),
  DIFFERENTIAL("tank at the stop above tank at the start", "K", 0.5, 4),
  STANDBY_LOST("pauses without standby power", "%", 0, 1),
  BATTERY("battery's share of the runs without surplus", "%", 0, 1),
  VEHICLE("early stops that only the vehicle's power explains", "%", 0, 1);

  private final String says;
  private final String unit;
  private final double whole;
  private final double range;

  /**
   * @param whole added before the logarithm is taken; 0 for a value compared as it is
   * @param range on the scale of comparison
   */
  Feature(String says, String unit, double whole, double range) {
    this.says = says;
    this.unit = unit;
    this.whole = whole;
    this.range = range;
  }

  public String says() {
    return says;
  }

  public String unit() {
    return unit;
  }

  /** Whether the value is a share, 0 to 1, that is shown in percent. */
  public boolean isShare() {
    return unit.equals("%");
  }

  /** A value on the scale of comparison. */
  double scaled(double value) {
    return whole == 0 ? value : Math.log(whole + Math.max(0, value));
  }

  /** A small error of a value on the scale of comparison. */
  double scaledError(double value, double error) {
    return whole == 0 ? error : error / (whole + Math.max(0, value));
  }

  double range() {
    return range;
  }
}
