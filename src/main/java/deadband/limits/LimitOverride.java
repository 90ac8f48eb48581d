package deadband.limits;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A limit that a site sets in place of the rule book's.
 *
 * @param file the limits file it stands in
 * @param source where the site's value comes from, empty where it is not said
 * @param reason why it is set, empty where it is not said
 * @param by who answers for it, empty where it is not said
 */
public record LimitOverride(
    Limit limit,
    double value,
    String file,
    Optional<String> source,
    Optional<String> reason,
    Optional<String> by) {

  /** The entry of the table. */
  public Limits.Entry entry() {
    return limit.entry().at(value, source.orElse("the limits file " + file));
  }

  /** Whether it lets more of a hazard pass than the rule book. */
  public boolean isWeaker() {
    return limit.isWeakenedBy(value);
  }

  /** What it sets in place of what, where, and who answers for it. */
  public String words() {
    Limits.Entry own = limit.entry();
    return (own.name()
                + " "
                + decimal(own.value())
                + " -> "
                + decimal(value)
                + " "
                + own.unit().printed())
            .strip()
        + ", set in "
        + file
        + by.map(name -> " by " + name).orElse("")
        + reason.map(why -> ": " + why).orElse("");
  }

  private static String decimal(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }
}
