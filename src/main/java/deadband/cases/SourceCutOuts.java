package deadband.cases;

import deadband.setup.Coil;
import deadband.setup.Immersion;
import deadband.setup.Setup;
import deadband.setup.Told;
import deadband.setup.Unit;
import deadband.trade.Figure;
import deadband.trade.Known;
import deadband.trade.SafetyChain;

/**
 * Cases about the cut-out of each heat source. It must be reset by hand on an immersion heater, and
 * on the coil of an unvented store; on the coil of an open store it may reset itself.
 */
final class SourceCutOuts {

  private final Setup setup;
  private final Cases cases;

  private SourceCutOuts(Setup setup, Cases cases) {
    this.setup = setup;
    this.cases = cases;
  }

  static void derive(Setup setup, Cases cases) {
    SourceCutOuts topic = new SourceCutOuts(setup, cases);
    topic.element();
    topic.coil();
  }

  private void element() {
    Immersion element = setup.immersion();
    Derived<Boolean> present = present(element.ownCutOut(), element.cutOut_C());
    cases
        .into(SourceCutOut.class, element.ownCutOut().pointer())
        .fitted(Derived.of(element.part().isFitted()))
        .given(present)
        .makes(
            because ->
                new SourceCutOut(
                    because.explained(() -> lacking(element.ownCutOut(), elementBound())),
                    present.get()));
  }

  private void coil() {
    Coil coil = setup.tank().coil();
    Derived<Boolean> present = present(coil.ownCutOut(), coil.cutOut_C());
    cases
        .into(SourceCutOut.class, coil.ownCutOut().pointer())
        .fitted(Derived.of(coil.part().isFitted()), Derived.of(setup.heatPump().part().isFitted()))
        .given(present, Derived.of(setup.tank().unvented()))
        .makes(
            because ->
                new SourceCutOut(
                    because.explained(() -> lacking(coil.ownCutOut(), coilBound())),
                    present.get()));
  }

  private Bound coilBound() {
    return setup.tank().unvented().says(true) ? devices() : coilOfAnOpenStore();
  }

  /** Asked for, but it may be one that resets itself, or stand in the heat pump: a question. */
  private static Bound coilOfAnOpenStore() {
    return Bound.sourced(
            Measure.of("cut-out of each indirect heat source", 1, Unit.NONE),
            "cut-out",
            "Approved Document G 3.13a",
            Known.SECOND_HAND)
        .advised();
  }

  /** A temperature at which a cut-out acts says that there is one. */
  private static Derived<Boolean> present(Told<Boolean> own, Told<Double> cutOut_C) {
    return own.isTold() ? Derived.of(own) : Derived.of(cutOut_C).map(acts -> true);
  }

  private Detail lacking(Told<Boolean> own, Bound bound) {
    return Detail.at(own, setup.tank().unvented()).limit(bound).done();
  }

  private Bound devices() {
    Figure devices = SafetyChain.INDEPENDENT_DEVICES;
    return BritishText.bound(
        setup,
        Measure.of(devices.what(), devices.value(), Unit.NONE),
        "cut-out",
        devices.source(),
        devices.known());
  }

  /** Regulation asks for it in an unvented store; for an open one it is remembered. */
  private Bound elementBound() {
    return setup.tank().unvented().says(true)
        ? devices()
        : Bound.sourced(
            Measure.of("cut-out of an immersion heater", 1, Unit.NONE),
            "cut-out",
            "EN 60335-2-73, from memory",
            Known.MEMORY);
  }
}
