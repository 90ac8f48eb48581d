package deadband.topics.metering;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KELVIN;
import static deadband.setup.Unit.OHM;

import deadband.document.Pointer;
import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Presence;
import deadband.facts.Says;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.plant.SensorTolerance;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.Setup;
import deadband.setup.TankSensor;
import deadband.setup.TankSensor.Element;
import deadband.trade.PlatinumSensor;
import deadband.trade.PlatinumSensor.Curve;
import deadband.trade.PlatinumSensor.Reading;
import java.util.List;

/** Facts about the tank sensor of the diverter: does it read true, and does it sit tight? */
public final class TankSensing {

  @Says("The diverter's tank sensor is a platinum element.")
  public record TankSensorIsPlatinum(Answer answer) implements Presence {}

  /** Whether the resistance of the tank sensor agrees with the temperature displayed. */
  public record TankSensorReading(Evidence evidence, Answer agrees) implements Case {}

  /** Whether the tank sensor sits in a pocket. */
  public record TankSensorSeat(Evidence evidence, Answer inPocket) implements Case {}

  private static final double PT100_OHM = 100;
  private static final double PT1000_OHM = 1000;

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final TankSensor sensor;

  private TankSensing(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.sensor = setup.diverter().sensor();
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    TankSensing topic = new TankSensing(setup, limits, facts);
    facts.add(new TankSensorIsPlatinum(facts.answer(topic.isPlatinum())));
    topic.reading();
    topic.seat();
  }

  private Derived<Boolean> isPlatinum() {
    return Derived.of(sensor.element())
        .map(element -> element == Element.PT100 || element == Element.PT1000);
  }

  /** What a sensor is held against: the reading, and how far it may be off. */
  private record Trial(
      double nominal_ohm, double measured_ohm, double displayed_C, double tolerance_K) {

    /** A temperature that no tank sensor can show agrees with nothing. */
    boolean inRange() {
      return PlatinumSensor.RANGE_C.holds(displayed_C) && measured_ohm > 0;
    }

    Reading with(double lead_ohm) {
      return inRange()
          ? PlatinumSensor.reading(nominal_ohm, measured_ohm, displayed_C, tolerance_K, lead_ohm)
          : Reading.FITS_NOTHING;
    }

    double expected_ohm() {
      return Curve.IEC_60751.resistance_ohm(nominal_ohm, displayed_C);
    }

    /** What the leads add raises a measured resistance and never lowers it. */
    double allowed_K(double lead_ohm) {
      if (measured_ohm < expected_ohm()) {
        return tolerance_K;
      }
      return tolerance_K + PlatinumSensor.leadError_K(nominal_ohm, lead_ohm, displayed_C);
    }

    double apart_K() {
      return Math.abs(measured_ohm - expected_ohm())
          / Curve.IEC_60751.slope_ohm_per_K(nominal_ohm, displayed_C);
    }
  }

  private record Shown(double measured_ohm, double displayed_C) {}

  private void reading() {
    Derived<Double> displayed = Derived.of(sensor.displayed_C());
    Derived<Trial> trial =
        Derived.of(sensor.measured_ohm())
            .with(displayed, Shown::new)
            .with(
                new SensorTolerance(setup).diverter_K(displayed),
                (shown, either_K) ->
                    new Trial(nominal_ohm(), shown.measured_ohm(), shown.displayed_C(), either_K));
    Derived<Double> lead = trial.then(this::lead_ohm);
    Derived<Reading> reading = trial.with(lead, Trial::with);
    facts
        .into(TankSensorReading.class, sensor.measured_ohm().pointer())
        .fitted(Derived.notAbsent(sensor.part()))
        .given(reading)
        .clearOnlyWith(openLead(trial))
        .makes(
            because ->
                new TankSensorReading(
                    because.explained(() -> disagrees(trial.get(), lead.get(), reading.get())),
                    because.answer(reading.map(read -> read == Reading.AGREES))));
  }

  private double nominal_ohm() {
    return sensor.element().says(Element.PT100) ? PT100_OHM : PT1000_OHM;
  }

  /** Leads only widen what agrees: one that agrees without them agrees whatever they are. */
  private Derived<Double> lead_ohm(Trial trial) {
    if (sensor.lead_ohm().isEntered()) {
      return Derived.of(sensor.lead_ohm());
    }
    return trial.with(0) == Reading.AGREES
        ? Derived.constant(0.0)
        : Derived.assumed(
            sensor.lead_ohm().pointer(),
            limits.value(Limit.LEAD_ASSUMED) * trial.nominal_ohm() / PT1000_OHM,
            "common practice");
  }

  /** Leads that are only assumed leave it open whether they explain a reading; found is found. */
  private List<Pointer> openLead(Derived<Trial> trial) {
    return trial.is(shown -> shown.with(0) == Reading.AGREES)
        ? List.of()
        : Derived.enteredOnly(sensor.lead_ohm()).provenance().missing();
  }

  private Detail disagrees(Trial trial, double lead_ohm, Reading reading) {
    Detail.Builder detail =
        Detail.at(sensor.measured_ohm(), sensor.displayed_C(), sensor.element())
            .observed(Measure.of("resistance measured", trial.measured_ohm(), OHM))
            .basis("curve and classes of IEC 60751");
    if (!trial.inRange()) {
      return detail.done();
    }
    double allowed_K = trial.allowed_K(lead_ohm);
    detail
        .limit(
            Bound.calculated(
                "resistance at the temperature displayed", trial.expected_ohm(), OHM, "IEC 60751"))
        .size(Size.share(trial.apart_K() / allowed_K - 1))
        .evidence(
            Measure.of("displayed", trial.displayed_C(), CELSIUS),
            Measure.of("apart", trial.apart_K(), KELVIN),
            Measure.of("allowed", allowed_K, KELVIN));
    return likelier(detail, trial, reading).done();
  }

  private Detail.Builder likelier(Detail.Builder detail, Trial trial, Reading reading) {
    return switch (reading) {
      case OTHER_NOMINAL -> otherNominal(detail);
      case OTHER_CURVE ->
          detail.evidence(
              Measure.of(
                  "as a sensor of the 3916 curve it reads",
                  Curve.CURVE_3916.temperature_C(trial.nominal_ohm(), trial.measured_ohm()),
                  CELSIUS));
      case AGREES, FITS_NOTHING -> detail;
    };
  }

  private Detail.Builder otherNominal(Detail.Builder detail) {
    boolean hundred = sensor.element().says(Element.PT100);
    return detail
        .evidence(Measure.of("fits a sensor of", hundred ? PT1000_OHM : PT100_OHM, OHM))
        .cure(Change.of(sensor.element(), hundred ? Element.PT1000 : Element.PT100));
  }

  private void seat() {
    Derived<Boolean> pocket = Derived.of(sensor.inPocket());
    facts
        .into(TankSensorSeat.class, sensor.inPocket().pointer())
        .fitted(Derived.notAbsent(sensor.part()))
        .given(pocket)
        .makes(
            because ->
                new TankSensorSeat(
                    because.explained(() -> Detail.at(sensor.inPocket()).done()),
                    because.answer(pocket)));
  }
}
