package deadband.topics.records;

import deadband.document.Pointer;
import deadband.facts.Answer;
import deadband.facts.Case;
import deadband.facts.Condition;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Says;
import deadband.facts.Size;
import deadband.provenance.Derived;
import deadband.setup.Entered;
import deadband.setup.Isolation;
import deadband.setup.Setup;
import deadband.setup.Signal;
import deadband.setup.SurplusInput;
import java.util.ArrayList;
import java.util.List;

/** Facts about the record of the job: what was found, what was made dead, what was tried. */
public final class Paperwork {

  @Says("A signal at mains voltage comes into the diverter from the heat pump.")
  public record MainsSignalEnters(Answer answer) implements Condition {}

  /** Whether the settings were photographed as they were found. */
  public record AsFoundRecord(Evidence evidence, Answer photographed) implements Case {}

  /** Whether every isolation that the work asks for is confirmed. */
  public record IsolationRecord(Evidence evidence, Answer complete) implements Case {}

  /** Whether the conductors of a signal at mains voltage were proved dead. */
  public record MainsDemand(Evidence evidence, Answer dead) implements Case {}

  /** Whether it was tried that the heat pump follows the call. */
  public record SurplusInputTrial(Evidence evidence, Answer confirmed) implements Case {}

  private final Setup setup;
  private final Facts facts;
  private final Isolation isolation;

  private Paperwork(Setup setup, Facts facts) {
    this.setup = setup;
    this.facts = facts;
    this.isolation = setup.isolation();
  }

  public static void derive(Setup setup, Facts facts) {
    Paperwork topic = new Paperwork(setup, facts);
    facts.add(new MainsSignalEnters(facts.answer(topic.mainsEnters())));
    topic.asFound();
    topic.isolations();
    topic.mainsDemand();
    topic.surplusInput();
  }

  private void asFound() {
    Entered<Boolean> entered = setup.asFound().photographed();
    Derived<Boolean> photographed = Derived.of(entered);
    facts
        .into(AsFoundRecord.class, entered.pointer())
        .given(photographed)
        .makes(
            because ->
                new AsFoundRecord(
                    because.explained(() -> Detail.at(entered).done()),
                    because.answer(photographed)));
  }

  /** One that was not made is enough to find; all must be entered before none is open. */
  private void isolations() {
    List<Isolated> asked = asked();
    List<Pointer> notMade =
        asked.stream().filter(Isolated::isNotMade).map(Isolated::pointer).toList();
    Derived<Boolean> all =
        asked.stream()
            .map(Isolated::made)
            .reduce(Derived.constant(true), (one, other) -> Derived.all(one, other));
    facts
        .into(IsolationRecord.class, isolation.part().pointer())
        .given(all)
        .makes(
            because ->
                new IsolationRecord(
                    because.explained(
                        () ->
                            Detail.at(notMade.toArray(new Pointer[0]))
                                .observed(Measure.of("not confirmed", (double) notMade.size(), ""))
                                .size(Size.entries(notMade.size()))
                                .done()),
                    because.answer(all)));
  }

  /**
   * An isolation that the work asks for.
   *
   * @param made true where it was made or is not asked for, false where it was not made
   */
  private record Isolated(Pointer pointer, Derived<Boolean> made) {
    static Isolated of(Entered<Boolean> entered, Derived<Boolean> asked) {
      return new Isolated(entered.pointer(), Derived.any(Derived.not(asked), Derived.of(entered)));
    }

    boolean isNotMade() {
      return made.is(is -> !is);
    }
  }

  /** Proving dead belongs to the hazard wherever a mains demand signal enters. */
  private List<Isolated> asked() {
    List<Isolated> asked = new ArrayList<>();
    asked.add(
        Isolated.of(isolation.heatPumpIsolated(), Derived.of(setup.heatPump().part().isFitted())));
    asked.add(
        Isolated.of(
            isolation.immersionIsolated(), Derived.of(setup.immersion().part().isFitted())));
    asked.add(Isolated.of(isolation.provedDead(), Derived.not(mainsEnters())));
    return asked;
  }

  private Derived<Boolean> demandFitted() {
    return Derived.all(
        Derived.of(setup.diverter().part().isFitted()),
        Derived.of(setup.diverter().demandInput().part().isFitted()));
  }

  private Derived<Boolean> mainsEnters() {
    return Derived.all(
        demandFitted(),
        Derived.of(setup.diverter().demandInput().signal()).map(signal -> signal == Signal.MAINS));
  }

  private void mainsDemand() {
    Derived<Boolean> dead =
        Derived.all(
            Derived.of(isolation.demandSignalIsolated()), Derived.of(isolation.provedDead()));
    facts
        .into(MainsDemand.class, setup.diverter().demandInput().signal().pointer())
        .given(dead)
        .makes(
            because ->
                new MainsDemand(
                    because.explained(
                        () ->
                            Detail.at(
                                    isolation.demandSignalIsolated(),
                                    isolation.provedDead(),
                                    setup.diverter().demandInput().signal())
                                .done()),
                    because.answer(dead)));
  }

  private void surplusInput() {
    SurplusInput input = setup.heatPump().surplusInput();
    Derived<Boolean> confirmed = Derived.of(input.confirmed());
    facts
        .into(SurplusInputTrial.class, input.confirmed().pointer())
        .fitted(Derived.notAbsent(input.part()))
        .given(confirmed)
        .makes(
            because ->
                new SurplusInputTrial(
                    because.explained(() -> Detail.at(input.confirmed()).done()),
                    because.answer(confirmed)));
  }
}
