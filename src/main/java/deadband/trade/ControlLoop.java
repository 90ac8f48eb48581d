package deadband.trade;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A surplus relay, the heater beside it and the heat pump it calls, in closed form for steady
 * surplus.
 *
 * <p>The problem: when the heat pump starts, its own draw disappears from what the relay sees,
 * unless the relay counts it back. If the gap between start and stop is no wider than that draw,
 * the relay opens again at once, closes again, and hunts. The smallest use:
 *
 * <pre>{@code
 * var counts = new ControlLoop.Counts(true, true, false);
 * var loop = new ControlLoop(counts, 3.0, 2.7, 2.8, 3.0, 0.15);
 * loop.hunting(); // [3.0, 5.5] kW
 * }</pre>
 *
 * <p>Symbols: S surplus (PV − house before any flexible load), P_on start, P_off stop, P draw of
 * the heat pump while it heats the tank, R power of the heater while its controller lets it run (0
 * once the tank is at its limit), d the heater's least power. Export is positive, import negative.
 *
 * <p>The heater takes F(x) = min(R, max(0, x)) of what is left to it, x, and nothing below d.
 * Before the start X₀ = S − F(S) is exported, and the relay sees q₀ = X₀ + [imm]·F₀. While the pump
 * runs X₁ = S − P − F(S − P), and it sees q₁ = X₁ + [imm]·F₁ + [hp]·P. It closes if q₀ ≥ P_on and
 * opens if q₁ ≤ P_off. Every power is brought to whole watts before it is compared.
 *
 * <p>Export that a limit curtails never reaches the relay: S is what the site can export or take.
 * Bands are stated for unbounded S; the caller knows what the sun can give.
 *
 * @param counts which powers the relay adds up
 * @param start_kW threshold P_on at or above which the relay closes [kW]
 * @param stop_kW threshold P_off at or below which it opens [kW]; negative allows import
 * @param draw_kW what the heat pump draws, P [kW], 0 or more
 * @param heater_kW power of the heater at the site's voltage, R [kW]; 0 where it is off
 * @param heaterLeast_kW least power of the heater, d [kW], 0 or more
 */
public record ControlLoop(
    Counts counts,
    double start_kW,
    double stop_kW,
    double draw_kW,
    double heater_kW,
    double heaterLeast_kW) {

  private static final double W_PER_KW = 1000;

  /**
   * The powers a relay adds up.
   *
   * @param export export at the supply, import negative
   * @param immersion power of the immersion heater
   * @param heatPump power of the heat pump
   */
  public record Counts(boolean export, boolean immersion, boolean heatPump) {}

  /** Guards the ranges and brings every power to whole watts. */
  public ControlLoop {
    start_kW = wholeWatts_kW(Require.finite("start_kW", start_kW));
    stop_kW = wholeWatts_kW(Require.finite("stop_kW", stop_kW));
    draw_kW = wholeWatts_kW(Require.notNegative("draw_kW", draw_kW));
    heater_kW = wholeWatts_kW(Require.notNegative("heater_kW", heater_kW));
    heaterLeast_kW = wholeWatts_kW(Require.notNegative("heaterLeast_kW", heaterLeast_kW));
  }

  /** A power in whole watts, still in kW: the nearest double to a decimal of three digits. */
  public static double wholeWatts_kW(double power_kW) {
    return watts(power_kW) / W_PER_KW;
  }

  /**
   * A power in whole watts, as every comparison with a threshold uses it.
   *
   * @param power_kW power [kW]
   * @return power [W], a whole number
   */
  public static double watts(double power_kW) {
    return Math.rint(power_kW * W_PER_KW);
  }

  /**
   * What a proportional heater takes of a power: min(R, max(0, x)), nothing below its least power.
   * The unit is that of the arguments.
   *
   * @param available power left to the heater, x; may be negative
   * @param most power of the heater, R
   * @param least least power of the heater, d
   */
  public static double heater(double available, double most, double least) {
    double taken = Math.min(most, Math.max(0, available));
    return taken < least ? 0 : taken;
  }

  /** Returns whether the relay closes at a steady surplus [kW] while the pump is off: q₀ ≥ P_on. */
  public boolean closes(double surplus_kW) {
    return seen_W(watts(surplus_kW), 0) >= watts(start_kW);
  }

  /** Returns whether the relay opens at a steady surplus [kW] while the pump draws: q₁ ≤ P_off. */
  public boolean opens(double surplus_kW) {
    return seen_W(watts(surplus_kW), watts(draw_kW)) <= watts(stop_kW);
  }

  private double seen_W(double surplus_W, double draw_W) {
    double left_W = surplus_W - draw_W;
    double heater_W = heater(left_W, watts(heater_kW), watts(heaterLeast_kW));
    double seen_W = counts.export ? left_W - heater_W : 0;
    seen_W += counts.immersion ? heater_W : 0;
    return seen_W + (counts.heatPump ? draw_W : 0);
  }

  /**
   * Steady surplus at which the relay closes and, once the pump draws, opens again.
   *
   * <p>For export and heater counted [P_on, P_off + P]; the same with the pump counted none while
   * P_on &gt; P_off; for export alone [P_on + R, P_off + P + R], with a negative stop [P_on + R,
   * P_off + P]; for export and pump [P_on + R, P_off], or [P_on + R, P_off + R] where P_off ≥ P.
   * Below the heater's least power the surplus is export, so a start below it, or a stop between 0
   * and it, can split the band.
   *
   * <p>Where the stop is not below the start see {@link #runsFree}: the bands are still those of
   * the definition, but no rate follows from them.
   *
   * @return disjoint bands in rising order; none where nothing hunts
   */
  public List<SurplusBand> hunting() {
    List<Span> closing = seenAtLeast(watts(start_kW));
    List<Span> opening = seenAtMost(watts(stop_kW) - (counts.heatPump ? watts(draw_kW) : 0));
    List<SurplusBand> bands = new ArrayList<>();
    for (Span close : closing) {
      for (Span open : opening) {
        addOverlap(close, open.movedBy(watts(draw_kW)), bands);
      }
    }
    return List.copyOf(bands);
  }

  private static void addOverlap(Span close, Span open, List<SurplusBand> bands) {
    double from_W = Math.max(close.from_W, open.from_W);
    double to_W = Math.min(close.to_W, open.to_W);
    if (from_W <= to_W) {
      bands.add(new SurplusBand(from_W / W_PER_KW, to_W / W_PER_KW));
    }
  }

  /** A closed span of whole watts. */
  private record Span(double from_W, double to_W) {
    Span movedBy(double shift_W) {
      return new Span(from_W + shift_W, to_W + shift_W);
    }
  }

  private static final Span EVERYWHERE =
      new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  private static Span from(double least_W) {
    return new Span(least_W, Double.POSITIVE_INFINITY);
  }

  private static Span upTo(double most_W) {
    return new Span(Double.NEGATIVE_INFINITY, most_W);
  }

  /** Whether the heater can take anything: one weaker than its least power never does. */
  private boolean heaterActive() {
    return heater_kW >= heaterLeast_kW;
  }

  /** Power left to heater and grid at which the relay sees at least {@code threshold_W} of it. */
  private List<Span> seenAtLeast(double threshold_W) {
    if (counts.export) {
      return counts.immersion || !heaterActive()
          ? List.of(from(threshold_W))
          : exportAtLeast(threshold_W);
    }
    if (threshold_W <= 0) {
      return List.of(EVERYWHERE);
    }
    if (!counts.immersion || !heaterActive() || threshold_W > watts(heater_kW)) {
      return List.of();
    }
    return List.of(from(Math.max(threshold_W, watts(heaterLeast_kW))));
  }

  /** Power left to heater and grid at which the relay sees at most {@code threshold_W} of it. */
  private List<Span> seenAtMost(double threshold_W) {
    if (counts.export) {
      return counts.immersion || !heaterActive()
          ? List.of(upTo(threshold_W))
          : exportAtMost(threshold_W);
    }
    if (threshold_W < 0) {
      return List.of();
    }
    if (!counts.immersion || !heaterActive() || threshold_W >= watts(heater_kW)) {
      return List.of(EVERYWHERE);
    }
    return List.of(upTo(Math.max(threshold_W, highestUntaken_W())));
  }

  /** Export x − F(x): x below d, then 0 while the heater follows, then x − R. */
  private List<Span> exportAtLeast(double threshold_W) {
    if (threshold_W <= 0) {
      return List.of(from(threshold_W));
    }
    Span aboveHeater = from(threshold_W + watts(heater_kW));
    return threshold_W <= highestUntaken_W()
        ? List.of(new Span(threshold_W, highestUntaken_W()), aboveHeater)
        : List.of(aboveHeater);
  }

  private List<Span> exportAtMost(double threshold_W) {
    if (threshold_W < 0) {
      return List.of(upTo(threshold_W));
    }
    double most_W = threshold_W + watts(heater_kW);
    return threshold_W < highestUntaken_W()
        ? List.of(upTo(threshold_W), new Span(watts(heaterLeast_kW), most_W))
        : List.of(upTo(most_W));
  }

  /** Highest surplus that the heater leaves alone. */
  private double highestUntaken_W() {
    return Math.max(0, watts(heaterLeast_kW) - 1);
  }

  /**
   * Returns whether the stop is not below the start, P_on ≤ P_off. Such a relay opens and closes on
   * its delays alone, whatever the pump does, and no rate may be quoted from its bands.
   */
  public boolean runsFree() {
    return start_kW <= stop_kW;
  }

  /** Gap between the thresholds, A − B [kW]. */
  public double gap_kW() {
    return wholeWatts_kW(start_kW - stop_kW);
  }

  /**
   * Lowest steady surplus at which the relay closes [kW].
   *
   * @return −∞ where it always closes, empty where it never does
   */
  public OptionalDouble lowestClosing_kW() {
    return seenAtLeast(watts(start_kW)).stream()
        .mapToDouble(span -> span.from_W / W_PER_KW)
        .findFirst();
  }

  /**
   * Import when the pump starts at the edge of closing: max(0, P − S_start). A relay that always
   * closes may call without any surplus: then it is P.
   *
   * @return import [kW], empty where the relay never closes
   */
  public OptionalDouble importAtStart_kW() {
    OptionalDouble edge_kW = lowestClosing_kW();
    if (edge_kW.isEmpty()) {
      return edge_kW;
    }
    double surplus_kW = Double.isInfinite(edge_kW.getAsDouble()) ? 0 : edge_kW.getAsDouble();
    return OptionalDouble.of(Math.max(0, wholeWatts_kW(draw_kW - surplus_kW)));
  }

  /**
   * The most the site may import for as long as the relay still holds the call.
   *
   * <p>max(0, −P_off) where the relay counts export and not the pump, max(0, P − P_off) where it
   * counts both: at the stop edge the heater is off whenever anything is imported, so whether it is
   * counted makes no difference. A relay that does not count export cannot see import: then it is
   * P, or 0 where the relay opens without surplus.
   *
   * @return import at the stop edge [kW]
   */
  public double importWhileHeld_kW() {
    if (!counts.export) {
      return opens(0) ? 0 : draw_kW;
    }
    double pump_kW = counts.heatPump ? draw_kW : 0;
    return Math.max(0, wholeWatts_kW(pump_kW - stop_kW));
  }

  /** The same loop with another stop [kW]. */
  public ControlLoop withStop(double stop_kW) {
    return new ControlLoop(counts, start_kW, stop_kW, draw_kW, heater_kW, heaterLeast_kW);
  }

  /** The same loop with another start [kW]. */
  public ControlLoop withStart(double start_kW) {
    return new ControlLoop(counts, start_kW, stop_kW, draw_kW, heater_kW, heaterLeast_kW);
  }

  /** The same loop with the heater off, as it is once the tank is at its limit. */
  public ControlLoop withHeaterOff() {
    return new ControlLoop(counts, start_kW, stop_kW, draw_kW, 0, heaterLeast_kW);
  }
}
