package deadband.cases;

import deadband.document.Pointer;
import deadband.setup.DemandInput;
import deadband.setup.Isolation;
import deadband.setup.Setup;
import deadband.setup.Signal;
import deadband.setup.SurplusInput;
import deadband.setup.Told;
import java.util.List;

/** Cases about the record of the work: what was found, isolated, proved dead and tried. */
final class Paperwork {

  private final Setup setup;
  private final Isolation isolation;
  private final Cases cases;

  private Paperwork(Setup setup, Cases cases) {
    this.setup = setup;
    this.isolation = setup.isolation();
    this.cases = cases;
  }

  static void derive(Setup setup, Cases cases) {
    Paperwork topic = new Paperwork(setup, cases);
    topic.asFound();
    topic.isolation();
    topic.demandSignal();
    topic.surplusInput();
  }

  private void asFound() {
    Told<Boolean> photographed = setup.asFound().photographed();
    Derived<Boolean> told = Derived.of(photographed);
    cases
        .into(AsFoundRecord.class, photographed.pointer())
        .given(told)
        .makes(
            because ->
                new AsFoundRecord(
                    because.explained(() -> Detail.at(photographed).size(1).done()), told.get()));
  }

  private void isolation() {
    Derived<Boolean> confirmed =
        Derived.all(
            whereFitted(setup.heatPump().part().isFitted(), isolation.heatPumpIsolated()),
            whereFitted(setup.immersion().part().isFitted(), isolation.immersionIsolated()),
            Derived.any(Derived.not(mainsDemand()), Derived.of(isolation.demandSignalIsolated())),
            Derived.of(isolation.provedDead()));
    cases
        .into(IsolationRecord.class, isolation.part().pointer())
        .given(confirmed)
        .makes(
            because ->
                new IsolationRecord(
                    because.explained(
                        () -> Detail.at(unconfirmed()).size(unconfirmed().size()).done()),
                    confirmed.get()));
  }

  private static Derived<Boolean> whereFitted(Told<Boolean> fitted, Told<Boolean> isolated) {
    return Derived.any(Derived.not(Derived.of(fitted)), Derived.of(isolated));
  }

  private List<Pointer> unconfirmed() {
    return List.of(
            isolation.heatPumpIsolated(),
            isolation.immersionIsolated(),
            isolation.demandSignalIsolated(),
            isolation.provedDead())
        .stream()
        .filter(told -> told.says(false))
        .map(Told::pointer)
        .toList();
  }

  /** Whether a demand signal at mains voltage enters the diverter. */
  private Derived<Boolean> mainsDemand() {
    DemandInput input = setup.diverter().demandInput();
    return Derived.all(
        Derived.of(input.part().isFitted()),
        Derived.of(input.signal()).map(signal -> signal == Signal.MAINS));
  }

  private void demandSignal() {
    DemandInput input = setup.diverter().demandInput();
    Derived<Boolean> dead =
        Derived.all(
            Derived.of(isolation.demandSignalIsolated()), Derived.of(isolation.provedDead()));
    cases
        .into(DemandSignalIsolation.class, input.part().pointer())
        .fitted(Derived.of(input.part().isFitted()))
        .where(Derived.of(input.signal()).map(signal -> signal == Signal.MAINS))
        .given(dead)
        .makes(
            because ->
                new DemandSignalIsolation(
                    because.explained(
                        () ->
                            Detail.at(
                                    isolation.demandSignalIsolated(),
                                    isolation.provedDead(),
                                    input.signal())
                                .done()),
                    dead.get()));
  }

  private void surplusInput() {
    SurplusInput input = setup.heatPump().surplusInput();
    Derived<Boolean> confirmed = Derived.of(input.confirmed());
    RelayLoop loop = new RelayLoop(setup);
    cases
        .into(SurplusInputRecord.class, input.confirmed().pointer())
        .fitted(loop.fitted())
        .where(loop.drivesHeatPump())
        .given(confirmed)
        .makes(
            because ->
                new SurplusInputRecord(
                    because.explained(() -> Detail.at(input.confirmed()).size(1).done()),
                    confirmed.get()));
  }
}
