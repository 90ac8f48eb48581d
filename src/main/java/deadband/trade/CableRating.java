package deadband.trade;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Current-carrying capacity of the cables an immersion heater is wired in, by size and installation
 * method, and of its flexible cord.
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

  /** Where the capacities common to the countries of CENELEC come from. */
  public static final String HARMONISED_TABLE = "IEC 60364-5-52, PVC, three loaded conductors";

  /**
   * Installation methods of IEC 60364-5-52, which European countries share as HD 60364-5-52, with
   * what copper with PVC carries at 30 °C, not grouped (second-hand). The figures are those of
   * three loaded conductors: the two of a heater's cable warm it less, so that they are on the safe
   * side.
   */
  public enum Harmonised {
    /** Multi-core cable in conduit on a wall, B2. */
    B(15, 20, 27, 34),
    /** Clipped direct. */
    C(17, 24, 32, 41);

    private final double at1_5_A;
    private final double at2_5_A;
    private final double at4_A;
    private final double at6_A;

    Harmonised(double at1_5, double at2_5, double at4, double at6) {
      this.at1_5_A = at1_5;
      this.at2_5_A = at2_5;
      this.at4_A = at4;
      this.at6_A = at6;
    }

    /** Capacity of a size [A]. */
    public double capacity_A(Size size) {
      return switch (size) {
        case MM2_1_5 -> at1_5_A;
        case MM2_2_5 -> at2_5_A;
        case MM2_4 -> at4_A;
        case MM2_6 -> at6_A;
      };
    }
  }

  /** Where the sizes of the cord of an appliance come from. */
  public static final String APPLIANCE_CORD_TABLE = "IEC 60335-1, conductors of a supply cord";

  private static final double[] CORD_MM2 = {0.5, 0.75, 1.0, 1.5, 2.5};
  private static final double[] CORD_A = {3, 6, 10, 16, 25};

  /**
   * The rated current of an appliance for which a cord of this size is large enough, IEC 60335-1
   * (second-hand): 0.5 mm² 3 A, 0.75 6 A, 1.0 10 A, 1.5 16 A, 2.5 25 A; a size between two counts
   * as the smaller. Times {@link #flexFactor} in the warm place where it ends.
   *
   * @param size_mm2 conductor size [mm²]
   * @param heatResistant whether the cord is heat-resistant
   * @return [A], empty below the smallest size
   */
  public static OptionalDouble applianceCord_A(double size_mm2, boolean heatResistant) {
    return IntStream.range(0, CORD_MM2.length)
        .filter(row -> CORD_MM2[row] <= size_mm2)
        .mapToDouble(row -> CORD_A[row] * flexFactor(heatResistant, AT_HEATER_C))
        .max();
  }

  private static final double[] FLEX_MM2 = {0.5, 0.75, 1.0, 1.25, 1.5, 2.5};
  private static final double[] FLEX_A = {3, 6, 10, 13, 16, 25};

  /** The warm place at a heater where a cord ends [°C] (common practice). */
  private static final double AT_HEATER_C = 40;

  /** Current of a copper conductor of 1 mm² at 90 °C in free air; grows with the size. */
  public static final Figure FREE_AIR_A_PER_MM2 =
      new Figure("copper of 1 mm² at 90 °C in free air", 20.5, "A", "none", Known.MEMORY);

  private static final double FREE_AIR_EXPONENT = 0.625;

  /**
   * The most that any cable or cord with copper conductors of a size carries, I = 20.5·S^0.625: a
   * fit to two-core cable of 90 °C in free air, 1.5 to 16 mm² 26, 36, 49, 63, 86, 115 A (from
   * memory). Above it a rating is a slip of the pen.
   *
   * @param size_mm2 conductor size [mm²], positive
   * @return [A]
   */
  public static double most_A(double size_mm2) {
    return FREE_AIR_A_PER_MM2.value()
        * Math.pow(Require.positive("size_mm2", size_mm2), FREE_AIR_EXPONENT);
  }

  private static final double[] ORDINARY_C = {30, 35, 40, 45, 50, 55};
  private static final double[] ORDINARY_FACTOR = {1, 0.91, 0.82, 0.71, 0.58, 0.41};
  private static final double[] HEAT_RESISTANT_C = {50, 55, 60, 65, 70};
  private static final double[] HEAT_RESISTANT_FACTOR = {1, 0.96, 0.83, 0.67, 0.47};

  private static final ValidRange ORDINARY_RANGE_C =
      new ValidRange("ambient temperature of an ordinary cord", -50, 55, "°C");
  private static final ValidRange HEAT_RESISTANT_RANGE_C =
      new ValidRange("ambient temperature of a heat-resistant cord", -50, 70, "°C");

  /**
   * Factor of a flexible cord for the temperature around it, BS 7671 Table 4F3A (second-hand).
   * Ordinary cord, 60 °C: 35 °C 0.91, 40 0.82, 45 0.71, 50 0.58, 55 0.41. Heat-resistant cord, 90
   * °C: 1 to 50 °C, 55 0.96, 60 0.83, 65 0.67, 70 0.47; one of 110 °C keeps its rating to 80 °C,
   * but which of the two it is is not entered. Between two temperatures the hotter one's counts.
   *
   * @param heatResistant whether the cord is heat-resistant
   * @param ambient_C temperature around the cord [°C], at most 55 or 70
   */
  public static double flexFactor(boolean heatResistant, double ambient_C) {
    return heatResistant
        ? factor(HEAT_RESISTANT_C, HEAT_RESISTANT_FACTOR, HEAT_RESISTANT_RANGE_C.check(ambient_C))
        : factor(ORDINARY_C, ORDINARY_FACTOR, ORDINARY_RANGE_C.check(ambient_C));
  }

  private static double factor(double[] ambients_C, double[] factors, double ambient_C) {
    int step = 0;
    while (ambients_C[step] < ambient_C) {
      step++;
    }
    return factors[step];
  }

  /**
   * Rating of the flexible cord to a heater, in the warm place where it ends (40 °C): 0.5 mm² 3 A,
   * 0.75 6 A, 1.0 10 A, 1.25 13 A, 1.5 16 A, 2.5 25 A, times {@link #flexFactor}. BS 7671 Table
   * 4F3A (second-hand).
   *
   * @param size_mm2 conductor size [mm²]
   * @param heatResistant whether the cord is heat-resistant
   * @return rating [A], empty for a size the table does not have
   */
  public static OptionalDouble flex_A(double size_mm2, boolean heatResistant) {
    for (int row = 0; row < FLEX_MM2.length; row++) {
      if (FLEX_MM2[row] == size_mm2) {
        return OptionalDouble.of(FLEX_A[row] * flexFactor(heatResistant, AT_HEATER_C));
      }
    }
    return OptionalDouble.empty();
  }
}
