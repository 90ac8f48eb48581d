package deadband.judging;

import deadband.cases.Bound;
import deadband.cases.Detail;
import deadband.cases.Measure;
import org.jspecify.annotations.Nullable;

/**
 * How large a finding is, for its rank among others of its class.
 *
 * @param value above 0
 * @param unit what it counts
 */
public record Size(double value, Unit unit) {

  /** Of a limit that is reached where it must not even be reached. */
  private static final double AT_THE_LIMIT = 0.001;

  /** What a size counts, and how much of it weighs as much as a limit missed by its whole. */
  public enum Unit {
    /**
     * Kelvin past a limit: 10 K turn a supply that scalds in seconds into one that does at once.
     */
    KELVIN(10),
    /** Starts an hour: 10 wear a compressor as no plate allows. */
    STARTS_PER_HOUR(10),
    /** Kilowatts bought or lost: 1 kW is about what a heat pump's power input is made of. */
    KILOWATT(1),
    /** Share of the limit by which it is missed. */
    SHARE(1),
    /** Entries missing. */
    ENTRIES(1);

    private final double whole;

    Unit(double whole) {
      this.whole = whole;
    }
  }

  /** The size that a case gives; else how far its limit is missed, all of it where that is open. */
  static Size of(Detail detail, Consequence declared) {
    return detail.size() > 0
        ? new Size(detail.size(), declared.sizeUnit())
        : new Size(share(detail.observed(), detail.limit()), Unit.SHARE);
  }

  private static double share(@Nullable Measure observed, @Nullable Bound limit) {
    if (observed == null || limit == null || !observed.unit().equals(limit.measure().unit())) {
      return 1;
    }
    double most = Math.abs(limit.measure().value());
    double share = Math.abs(observed.value() - limit.measure().value()) / most;
    return Double.isFinite(share) ? Math.max(AT_THE_LIMIT, share) : 1;
  }

  /** The size on one scale for all units: a rank needs an order, whatever is counted. */
  double weight() {
    return value / unit.whole;
  }
}
