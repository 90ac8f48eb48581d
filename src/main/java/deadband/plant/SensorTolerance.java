package deadband.plant;

import deadband.provenance.Derived;
import deadband.setup.HeatPump;
import deadband.setup.Setup;
import deadband.setup.TankSensor;
import deadband.setup.TankSensor.Element;
import deadband.setup.Unit;
import deadband.trade.PlatinumSensor;

/**
 * How far the tank may truly be from what a sensor shows, either way.
 *
 * <p>What a data sheet states comes first; else the class of a platinum sensor. A sensor of another
 * kind has no class, and nothing stands in for what is not entered of it. The heat pump's own
 * sensor is seldom described, so the diverter's stands for it. A sensor that is not there has none.
 */
public final class SensorTolerance {

  private static final double CLASS_B_AT_60_K = 0.6;

  private final TankSensor sensor;
  private final Derived<Boolean> sensorFitted;
  private final HeatPump heatPump;
  private final boolean counted;

  public SensorTolerance(Setup setup) {
    this(setup, true);
  }

  /** No tolerance at all: for what the values set are to decide by themselves. */
  public static SensorTolerance none(Setup setup) {
    return new SensorTolerance(setup, false);
  }

  private SensorTolerance(Setup setup, boolean counted) {
    this.counted = counted;
    this.sensor = setup.diverter().sensor();
    this.sensorFitted =
        Derived.all(
            Derived.of(setup.diverter().part().isFitted()), Derived.notAbsent(sensor.part()));
    this.heatPump = setup.heatPump();
  }

  /** Of the diverter's tank sensor at a temperature. */
  public Derived<Double> diverter_K(Derived<Double> at_C) {
    if (!counted) {
      return Derived.constant(0.0);
    }
    if (sensor.part().isFitted().says(false)) {
      return Derived.of(sensor.part().isFitted()).map(there -> 0.0);
    }
    if (sensor.tolerance_K().isEntered()) {
      return Derived.of(sensor.tolerance_K());
    }
    if (sensor.element().says(Element.NTC) || sensor.element().says(Element.OTHER)) {
      return Derived.missing(sensor.tolerance_K().pointer());
    }
    return Derived.of(sensor.toleranceClass())
        .map(entered -> PlatinumSensor.ToleranceClass.valueOf(entered.name()))
        .with(at_C, (tolerance, at) -> Unit.KELVIN.round(tolerance.tolerance_K(at)));
  }

  /** Of the heat pump's tank sensor at a temperature. */
  public Derived<Double> heatPump_K(Derived<Double> at_C) {
    if (!counted) {
      return Derived.constant(0.0);
    }
    if (heatPump.sensorTolerance_K().isEntered()) {
      return Derived.of(heatPump.sensorTolerance_K());
    }
    if (sensorFitted.is(fitted -> !fitted)) {
      return Derived.assumed(
          heatPump.sensorTolerance_K().pointer(), CLASS_B_AT_60_K, "IEC 60751 class B at 60 °C");
    }
    return diverter_K(at_C);
  }

  /** A temperature with what its tolerance is sure to add: nothing where that is not entered. */
  public static Derived<Double> surely_C(Derived<Double> at_C, Derived<Double> tolerance_K) {
    boolean entered = tolerance_K.isKnown() && !tolerance_K.isAssumed();
    return entered ? Derived.sum(Unit.CELSIUS, at_C, tolerance_K) : at_C;
  }
}
