package deadband.topics.records;

import deadband.document.Pointer;
import deadband.facts.Answer;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.setup.Blending.Valve;
import deadband.setup.CurrentSensor;
import deadband.setup.CurrentSensor.Assigned;
import deadband.setup.Entered;
import deadband.setup.Part;
import deadband.setup.Relay;
import deadband.setup.Setup;
import deadband.setup.Shape;
import java.util.ArrayList;
import java.util.List;

/**
 * Facts about parts entered as not fitted that other values say are there: described beside it, or
 * relied on elsewhere. Whatever is judged takes the part as absent, so the entry must be right.
 */
public final class AbsentParts {

  /** A part entered as not fitted, and whether other values say that it is there. */
  public record AbsentPart(Evidence evidence, Answer contradicted) implements Case {}

  private final Setup setup;
  private final Facts facts;

  private AbsentParts(Setup setup, Facts facts) {
    this.setup = setup;
    this.facts = facts;
  }

  public static void derive(Setup setup, Facts facts) {
    new AbsentParts(setup, facts).all();
  }

  private void all() {
    List<Part> absent =
        Shape.partsOf(setup).stream().filter(part -> part.isFitted().says(false)).toList();
    if (absent.isEmpty() && !setup.blending().valve().says(Valve.NONE)) {
      facts.into(AbsentPart.class, Pointer.root()).none();
    }
    absent.forEach(part -> absent(part.isFitted().pointer(), evidence(part)));
    if (setup.blending().valve().says(Valve.NONE)) {
      absent(setup.blending().valve().pointer(), valveEvidence());
    }
  }

  private void absent(Pointer entry, List<Pointer> evidence) {
    List<Pointer> at = new ArrayList<>(List.of(entry));
    at.addAll(evidence);
    facts
        .into(AbsentPart.class, entry)
        .makes(
            because ->
                new AbsentPart(
                    because.explained(() -> Detail.at(at.toArray(new Pointer[0])).done()),
                    because.answer(Derived.constant(!evidence.isEmpty()))));
  }

  /** What says that a part is there: values beside the entry, or another part that needs it. */
  private List<Pointer> evidence(Part part) {
    List<Pointer> evidence = new ArrayList<>();
    if (part.entered()) {
      evidence.add(part.pointer());
    }
    if (part.equals(setup.immersion().part())) {
      there(setup.diverter().part(), evidence);
    }
    if (part.equals(setup.tank().part())) {
      there(setup.immersion().part(), evidence);
      there(setup.diverter().part(), evidence);
      there(setup.heatPump().everyday().part(), evidence);
    }
    if (part.equals(setup.heatPump().part())
        && setup.relay().drives().says(Relay.Drives.HEAT_PUMP)) {
      evidence.add(setup.relay().drives().pointer());
    }
    if (part.equals(setup.heatPump().surplusInput().part())) {
      calling(evidence);
    }
    if (part.equals(setup.diverter().sensor().part()) && setup.diverter().limit_C().isEntered()) {
      evidence.add(setup.diverter().limit_C().pointer());
    }
    if (part.equals(setup.blending().part())) {
      evidence.addAll(blendedOutlets());
    }
    evidence.addAll(measured(part));
    evidence.addAll(counted(part));
    return evidence;
  }

  /** A relay that calls a heat pump needs an input there to call it through. */
  private void calling(List<Pointer> evidence) {
    if (new RelayLoop(setup).fitted().is(is -> is)
        && setup.relay().drives().says(Relay.Drives.HEAT_PUMP)) {
      evidence.add(setup.relay().drives().pointer());
    }
  }

  /** The inputs of the diverter with a sensor on them that measures the part. */
  private List<Pointer> measured(Part part) {
    List<CurrentSensor> inputs = setup.diverter().currentSensors().optional().orElse(List.of());
    return inputs.stream()
        .filter(input -> input.part().isFitted().says(true))
        .filter(input -> input.assigned().optional().filter(to -> measures(to, part)).isPresent())
        .map(input -> input.assigned().pointer())
        .toList();
  }

  private boolean measures(Assigned assigned, Part part) {
    return switch (assigned) {
      case GRID -> part.equals(setup.gridSensor().part());
      case GENERATION -> part.equals(setup.solar().part());
      case HEAT_PUMP -> part.equals(setup.heatPump().part());
      case BATTERY -> part.equals(setup.battery().part());
      case CHARGER -> part.equals(setup.vehicleCharger().part());
      case NONE, OTHER -> false;
    };
  }

  /** A relay that counts the power of the part, or switches it. */
  private List<Pointer> counted(Part part) {
    Relay relay = setup.relay();
    if (!relay.part().isFitted().says(true)) {
      return List.of();
    }
    List<Pointer> uses = new ArrayList<>();
    List<Relay.Counts> counts = relay.counts().optional().orElse(List.of());
    if (counts.stream().anyMatch(power -> counts(power, part))) {
      uses.add(relay.counts().pointer());
    }
    if (part.equals(setup.immersion().part()) && relay.drives().says(Relay.Drives.ELEMENT)) {
      uses.add(relay.drives().pointer());
    }
    return uses;
  }

  private boolean counts(Relay.Counts power, Part part) {
    return switch (power) {
      case IMMERSION -> part.equals(setup.immersion().part());
      case HEAT_PUMP -> part.equals(setup.heatPump().part());
      case BATTERY -> part.equals(setup.battery().part());
      case EXPORT -> false;
    };
  }

  private static void there(Part part, List<Pointer> evidence) {
    if (part.isFitted().says(true)) {
      evidence.add(part.pointer());
    }
  }

  private List<Pointer> valveEvidence() {
    List<Pointer> evidence = new ArrayList<>(blendedOutlets());
    if (setup.blending().hotSupplyMax_C().isEntered()) {
      evidence.add(setup.blending().hotSupplyMax_C().pointer());
    }
    return evidence;
  }

  private List<Pointer> blendedOutlets() {
    return setup.outlets().optional().orElse(List.of()).stream()
        .map(outlet -> outlet.blended())
        .filter(blended -> blended.says(true))
        .map(Entered::pointer)
        .toList();
  }
}
