package deadband.cases;

import static deadband.setup.Unit.AMPERE;

import deadband.setup.Circuit;
import deadband.setup.Setup;
import deadband.setup.Told;
import deadband.trade.CableRating;
import deadband.trade.CableRating.Size;
import deadband.trade.Known;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;

/**
 * What cable and flexible cord of the heater carry: the lower of what is entered and what the table
 * gives, so that a rating typed too high switches no danger off.
 *
 * <p>The tables are British. At a site in another country the rating by its own tables must be
 * entered; until it is, the British value can raise a question and clear nothing. A rating entered
 * above the table may come from a better cable: what rests on the table then is a question, too,
 * unless no conductor of that size carries what is entered.
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

  /** What an entered rating of the cable is held against. */
  Derived<Bound> mostOfCable() {
    return most("cable carries", circuit.cable_mm2(), cableByTable());
  }

  /** What an entered rating of the flexible cord is held against. */
  Derived<Bound> mostOfFlex() {
    return most("flex carries", circuit.flex_mm2(), flexByTable());
  }

  private Derived<Bound> lower(
      String quantity, Told<Double> told, Told<Double> size, Derived<Bound> table) {
    if (!told.isTold()) {
      return table;
    }
    double entered_A = told.optional().orElseThrow();
    boolean beyond = size.optional().filter(mm2 -> entered_A > most_A(mm2)).isPresent();
    if (isFirm(table) && table.get().measure().value() < entered_A) {
      return table.map(bound -> beyond ? bound : bound.asked());
    }
    return beyond
        ? mostOfAny(quantity, size)
        : Derived.of(told).map(rating -> Bound.told(quantity, rating, AMPERE, told));
  }

  private static boolean isFirm(Derived<Bound> table) {
    return table.isKnown() && table.provenance().assumed().isEmpty();
  }

  private static double most_A(double size_mm2) {
    return AMPERE.round(CableRating.most_A(size_mm2));
  }

  private Derived<Bound> most(String quantity, Told<Double> size, Derived<Bound> table) {
    return isFirm(table) ? table : mostOfAny(quantity, size);
  }

  /** The most that any conductor of that size carries: from memory, so it clears no hazard. */
  private static Derived<Bound> mostOfAny(String quantity, Told<Double> size) {
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
    Derived<Laid> laid =
        Derived.of(circuit.cable_mm2()).with(Derived.of(circuit.method()), Laid::new);
    return byTable(laid, circuit.cableRating_A(), this::cableByTable);
  }

  /** Abroad it is the rating that is asked for, not what the British table would need. */
  private <T> Derived<Bound> byTable(
      Derived<T> conductor, Told<Double> instead, BiFunction<T, Boolean, Derived<Bound>> table) {
    return BritishText.holds(setup)
        .then(
            british ->
                british || conductor.isKnown()
                    ? conductor.then(known -> table.apply(known, british))
                    : Derived.missing(instead.pointer()));
  }

  /** A capacity known from memory alone is an assumption; one that no table has must be told. */
  private Derived<Bound> cableByTable(Laid laid, boolean british) {
    Optional<Size> size = Size.find(laid.size_mm2());
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

    Derived<Bound> gives(String quantity, double value_A, Told<Double> instead, boolean british) {
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
