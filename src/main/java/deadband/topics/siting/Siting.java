package deadband.topics.siting;

import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.Diverter;
import deadband.setup.Entered;
import deadband.setup.Setup;
import deadband.setup.Unit;

/** Facts about the place where the diverter hangs, which must let it shed its heat. */
public final class Siting {

  private final Facts facts;
  private final Diverter diverter;

  private Siting(Setup setup, Facts facts) {
    this.facts = facts;
    this.diverter = setup.diverter();
  }

  /** The free space on one side of the diverter, against what its instructions ask for. */
  public record Clearance(Evidence evidence, Quantity free_mm, Quantity needed_mm)
      implements Case {}

  /** Whether a hot surface lies below the diverter. */
  public record SurfaceBelow(Evidence evidence, Answer hot) implements Case {}

  /** The highest temperature of the air around the diverter, against what it is rated for. */
  public record AmbientAir(Evidence evidence, Quantity highest_C, Quantity rated_C)
      implements Case {}

  public static void derive(Setup setup, Facts facts) {
    Siting topic = new Siting(setup, facts);
    topic.clearance("free space above", topic.diverter.clearanceAbove_mm());
    topic.clearance("free space below", topic.diverter.clearanceBelow_mm());
    topic.surfaceBelow();
    topic.ambientAir();
  }

  private void clearance(String side, Entered<Double> entered) {
    Derived<Double> free = Derived.of(entered);
    Derived<Double> needed = Derived.of(diverter.clearanceNeeded_mm());
    facts
        .into(Clearance.class, entered.pointer())
        .given(free, needed)
        .makes(
            because ->
                new Clearance(
                    because.explained(() -> tight(side, entered, free.get(), needed.get())),
                    because.quantity(free),
                    because.quantity(needed)));
  }

  private Detail tight(String side, Entered<Double> entered, double free_mm, double needed_mm) {
    return Detail.at(entered, diverter.clearanceNeeded_mm())
        .observed(Measure.of(side, free_mm, Unit.MILLIMETRE))
        .limit(
            Bound.entered(
                "required by its instructions",
                needed_mm,
                Unit.MILLIMETRE,
                diverter.clearanceNeeded_mm()))
        .cure(Change.of(entered, needed_mm))
        .done();
  }

  private void surfaceBelow() {
    Derived<Boolean> hot = Derived.of(diverter.hotSurfaceBelow());
    facts
        .into(SurfaceBelow.class, diverter.hotSurfaceBelow().pointer())
        .given(hot)
        .makes(
            because ->
                new SurfaceBelow(
                    because.explained(() -> Detail.at(diverter.hotSurfaceBelow()).done()),
                    because.answer(hot)));
  }

  private void ambientAir() {
    Derived<Double> warmest = Derived.of(diverter.ambient_C());
    Derived<Double> rated = Derived.of(diverter.ambientMax_C());
    facts
        .into(AmbientAir.class, diverter.ambient_C().pointer())
        .given(warmest, rated)
        .makes(
            because ->
                new AmbientAir(
                    because.explained(() -> tooWarm(warmest.get(), rated.get())),
                    because.quantity(warmest),
                    because.quantity(rated)));
  }

  private Detail tooWarm(double warmest_C, double rated_C) {
    return Detail.at(diverter.ambient_C(), diverter.ambientMax_C())
        .observed(Measure.of("highest air temperature around it", warmest_C, Unit.CELSIUS))
        .limit(
            Bound.entered("rated air temperature", rated_C, Unit.CELSIUS, diverter.ambientMax_C()))
        .done();
  }
}
