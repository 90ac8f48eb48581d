package deadband.cases;

import deadband.setup.Change;
import deadband.setup.CurrentSensor;
import deadband.setup.CurrentSensor.Assigned;
import deadband.setup.GridSensor;
import deadband.setup.LinkedController;
import deadband.setup.LinkedController.Role;
import deadband.setup.Setup;
import deadband.setup.Unit;
import java.util.List;

/** Cases about what the controller measures, and which of several controllers acts on it. */
final class Metering {

  private final Setup setup;
  private final GridSensor sensor;
  private final Cases cases;

  private Metering(Setup setup, Cases cases) {
    this.setup = setup;
    this.sensor = setup.gridSensor();
    this.cases = cases;
  }

  static void derive(Setup setup, Cases cases) {
    Metering topic = new Metering(setup, cases);
    topic.sensorInputs();
    topic.gridSensorPlace();
    topic.sensorPhase();
    topic.sensorFacing();
    topic.leadCount();
    topic.followers();
  }

  private Derived<Boolean> diverterFitted() {
    return Derived.of(setup.diverter().part().isFitted());
  }

  private void sensorInputs() {
    List<CurrentSensor> inputs = setup.diverter().currentSensors().optional().orElse(List.of());
    if (inputs.isEmpty()) {
      cases
          .into(SensorInput.class, setup.diverter().currentSensors().pointer())
          .fitted(diverterFitted(), Derived.of(setup.diverter().currentSensors()).map(all -> false))
          .notKnown();
    }
    inputs.forEach(this::sensorInput);
  }

  private void sensorInput(CurrentSensor input) {
    Derived<Boolean> fitted = Derived.of(input.part().isFitted());
    Derived<Boolean> assigned = Derived.of(input.assigned()).map(to -> to != Assigned.NONE);
    cases
        .into(SensorInput.class, input.part().pointer())
        .fitted(diverterFitted())
        .given(fitted, assigned)
        .makes(
            because ->
                new SensorInput(
                    because.explained(
                        () ->
                            Detail.at(input.assigned(), input.part().isFitted())
                                .cure(Change.of(input.assigned(), Assigned.NONE))
                                .done()),
                    fitted.get(),
                    assigned.get()));
  }

  private void gridSensorPlace() {
    Derived<Boolean> present =
        Derived.all(
            Derived.of(sensor.part().isFitted()),
            Derived.of(sensor.at()).map(at -> at != GridSensor.Place.NONE));
    cases
        .into(GridSensorPlace.class, sensor.part().pointer())
        .fitted(diverterFitted())
        .given(present)
        .makes(
            because ->
                new GridSensorPlace(
                    because.explained(() -> Detail.at(present.provenance().told()).done()),
                    present.get()));
  }

  private void sensorPhase() {
    Derived<Boolean> same =
        Derived.of(sensor.phase())
            .with(Derived.of(setup.diverter().phase()), (on, feeds) -> on == feeds);
    cases
        .into(SensorPhase.class, sensor.phase().pointer())
        .fitted(diverterFitted(), Derived.of(sensor.part().isFitted()))
        .where(
            Derived.of(setup.supply().phases()).map(phases -> phases > 1),
            Derived.of(sensor.phases()).map(phases -> phases == 1))
        .given(same)
        .makes(
            because ->
                new SensorPhase(
                    because.explained(
                        () ->
                            Detail.at(sensor.phase(), setup.diverter().phase())
                                .size(setup.immersion().power_kW().optional().orElse(0.0))
                                .done()),
                    same.get()));
  }

  private void sensorFacing() {
    Derived<Boolean> checked =
        Derived.of(sensor.facing()).map(facing -> facing == GridSensor.Facing.CHECKED);
    cases
        .into(SensorFacing.class, sensor.facing().pointer())
        .fitted(Derived.of(sensor.part().isFitted()))
        .given(checked)
        .makes(
            because ->
                new SensorFacing(
                    because.explained(() -> Detail.at(sensor.facing()).size(1).done()),
                    checked.get()));
  }

  private List<LinkedController> linked() {
    return setup.group().optional().orElse(List.of());
  }

  private void leadCount() {
    Derived<Long> leads = Derived.of(setup.group()).map(all -> 0L);
    for (LinkedController controller : linked()) {
      leads =
          leads.with(
              Derived.of(controller.role()), (sum, role) -> role == Role.LEAD ? sum + 1 : sum);
    }
    Derived<Long> counted = leads;
    cases
        .into(LeadCount.class, setup.group().pointer())
        .fitted(Derived.of(setup.group()).map(all -> !all.isEmpty()))
        .given(counted)
        .makes(
            because ->
                new LeadCount(
                    because.explained(
                        () ->
                            Detail.at(setup.group())
                                .observed(Measure.of("leading", (double) counted.get(), Unit.NONE))
                                .size((double) Math.abs(counted.get() - 1))
                                .done()),
                    counted.get().intValue()));
  }

  private void followers() {
    if (linked().isEmpty()) {
      cases
          .into(Follower.class, setup.group().pointer())
          .fitted(Derived.of(setup.group()).map(all -> false))
          .notKnown();
    }
    linked().forEach(this::follower);
  }

  private void follower(LinkedController controller) {
    Derived<Boolean> zero = Derived.of(controller.zeroOnLinkLoss());
    cases
        .into(Follower.class, controller.part().pointer())
        .fitted(Derived.of(controller.role()).map(role -> role == Role.FOLLOWER))
        .given(zero)
        .makes(
            because ->
                new Follower(
                    because.explained(
                        () ->
                            Detail.at(controller.zeroOnLinkLoss(), controller.name())
                                .size(1)
                                .done()),
                    zero.get()));
  }
}
