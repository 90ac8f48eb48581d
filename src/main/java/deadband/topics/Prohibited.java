package deadband.topics;

import deadband.document.Pointer;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.loop.RelayLoop;
import deadband.plant.DisinfectionDuty;
import deadband.plant.Programmes;
import deadband.plant.SurplusReach;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.Disinfection;
import deadband.setup.Disinfection.Heater;
import deadband.setup.Entered;
import deadband.setup.Programme;
import deadband.setup.Relay;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import deadband.topics.wiring.HeaterWiring;
import java.util.List;
import java.util.stream.Stream;

/**
 * What no remedy may do, whatever finding it clears: leave the range of a field, use what is not
 * fitted, start above what the PV reaches, stop below zero, raise a breaker above its cable, loosen
 * a limit that protects, or lower hygiene.
 */
public final class Prohibited {

  private static final double TINY = 1e-9;

  private final List<Change> changes;
  private final Setup before;
  private final Setup after;
  private final Limits limits;

  private Prohibited(List<Change> changes, Setup before, Limits limits) {
    this.changes = changes;
    this.before = before;
    this.after = Change.all(changes, before);
    this.limits = limits;
  }

  /**
   * Whether changes to a setup may be offered.
   *
   * @param disinfected whether it is known that the store is disinfected as the setup stands;
   *     hygiene is not traded while that is open
   */
  public static boolean allows(
      List<Change> changes, Setup setup, Limits limits, boolean disinfected) {
    if (!changes.stream().allMatch(change -> change.fits(setup))) {
      return false;
    }
    Prohibited rules = new Prohibited(changes, setup, limits);
    return rules.relayCanWork()
        && rules.programmesCanRun()
        && rules.usesWhatIsFitted()
        && rules.protects()
        && rules.keepsHygiene(disinfected);
  }

  private boolean touches(Entered<?> value) {
    return touches(value.pointer());
  }

  private boolean touches(Pointer pointer) {
    return changes.stream().anyMatch(change -> change.pointer().startsWith(pointer));
  }

  private static boolean isLower(Entered<Double> now, Entered<Double> was) {
    return now.isEntered() && was.isEntered() && number(now) < number(was) - TINY;
  }

  private static boolean isHigher(Entered<Double> now, Entered<Double> was) {
    return now.isEntered() && (!was.isEntered() || number(now) > number(was) + TINY);
  }

  private static double number(Entered<Double> entered) {
    return entered.optional().orElseThrow();
  }

  private static boolean isBelow(Entered<Double> value, double limit) {
    return value.isEntered() && number(value) < limit - TINY;
  }

  /** No stop below zero or at its start, no start above what the PV reaches on a clear day. */
  private boolean relayCanWork() {
    Relay relay = after.relay();
    if (touches(relay.stop_kW()) && isBelow(relay.stop_kW(), 0)) {
      return false;
    }
    boolean moved = touches(relay.start_kW()) || touches(relay.stop_kW());
    boolean both = relay.start_kW().isEntered() && relay.stop_kW().isEntered();
    if (moved && both && !isLower(relay.stop_kW(), relay.start_kW())) {
      return false;
    }
    return !touches(relay.start_kW()) || !startsTooHigh();
  }

  private boolean startsTooHigh() {
    Derived<Double> start = Derived.of(after.relay().start_kW());
    Derived<Double> reach = new SurplusReach(after, new RelayLoop(after)).clearDay_kW();
    return start
        .with(reach, (start_kW, most_kW) -> start_kW > most_kW + TINY)
        .is(isAbove -> isAbove);
  }

  /** No programme that stops where it starts, none beyond what the compressor is known to reach. */
  private boolean programmesCanRun() {
    return Stream.of(after.heatPump().everyday(), after.heatPump().surplus())
            .filter(programme -> touches(programme.part().pointer()))
            .noneMatch(Prohibited::cannotRun)
        && (!raisesStop() || new Programmes(after).highestTank_C().isKnown());
  }

  private static boolean cannotRun(Programme programme) {
    return Derived.of(programme.start_C())
        .with(Derived.of(programme.stop_C()), (start_C, stop_C) -> stop_C <= start_C + TINY)
        .is(stuck -> stuck);
  }

  private boolean raisesStop() {
    return raisesStop(after.heatPump().surplus(), before.heatPump().surplus())
        || raisesStop(after.heatPump().everyday(), before.heatPump().everyday());
  }

  /** A start and stop that change places ask for nothing that was not asked before. */
  private static boolean raisesStop(Programme now, Programme was) {
    return isHigher(now.stop_C(), was.stop_C()) && isHigher(now.stop_C(), was.start_C());
  }

  private boolean usesWhatIsFitted() {
    Entered<Heater> heater = after.heatPump().disinfection().heater();
    boolean heaterIsThere = !touches(heater) || isFitted(heater.optional().orElse(Heater.NONE));
    return heaterIsThere && countsWhatIsFitted();
  }

  private boolean isFitted(Heater heater) {
    return switch (heater) {
      case IMMERSION -> after.immersion().part().isFitted().says(true);
      case HEAT_PUMP -> after.heatPump().part().isFitted().says(true);
      case BACKUP_HEATER -> after.heatPump().backupHeater().part().isFitted().says(true);
      case SURPLUS, NONE -> false;
    };
  }

  private boolean countsWhatIsFitted() {
    Entered<List<Counts>> counts = after.relay().counts();
    return !touches(counts)
        || counts.optional().orElse(List.of()).stream()
            .filter(power -> !before.relay().counts().optional().orElse(List.of()).contains(power))
            .allMatch(this::isFitted);
  }

  private boolean isFitted(Counts power) {
    return switch (power) {
      case EXPORT -> true;
      case IMMERSION -> after.immersion().part().isFitted().says(true);
      case HEAT_PUMP -> after.heatPump().part().isFitted().says(true);
      case BATTERY -> after.battery().part().isFitted().says(true);
    };
  }

  /** Nothing that protects is set to act later than it did, or later than what it protects. */
  private boolean protects() {
    Entered<Double> breaker = after.immersion().circuit().breaker_A();
    boolean raised = isHigher(breaker, before.immersion().circuit().breaker_A());
    boolean carried =
        breaker.isEntered()
            && HeaterWiring.protected_A(after, limits)
                .is(most_A -> number(breaker) <= most_A + TINY);
    return (!raised || carried)
        && !isHigher(after.immersion().cutOut_C(), before.immersion().cutOut_C())
        && !isHigher(after.tank().coil().cutOut_C(), before.tank().coil().cutOut_C())
        && !isHigher(after.tank().relief_C(), before.tank().relief_C())
        && !isHigher(after.blending().hotSupplyMax_C(), before.blending().hotSupplyMax_C())
        && staysBelowTheValve(after.diverter().limit_C(), before.diverter().limit_C())
        && staysBelowTheValve(after.immersion().thermostat_C(), before.immersion().thermostat_C());
  }

  /** A limit is not raised above the hottest supply that the mixing valve takes. */
  private boolean staysBelowTheValve(Entered<Double> limit, Entered<Double> was) {
    Entered<Double> most = after.blending().hotSupplyMax_C();
    return !isHigher(limit, was) || !most.isEntered() || number(limit) <= number(most) + TINY;
  }

  private boolean keepsHygiene(boolean disinfected) {
    return keepsDisinfection(disinfected) && keepsTheStoreWarm(disinfected) && reachesTarget();
  }

  private boolean keepsDisinfection(boolean disinfected) {
    Disinfection now = after.heatPump().disinfection();
    Disinfection was = before.heatPump().disinfection();
    boolean off = touches(now.enabled()) && now.enabled().says(false);
    boolean cooler = isLower(now.target_C(), was.target_C()) && isBelow(now.target_C(), needed_C());
    boolean shorter = isLower(now.hold_min(), was.hold_min()) && !disinfected;
    boolean rarer = isLower(was.every_days(), now.every_days());
    return !off && !cooler && !shorter && !rarer;
  }

  /** While disinfection is not known to work, what keeps the store warm is left as it is. */
  private boolean keepsTheStoreWarm(boolean disinfected) {
    Programme now = after.heatPump().everyday();
    Programme was = before.heatPump().everyday();
    boolean off = touches(now.enabled()) && now.enabled().says(false);
    boolean cooler =
        !cannotRun(was)
            && (isLower(now.start_C(), was.start_C()) || isLower(now.stop_C(), was.stop_C()));
    boolean tooCool =
        isLower(now.start_C(), was.start_C())
            && isBelow(now.start_C(), limits.value(Limit.GROWTH_BAND_TOP));
    return !off && !tooCool && !(cooler && !disinfected);
  }

  /** Neither tank limit nor thermostat is cut below the temperature that disinfects. */
  private boolean reachesTarget() {
    return !cutBelowTarget(after.diverter().limit_C(), before.diverter().limit_C())
        && !cutBelowTarget(after.immersion().thermostat_C(), before.immersion().thermostat_C());
  }

  private boolean cutBelowTarget(Entered<Double> limit, Entered<Double> was) {
    double target_C = after.heatPump().disinfection().target_C().optional().orElse(least_C());
    return isLower(limit, was) && isBelow(limit, Math.max(target_C, least_C()));
  }

  /** What the cycle that holds here asks for; where none is known, what disinfects at all. */
  private double needed_C() {
    return new DisinfectionDuty(after, limits)
        .cycle()
        .map(cycle -> Math.max(cycle.leastTarget_C(), least_C()))
        .or(Derived.constant(least_C()))
        .get();
  }

  private double least_C() {
    return limits.value(Limit.DISINFECTION_TEMPERATURE);
  }
}
