package deadband.cases;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KELVIN;

import deadband.setup.Blending;
import deadband.setup.Blending.Valve;
import deadband.setup.Change;
import deadband.setup.Immersion;
import deadband.setup.Outlet;
import deadband.setup.Programme;
import deadband.setup.Setup;
import deadband.setup.Told;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Cases about what the tank sends to the thermostatic mixing valve. */
final class BlendingLadder {

  private final Setup setup;
  private final Blending blending;
  private final Immersion immersion;
  private final Limits limits;
  private final Cases cases;
  private final HotSupplyLimit valve;
  private final TankTop top;

  private BlendingLadder(Setup setup, Limits limits, Cases cases) {
    this.setup = setup;
    this.blending = setup.blending();
    this.immersion = setup.immersion();
    this.limits = limits;
    this.cases = cases;
    this.valve = new HotSupplyLimit(setup, limits);
    this.top = new TankTop(setup);
  }

  static void derive(Setup setup, Limits limits, Cases cases) {
    BlendingLadder topic = new BlendingLadder(setup, limits, cases);
    topic.peak();
    topic.coolestSupply();
    topic.thermostat();
    topic.vulnerable();
  }

  private void peak() {
    Derived<Double> most = valve.most_C();
    Derived<Double> setPoint = top.setPoint_C();
    TankTop.Reading reading = top.against(tooHot(most.get()));
    cases
        .into(TankPeak.class, blending.part().pointer())
        .fitted(valve.fitted(), top.fitted())
        .given(setPoint, reading.peak_C(), most)
        .foundOnlyWith(reading.openIfFound())
        .clearOnlyWith(reading.openIfClear())
        .makes(
            because ->
                new TankPeak(
                    because.explained(() -> tooHot(setPoint.get(), reading.peak_C().get())),
                    setPoint.get(),
                    reading.peak_C().get(),
                    most.get()));
  }

  /** A peak above the limit; a set point at it is too hot whatever the peak. */
  private Predicate<Double> tooHot(double most_C) {
    return top.setPoint_C().is(set_C -> set_C >= most_C)
        ? peak_C -> peak_C >= most_C
        : peak_C -> peak_C > most_C;
  }

  private Detail tooHot(double setPoint_C, double peak_C) {
    double most_C = valve.most_C().get();
    List<TankTop.Source> culprits = top.culprits(tooHot(most_C));
    List<Change> lowered = new ArrayList<>();
    culprits.forEach(source -> lowered.addAll(source.loweredTo(most_C)));
    return Detail.at(culprits.stream().map(TankTop.Source::setting).toArray(Told<?>[]::new))
        .observed(Measure.of("hottest the tank gets", peak_C, CELSIUS))
        .limit(valve.bound())
        .size(KELVIN.round(peak_C - most_C))
        .evidence(Measure.of("highest set point", setPoint_C, CELSIUS))
        .evidence(top.evidence(peak_C))
        .cures(List.of(List.copyOf(lowered)))
        .basis("highest set point and hottest reading, with the tolerance of the tank sensor")
        .done();
  }

  private void thermostat() {
    Derived<Double> thermostat = Derived.of(immersion.thermostat_C());
    Derived<Double> most = valve.most_C();
    cases
        .into(ThermostatBarrier.class, immersion.part().pointer())
        .fitted(valve.fitted(), Derived.of(immersion.part().isFitted()))
        .given(thermostat, most)
        .makes(
            because ->
                new ThermostatBarrier(
                    because.explained(() -> noBarrier(thermostat.get(), most.get())),
                    thermostat.get(),
                    most.get()));
  }

  private Detail noBarrier(double thermostat_C, double most_C) {
    return Detail.at(immersion.thermostat_C())
        .observed(Measure.of("immersion thermostat", thermostat_C, CELSIUS))
        .limit(valve.bound())
        .size((thermostat_C - most_C) / most_C)
        .evidence(TankTop.timeToBurn(thermostat_C).stream().toArray(Measure[]::new))
        .cure(Change.of(immersion.thermostat_C(), Dial.down_C(most_C)))
        .done();
  }

  private void vulnerable() {
    Derived<Boolean> type3 = Derived.of(blending.valve()).map(fitted -> fitted == Valve.TMV3);
    cases
        .into(VulnerableSupply.class, blending.part().pointer())
        .fitted(valve.fitted())
        .where(Derived.of(setup.site().vulnerableOccupants()))
        .given(type3)
        .makes(
            because ->
                new VulnerableSupply(
                    because.explained(
                        () ->
                            Detail.at(blending.valve(), setup.site().vulnerableOccupants())
                                .size(1)
                                .done()),
                    type3.get()));
  }

  private void coolestSupply() {
    Programme everyday = setup.heatPump().everyday();
    Derived<Double> supply = Derived.of(everyday.start_C());
    List<Derived<Double>> needs = needs();
    Derived<Double> least = Derived.highestKnown(needs);
    cases
        .into(HotSupply.class, blending.part().pointer())
        .fitted(valve.fitted(), Derived.of(setup.heatPump().part().isFitted()))
        .given(supply, least)
        .clearOnlyWith(Derived.missingOf(needs))
        .makes(
            because ->
                new HotSupply(
                    because.explained(() -> tooCool(supply.get(), least.get())),
                    supply.get(),
                    least.get()));
  }

  /** What the valve's type and each blended outlet ask of the supply; 0 where nothing. */
  private List<Derived<Double>> needs() {
    List<Derived<Double>> needs = new ArrayList<>();
    needs.add(typeNeeds());
    if (!setup.outlets().isTold()) {
      needs.add(Derived.missing(setup.outlets().pointer()));
    }
    setup.outlets().optional().orElse(List.of()).forEach(outlet -> needs.add(needs(outlet)));
    return needs;
  }

  private Derived<Double> typeNeeds() {
    return Derived.of(blending.valve())
        .map(type -> type == Valve.TMV3 ? limits.value(Limit.LEAST_SUPPLY_TYPE_3) : 0.0);
  }

  private Derived<Double> needs(Outlet outlet) {
    return OutletLadder.isBlended(outlet)
        .then(
            blended ->
                blended
                    ? Derived.sum(
                        CELSIUS,
                        Derived.of(outlet.mixed_C()),
                        Derived.of(blending.leastDifferential_K()))
                    : Derived.constant(0.0));
  }

  private Detail tooCool(double supply_C, double least_C) {
    Programme everyday = setup.heatPump().everyday();
    return Detail.at(everyday.start_C())
        .observed(Measure.of("coolest everyday supply", supply_C, CELSIUS))
        .limit(leastBound(least_C))
        .size((least_C - supply_C) / least_C)
        .cures(warmer(everyday, Dial.up_C(least_C), supply_C))
        .done();
  }

  private Bound leastBound(double least_C) {
    String quantity = "least supply of the mixing valve";
    return typeNeeds().is(type_C -> type_C == least_C)
        ? Bound.of(quantity, least_C, limits.of(Limit.LEAST_SUPPLY_TYPE_3))
        : Bound.reckoned(
            quantity, least_C, CELSIUS, "mixed temperature and least differential of the valve");
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
