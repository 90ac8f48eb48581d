package deadband.cases;

import deadband.setup.Coil;
import deadband.setup.Immersion;
import deadband.setup.Setup;
import deadband.setup.Told;
import deadband.setup.Unit;
import deadband.trade.Known;
import deadband.trade.SafetyChain;

/** Cases about the non-self-resetting cut-out that each heat source of an unvented store needs. */
final class SourceCutOuts {

  private final Setup setup;
  private final Cases cases;

  private SourceCutOuts(Setup setup, Cases cases) {
    this.setup = setup;
    this.cases = cases;
  }

  static void derive(Setup setup, Cases cases) {
    SourceCutOuts topic = new SourceCutOuts(setup, cases);
    Immersion element = setup.immersion();
    topic.source(element.ownCutOut(), element.cutOut_C(), Derived.of(element.part().isFitted()));
    Coil coil = setup.tank().coil();
    topic.source(
        coil.ownCutOut(),
        coil.cutOut_C(),
        Derived.all(
            Derived.of(coil.part().isFitted()), Derived.of(setup.heatPump().part().isFitted())));
  }

  private void source(Told<Boolean> own, Told<Double> cutOut_C, Derived<Boolean> fitted) {
    Derived<Boolean> present = present(own, cutOut_C);
    cases
        .into(SourceCutOut.class, own.pointer())
        .fitted(fitted)
        .where(Derived.of(setup.tank().unvented()))
        .given(present)
        .makes(because -> new SourceCutOut(because.explained(() -> lacking(own)), present.get()));
  }

  /** A temperature at which a cut-out acts says that there is one. */
  private static Derived<Boolean> present(Told<Boolean> own, Told<Double> cutOut_C) {
    return own.isTold() ? Derived.of(own) : Derived.of(cutOut_C).map(acts -> true);
  }

  private Detail lacking(Told<Boolean> own) {
    return Detail.at(own, setup.tank().unvented()).limit(devices()).done();
  }

  /** British regulation carries a hazard at home; elsewhere the same is asked. */
  private Bound devices() {
    boolean british =
        setup.site().country().optional().filter(c -> c.code().equals("GB")).isPresent();
    String what = SafetyChain.INDEPENDENT_DEVICES.what();
    Measure devices = Measure.of(what, SafetyChain.INDEPENDENT_DEVICES.value(), Unit.NONE);
    String source = SafetyChain.INDEPENDENT_DEVICES.source();
    return british
        ? Bound.sourced(devices, "two devices", source, SafetyChain.INDEPENDENT_DEVICES.known())
        : Bound.sourced(devices, "two devices", source + "; elsewhere from memory", Known.MEMORY);
  }
}
