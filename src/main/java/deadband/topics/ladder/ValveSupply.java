package deadband.topics.ladder;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KELVIN;

import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Condition;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Presence;
import deadband.facts.Quantity;
import deadband.facts.Says;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.plant.Dial;
import deadband.plant.TankTop;
import deadband.provenance.Derived;
import deadband.setup.Blending;
import deadband.setup.Blending.Valve;
import deadband.setup.Change;
import deadband.setup.Entered;
import deadband.setup.Immersion;
import deadband.setup.Outlet;
import deadband.setup.Programme;
import deadband.setup.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/** Facts about what the tank sends to the thermostatic mixing valve. */
public final class ValveSupply {

  @Says("A thermostatic mixing valve is fitted: at the tank or at an outlet.")
  public record MixingValveFitted(Answer answer) implements Presence {}

  @Says("The maximum supply of the mixing valve is entered.")
  public record ValveMaximumEntered(Answer answer) implements Presence {}

  @Says("Vulnerable people use the hot water.")
  public record VulnerableOccupants(Answer answer) implements Condition {}

  /** The hottest the tank gets, tolerance included, against the supply of the valve. */
  public record TankPeak(Evidence evidence, Quantity peak_C, Quantity hotSupplyMax_C)
      implements Case {}

  /** The immersion heater's own thermostat, as the barrier behind the controls. */
  public record ThermostatBarrier(Evidence evidence, Quantity thermostat_C, Quantity hotSupplyMax_C)
      implements Case {}

  /** The hottest supply entered for a mixing valve, against what its type is certified for. */
  public record EnteredSupply(Evidence evidence, Quantity entered_C, Quantity certified_C)
      implements Case {}

  /**
   * The mixing valve of a home with vulnerable occupants.
   *
   * @param type3 whether it is of the type for them
   */
  public record VulnerableSupply(Evidence evidence, Answer type3) implements Case {}

  /** The coolest everyday supply of a blended outlet, and the temperature it is mixed to. */
  public record MixedSupply(Evidence evidence, Quantity supply_C, Quantity mixed_C)
      implements Case {}

  /**
   * The coolest everyday supply of the mixing valve, and the least it needs.
   *
   * @param ownDifferential whether the valve's own differential is entered, not the usual one
   * @param vulnerable whether vulnerable people use the hot water
   */
  public record HotSupply(
      Evidence evidence,
      Answer ownDifferential,
      Answer vulnerable,
      Quantity supply_C,
      Quantity least_C)
      implements Case {}

  private final Setup setup;
  private final Blending blending;
  private final Immersion immersion;
  private final Limits limits;
  private final Facts facts;
  private final HotSupplyLimit valve;
  private final TankTop top;

  private ValveSupply(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.blending = setup.blending();
    this.immersion = setup.immersion();
    this.limits = limits;
    this.facts = facts;
    this.valve = new HotSupplyLimit(setup, limits);
    this.top = new TankTop(setup);
  }

  static void derive(Setup setup, Limits limits, Facts facts) {
    ValveSupply topic = new ValveSupply(setup, limits, facts);
    topic.conditions();
    topic.peak();
    topic.coolestSupply();
    topic.lukewarm();
    topic.thermostat();
    topic.vulnerable();
    topic.enteredSupply();
  }

  private void conditions() {
    boolean entered = blending.hotSupplyMax_C().isEntered();
    facts.add(new MixingValveFitted(facts.answer(valve.fitted())));
    facts.add(new ValveMaximumEntered(facts.answer(Derived.constant(entered))));
    facts.add(new VulnerableOccupants(facts.answer(vulnerablePeople())));
  }

  private void peak() {
    Derived<Double> most = valve.most_C();
    TankTop.Reading reading = top.against(peak_C -> peak_C > most.get());
    facts
        .into(TankPeak.class, blending.part().pointer())
        .given(reading.peak_C(), most)
        .foundOnlyWith(reading.openIfFound())
        .clearOnlyWith(reading.openIfClear())
        .makes(
            because ->
                new TankPeak(
                    because.explained(() -> tooHot(reading.peak_C().get())),
                    because.quantity(reading.peak_C()),
                    because.quantity(most)));
  }

  private Detail tooHot(double peak_C) {
    double most_C = valve.most_C().get();
    boolean asSet = TankTop.nominal(setup).surely_C().is(set_C -> set_C > most_C);
    List<TankTop.Source> culprits = top.culprits(hot_C -> hot_C > most_C);
    List<Change> lowered = new ArrayList<>();
    culprits.forEach(source -> lowered.addAll(source.loweredTo(most_C)));
    Detail.Builder detail =
        Detail.at(culprits.stream().map(TankTop.Source::setting).toArray(Entered<?>[]::new))
            .observed(Measure.of("maximum tank temperature", peak_C, CELSIUS))
            .limit(asSet ? valve.bound() : valve.bound().brokenByToleranceAlone())
            .size(Size.kelvin(KELVIN.round(peak_C - most_C)))
            .evidence(top.evidence(peak_C))
            .basis("highest set point, with the tolerance of the tank sensor");
    if (top.setPoint_C().isKnown()) {
      detail.evidence(Measure.of("highest set point", top.setPoint_C().get(), CELSIUS));
    }
    return detail.cures(List.of(List.copyOf(lowered))).done();
  }

  private void thermostat() {
    Derived<Double> thermostat = Derived.of(immersion.thermostat_C());
    Derived<Double> most = thermostatMost_C();
    boolean aboveValve =
        thermostat.with(valve.most_C(), (set_C, most_C) -> set_C > most_C).is(is -> is);
    facts
        .into(ThermostatBarrier.class, immersion.part().pointer())
        .given(thermostat, most)
        .clearOnlyWith(aboveValve ? vulnerablePeople().provenance().missing() : List.of())
        .makes(
            because ->
                new ThermostatBarrier(
                    because.explained(() -> noBarrier(thermostat.get(), most.get())),
                    because.quantity(thermostat),
                    because.quantity(most)));
  }

  /**
   * What the valve is made for, or the usual setting where that is higher: the thermostat is the
   * second barrier, and only vulnerable people need it as low as the first.
   */
  private Derived<Double> thermostatMost_C() {
    double usual_C = limits.value(Limit.THERMOSTAT_USUAL);
    return vulnerablePeople().is(are -> are)
        ? valve.most_C()
        : valve.most_C().map(most_C -> Math.max(most_C, usual_C));
  }

  private Derived<Boolean> vulnerablePeople() {
    return Derived.of(setup.site().vulnerableOccupants());
  }

  private Detail noBarrier(double thermostat_C, double most_C) {
    boolean byValve = valve.most_C().is(valve_C -> valve_C == most_C);
    return Detail.at(immersion.thermostat_C())
        .observed(Measure.of("immersion thermostat", thermostat_C, CELSIUS))
        .limit(
            byValve
                ? valve.bound()
                : Bound.of("usual maximum", most_C, limits.of(Limit.THERMOSTAT_USUAL)))
        .evidence(TankTop.timeToBurn(thermostat_C).stream().toArray(Measure[]::new))
        .cure(Change.of(immersion.thermostat_C(), Dial.down_C(most_C)))
        .done();
  }

  /** A supply entered above what the valve is certified for: the lower is judged by. */
  private void enteredSupply() {
    Derived<Double> entered = Derived.of(blending.hotSupplyMax_C());
    Limits.Entry certified = valve.certified();
    Derived<Double> most = Derived.of(blending.valve()).map(valve -> certified.value());
    facts
        .into(EnteredSupply.class, blending.part().pointer())
        .fitted(described())
        .given(entered, most)
        .makes(
            because ->
                new EnteredSupply(
                    because.explained(() -> overstated(entered.get(), certified)),
                    because.quantity(entered),
                    because.quantity(most)));
  }

  private Detail overstated(double entered_C, Limits.Entry certified) {
    return Detail.at(blending.hotSupplyMax_C(), blending.valve())
        .observed(Measure.of("hot supply entered", entered_C, CELSIUS))
        .limit(Bound.of("certified for that type of valve", certified.value(), certified))
        .done();
  }

  /** A valve that only an outlet knows of has no type to judge by. */
  private Derived<Boolean> described() {
    return Derived.notAbsent(blending.part());
  }

  private void vulnerable() {
    Derived<Boolean> type3 = Derived.of(blending.valve()).map(fitted -> fitted == Valve.TMV3);
    facts
        .into(VulnerableSupply.class, blending.part().pointer())
        .fitted(described())
        .given(type3)
        .makes(
            because ->
                new VulnerableSupply(
                    because.explained(
                        () ->
                            Detail.at(blending.valve(), setup.site().vulnerableOccupants()).done()),
                    because.answer(type3)));
  }

  /**
   * Whether the valve's own differential is entered: the usual figure says no more than its
   * default.
   */
  private Derived<Boolean> ownDifferential() {
    Entered<Double> entered = blending.leastDifferential_K();
    double usual_K = Objects.requireNonNull(entered.assumed()).value();
    return entered.isEntered()
        ? Derived.of(entered).map(own_K -> own_K != usual_K)
        : Derived.constant(false);
  }

  /** Below the temperature it is to mix to, the valve can only pass the supply as it is. */
  private void lukewarm() {
    Derived<Double> supply = Derived.of(setup.heatPump().everyday().start_C());
    List<Derived<Double>> wanted = ofOutlets(this::mixed_C);
    Derived<Double> mixed = Derived.highestKnown(wanted);
    facts
        .into(MixedSupply.class, blending.part().pointer())
        .given(supply, mixed)
        .clearOnlyWith(Derived.missingOf(wanted))
        .makes(
            because ->
                new MixedSupply(
                    because.explained(() -> lukewarm(supply.get(), mixed.get())),
                    because.quantity(supply),
                    because.quantity(mixed)));
  }

  private Detail lukewarm(double supply_C, double mixed_C) {
    return Detail.at(setup.heatPump().everyday().start_C())
        .observed(Measure.of("lowest everyday supply", supply_C, CELSIUS))
        .limit(
            Bound.calculated(
                "highest mixed temperature", mixed_C, CELSIUS, "mixed temperatures of the outlets"))
        .evidence(Measure.of("below it by", KELVIN.round(mixed_C - supply_C), KELVIN))
        .done();
  }

  private void coolestSupply() {
    Programme everyday = setup.heatPump().everyday();
    Derived<Double> supply = Derived.of(everyday.start_C());
    List<Derived<Double>> needs = needs();
    Derived<Double> least = Derived.highestKnown(needs);
    facts
        .into(HotSupply.class, blending.part().pointer())
        .fitted(described())
        .given(Derived.any(ownDifferential(), vulnerablePeople()), supply, least)
        .clearOnlyWith(Derived.missingOf(needs))
        .makes(
            because ->
                new HotSupply(
                    because.explained(() -> tooCool(supply.get(), least.get())),
                    facts.answer(ownDifferential()),
                    facts.answer(vulnerablePeople()),
                    because.quantity(supply),
                    because.quantity(least)));
  }

  /** What the valve's type and each blended outlet ask of the supply; 0 where nothing. */
  private List<Derived<Double>> needs() {
    List<Derived<Double>> needs = ofOutlets(this::needs);
    needs.add(typeNeeds());
    return needs;
  }

  /** A temperature for each blended outlet, 0 for the others and where there is none. */
  private List<Derived<Double>> ofOutlets(Function<Outlet, Derived<Double>> temperature) {
    List<Derived<Double>> all = new ArrayList<>();
    all.add(Derived.of(setup.outlets()).map(entered -> 0.0));
    for (Outlet outlet : setup.outlets().optional().orElse(List.of())) {
      all.add(
          OutletTemperatures.isBlended(outlet, blending)
              .then(blended -> blended ? temperature.apply(outlet) : Derived.constant(0.0)));
    }
    return all;
  }

  private Derived<Double> mixed_C(Outlet outlet) {
    return Derived.of(outlet.mixed_C());
  }

  private Derived<Double> needs(Outlet outlet) {
    return Derived.sum(CELSIUS, mixed_C(outlet), Derived.of(blending.leastDifferential_K()));
  }

  private Derived<Double> typeNeeds() {
    return Derived.of(blending.valve())
        .map(type -> type == Valve.TMV3 ? limits.value(Limit.LEAST_SUPPLY_TYPE_3) : 0.0);
  }

  private Detail tooCool(double supply_C, double least_C) {
    Programme everyday = setup.heatPump().everyday();
    return Detail.at(everyday.start_C())
        .observed(Measure.of("lowest everyday supply", supply_C, CELSIUS))
        .limit(leastBound(least_C))
        .cures(warmer(everyday, Dial.up_C(least_C), supply_C))
        .done();
  }

  private Bound leastBound(double least_C) {
    String quantity = "minimum supply of the mixing valve";
    return typeNeeds().is(type_C -> type_C == least_C)
        ? Bound.of(quantity, least_C, limits.of(Limit.LEAST_SUPPLY_TYPE_3))
        : Bound.calculated(
            quantity, least_C, CELSIUS, "mixed temperature plus minimum differential of the valve");
  }

  /** A warmer start; and the stop as much warmer where it must be. */
  private static List<List<Change>> warmer(Programme everyday, double start_C, double was_C) {
    List<List<Change>> cures = new ArrayList<>();
    cures.add(List.of(Change.of(everyday.start_C(), start_C)));
    everyday
        .stop_C()
        .optional()
        .ifPresent(
            stop_C ->
                cures.add(
                    List.of(
                        Change.of(everyday.start_C(), start_C),
                        Change.of(everyday.stop_C(), CELSIUS.round(stop_C + start_C - was_C)))));
    return cures;
  }
}
