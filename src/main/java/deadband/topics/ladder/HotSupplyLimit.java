package deadband.topics.ladder;

import static deadband.setup.Unit.CELSIUS;

import deadband.facts.Bound;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.provenance.Derived;
import deadband.setup.Blending;
import deadband.setup.Blending.Valve;
import deadband.setup.Outlet;
import deadband.setup.Setup;
import java.util.List;

/**
 * The hottest supply that the thermostatic mixing valve is made for: as entered for the valve
 * itself, but never more than the standard it is made to; else by that standard; else the lowest of
 * these, assumed.
 */
final class HotSupplyLimit {

  private static final String QUANTITY = "maximum supply of the mixing valve";

  private final Blending blending;
  private final List<Outlet> outlets;
  private final Limits limits;

  HotSupplyLimit(Setup setup, Limits limits) {
    this.blending = setup.blending();
    this.outlets = setup.outlets().optional().orElse(List.of());
    this.limits = limits;
  }

  /**
   * Whether there is a valve: unless it is entered that there is none, and no outlet says
   * otherwise.
   */
  Derived<Boolean> fitted() {
    boolean somewhere = outlets.stream().anyMatch(outlet -> outlet.blended().says(true));
    if (somewhere) {
      return Derived.constant(true);
    }
    if (blending.valve().says(Valve.NONE)) {
      return Derived.of(blending.valve()).map(valve -> false);
    }
    Derived<Boolean> fitted = Derived.of(blending.part().isFitted());
    return fitted.isKnown() ? fitted : Derived.constant(true);
  }

  Derived<Double> most_C() {
    if (isAbsent()) {
      return Derived.of(blending.part().isFitted())
          .map(none -> limits.value(Limit.HOT_SUPPLY_ASSUMED));
    }
    if (enteredGoverns()) {
      return Derived.of(blending.hotSupplyMax_C());
    }
    if (blending.hotSupplyMax_C().isEntered()) {
      return Derived.of(blending.hotSupplyMax_C()).map(entered -> certified().value());
    }
    Limit limit = limit();
    return limit == Limit.HOT_SUPPLY_ASSUMED
        ? Derived.assumed(
            blending.hotSupplyMax_C().pointer(), limits.value(limit), limits.of(limit).what())
        : Derived.of(blending.valve()).map(valve -> limits.value(limit));
  }

  /** An outlet may have a valve all the same: then the lowest of any is sure to be enough. */
  private boolean isAbsent() {
    return blending.part().isFitted().says(false);
  }

  Bound bound() {
    double most_C = most_C().get();
    if (isAbsent()) {
      return Bound.of(QUANTITY, most_C, limits.of(Limit.HOT_SUPPLY_ASSUMED));
    }
    if (enteredGoverns()) {
      return Bound.entered(QUANTITY, most_C, CELSIUS, blending.hotSupplyMax_C());
    }
    return blending.hotSupplyMax_C().isEntered()
        ? Bound.of(QUANTITY, most_C, certified())
        : Bound.of(QUANTITY, most_C, limits.of(limit()));
  }

  private boolean enteredGoverns() {
    return blending
        .hotSupplyMax_C()
        .optional()
        .filter(max_C -> max_C <= certified().value())
        .isPresent();
  }

  /** What the type of the valve is certified for; where that is not known, the hottest of any. */
  Limits.Entry certified() {
    Limit limit = limit();
    return limits.of(limit == Limit.HOT_SUPPLY_ASSUMED ? Limit.HOT_SUPPLY_IN_LINE : limit);
  }

  private Limit limit() {
    return switch (blending.valve().optional().orElse(Valve.OTHER)) {
      case TMV2 -> Limit.HOT_SUPPLY_TYPE_2;
      case TMV3 -> Limit.HOT_SUPPLY_TYPE_3;
      case EN_15092 -> Limit.HOT_SUPPLY_IN_LINE;
      case OTHER, NONE -> Limit.HOT_SUPPLY_ASSUMED;
    };
  }
}
