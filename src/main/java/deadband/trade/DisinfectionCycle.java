package deadband.trade;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a national rule asks of a heat disinfection of stored hot water.
 *
 * <p>A cycle offers one or more treatments; any one of them, at least as often as it says, passes.
 * The list carries how each is known. It does not replace the rule's text, the equipment's
 * instructions or licensed practice; a cycle is one control among several.
 *
 * @param name short name, used in setups and findings
 * @param country ISO 3166 alpha-2 codes it is used in
 * @param appliesTo the stores it speaks of, in words
 * @param leastVolume_L smallest store it speaks of [L]; 0 for any
 * @param treatments alternatives, at least one
 * @param source the document
 * @param known how it is known
 */
public record DisinfectionCycle(
    String name,
    List<String> country,
    String appliesTo,
    double leastVolume_L,
    List<Treatment> treatments,
    String source,
    Known known) {

  /** Keeps its own copies of the lists. */
  public DisinfectionCycle {
    country = List.copyOf(country);
    treatments = List.copyOf(treatments);
    if (treatments.isEmpty()) {
      throw new IllegalArgumentException(name + " has no treatment");
    }
  }

  /**
   * One way to pass.
   *
   * @param target_C temperature to reach [°C]
   * @param hold_min time to hold it [min]; 0 where the rule names none
   * @param every_days longest time between two treatments [d]
   * @param share part of the store that must reach it, 0 to 1
   */
  public record Treatment(double target_C, double hold_min, int every_days, double share) {

    /** Returns whether a programme reaches at least this. */
    public boolean isMetBy(Treatment programme) {
      return programme.target_C >= target_C
          && programme.hold_min >= hold_min
          && programme.every_days <= every_days
          && programme.share >= share;
    }
  }

  /** Returns whether a programme meets any one of the treatments. */
  public boolean isMetBy(Treatment programme) {
    return treatments.stream().anyMatch(treatment -> treatment.isMetBy(programme));
  }

  /** Returns whether the rule speaks of a store of this volume [L]. */
  public boolean speaksOf(double volume_L) {
    return volume_L >= leastVolume_L;
  }

  /** Heat-pump water heaters in Australia and New Zealand. */
  public static final DisinfectionCycle AS_3498 =
      new DisinfectionCycle(
          "AS 3498",
          List.of("AU", "NZ"),
          "heat-pump water heaters",
          0,
          List.of(new Treatment(60, 32, 7, 0.90), new Treatment(60, 0, 1, 0.45)),
          "AS 3498",
          Known.SECOND_HAND);

  /** Heat-pump stores in the Netherlands; to be checked against the document itself. */
  public static final DisinfectionCycle ISSO_55_1 =
      new DisinfectionCycle(
          "ISSO 55.1",
          List.of("NL"),
          "heat-pump stores",
          0,
          List.of(
              new Treatment(60, 20, 7, 1), new Treatment(65, 10, 7, 1), new Treatment(70, 5, 7, 1)),
          "ISSO 55.1",
          Known.SECOND_HAND);

  /**
   * New installations with stores of 400 litres and more in France. They may instead be kept at 55
   * °C or more at the store's outlet all the time.
   */
  public static final DisinfectionCycle ORDER_2005 =
      new DisinfectionCycle(
          "Order of 30 Nov 2005",
          List.of("FR"),
          "new installations with stores of 400 L and more",
          400,
          List.of(
              new Treatment(60, 60, 1, 1), new Treatment(65, 4, 1, 1), new Treatment(70, 2, 1, 1)),
          "Order of 30 November 2005",
          Known.SECOND_HAND);

  /** Pre-heat stores in British premises other than homes. */
  public static final DisinfectionCycle HSE_L8 =
      new DisinfectionCycle(
          "HSE L8",
          List.of("GB"),
          "pre-heat stores other than in homes",
          0,
          List.of(new Treatment(60, 60, 1, 1)),
          "UK HSE, Approved Code of Practice L8",
          Known.SECOND_HAND);

  /** Domestic heat-pump stores in Britain: no primary text read. */
  public static final DisinfectionCycle GB_DOMESTIC =
      new DisinfectionCycle(
          "GB domestic",
          List.of("GB"),
          "domestic heat-pump stores",
          0,
          List.of(new Treatment(60, 60, 7, 1)),
          "no primary text read",
          Known.MEMORY);

  /** What is usual where no rule for homes is listed: a finding by it can only be a query. */
  public static final DisinfectionCycle COMMON_PRACTICE =
      new DisinfectionCycle(
          "common practice",
          List.of(),
          "heat-pump stores in homes of countries without a listed rule",
          0,
          List.of(new Treatment(60, 60, 7, 1)),
          "none",
          Known.COMMON_PRACTICE);

  /** What the French order takes instead of a cycle. */
  public static final Figure ORDER_2005_KEPT_C =
      new Figure(
          "kept at the outlet of the store instead of a cycle, FR",
          55,
          "°C",
          "Order of 30 November 2005",
          Known.SECOND_HAND);

  /** Every cycle known, in the order of the trade values page. */
  public static final List<DisinfectionCycle> ALL =
      List.of(AS_3498, ISSO_55_1, ORDER_2005, HSE_L8, GB_DOMESTIC);

  /** The cycle of this name; empty where none has it. */
  public static Optional<DisinfectionCycle> named(String name) {
    return ALL.stream().filter(cycle -> cycle.name.equals(name)).findFirst();
  }

  /**
   * The cycle that speaks of hot water stores in the homes of a country.
   *
   * @param code ISO 3166 alpha-2
   * @return empty where none is known
   */
  public static Optional<DisinfectionCycle> inHomesOf(String code) {
    return ALL.stream()
        .filter(cycle -> !cycle.equals(HSE_L8))
        .filter(cycle -> cycle.country.contains(code))
        .findFirst();
  }

  /**
   * Temperature at which a store that is kept hot needs none of the treatments [°C].
   *
   * @param otherwise_C what holds where the rule does not say
   */
  public double keptHot_C(double otherwise_C) {
    return equals(ORDER_2005) ? ORDER_2005_KEPT_C.value() : otherwise_C;
  }

  /** Lowest target of any treatment [°C]: a programme below it can pass by none. */
  public double leastTarget_C() {
    return treatments.stream().mapToDouble(Treatment::target_C).min().orElseThrow();
  }

  /**
   * Longest time between two treatments that any treatment within reach of a target allows [d].
   *
   * @param target_C temperature the programme reaches [°C]; one below every target counts as the
   *     lowest
   */
  public double longestInterval_days(double target_C) {
    return reached(target_C).mapToDouble(Treatment::every_days).max().orElseThrow();
  }

  /**
   * Shortest hold with which a programme of this target and interval passes [min].
   *
   * <p>Together with {@link #leastTarget_C} and {@link #longestInterval_days} it says which number
   * of a programme falls short: none does exactly where {@link #isMetBy} a treatment of the whole
   * store.
   *
   * @param target_C temperature the programme reaches [°C]; one below every target counts as the
   *     lowest
   * @param every_days time between two of its treatments [d]; one beyond every interval counts as
   *     the longest
   */
  public double leastHold_min(double target_C, double every_days) {
    double often_days = Math.min(every_days, longestInterval_days(target_C));
    return reached(target_C)
        .filter(treatment -> treatment.every_days >= often_days)
        .mapToDouble(Treatment::hold_min)
        .min()
        .orElseThrow();
  }

  /**
   * Smallest share of the store that a programme must reach to pass, by the treatments that it runs
   * often enough for; one too rare for any is held to the rarest, so that a programme that fails in
   * another number is never held to less.
   *
   * @param every_days time between two of its treatments [d]
   * @return share, 0 to 1
   */
  public double leastShare(double every_days) {
    double rarest_days = treatments.stream().mapToInt(Treatment::every_days).max().orElseThrow();
    double counted_days = Math.min(every_days, rarest_days);
    return treatments.stream()
        .filter(treatment -> treatment.every_days >= counted_days)
        .mapToDouble(Treatment::share)
        .min()
        .orElseThrow();
  }

  /**
   * Returns whether this cycle may stand in for a country's own: it is made for the country, or
   * passes nothing that the other does not and is not known from memory alone.
   *
   * @param own the country's own cycle
   * @param code the country, ISO 3166 alpha-2
   */
  public boolean canReplace(DisinfectionCycle own, String code) {
    return country.contains(code)
        || (known != Known.MEMORY && treatments.stream().allMatch(own::isMetBy));
  }

  /**
   * Returns whether the numbers of a programme are those of a cycle of any country, whatever share
   * of the store it reaches.
   *
   * @param target_C temperature it reaches [°C]
   * @param hold_min time it holds it [min]
   * @param every_days time between two treatments [d]
   */
  public static boolean isKnownToDo(double target_C, double hold_min, double every_days) {
    return ALL.stream()
        .flatMap(cycle -> cycle.treatments.stream())
        .anyMatch(
            treatment ->
                target_C >= treatment.target_C
                    && hold_min >= treatment.hold_min
                    && every_days <= treatment.every_days);
  }

  /**
   * Returns whether a hold kills nine in ten, by the slowest rate any source gives; less is no
   * disinfection.
   *
   * @param target_C temperature it reaches [°C]
   * @param hold_min time it holds it [min]
   */
  public static boolean kills(double target_C, double hold_min) {
    double counted_C = Math.min(target_C, DecimalReduction.RANGE_C.most());
    return DecimalReduction.hold_log(counted_C, hold_min) >= 1;
  }

  private Stream<Treatment> reached(double target_C) {
    double reached_C = Math.max(target_C, leastTarget_C());
    return treatments.stream().filter(treatment -> treatment.target_C <= reached_C);
  }

  /**
   * Share of an upright store that a heater treats: what stands above its lower edge.
   *
   * @param heaterBottom_mm height of the heater's lower edge [mm], 0 or more
   * @param tankHeight_mm height of the tank [mm], positive
   * @return share, 0 to 1
   */
  public static double treatedShare(double heaterBottom_mm, double tankHeight_mm) {
    double below =
        Require.notNegative("heaterBottom_mm", heaterBottom_mm)
            / Require.positive("tankHeight_mm", tankHeight_mm);
    return 1 - Math.min(1, below);
  }
}
