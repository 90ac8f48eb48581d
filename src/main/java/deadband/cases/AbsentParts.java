package deadband.cases;

import deadband.document.Pointer;
import deadband.setup.Blending.Valve;
import deadband.setup.Part;
import deadband.setup.Relay;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.setup.Told;
import java.util.ArrayList;
import java.util.List;

/**
 * Cases about parts entered as not fitted that other values say are there: described beside it, or
 * relied on elsewhere. Whatever is judged takes the part as absent, so the entry must be right.
 */
final class AbsentParts {

  private final Setup setup;
  private final Cases cases;

  private AbsentParts(Setup setup, Cases cases) {
    this.setup = setup;
    this.cases = cases;
  }

  static void derive(Setup setup, Cases cases) {
    new AbsentParts(setup, cases).all();
  }

  private void all() {
    List<Part> absent =
        Shape.partsOf(setup).stream().filter(part -> part.isFitted().says(false)).toList();
    if (absent.isEmpty() && !setup.blending().valve().says(Valve.NONE)) {
      cases.into(AbsentPart.class, Pointer.root()).none();
    }
    absent.forEach(part -> absent(part.isFitted().pointer(), evidence(part)));
    if (setup.blending().valve().says(Valve.NONE)) {
      absent(setup.blending().valve().pointer(), valveEvidence());
    }
  }

  private void absent(Pointer entry, List<Pointer> evidence) {
    List<Pointer> at = new ArrayList<>(List.of(entry));
    at.addAll(evidence);
    cases
        .into(AbsentPart.class, entry)
        .makes(
            because ->
                new AbsentPart(
                    because.explained(() -> Detail.at(at.toArray(new Pointer[0])).size(1).done()),
                    !evidence.isEmpty()));
  }

  /** What says that a part is there: values beside the entry, or another part that needs it. */
  private List<Pointer> evidence(Part part) {
    List<Pointer> evidence = new ArrayList<>();
    if (part.told()) {
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
    if (part.equals(setup.blending().part())) {
      evidence.addAll(blendedOutlets());
    }
    return evidence;
  }

  private static void there(Part part, List<Pointer> evidence) {
    if (part.isFitted().says(true)) {
      evidence.add(part.pointer());
    }
  }

  private List<Pointer> valveEvidence() {
    List<Pointer> evidence = new ArrayList<>(blendedOutlets());
    if (setup.blending().hotSupplyMax_C().isTold()) {
      evidence.add(setup.blending().hotSupplyMax_C().pointer());
    }
    return evidence;
  }

  private List<Pointer> blendedOutlets() {
    return setup.outlets().optional().orElse(List.of()).stream()
        .map(outlet -> outlet.blended())
        .filter(blended -> blended.says(true))
        .map(Told::pointer)
        .toList();
  }
}
