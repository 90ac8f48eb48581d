package deadband.topics.wiring;

import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.provenance.Derived;
import deadband.setup.Coil;
import deadband.setup.Entered;
import deadband.setup.Immersion;
import deadband.setup.Setup;
import deadband.setup.Unit;
import deadband.trade.Figure;
import deadband.trade.Known;
import deadband.trade.SafetyChain;

/**
 * Facts about the cut-out of each heat source. It must be reset by hand on an immersion heater, and
 * on the coil of an unvented store; on the coil of an open store it may reset itself.
 */
public final class SourceCutOuts {

  /** Whether a heat source of the store has a cut-out of its own. */
  public record SourceCutOut(Evidence evidence, Answer present) implements Case {}

  private final Setup setup;
  private final Facts facts;

  private SourceCutOuts(Setup setup, Facts facts) {
    this.setup = setup;
    this.facts = facts;
  }

  public static void derive(Setup setup, Facts facts) {
    SourceCutOuts topic = new SourceCutOuts(setup, facts);
    topic.element();
    topic.coil();
  }

  private void element() {
    Immersion element = setup.immersion();
    Derived<Boolean> present = present(element.ownCutOut(), element.cutOut_C());
    facts
        .into(SourceCutOut.class, element.ownCutOut().pointer())
        .fitted(Derived.of(element.part().isFitted()))
        .given(present)
        .makes(
            because ->
                new SourceCutOut(
                    because.explained(() -> lacking(element.ownCutOut(), elementBound())),
                    because.answer(present)));
  }

  private void coil() {
    Coil coil = setup.tank().coil();
    Derived<Boolean> present = present(coil.ownCutOut(), coil.cutOut_C());
    facts
        .into(SourceCutOut.class, coil.ownCutOut().pointer())
        .fitted(
            Derived.notAbsent(setup.tank().part()),
            Derived.of(coil.part().isFitted()),
            Derived.of(setup.heatPump().part().isFitted()))
        .given(present, Derived.of(setup.tank().unvented()))
        .makes(
            because ->
                new SourceCutOut(
                    because.explained(() -> lacking(coil.ownCutOut(), coilBound())),
                    because.answer(present)));
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
  private static Derived<Boolean> present(Entered<Boolean> own, Entered<Double> cutOut_C) {
    return own.isEntered() ? Derived.of(own) : Derived.of(cutOut_C).map(acts -> true);
  }

  private Detail lacking(Entered<Boolean> own, Bound bound) {
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
