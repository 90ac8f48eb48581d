package deadband.topics.ladder;

import deadband.facts.Bound;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.setup.Outlet.Kind;
import deadband.setup.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What a mixing valve at an outlet may give: a maximum that is law where the site stands, or a
 * recommendation.
 *
 * @param limit the value
 * @param law whether exceeding it is a fault; a recommendation exceeded is a question
 */
record OutletCeiling(Limits.Entry limit, boolean law) {

  private static final String BRITAIN = "GB";

  /** A limit of the table, firm where it is law. */
  Bound bound() {
    Bound bound = Bound.of("maximum at that outlet", limit.value(), limit);
    return law ? bound : bound.advised();
  }

  /**
   * The maximum that a temperature is held against; empty where none is known for the kind.
   *
   * <p>Of those it exceeds a law comes first, then the lowest; where it exceeds none, the lowest.
   */
  static Optional<OutletCeiling> of(Kind kind, double mixed_C, Setup setup, Limits limits) {
    List<OutletCeiling> all = all(kind, setup, limits);
    Comparator<OutletCeiling> lowest = Comparator.comparingDouble(each -> each.limit.value());
    Predicate<OutletCeiling> exceeded = each -> mixed_C > each.limit.value();
    return all.stream()
        .filter(exceeded)
        .min(Comparator.comparing((OutletCeiling each) -> !each.law).thenComparing(lowest))
        .or(() -> all.stream().min(lowest));
  }

  /** The lowest of them all, law or not: what to set a valve to [°C]. */
  static double lowest_C(Kind kind, Setup setup, Limits limits) {
    return all(kind, setup, limits).stream()
        .mapToDouble(each -> each.limit.value())
        .min()
        .orElseThrow();
  }

  private static List<OutletCeiling> all(Kind kind, Setup setup, Limits limits) {
    List<OutletCeiling> all = new ArrayList<>();
    recommended(kind)
        .ifPresent(
            recommended ->
                all.add(
                    limits.isOwn(recommended)
                        ? new OutletCeiling(limits.of(recommended), true)
                        : national(setup)
                            .map(law -> new OutletCeiling(limits.of(law), true))
                            .orElse(new OutletCeiling(limits.of(recommended), false))));
    if (isNewBritishBath(kind, setup)) {
      all.add(new OutletCeiling(limits.of(Limit.OUTLET_NEW_BATH_GB), true));
    }
    if (coversBody(kind) && setup.site().vulnerableOccupants().says(true)) {
      all.add(new OutletCeiling(limits.of(Limit.OUTLET_VULNERABLE_BODY), true));
    }
    if (recommended(kind).isPresent() && mayBeCareDownUnder(setup)) {
      all.add(new OutletCeiling(limits.of(Limit.OUTLET_CARE_AU_NZ), false));
    }
    if (recommended(kind).isEmpty() && setup.site().vulnerableOccupants().says(true)) {
      all.add(new OutletCeiling(limits.of(Limit.OUTLET_VULNERABLE), false));
    }
    return all;
  }

  /** What the British schemes recommend; a kitchen tap has no stated maximum. */
  static Optional<Limit> recommended(Kind kind) {
    return switch (kind) {
      case BATH -> Optional.of(Limit.OUTLET_BATH);
      case SHOWER -> Optional.of(Limit.OUTLET_SHOWER);
      case BASIN -> Optional.of(Limit.OUTLET_BASIN);
      case BIDET -> Optional.of(Limit.OUTLET_BIDET);
      case KITCHEN, OTHER -> Optional.empty();
    };
  }

  /** Water that covers the body. */
  static boolean coversBody(Kind kind) {
    return kind == Kind.BATH || kind == Kind.SHOWER;
  }

  /** The maximum where people wash, by the law of the country, where it has one in the table. */
  private static Optional<Limit> national(Setup setup) {
    return setup
        .site()
        .country()
        .optional()
        .flatMap(
            country ->
                switch (country.code()) {
                  case "AU" -> Optional.of(Limit.OUTLET_AU);
                  case "NZ" -> Optional.of(Limit.OUTLET_NZ);
                  case "FR" -> Optional.of(Limit.OUTLET_FR);
                  default -> Optional.empty();
                });
  }

  /**
   * Vulnerable people may live in a home or in care: whether the law of care holds is a question.
   */
  private static boolean mayBeCareDownUnder(Setup setup) {
    return setup.site().vulnerableOccupants().says(true)
        && national(setup)
            .filter(law -> law == Limit.OUTLET_AU || law == Limit.OUTLET_NZ)
            .isPresent();
  }

  private static boolean isNewBritishBath(Kind kind, Setup setup) {
    return kind == Kind.BATH
        && setup.site().newDwelling().says(true)
        && setup
            .site()
            .country()
            .optional()
            .filter(country -> country.code().equals(BRITAIN))
            .isPresent();
  }
}
