package deadband.trade;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Current-carrying capacity of the cables an immersion heater is wired in, by size and installation
 * method, with the factors that reduce it.
 *
 * <p>Flat twin and earth, 70 °C PVC, at 30 °C ambient: BS 7671 Table 4D5, volt drop from Appendix
 * 4. Second-hand or from memory as marked. It informs; a licensed electrician with the book
 * decides.
 */
public final class CableRating {
  /** Where the capacities of the cables come from. */
  public static final String CAPACITY_TABLE = "BS 7671 Table 4D5";

  /** Where the ratings of the flexible cords come from. */
  public static final String FLEX_TABLE = "BS 7671 Table 4F3A";

  private CableRating() {}

  /** Conductor sizes. */
  public enum Size {
    MM2_1_5(1.5, 29),
    MM2_2_5(2.5, 18),
    MM2_4(4, 11),
    MM2_6(6, 7.3);

    private final double size_mm2;
    private final double voltDrop_mV_per_Am;

    Size(double size_mm2, double voltDrop_mV_per_Am) {
      this.size_mm2 = size_mm2;
      this.voltDrop_mV_per_Am = voltDrop_mV_per_Am;
    }

    /** Cross-section [mm²]. */
    public double size_mm2() {
      return size_mm2;
    }

    /** Volt drop [mV/(A·m)] (second-hand). */
    public double voltDrop_mV_per_Am() {
      return voltDrop_mV_per_Am;
    }

    /**
     * Size by its cross-section [mm²].
     *
     * @throws IllegalArgumentException where the table does not have it
     */
    public static Size of(double size_mm2) {
      return find(size_mm2)
          .orElseThrow(
              () ->
                  new IllegalArgumentException(size_mm2 + " mm² is not one of 1.5, 2.5, 4, 6 mm²"));
    }

    /** Size by its cross-section [mm²]; empty where the table does not have it. */
    public static Optional<Size> find(double size_mm2) {
      return Arrays.stream(values()).filter(size -> size.size_mm2 == size_mm2).findFirst();
    }

    /** Largest size of the table that is not above a cross-section [mm²]; empty below them all. */
    public static Optional<Size> largestUpTo(double size_mm2) {
      return Arrays.stream(values())
          .filter(size -> size.size_mm2 <= size_mm2)
          .max(Comparator.comparingDouble(Size::size_mm2));
    }
  }

  /**
   * Installation methods of Table 4D5 and how their capacities are known. Flat twin and earth in
   * conduit on a wall (method B) has no column there.
   */
  public enum Method {
    /** In conduit in an insulated wall. */
    A(Known.MEMORY, 14.5, 20, 26, 32),
    /** Clipped direct. */
    C(Known.SECOND_HAND, 20, 27, 37, 47),
    /** Touching a ceiling, insulation to 100 mm. */
    METHOD_100(Known.SECOND_HAND, 16, 21, 27, 34),
    /** Touching a ceiling, insulation above 100 mm. */
    METHOD_101(Known.MEMORY, 13, 17, 22, 27),
    /** In a stud wall, touching it, insulated. */
    METHOD_102(Known.MEMORY, 16, 21, 27, 35),
    /** In a stud wall, not touching it, insulated. */
    METHOD_103(Known.SECOND_HAND, 10, 13.5, 17.5, 23.5);

    private final Known known;
    private final double at1_5_A;
    private final double at2_5_A;
    private final double at4_A;
    private final double at6_A;

    Method(Known known, double at1_5, double at2_5, double at4, double at6) {
      this.known = known;
      this.at1_5_A = at1_5;
      this.at2_5_A = at2_5;
      this.at4_A = at4;
      this.at6_A = at6;
    }

    /** Capacity of a size at 30 °C, not grouped [A]. */
    public double capacity_A(Size size) {
      return switch (size) {
        case MM2_1_5 -> at1_5_A;
        case MM2_2_5 -> at2_5_A;
        case MM2_4 -> at4_A;
        case MM2_6 -> at6_A;
      };
    }

    /**
     * How the capacity of a size is known: one figure of method 101 is better known than its row.
     */
    public Known known(Size size) {
      return this == METHOD_101 && size == Size.MM2_2_5 ? Known.SECOND_HAND : known;
    }
  }

  private static final double[] AMBIENT_C = {25, 30, 35, 40, 45, 50};
  private static final double[] AMBIENT_FACTOR = {1.03, 1.00, 0.94, 0.87, 0.79, 0.71};

  /** Ambient temperatures the factors are known for; below, the first still holds. */
  private static final ValidRange AMBIENT_RANGE_C =
      new ValidRange("ambient temperature of a cable", -50, 50, "°C");

  /**
   * Factor for ambient temperature, 70 °C PVC: 25 °C 1.03, 30 1.00, 35 0.94, 40 0.87, 45 0.79, 50
   * 0.71. BS 7671 Table 4B1 (second-hand). Between two of them the hotter one's counts; below 25 °C
   * the factor stays 1.03.
   *
   * @param ambient_C temperature around the cable [°C], at most 50
   * @throws IllegalArgumentException above 50 °C
   */
  public static double ambientFactor(double ambient_C) {
    AMBIENT_RANGE_C.check(ambient_C);
    int step = 0;
    while (AMBIENT_C[step] < ambient_C) {
      step++;
    }
    return AMBIENT_FACTOR[step];
  }

  private static final double[] GROUPING_FACTOR = {1.00, 0.80, 0.70, 0.65, 0.60, 0.57};

  private static final ValidRange GROUPED_CIRCUITS =
      new ValidRange("grouped circuits", 1, GROUPING_FACTOR.length, "");

  /**
   * Factor for circuits grouped together and equally loaded: 1, 0.80, 0.70, 0.65, 0.60, 0.57 for
   * one to six. BS 7671 Table 4C1 (from memory: never a hard limit without an override).
   *
   * @param circuits number of circuits, 1 to 6
   */
  public static double groupingFactor(int circuits) {
    return GROUPING_FACTOR[(int) GROUPED_CIRCUITS.check(circuits) - 1];
  }

  /**
   * Capacity of a cable as installed, I_z = I_t·C_a·C_g.
   *
   * @param size conductor size
   * @param method installation method
   * @param ambient_C temperature around the cable [°C], at most 50
   * @param circuits circuits grouped, itself included, 1 to 6
   * @return [A]
   */
  public static double installed_A(Size size, Method method, double ambient_C, int circuits) {
    return method.capacity_A(size) * ambientFactor(ambient_C) * groupingFactor(circuits);
  }

  private static final double[] FLEX_MM2 = {1.0, 1.25, 1.5, 2.5};
  private static final double[] FLEX_A = {10, 13, 16, 25};

  /** Factor of ordinary flexible cord at 40 °C. */
  public static final Figure ORDINARY_FLEX_FACTOR =
      new Figure(
          "ordinary flexible cord at 40 °C", 0.82, "", "BS 7671 Table 4F3A", Known.SECOND_HAND);

  /** Ambient temperature up to which heat-resistant flexible cord keeps its rating. */
  public static final Figure HEAT_RESISTANT_FLEX_TO_C =
      new Figure(
          "heat-resistant flexible cord keeps its rating to",
          80,
          "°C",
          "BS 7671 Table 4F3A",
          Known.SECOND_HAND);

  /**
   * Rating of the flexible cord to a heater, in the warm place where it ends (40 °C): 1.0 mm² 10 A,
   * 1.25 13 A, 1.5 16 A, 2.5 25 A, ordinary cord × 0.82. BS 7671 Table 4F3A (second-hand).
   *
   * @param size_mm2 conductor size [mm²]
   * @param heatResistant whether the cord is heat-resistant: no derating to 80 °C
   * @return rating [A], empty for a size the table does not have
   */
  public static OptionalDouble flex_A(double size_mm2, boolean heatResistant) {
    double factor = heatResistant ? 1 : ORDINARY_FLEX_FACTOR.value();
    for (int row = 0; row < FLEX_MM2.length; row++) {
      if (FLEX_MM2[row] == size_mm2) {
        return OptionalDouble.of(FLEX_A[row] * factor);
      }
    }
    return OptionalDouble.empty();
  }
}
