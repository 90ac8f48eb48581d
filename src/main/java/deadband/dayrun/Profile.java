package deadband.dayrun;

import java.util.Arrays;

/**
 * What the day brings, at a regular step: sun, house load and hot water drawn.
 *
 * <p>Powers are means over the step, draw-off the litres drawn within it, from the top of the tank
 * and not yet mixed with cold.
 */
public final class Profile {
  private final StepLength step;
  private final int start_s;
  private final boolean surplusGiven;
  private final double[] pv_kW;
  private final double[] house_kW;
  private final double[] draw_L;

  private Profile(
      StepLength step,
      int start_s,
      boolean surplusGiven,
      double[] pv_kW,
      double[] house_kW,
      double[] draw_L) {
    requireLength("house_kW", house_kW, pv_kW.length);
    requireLength("draw_L", draw_L, pv_kW.length);
    if (start_s < 0 || start_s >= StepLength.SECONDS_PER_DAY) {
      throw new IllegalArgumentException("second " + start_s + " is not within a day");
    }
    requireFinite("pv_kW", pv_kW, 0);
    requireFinite("house_kW", house_kW, Double.NEGATIVE_INFINITY);
    requireFinite("draw_L", draw_L, 0);
    this.step = step;
    this.start_s = start_s;
    this.surplusGiven = surplusGiven;
    this.pv_kW = pv_kW;
    this.house_kW = house_kW;
    this.draw_L = draw_L;
  }

  private static void requireLength(String name, double[] values, int length) {
    if (values.length != length) {
      throw new IllegalArgumentException(
          name + " has " + values.length + " values, pv_kW has " + length);
    }
  }

  private static void requireFinite(String name, double[] values, double least) {
    for (int index = 0; index < values.length; index++) {
      if (!Double.isFinite(values[index]) || values[index] < least) {
        throw new IllegalArgumentException(
            name
                + " "
                + values[index]
                + " at step "
                + index
                + " must be finite, at least "
                + least);
      }
    }
  }

  /**
   * A profile of sun and house.
   *
   * @param step length of each step
   * @param start_s second of the day at which the first begins [s]
   * @param pv_kW power of the generator [kW], 0 or more; the inverter may still limit it
   * @param house_kW house load before any flexible load [kW]
   * @param draw_L hot water drawn in the step [L], 0 or more
   */
  public static Profile of(
      StepLength step, int start_s, double[] pv_kW, double[] house_kW, double[] draw_L) {
    return new Profile(step, start_s, false, pv_kW.clone(), house_kW.clone(), draw_L.clone());
  }

  /**
   * A profile of surplus: sun and house are taken as in it. Surplus counts as sun, want as house
   * load, and no inverter limits it.
   *
   * @param step length of each step
   * @param start_s second of the day at which the first begins [s]
   * @param surplus_kW sun less house load [kW], negative where the house buys
   * @param draw_L hot water drawn in the step [L], 0 or more
   */
  public static Profile ofSurplus(
      StepLength step, int start_s, double[] surplus_kW, double[] draw_L) {
    double[] pv_kW = Arrays.stream(surplus_kW).map(surplus -> Math.max(0, surplus)).toArray();
    double[] house_kW = Arrays.stream(surplus_kW).map(surplus -> Math.max(0, -surplus)).toArray();
    return new Profile(step, start_s, true, pv_kW, house_kW, draw_L.clone());
  }

  public StepLength step() {
    return step;
  }

  /** Number of steps. */
  public int length() {
    return pv_kW.length;
  }

  /** Second of the day at which the first step begins [s]. */
  public int start_s() {
    return start_s;
  }

  /** Whether sun and house stand only for the surplus between them. */
  public boolean surplusGiven() {
    return surplusGiven;
  }

  public double pv_kW(int index) {
    return pv_kW[index];
  }

  public double house_kW(int index) {
    return house_kW[index];
  }

  public double draw_L(int index) {
    return draw_L[index];
  }

  /** Energy of the generator over the whole profile [kWh]. */
  public double pv_kWh() {
    return Arrays.stream(pv_kW).sum() * step.hours();
  }

  /** Hot water drawn over the whole profile [L]. */
  public double drawn_L() {
    return Arrays.stream(draw_L).sum();
  }

  /**
   * A span of the same profile.
   *
   * @param from first step of it
   * @param until first step after it
   */
  public Profile part(int from, int until) {
    int later_s = (start_s + from * step.seconds()) % StepLength.SECONDS_PER_DAY;
    return new Profile(
        step,
        later_s,
        surplusGiven,
        Arrays.copyOfRange(pv_kW, from, until),
        Arrays.copyOfRange(house_kW, from, until),
        Arrays.copyOfRange(draw_L, from, until));
  }

  /** The same profile, beginning at another second of the day [s]. */
  public Profile startingAt(int start_s) {
    return new Profile(step, start_s, surplusGiven, pv_kW, house_kW, draw_L);
  }

  /**
   * The same profile at another step. Finer: powers are held and draw-off is spread evenly;
   * coarser: powers are averaged and draw-off added up.
   *
   * @throws IllegalArgumentException where neither step divides the other, or the length leaves a
   *     part of a step over
   */
  public Profile at(StepLength other) {
    if (other.equals(step)) {
      return this;
    }
    if (step.seconds() % other.seconds() == 0) {
      return finer(other, step.seconds() / other.seconds());
    }
    if (other.seconds() % step.seconds() == 0) {
      return coarser(other, other.seconds() / step.seconds());
    }
    throw new IllegalArgumentException(
        "steps of " + step.seconds() + " s cannot become steps of " + other.seconds() + " s");
  }

  /**
   * This day by the clock, over another span of time: it begins at its second of the day and goes
   * on through as many midnights as it takes, the same each day. Powers are averaged, draw-off is
   * added up.
   *
   * @param step length of each step of the span
   * @param start_s second of the day at which the span begins [s]
   * @param length steps of the span
   * @throws IllegalArgumentException where this is not one whole day from midnight
   */
  public Profile over(StepLength step, int start_s, int length) {
    if (this.start_s != 0 || length() != this.step.perDay()) {
      throw new IllegalArgumentException(
          length() + " steps from second " + this.start_s + " are not a day from midnight");
    }
    int fine_s = commonDivisor(commonDivisor(this.step.seconds(), step.seconds()), start_s);
    Profile fine = at(new StepLength(fine_s));
    int parts = step.seconds() / fine_s;
    int from = start_s / fine_s;
    return new Profile(
        step,
        start_s,
        surplusGiven,
        around(fine.pv_kW, from, length, parts, 1.0 / parts),
        around(fine.house_kW, from, length, parts, 1.0 / parts),
        around(fine.draw_L, from, length, parts, 1));
  }

  private static int commonDivisor(int a, int b) {
    return b == 0 ? a : commonDivisor(b, a % b);
  }

  private static double[] around(double[] day, int from, int length, int parts, double share) {
    double[] span = new double[length];
    for (int index = 0; index < length; index++) {
      for (int part = 0; part < parts; part++) {
        span[index] += day[(int) ((from + (long) index * parts + part) % day.length)] * share;
      }
    }
    return span;
  }

  private Profile finer(StepLength other, int parts) {
    return new Profile(
        other,
        start_s,
        surplusGiven,
        split(pv_kW, parts, 1),
        split(house_kW, parts, 1),
        split(draw_L, parts, 1.0 / parts));
  }

  private static double[] split(double[] values, int parts, double share) {
    double[] split = new double[values.length * parts];
    Arrays.setAll(split, index -> values[index / parts] * share);
    return split;
  }

  private Profile coarser(StepLength other, int parts) {
    if (length() % parts != 0) {
      throw new IllegalArgumentException(
          length() + " steps cannot be gathered by " + parts + ": a part of a step is left over");
    }
    return new Profile(
        other,
        start_s,
        surplusGiven,
        gather(pv_kW, parts, 1.0 / parts),
        gather(house_kW, parts, 1.0 / parts),
        gather(draw_L, parts, 1));
  }

  private static double[] gather(double[] values, int parts, double share) {
    double[] gathered = new double[values.length / parts];
    for (int index = 0; index < values.length; index++) {
      gathered[index / parts] += values[index] * share;
    }
    return gathered;
  }
}
