package deadband.topics.disinfection;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KELVIN;
import static deadband.setup.Unit.KILOWATT;
import static deadband.setup.Unit.LITRE;
import static deadband.setup.Unit.MINUTE;

import deadband.dayrun.Window;
import deadband.days.ModelledTank;
import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.plant.Dial;
import deadband.plant.DisinfectionDuty;
import deadband.plant.Programmes;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.ClockWindow;
import deadband.setup.DemandInput;
import deadband.setup.Disinfection;
import deadband.setup.Disinfection.Heater;
import deadband.setup.Entered;
import deadband.setup.Setup;
import java.util.ArrayList;
import java.util.List;

/**
 * Facts about the course of a disinfection: does its heater get power, does it reach the target,
 * does it get there in time, and does it stay there undisturbed?
 */
public final class DisinfectionCourse {

  private static final double MINUTES_PER_DAY = 1440;

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final Disinfection programme;
  private final DisinfectionDuty duty;
  private final DisinfectionHeater heater;
  private final Programmes programmes;

  /** Whether the disinfection is left to the surplus, or its heater is fed with surplus alone. */
  public record DisinfectionSupply(Evidence evidence, Answer leftToSurplus, Answer fedWithSurplus)
      implements Case {}

  /** The temperature a disinfection heats to, against what the compressor reaches. */
  public record DisinfectionOfPump(Evidence evidence, Quantity target_C, Quantity reach_C)
      implements Case {}

  /** How long a disinfection takes from the everyday start, against the time it may take. */
  public record DisinfectionTime(Evidence evidence, Quantity needed_min, Quantity allowed_min)
      implements Case {}

  /**
   * The time a disinfection takes, against the longest time of day at which it may run.
   *
   * @param needed_min heating and hold, or the hold alone where the heating time is not known
   */
  public record DisinfectionWindow(Evidence evidence, Quantity needed_min, Quantity window_min)
      implements Case {}

  /** The time until a hold without interruption is over, against the longest window. */
  public record HoldWindow(Evidence evidence, Quantity needed_min, Quantity window_min)
      implements Case {}

  private DisinfectionCourse(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.programme = setup.heatPump().disinfection();
    this.duty = new DisinfectionDuty(setup, limits);
    this.heater = new DisinfectionHeater(setup);
    this.programmes = new Programmes(setup);
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    DisinfectionCourse topic = new DisinfectionCourse(setup, limits, facts);
    topic.supply();
    topic.reach();
    topic.time();
    topic.window();
    topic.shortWindow();
  }

  private void supply() {
    DemandInput demand = setup.diverter().demandInput();
    Derived<Boolean> dripFed =
        Derived.all(
            duty.runsOn(Heater.IMMERSION),
            Derived.of(setup.diverter().part().isFitted()),
            Derived.of(demand.part().isFitted()),
            Derived.of(demand.action()).map(action -> action == DemandInput.Action.SURPLUS_ONLY));
    Derived<Boolean> left = heater.leftToSurplus();
    facts
        .into(DisinfectionSupply.class, programme.part().pointer())
        .given(Derived.any(left, dripFed))
        .makes(
            because ->
                new DisinfectionSupply(
                    because.explained(this::waitsForSun),
                    because.answer(left),
                    because.answer(dripFed)));
  }

  private Detail waitsForSun() {
    Entered<DemandInput.Action> action = setup.diverter().demandInput().action();
    double missed_K = duty.missed_K();
    Detail.Builder detail =
        programme.heater().says(Heater.SURPLUS)
            ? Detail.at(programme.heater(), programme.target_C())
                .cure(Change.of(programme.heater(), Heater.IMMERSION))
                .cure(Change.of(programme.heater(), Heater.HEAT_PUMP))
            : Detail.at(action, programme.heater())
                .cure(Change.of(action, DemandInput.Action.FULL_POWER));
    detail.size(duty.missed());
    return missed_K > 0 ? detail.evidence(shortBy(missed_K)).done() : detail.done();
  }

  private static Measure shortBy(double missed_K) {
    return Measure.of("short of the target by", missed_K, KELVIN);
  }

  private void reach() {
    Derived<Double> target = Derived.of(programme.target_C());
    Derived<Double> reach = programmes.reach_C();
    facts
        .into(DisinfectionOfPump.class, programme.target_C().pointer())
        .given(target, reach)
        .clearOnlyWith(programmes.toleranceAtReach_K().provenance().missing())
        .makes(
            because ->
                new DisinfectionOfPump(
                    because.explained(() -> outOfReach(target.get(), reach.get())),
                    because.quantity(target),
                    because.quantity(reach)));
  }

  private Detail outOfReach(double target_C, double reach_C) {
    Bound most = programmes.reachBound(target_C);
    double missed_K = KELVIN.round(target_C - most.measure().value());
    return Detail.at(programme.target_C(), setup.heatPump().maximumFlow_C(), programme.heater())
        .observed(Measure.of("disinfection target", target_C, CELSIUS))
        .limit(most)
        .size(Size.kelvin(missed_K))
        .evidence(shortBy(missed_K))
        .cures(otherWays(Dial.down_C(reach_C)))
        .done();
  }

  /** A target in reach, as long as it still disinfects; else a heater that reaches further. */
  private List<List<Change>> otherWays(double dial_C) {
    List<List<Change>> cures = new ArrayList<>();
    if (dial_C >= limits.value(Limit.DISINFECTION_TEMPERATURE)) {
      cures.add(List.of(Change.of(programme.target_C(), dial_C)));
    }
    if (setup.heatPump().backupHeater().part().isFitted().says(true)) {
      cures.add(List.of(Change.of(programme.heater(), Heater.BACKUP_HEATER)));
    }
    if (setup.immersion().part().isFitted().says(true)) {
      cures.add(List.of(Change.of(programme.heater(), Heater.IMMERSION)));
    }
    return cures;
  }

  private void time() {
    Derived<Double> needed = heater.needed_min();
    Derived<Double> allowed = Derived.of(programme.timeAllowed_min());
    facts
        .into(DisinfectionTime.class, programme.timeAllowed_min().pointer())
        .given(needed, allowed)
        .clearOnlyWith(heater.openMixing(allowed))
        .makes(
            because ->
                new DisinfectionTime(
                    because.explained(() -> tooSlow(needed.get(), allowed.get())),
                    because.quantity(needed),
                    because.quantity(allowed)));
  }

  private Detail tooSlow(double needed_min, double allowed_min) {
    Entered<Double> allowed = programme.timeAllowed_min();
    Detail.Builder detail =
        Detail.at(allowed, programme.heater(), programme.target_C(), programme.hold_min())
            .observed(Measure.of("time to reach and hold", needed_min, MINUTE))
            .limit(Bound.entered("time allowed", allowed_min, MINUTE, allowed))
            .size(Size.kelvin(missedWhenTimeIsUp_K(needed_min - allowed_min)))
            .evidence(pace())
            .basis("heat from the everyday start to the target, properties of water");
    double enough_min = Dial.up_min(heater.longest_min().get());
    return enough_min <= MINUTES_PER_DAY
        ? detail.cure(Change.of(allowed, enough_min)).done()
        : detail.done();
  }

  private Measure[] pace() {
    return new Measure[] {
      Measure.of("time to reach the target", heater.heatUp_min().get(), MINUTE),
      Measure.of("volume it heats", heater.heated_L().get(), LITRE),
      Measure.of("power of the heater", heater.power_kW().get(), KILOWATT)
    };
  }

  /** How far the store is from the target when the hold would have to begin. */
  private double missedWhenTimeIsUp_K(double late_min) {
    double heatUp_min = heater.heatUp_min().get();
    double rise_K =
        programme.target_C().optional().orElse(0.0)
            - setup.heatPump().everyday().start_C().optional().orElse(0.0);
    return heatUp_min > 0 ? KELVIN.round(rise_K * Math.min(1, late_min / heatUp_min)) : 0;
  }

  private void window() {
    Derived<Double> needed = heater.needed_min();
    Derived<Double> window = longestWindow_min();
    facts
        .into(HoldWindow.class, programme.allowed().pointer())
        .given(needed, window)
        .makes(
            because ->
                new HoldWindow(
                    because.explained(() -> cutOff(needed.get(), window.get())),
                    because.quantity(needed),
                    because.quantity(window)));
  }

  /** Windows that meet count as one; an empty list stands for any time. */
  private Derived<Double> longestWindow_min() {
    return Derived.of(programme.allowed())
        .map(
            entered ->
                entered.isEmpty()
                    ? MINUTES_PER_DAY
                    : (double) Window.longest(ModelledTank.windows(entered)).length_min());
  }

  /** Where the heating time is not known, a window too short for the hold alone is still found. */
  private void shortWindow() {
    Derived<Double> whole_min = heater.needed_min();
    Derived<Double> needed_min = whole_min.isKnown() ? whole_min : Derived.of(programme.hold_min());
    Derived<Double> window_min = longestWindow_min();
    facts
        .into(DisinfectionWindow.class, programme.allowed().pointer())
        .given(needed_min, window_min)
        .clearOnlyWith(whole_min.provenance().missing())
        .makes(
            because ->
                new DisinfectionWindow(
                    because.explained(() -> outOfTime(needed_min.get(), window_min.get())),
                    because.quantity(needed_min),
                    because.quantity(window_min)));
  }

  private Detail outOfTime(double needed_min, double window_min) {
    double missed_K =
        heater.heatUp_min().isKnown() ? missedWhenTimeIsUp_K(needed_min - window_min) : 0;
    Size size = missed_K > 0 ? Size.kelvin(missed_K) : Size.time(window_min, needed_min);
    Detail.Builder detail =
        Detail.at(
                programme.allowed(), programme.heater(), programme.target_C(), programme.hold_min())
            .observed(Measure.of("time to reach and hold", needed_min, MINUTE))
            .limit(Bound.entered("longest window", window_min, MINUTE, programme.allowed()))
            .size(size)
            .cure(Change.of(programme.allowed(), List.<ClockWindow>of()))
            .basis("heat from the everyday start to the target, properties of water");
    return heater.needed_min().isKnown() ? detail.evidence(pace()).done() : detail.done();
  }

  private Detail cutOff(double needed_min, double window_min) {
    return Detail.at(programme.allowed().pointer(), programme.restartsHold().pointer())
        .observed(Measure.of("time to reach and hold", needed_min, MINUTE))
        .limit(Bound.entered("longest window", window_min, MINUTE, programme.allowed()))
        .size(Size.time(window_min, needed_min))
        .evidence(pace())
        .basis("heat from the everyday start to the target, properties of water")
        .done();
  }
}
