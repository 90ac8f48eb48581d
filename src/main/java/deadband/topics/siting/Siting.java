package deadband.topics.siting;

import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Facts;
import deadband.facts.Matter;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.Diverter;
import deadband.setup.Setup;
import deadband.setup.Told;
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
  public record Clearance(Matter matter, Quantity free_mm, Quantity needed_mm) implements Case {}

  /** Whether a hot surface lies below the diverter. */
  public record SurfaceBelow(Matter matter, Answer hot) implements Case {}

  /** The highest temperature of the air around the diverter, against what it is rated for. */
  public record AmbientAir(Matter matter, Quantity highest_C, Quantity rated_C) implements Case {}

  public static void derive(Setup setup, Facts facts) {
    Siting topic = new Siting(setup, facts);
    topic.clearance("free space above", topic.diverter.clearanceAbove_mm());
    topic.clearance("free space below", topic.diverter.clearanceBelow_mm());
    topic.surfaceBelow();
    topic.ambientAir();
  }

  private void clearance(String side, Told<Double> told) {
    Derived<Double> free = Derived.of(told);
    Derived<Double> needed = Derived.of(diverter.clearanceNeeded_mm());
    facts
        .into(Clearance.class, told.pointer())
        .given(free, needed)
        .makes(
            because ->
                new Clearance(
                    because.explained(() -> tight(side, told, free.get(), needed.get())),
                    because.quantity(free),
                    because.quantity(needed)));
  }

  private Detail tight(String side, Told<Double> told, double free_mm, double needed_mm) {
    return Detail.at(told, diverter.clearanceNeeded_mm())
        .observed(Measure.of(side, free_mm, Unit.MILLIMETRE))
        .limit(
            Bound.told(
                "required by its instructions",
                needed_mm,
                Unit.MILLIMETRE,
                diverter.clearanceNeeded_mm()))
        .cure(Change.of(told, needed_mm))
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
        .limit(Bound.told("rated air temperature", rated_C, Unit.CELSIUS, diverter.ambientMax_C()))
        .done();
  }
}
