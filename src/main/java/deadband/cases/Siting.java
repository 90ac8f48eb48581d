package deadband.cases;

import deadband.setup.Change;
import deadband.setup.Diverter;
import deadband.setup.Setup;
import deadband.setup.Told;
import deadband.setup.Unit;

/** Cases about the place where the diverter hangs: it is cooled by the air around it. */
final class Siting {

  private final Diverter diverter;
  private final Derived<Boolean> fitted;
  private final Cases cases;

  private Siting(Setup setup, Cases cases) {
    this.diverter = setup.diverter();
    this.fitted = Derived.of(diverter.part().isFitted());
    this.cases = cases;
  }

  static void derive(Setup setup, Cases cases) {
    Siting topic = new Siting(setup, cases);
    topic.clearance(setup.diverter().clearanceAbove_mm(), "free space above");
    topic.clearance(setup.diverter().clearanceBelow_mm(), "free space below");
    topic.hotSurface();
    topic.ambientAir();
  }

  private void clearance(Told<Double> side, String quantity) {
    Derived<Double> space = Derived.of(side);
    Derived<Double> needed = Derived.of(diverter.clearanceNeeded_mm());
    cases
        .into(Clearance.class, side.pointer())
        .fitted(fitted)
        .given(space, needed)
        .makes(
            because ->
                new Clearance(
                    because.explained(
                        () ->
                            Detail.at(side, diverter.clearanceNeeded_mm())
                                .observed(Measure.of(quantity, space.get(), Unit.MILLIMETRE))
                                .limit(
                                    Bound.told(
                                        "free space needed",
                                        needed.get(),
                                        Unit.MILLIMETRE,
                                        diverter.clearanceNeeded_mm()))
                                .cure(Change.of(side, needed.get()))
                                .done()),
                    space.get(),
                    needed.get()));
  }

  private void hotSurface() {
    Derived<Boolean> below = Derived.of(diverter.hotSurfaceBelow());
    cases
        .into(HotSurface.class, diverter.hotSurfaceBelow().pointer())
        .fitted(fitted)
        .given(below)
        .makes(
            because ->
                new HotSurface(
                    because.explained(() -> Detail.at(diverter.hotSurfaceBelow()).done()),
                    below.get()));
  }

  private void ambientAir() {
    Derived<Double> air = Derived.of(diverter.ambient_C());
    Derived<Double> rated = Derived.of(diverter.ambientMax_C());
    cases
        .into(AmbientAir.class, diverter.ambient_C().pointer())
        .fitted(fitted)
        .given(air, rated)
        .makes(
            because ->
                new AmbientAir(
                    because.explained(
                        () ->
                            Detail.at(diverter.ambient_C(), diverter.ambientMax_C())
                                .observed(Measure.of("warmest air", air.get(), Unit.CELSIUS))
                                .limit(
                                    Bound.told(
                                        "warmest air it is rated for",
                                        rated.get(),
                                        Unit.CELSIUS,
                                        diverter.ambientMax_C()))
                                .done()),
                    air.get(),
                    rated.get()));
  }
}
