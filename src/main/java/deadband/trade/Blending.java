package deadband.trade;

/** Mixing hot with cold water: by hand, and by a thermostatic valve within its certified supply. */
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

  /**
   * Temperature of a mixture, by volume, one ρ·c throughout.
   *
   * @param hot_L hot water [L], 0 or more
   * @param hot_C its temperature [°C]
   * @param cold_L cold water [L], 0 or more, not both 0
   * @param cold_C its temperature [°C]
   * @return [°C]
   */
  public static double mixed_C(double hot_L, double hot_C, double cold_L, double cold_C) {
    double all_L = Require.notNegative("hot_L", hot_L) + Require.notNegative("cold_L", cold_L);
    return (hot_L * hot_C + cold_L * cold_C) / Require.positive("hot_L + cold_L", all_L);
  }

  /**
   * Part of a mixture that is hot water, (T_m − T_c)/(T_h − T_c).
   *
   * @param hot_C hot supply [°C], above {@code cold_C}
   * @param mixed_C mixture [°C]
   * @param cold_C cold supply [°C]
   * @return share; above 1 where the hot supply is too cold for the mixture, below 0 where the
   *     mixture is colder than cold: neither can be mixed
   */
  public static double hotFraction(double hot_C, double mixed_C, double cold_C) {
    Require.above("hot_C", hot_C, "cold_C", cold_C);
    return (mixed_C - cold_C) / (hot_C - cold_C);
  }

  /** Thermostatic valves by what their certification says of the supplies. */
  // Error Prone cannot see that a record of numbers and text never changes.
  @SuppressWarnings("ImmutableEnumChecker")
  public enum Valve {
    /** Domestic. UK TMV2 scheme, conditions of use (read); no lower cold limit stated. */
    TMV2(new ValidRange("hot supply", 55, 65, "°C"), Double.NEGATIVE_INFINITY, 25, Known.READ),
    /** Healthcare, NHS D 08. UK TMV3 scheme, Table 1 (read). */
    TMV3(new ValidRange("hot supply", 52, 65, "°C"), 5, 20, Known.READ),
    /** In line at the store, delivers 45 to 65 °C. EN 15092:2008, abstract (read). */
    EN_15092(
        new ValidRange("hot supply", Double.NEGATIVE_INFINITY, 90, "°C"),
        Double.NEGATIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        Known.READ);

    private final ValidRange hot_C;
    private final ValidRange cold_C;
    private final Known known;

    Valve(ValidRange hot_C, double coldLeast_C, double coldMost_C, Known known) {
      this.hot_C = hot_C;
      this.cold_C = new ValidRange("cold supply", coldLeast_C, coldMost_C, "°C");
      this.known = known;
    }

    /** Certified hot supply [°C]; an end that the text does not state is infinite. */
    public ValidRange hotSupply_C() {
      return hot_C;
    }

    /** Certified cold supply [°C]; an end that the text does not state is infinite. */
    public ValidRange coldSupply_C() {
      return cold_C;
    }

    /** How the ranges are known. */
    public Known known() {
      return known;
    }
  }

  /** Water an in-line valve at the store delivers (EN 15092:2008, abstract; read). */
  public static final ValidRange EN_15092_DELIVERY_C =
      new ValidRange("water delivered by an in-line valve", 45, 65, "°C");
}
