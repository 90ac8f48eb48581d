package deadband.limits;

import deadband.setup.Unit;
import deadband.trade.Known;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The table of limits in force: the one of the rule book, or a site's own values over it.
 *
 * <p>No rule holds a number of its own; what a value is, where it comes from and how it is known
 * are said here once and travel into every finding that uses it.
 */
public final class Limits {

  private static final Limits STANDARD = new Limits(List.of());

  private final Map<Limit, Entry> entries = new EnumMap<>(Limit.class);
  private final List<LimitOverride> overrides;

  private Limits(List<LimitOverride> overrides) {
    for (Limit limit : Limit.values()) {
      entries.put(limit, limit.entry());
    }
    overrides.forEach(override -> entries.put(override.limit(), override.entry()));
    this.overrides = List.copyOf(overrides);
  }

  /** The rule book's own table. */
  public static Limits standard() {
    return STANDARD;
  }

  /** The rule book's table with these in place of its own. */
  public static Limits with(List<LimitOverride> overrides) {
    return new Limits(overrides);
  }

  /** What a site set in place of the rule book's own, in the order of its file. */
  public List<LimitOverride> overrides() {
    return overrides;
  }

  /** The overrides that let more of a hazard pass. */
  public List<LimitOverride> weakened() {
    return overrides.stream().filter(LimitOverride::isWeaker).toList();
  }

  /** The same table with the rule book's own value where an override lets more of a hazard pass. */
  public Limits unweakened() {
    return new Limits(overrides.stream().filter(override -> !override.isWeaker()).toList());
  }

  public Entry of(Limit limit) {
    return Objects.requireNonNull(entries.get(limit));
  }

  /** Whether the site set this limit for itself. */
  public boolean isOwn(Limit limit) {
    return !of(limit).equals(limit.entry());
  }

  public double value(Limit limit) {
    return of(limit).value();
  }

  /** Every entry in the order of the table. */
  public List<Entry> entries() {
    return List.copyOf(entries.values());
  }

  /**
   * One limit.
   *
   * @param name as a limits file names it, unit included
   * @param what what it limits
   * @param source document and place, or "none" for common practice
   */
  public record Entry(
      String name, String what, double value, Unit unit, String source, Known known) {

    /** Whether a hazard may rest on it. */
    public boolean isFirm() {
      return known.isFirm();
    }

    /** The same limit at a value that a site sets, on its own authority. */
    public Entry at(double site, String source) {
      return new Entry(name, what, site, unit, source, Known.READ);
    }
  }
}
