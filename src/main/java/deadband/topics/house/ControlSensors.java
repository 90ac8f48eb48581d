package deadband.topics.house;

import static deadband.setup.Unit.MILLIMETRE;

import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.facts.Size;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.Coil;
import deadband.setup.Diverter;
import deadband.setup.Entered;
import deadband.setup.Immersion;
import deadband.setup.Setup;

/** Facts about the height of the sensors that end a heating: do they see what is heated? */
public final class ControlSensors {

  private final Setup setup;
  private final Facts facts;

  /** The height of a sensor that ends a heating, against the lower edge of the heater. */
  public record ControlSensor(Evidence evidence, Quantity sensor_mm, Quantity heater_mm)
      implements Case {}

  private ControlSensors(Setup setup, Facts facts) {
    this.setup = setup;
    this.facts = facts;
  }

  public static void derive(Setup setup, Facts facts) {
    ControlSensors topic = new ControlSensors(setup, facts);
    topic.heatPump();
    topic.diverter();
  }

  private void heatPump() {
    Coil coil = setup.tank().coil();
    sensor(
        setup.heatPump().sensor_mm(),
        coil.bottom_mm(),
        coil.top_mm(),
        Derived.all(
            Derived.of(setup.heatPump().part().isFitted()),
            Derived.of(setup.tank().part().isFitted()),
            Derived.of(coil.part().isFitted())));
  }

  private void diverter() {
    Diverter diverter = setup.diverter();
    Immersion immersion = setup.immersion();
    sensor(
        diverter.sensor().height_mm(),
        immersion.height_mm(),
        setup.tank().height_mm(),
        Derived.all(
            Derived.of(diverter.part().isFitted()),
            Derived.notAbsent(diverter.sensor().part()),
            Derived.of(immersion.part().isFitted())));
  }

  private void sensor(
      Entered<Double> sensor,
      Entered<Double> heater,
      Entered<Double> upper,
      Derived<Boolean> fitted) {
    Derived<Double> at = Derived.of(sensor);
    Derived<Double> edge = Derived.of(heater);
    facts
        .into(ControlSensor.class, sensor.pointer())
        .fitted(fitted)
        .given(at, edge)
        .makes(
            because ->
                new ControlSensor(
                    because.explained(
                        () -> staysCold(sensor, heater, at.get(), midway(edge, upper))),
                    because.quantity(at),
                    because.quantity(edge)));
  }

  /** Half way up what is heated, where that is known; else the lower edge, which is the least. */
  private static double midway(Derived<Double> edge, Entered<Double> upper) {
    return Derived.of(upper).is(top -> top > edge.get())
        ? MILLIMETRE.round((edge.get() + upper.optional().orElseThrow()) / 2)
        : edge.get();
  }

  private static Detail staysCold(
      Entered<Double> sensor, Entered<Double> heater, double sensor_mm, double better_mm) {
    double heater_mm = heater.optional().orElseThrow();
    return Detail.at(sensor, heater)
        .observed(Measure.of("height of the sensor", sensor_mm, MILLIMETRE))
        .limit(Bound.entered("lower edge of the heater", heater_mm, MILLIMETRE, heater))
        .size(Size.WHOLE)
        .evidence(Measure.of("below the heater by", heater_mm - sensor_mm, MILLIMETRE))
        .cure(Change.of(sensor, better_mm))
        .done();
  }
}
