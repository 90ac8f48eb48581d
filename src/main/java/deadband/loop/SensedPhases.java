package deadband.loop;

import deadband.document.Pointer;
import deadband.provenance.Derived;
import deadband.setup.Entered;
import deadband.setup.GridSensor;
import deadband.setup.HeatPump;
import deadband.setup.Phase;
import deadband.setup.Setup;
import deadband.setup.Solar;
import deadband.setup.Supply;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which phases the grid sensor measures, and how much of the heat pump's draw falls on them.
 *
 * <p>A balanced three-phase draw shows a third of itself to a sensor on one phase; a draw on
 * another phase, or ahead of the sensor, shows nothing.
 */
public final class SensedPhases {

  private final Supply supply;
  private final GridSensor sensor;
  private final HeatPump heatPump;
  private final Solar solar;

  public SensedPhases(Setup setup) {
    this.supply = setup.supply();
    this.sensor = setup.gridSensor();
    this.heatPump = setup.heatPump();
    this.solar = setup.solar();
  }

  /** Whether the supply has more than one phase, without which no phase can be the wrong one. */
  public Derived<Boolean> several() {
    return supplied().map(phases -> phases > 1);
  }

  public Derived<Double> supplied() {
    return Derived.of(supply.phases());
  }

  public Derived<Double> drawn() {
    return Derived.of(heatPump.phases());
  }

  /** Phases the PV feeds; a phase named for it says that it feeds one. */
  public Derived<Double> feeding() {
    return Derived.of(solar.phases()).or(Derived.of(solar.phase()).map(phase -> 1.0));
  }

  /** Whether the PV feeds one phase, and the sensor measures one: both must be the same. */
  public Derived<Boolean> oneOfEach() {
    return Derived.all(feeding().map(fed -> fed == 1), measured().map(measured -> measured == 1));
  }

  /**
   * Phases the sensor measures; a phase named for it says that it measures one. Where there is none
   * the surplus is read from the whole supply, as a billing meter has it.
   */
  public Derived<Double> measured() {
    if (isAbsent()) {
      return Derived.of(sensor.part().isFitted()).then(none -> supplied());
    }
    return Derived.of(sensor.phases()).or(Derived.of(sensor.phase()).map(phase -> 1.0));
  }

  /** Whether the sensor measures every phase of the supply. */
  public Derived<Boolean> measuresAll() {
    return measured().with(supplied(), (measured, supplied) -> measured >= supplied);
  }

  /** Whether the heat pump draws from one phase, and the sensor measures that one. */
  public Derived<Boolean> measuresThePump() {
    return Derived.all(
        drawn().map(phases -> phases == 1),
        Derived.of(heatPump.phase()).with(Derived.of(sensor.phase()), Phase::equals));
  }

  private boolean isAbsent() {
    return sensor.part().isFitted().says(false);
  }

  /** Part of the heat pump's draw that the sensor sees, 0 to 1; all where nothing is entered. */
  public Derived<Double> shareOfPump() {
    if (isAbsent()) {
      return Derived.of(sensor.part().isFitted()).map(none -> 1.0);
    }
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

  /**
   * Phases with a sensor of their own that the heat pump's draw falls on: the errors of their
   * sensors may add up. While that is open it is at least one, on which an error is smallest.
   */
  public double loaded() {
    Derived<Double> surely = surelyLoaded();
    return surely.isKnown() ? surely.get() : 1;
  }

  /** What must be entered before it is sure on how many phases the sensors' errors add up. */
  public List<Pointer> openLoaded() {
    return surelyLoaded().provenance().missing();
  }

  private Derived<Double> surelyLoaded() {
    return Stream.of(drawn(), measured(), supplied())
        .filter(phases -> phases.is(count -> count == 1))
        .findFirst()
        .orElseGet(() -> drawn().with(measured(), Math::min));
  }

  private boolean onOtherPhase() {
    Entered<Phase> pump = heatPump.phase();
    return measured().is(phases -> phases == 1)
        && pump.isEntered()
        && sensor.phase().isEntered()
        && !pump.optional().equals(sensor.phase().optional());
  }

  private boolean isSilent() {
    return !supplied().isKnown() && !measured().isKnown() && !drawn().isKnown();
  }
}
