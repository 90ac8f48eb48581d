package deadband.facts;

import deadband.setup.Change;
import deadband.setup.ChangeKind;
import deadband.setup.CurrentSensor.Assigned;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import java.util.List;
import java.util.stream.Stream;

/** The work on site that changes need before they can be entered anywhere. */
public final class SiteWork {

  private SiteWork() {}

  /** What has to be done by hand, in words; empty where every change is a setting. */
  public static List<String> of(List<Change> changes, Setup setup) {
    return changes.stream().flatMap(change -> of(change, setup)).distinct().toList();
  }

  private static Stream<String> of(Change change, Setup setup) {
    if (ChangeKind.of(change.pointer()) == ChangeKind.WORK_ON_SITE) {
      return Stream.of(change.pointer().dotted());
    }
    boolean countsPump =
        change.pointer().equals(setup.relay().counts().pointer())
            && change.to() instanceof List<?> counted
            && counted.contains(Counts.HEAT_PUMP)
            && !setup.relay().counts().optional().orElse(List.of()).contains(Counts.HEAT_PUMP);
    return countsPump && !measuresPump(setup)
        ? Stream.of(
            "a current transformer (CT) on the heat pump's supply, on an input of the controller"
                + " that relay.counts can use")
        : Stream.empty();
  }

  /** Whether the controller has a sensor that is there and assigned to the heat pump. */
  private static boolean measuresPump(Setup setup) {
    return setup.diverter().currentSensors().optional().orElse(List.of()).stream()
        .anyMatch(
            sensor ->
                sensor.assigned().says(Assigned.HEAT_PUMP) && sensor.part().isFitted().says(true));
  }
}
