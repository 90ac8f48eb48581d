package deadband.cases;

import deadband.setup.GridSensor;
import deadband.setup.HeatPump;
import deadband.setup.Phase;
import deadband.setup.Setup;
import deadband.setup.Supply;
import deadband.setup.Told;

/**
 * Which phases the grid sensor measures, and how much of the heat pump's draw falls on them.
 *
 * <p>A balanced three-phase draw shows a third of itself to a sensor on one phase; a draw on
 * another phase, or ahead of the sensor, shows nothing.
 */
final class SensedPhases {

  private final Supply supply;
  private final GridSensor sensor;
  private final HeatPump heatPump;

  SensedPhases(Setup setup) {
    this.supply = setup.supply();
    this.sensor = setup.gridSensor();
    this.heatPump = setup.heatPump();
  }

  /** Whether the supply has more than one phase, without which no phase can be the wrong one. */
  Derived<Boolean> several() {
    return supplied().map(phases -> phases > 1);
  }

  Derived<Double> supplied() {
    return Derived.of(supply.phases());
  }

  Derived<Double> drawn() {
    return Derived.of(heatPump.phases());
  }

  /** Phases the sensor measures; a phase named for it says that it measures one. */
  Derived<Double> measured() {
    return Derived.of(sensor.phases()).or(Derived.of(sensor.phase()).map(phase -> 1.0));
  }

  /** Whether the sensor measures every phase of the supply. */
  Derived<Boolean> measuresAll() {
    return measured().with(supplied(), (measured, supplied) -> measured >= supplied);
  }

  /** Whether the heat pump draws from one phase, and the sensor measures that one. */
  Derived<Boolean> measuresThePump() {
    return Derived.all(
        drawn().map(phases -> phases == 1),
        Derived.of(heatPump.phase()).with(Derived.of(sensor.phase()), Phase::equals));
  }

  /** Part of the heat pump's draw that the sensor sees, 0 to 1; all where nothing is told. */
  Derived<Double> shareOfPump() {
    Derived<Boolean> behind = Derived.of(sensor.heatPumpBehind());
    if (behind.is(is -> !is)) {
      return behind.map(is -> 0.0);
    }
    if (several().is(are -> !are)) {
      return several().map(are -> 1.0);
    }
    if (drawn().is(phases -> phases == 1)) {
      return drawn().map(phases -> onOtherPhase() ? 0.0 : 1.0);
    }
    if (measured().is(phases -> phases >= 3) || isSilent()) {
      return Derived.constant(1.0);
    }
    return measured().with(drawn(), (measured, drawn) -> Math.min(1, measured / drawn));
  }

  /** Phases with a sensor of their own that the heat pump's draw falls on, at least one. */
  double loaded() {
    double drawn = drawn().isKnown() ? drawn().get() : 1;
    double measured = measured().isKnown() ? measured().get() : 1;
    return Math.min(drawn, measured);
  }

  private boolean onOtherPhase() {
    Told<Phase> pump = heatPump.phase();
    return measured().is(phases -> phases == 1)
        && pump.isTold()
        && sensor.phase().isTold()
        && !pump.optional().equals(sensor.phase().optional());
  }

  private boolean isSilent() {
    return !supplied().isKnown() && !measured().isKnown() && !drawn().isKnown();
  }
}
