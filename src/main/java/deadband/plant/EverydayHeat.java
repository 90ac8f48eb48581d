package deadband.plant;

import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.provenance.Derived;
import deadband.setup.ClockWindow;
import deadband.setup.Entered;
import deadband.setup.Immersion;
import deadband.setup.Programme;
import deadband.setup.Setup;
import java.util.List;

/**
 * What heats the store every day without surplus, and how long a day it may.
 *
 * <p>A programme that is off, blocked or timed for minutes keeps no store at its start, and a timer
 * of minutes none at the thermostat.
 */
public final class EverydayHeat {

  private final Setup setup;
  private final double least_min;
  private final double growthBandTop_C;

  public EverydayHeat(Setup setup, Limits limits) {
    this.setup = setup;
    this.least_min = limits.value(Limit.EVERYDAY_HEAT);
    this.growthBandTop_C = limits.value(Limit.GROWTH_BAND_TOP);
  }

  /** Time of a day at which the everyday programme may start; none where it is off. */
  public Derived<Double> programme_min() {
    Programme everyday = setup.heatPump().everyday();
    Derived<Boolean> runs = Derived.of(everyday.enabled());
    return runs.is(is -> !is)
        ? runs.map(is -> 0.0)
        : runs.then(is -> free_min(everyday.timed(), Derived.of(everyday.blocked())));
  }

  /** Time of a day for which a timer feeds the immersion heater. */
  public Derived<Double> timer_min() {
    Entered<List<ClockWindow>> timed = setup.immersion().timed();
    return Derived.of(timed)
        .then(
            windows ->
                windows.isEmpty()
                    ? Derived.of(timed).map(none -> 0.0)
                    : free_min(timed, Derived.constant(List.of())));
  }

  private static Derived<Double> free_min(
      Entered<List<ClockWindow>> within, Derived<List<ClockWindow>> outside) {
    return Derived.of(within).with(outside, (in, out) -> (double) ClockWindow.free_min(in, out));
  }

  /** Whether the everyday programme runs often enough to keep the store at its start. */
  public Derived<Boolean> keepsStart() {
    return programme_min().map(free_min -> free_min >= least_min);
  }

  /** Whether a timer of the immersion heater keeps the store above the growth band. */
  public Derived<Boolean> timerKeepsWarm() {
    return Derived.all(
        timerRuns(),
        Derived.of(setup.immersion().thermostat_C()).map(opens -> opens > growthBandTop_C));
  }

  private Derived<Boolean> timerRuns() {
    return Derived.all(
        Derived.of(setup.immersion().part().isFitted()),
        timer_min().map(runs_min -> runs_min >= least_min));
  }

  /** The hottest that diverter, timer and thermostat make the store where no heat pump does. */
  public Derived<Double> hottestWithoutHeatPump_C() {
    Derived<Boolean> diverted = Derived.of(setup.diverter().part().isFitted());
    Derived<Boolean> direct = Derived.any(Derived.not(diverted), timerRuns());
    return byElement_C(diverted, Derived.of(setup.diverter().limit_C()))
        .with(byElement_C(direct, thermostat_C()), Math::max);
  }

  /** What the element makes of the store by a way of feeding it: never above its thermostat. */
  private Derived<Double> byElement_C(Derived<Boolean> fed, Derived<Double> control_C) {
    Derived<Boolean> heated = Derived.all(fed, Derived.of(setup.immersion().part().isFitted()));
    return heated.then(
        is -> is ? control_C.with(thermostat_C(), Math::min) : Derived.constant(0.0));
  }

  private Derived<Double> thermostat_C() {
    Immersion element = setup.immersion();
    return Derived.of(element.thermostat_C());
  }
}
