package deadband.topics.wiring;

import static deadband.setup.Unit.AMPERE;

import deadband.facts.Bound;
import deadband.facts.Measure;
import deadband.provenance.Derived;
import deadband.setup.Circuit;
import deadband.setup.Entered;
import deadband.setup.Setup;
import deadband.trade.CableRating;
import deadband.trade.CableRating.Harmonised;
import deadband.trade.Known;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What cable and flexible cord of the heater carry: the lower of what is entered and what the table
 * gives, so that a rating typed too high switches no danger off.
 *
 * <p>The tables are British. At a site in another country the British value can raise a question
 * and clear nothing. There the rating by the country's own tables counts; until it is entered, a
 * load is cleared by what European countries have in common, where that carries it. A rating
 * entered above the table may come from a better cable: what rests on the table then is a question,
 * too, unless no conductor of that size carries what is entered.
 */
final class ConductorRatings {

  private final Setup setup;
  private final Circuit circuit;

  ConductorRatings(Setup setup) {
    this.setup = setup;
    this.circuit = setup.immersion().circuit();
  }

  /** What the cable carries as it is laid. */
  Derived<Bound> cable() {
    return lower("cable carries", circuit.cableRating_A(), circuit.cable_mm2(), cableByTable());
  }

  /** What the flexible cord carries where it ends at the heater. */
  Derived<Bound> flex() {
    return lower("flex carries", circuit.flexRating_A(), circuit.flex_mm2(), flexByTable());
  }

  /** The same, to hold a load against it. */
  Derived<Bound> cable(Derived<Double> load_A) {
    return orHarmonised(cable(), circuit.cableRating_A(), cableHarmonised(), load_A);
  }

  /** The same, to hold a load against it. */
  Derived<Bound> flex(Derived<Double> load_A) {
    return orHarmonised(flex(), circuit.flexRating_A(), flexHarmonised(), load_A);
  }

  /** What the common tables carry is clear; what exceeds them alone is not found by them. */
  private static Derived<Bound> orHarmonised(
      Derived<Bound> bound,
      Entered<Double> entered,
      Derived<Bound> common,
      Derived<Double> load_A) {
    boolean open = !entered.isEntered() && !isFirm(bound);
    return open && common.is(most -> load_A.is(load -> load <= most.measure().value()))
        ? common
        : bound;
  }

  /** The countries whose wiring and appliance standards are the harmonised ones (from memory). */
  private static final Set<String> HARMONISED =
      Set.of(
          "AT", "BE", "BG", "CH", "CY", "CZ", "DE", "DK", "EE", "ES", "FI", "FR", "GB", "GR", "HR",
          "HU", "IE", "IS", "IT", "LT", "LU", "LV", "MT", "NL", "NO", "PL", "PT", "RO", "SE", "SI",
          "SK");

  private <T> Derived<Bound> harmonised(
      Derived<T> conductor, Entered<Double> instead, Function<T, Optional<Bound>> carries) {
    return Derived.of(setup.site().country())
        .with(
            conductor,
            (country, known) ->
                HARMONISED.contains(country.code())
                    ? carries.apply(known)
                    : Optional.<Bound>empty())
        .then(bound -> bound.map(Derived::constant).orElse(Derived.missing(instead.pointer())));
  }

  private Derived<Bound> cableHarmonised() {
    return harmonised(laid(), circuit.cableRating_A(), ConductorRatings::cableHarmonised);
  }

  private static Optional<Bound> cableHarmonised(Laid laid) {
    return Stream.of(Harmonised.values())
        .filter(method -> method.name().equals(laid.method().name()))
        .findFirst()
        .flatMap(method -> CableRating.Size.find(laid.size_mm2()).map(method::capacity_A))
        .map(most_A -> harmonised("cable carries", most_A, CableRating.HARMONISED_TABLE));
  }

  private Derived<Bound> flexHarmonised() {
    Derived<OptionalDouble> cord_A =
        Derived.of(circuit.flex_mm2())
            .with(Derived.of(circuit.flexHeatResistant()), CableRating::applianceCord_A);
    return harmonised(
        cord_A,
        circuit.flexRating_A(),
        most ->
            most.stream()
                .mapToObj(
                    most_A -> harmonised("flex carries", most_A, CableRating.APPLIANCE_CORD_TABLE))
                .findFirst());
  }

  private static Bound harmonised(String quantity, double most_A, String source) {
    return Bound.sourced(
        Measure.of(quantity, most_A, AMPERE), "harmonised table", source, Known.SECOND_HAND);
  }

  /** What an entered rating of the cable is held against. */
  Derived<Bound> mostOfCable() {
    return most("cable carries", circuit.cable_mm2(), cableByTable());
  }

  /** What an entered rating of the flexible cord is held against. */
  Derived<Bound> mostOfFlex() {
    return most("flex carries", circuit.flex_mm2(), flexByTable());
  }

  private Derived<Bound> lower(
      String quantity, Entered<Double> entered, Entered<Double> size, Derived<Bound> table) {
    if (!entered.isEntered()) {
      return table;
    }
    double entered_A = entered.optional().orElseThrow();
    boolean beyond = size.optional().filter(mm2 -> entered_A > most_A(mm2)).isPresent();
    if (isFirm(table) && table.get().measure().value() < entered_A) {
      return table.map(bound -> beyond ? bound : bound.asked());
    }
    return beyond
        ? mostOfAny(quantity, size)
        : Derived.of(entered).map(rating -> Bound.entered(quantity, rating, AMPERE, entered));
  }

  private static boolean isFirm(Derived<Bound> table) {
    return table.isKnown() && !table.isAssumed();
  }

  private static double most_A(double size_mm2) {
    return AMPERE.round(CableRating.most_A(size_mm2));
  }

  private Derived<Bound> most(String quantity, Entered<Double> size, Derived<Bound> table) {
    return isFirm(table) ? table : mostOfAny(quantity, size);
  }

  /** The most that any conductor of that size carries: from memory, so it clears no hazard. */
  private static Derived<Bound> mostOfAny(String quantity, Entered<Double> size) {
    return Derived.of(size)
        .then(
            mm2 ->
                Derived.assumed(size.pointer(), mm2, "copper at 90 °C in free air, from memory")
                    .map(
                        known ->
                            Bound.sourced(
                                Measure.of(quantity + " at most", most_A(known), AMPERE),
                                "current of copper at 90 °C in free air",
                                "none",
                                Known.MEMORY)));
  }

  private record Laid(double size_mm2, Circuit.Method method) {}

  private Derived<Bound> cableByTable() {
    return byTable(laid(), circuit.cableRating_A(), this::cableByTable);
  }

  private Derived<Laid> laid() {
    return Derived.of(circuit.cable_mm2()).with(Derived.of(circuit.method()), Laid::new);
  }

  /** Abroad it is the rating that is asked for, not what the British table would need. */
  private <T> Derived<Bound> byTable(
      Derived<T> conductor, Entered<Double> instead, BiFunction<T, Boolean, Derived<Bound>> table) {
    return BritishText.holds(setup)
        .then(
            british ->
                british || conductor.isKnown()
                    ? conductor.then(known -> table.apply(known, british))
                    : Derived.missing(instead.pointer()));
  }

  /** A capacity known from memory alone is an assumption; one that no table has must be entered. */
  private Derived<Bound> cableByTable(Laid laid, boolean british) {
    Optional<CableRating.Size> size = CableRating.Size.find(laid.size_mm2());
    if (size.isEmpty() || laid.method() == Circuit.Method.B) {
      return Derived.missing(circuit.cableRating_A().pointer());
    }
    CableRating.Method method = CableRating.Method.valueOf(laid.method().name());
    Table table =
        new Table("capacity of the cable", CableRating.CAPACITY_TABLE, method.known(size.get()));
    return table.gives(
        "cable carries", method.capacity_A(size.get()), circuit.cableRating_A(), british);
  }

  private Derived<Bound> flexByTable() {
    Derived<OptionalDouble> rating_A =
        Derived.of(circuit.flex_mm2())
            .with(Derived.of(circuit.flexHeatResistant()), CableRating::flex_A);
    return byTable(rating_A, circuit.flexRating_A(), this::flexByTable);
  }

  private Derived<Bound> flexByTable(OptionalDouble rating_A, boolean british) {
    if (rating_A.isEmpty()) {
      return Derived.missing(circuit.flexRating_A().pointer());
    }
    return new Table("rating of the flex", CableRating.FLEX_TABLE, Known.SECOND_HAND)
        .gives("flex carries", rating_A.getAsDouble(), circuit.flexRating_A(), british);
  }

  /** A table of the British wiring rules. */
  private record Table(String name, String source, Known known) {

    Derived<Bound> gives(
        String quantity, double value_A, Entered<Double> instead, boolean british) {
      boolean firm = british && known != Known.MEMORY;
      Bound bound =
          Bound.sourced(
              Measure.of(quantity, value_A, AMPERE),
              name,
              british ? source : source + "; elsewhere its own tables",
              british ? known : Known.MEMORY);
      return firm
          ? Derived.constant(bound)
          : Derived.assumed(instead.pointer(), value_A, source + ", from memory")
              .map(value -> bound);
    }
  }
}
