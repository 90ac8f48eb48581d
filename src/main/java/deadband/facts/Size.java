package deadband.facts;

import deadband.provenance.Derived;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How large a finding is, a quantity with its unit. Findings of one class are ranked by their
 * severity, which brings all units to one scale; {@code rules/CONVENTIONS.md} gives the reasons.
 *
 * @param value above 0
 * @param unit what it counts
 */
public record Size(double value, Unit unit) {

  /** A safeguard, or an entry, that is missing: there is no more or less to it. */
  public static final Size WHOLE = new Size(1, Unit.WHOLE);

  /** What counts where a limit is met that must not even be met. */
  private static final double AT_THE_LIMIT = 0.001;

  /** What a size counts, and how much of it makes a severity of 1. */
  public enum Unit {
    /** Past the limit of a temperature. */
    KELVIN("K", 10),
    /** By which a current exceeds a rating, as a share of it. */
    OVERLOAD("of the rating over it", 0.45),
    /** By which a time is too short or too long: 1 where it should be ten times as long. */
    DECADES("decades of time", 1.9),
    /** Missing altogether. */
    WHOLE("missing", 1),
    /** Starts of the compressor. */
    STARTS_PER_HOUR("starts/h", 10),
    /** Bought, or not used. */
    KILOWATT("kW", 1),
    /** By which any other limit is missed, as a share of it. */
    SHARE("of the limit", 1);

    private final String printed;
    private final double whole;

    Unit(String printed, double whole) {
      this.printed = printed;
      this.whole = whole;
    }

    public String printed() {
      return printed;
    }

    /** How much of it makes a severity of 1. */
    public double whole() {
      return whole;
    }
  }

  /**
   * A size.
   *
   * @throws IllegalArgumentException where the value is not above 0
   */
  public Size {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException("a size is above 0, not " + value);
    }
  }

  private static Size of(double value, Unit unit) {
    return Double.isFinite(value) ? new Size(Math.max(AT_THE_LIMIT, value), unit) : WHOLE;
  }

  /** Past the limit of a temperature. */
  public static Size kelvin(double past_K) {
    return of(past_K, Unit.KELVIN);
  }

  /** A current above what carries it. */
  public static Size overload(double current_A, double rating_A) {
    return rating_A > 0 ? of(current_A / rating_A - 1, Unit.OVERLOAD) : WHOLE;
  }

  /** A time that is too short or too long; one of nothing at all is missing altogether. */
  public static Size time(double actual, double limit) {
    return actual > 0 && limit > 0 ? of(Math.abs(Math.log10(actual / limit)), Unit.DECADES) : WHOLE;
  }

  public static Size startsPerHour(double starts) {
    return of(starts, Unit.STARTS_PER_HOUR);
  }

  public static Size kilowatts(double power_kW) {
    return of(power_kW, Unit.KILOWATT);
  }

  /** A power; where it is not entered, that of a usual heat pump's input stands in. */
  public static Size kilowatts(Optional<Double> power_kW) {
    return power_kW.map(power -> kilowatts(power.doubleValue())).orElse(WHOLE);
  }

  /** The same of a power that is calculated. */
  public static Size kilowatts(Derived<Double> power_kW) {
    return power_kW.isKnown() ? kilowatts(power_kW.get()) : WHOLE;
  }

  /** Entries that are missing. */
  public static Size entries(int missing) {
    return of(missing, Unit.WHOLE);
  }

  /** By which a limit is missed. */
  public static Size share(double share) {
    return of(share, Unit.SHARE);
  }

  /** How far a limit is missed, all of it where that is open. */
  public static Size missed(@Nullable Measure observed, @Nullable Bound limit) {
    if (observed == null || limit == null || !observed.unit().equals(limit.measure().unit())) {
      return WHOLE;
    }
    double most = Math.abs(limit.measure().value());
    return share(Math.abs(observed.value() - limit.measure().value()) / most);
  }

  /** The size on one scale for all units. */
  public double severity() {
    return value / unit.whole;
  }
}
