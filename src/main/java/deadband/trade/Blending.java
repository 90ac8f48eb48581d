package deadband.trade;

/** Mixing hot with cold water by a thermostatic valve within its certified supply. */
public final class Blending {
  /** Hot supply limit to assume where the valve type is not known [°C], and to say so. */
  public static final Figure ASSUMED_HOT_SUPPLY_C =
      new Figure(
          "hot supply limit where the valve type is not known",
          65,
          "°C",
          "the lowest upper limit of the certified types",
          Known.DERIVED);

  private Blending() {}

  /** Thermostatic valves by what their certification says of the supplies. */
  // Error Prone cannot see that a record of numbers and text never changes.
  @SuppressWarnings("ImmutableEnumChecker")
  public enum Valve {
    /** Domestic. UK TMV2 scheme, conditions of use (read). */
    TMV2(new ValidRange("hot supply", 55, 65, "°C"), Known.READ),
    /** Healthcare, NHS D 08. UK TMV3 scheme, Table 1 (read). */
    TMV3(new ValidRange("hot supply", 52, 65, "°C"), Known.READ),
    /** In line at the store, delivers 45 to 65 °C. EN 15092:2008, abstract (read). */
    EN_15092(new ValidRange("hot supply", Double.NEGATIVE_INFINITY, 90, "°C"), Known.READ);

    private final ValidRange hot_C;
    private final Known known;

    Valve(ValidRange hot_C, Known known) {
      this.hot_C = hot_C;
      this.known = known;
    }

    /** Certified hot supply [°C]; an end that the text does not state is infinite. */
    public ValidRange hotSupply_C() {
      return hot_C;
    }

    /** How the ranges are known. */
    public Known known() {
      return known;
    }
  }
}
