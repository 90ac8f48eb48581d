package deadband.plant;

import deadband.facts.Answer;
import deadband.facts.Condition;
import deadband.facts.Facts;
import deadband.facts.Presence;
import deadband.facts.Says;
import deadband.loop.ElementLoop;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.setup.Relay;
import deadband.setup.Setup;
import deadband.setup.Unit;

/** What rules join about the surplus relay: what it calls, what it counts, and what gives way. */
public final class RelayFacts {

  private RelayFacts() {}

  @Says("A diverter feeds an immersion heater.")
  public record DivertedHeaterFitted(Answer answer) implements Presence {}

  @Says("A diverter or a surplus relay is fitted.")
  public record SurplusControlFitted(Answer answer) implements Presence {}

  @Says("The relay calls the heat pump for hot water.")
  public record RelayCallsHeatPump(Answer answer) implements Condition {}

  @Says("The relay calls the heat pump, or drives what is not named beside a surplus input.")
  public record RelayMayCallHeatPump(Answer answer) implements Condition {}

  @Says("The relay switches an immersion heater itself.")
  public record RelaySwitchesElement(Answer answer) implements Condition {}

  @Says("The relay counts the power exported to the grid.")
  public record RelayCountsExport(Answer answer) implements Condition {}

  @Says("The relay counts the power exported to the grid, or what it counts is not entered.")
  public record RelayMayCountExport(Answer answer) implements Condition {}

  @Says("The relay adds the heat pump's power input back to the surplus.")
  public record RelayCountsHeatPump(Answer answer) implements Condition {}

  @Says("The relay adds the power of the element it switches back to the surplus.")
  public record RelayCountsElement(Answer answer) implements Condition {}

  @Says("The element that the relay switches is fed by nothing else.")
  public record ElementIsRelaysAlone(Answer answer) implements Condition {}

  @Says("The stop threshold lies below the start threshold.")
  public record StopBelowStart(Answer answer) implements Condition {}

  @Says("The diverted heater takes its power before the relay sees it.")
  public record HeaterTakesFirst(Answer answer) implements Condition {}

  @Says("With the heater going off first, the gap is wider than the heat pump's power input.")
  public record HeaterWidensGap(Answer answer) implements Condition {}

  @Says("With the heater on, what the relay closes at covers the heat pump's power input.")
  public record HeaterCoversStart(Answer answer) implements Condition {}

  @Says("The heater goes off before the relay opens.")
  public record HeaterGivesWay(Answer answer) implements Condition {}

  public static void derive(Setup setup, Facts facts) {
    RelayLoop loop = new RelayLoop(setup);
    ElementLoop element = new ElementLoop(setup, loop);
    facts.add(new DivertedHeaterFitted(facts.answer(loop.heaterFitted())));
    facts.add(new SurplusControlFitted(facts.answer(controlFitted(setup))));
    facts.add(new RelayCallsHeatPump(facts.answer(loop.drivesHeatPump())));
    facts.add(new RelayMayCallHeatPump(facts.answer(mayCall(setup, loop))));
    facts.add(new RelaySwitchesElement(facts.answer(element.drivesElement())));
    facts.add(new RelayCountsExport(facts.answer(loop.countsExport())));
    facts.add(
        new RelayMayCountExport(facts.answer(loop.countsExport().or(Derived.constant(true)))));
    facts.add(new RelayCountsHeatPump(facts.answer(loop.countsHeatPump())));
    facts.add(new RelayCountsElement(facts.answer(element.countsElement())));
    facts.add(new ElementIsRelaysAlone(facts.answer(element.isRelaysAlone())));
    facts.add(new StopBelowStart(facts.answer(loop.stopBelowStart())));
    facts.add(new HeaterTakesFirst(facts.answer(loop.heaterHidden())));
    facts.add(new HeaterGivesWay(facts.answer(loop.heaterGivesWay())));
    facts.add(new HeaterWidensGap(facts.answer(heaterWidensGap(loop))));
    facts.add(new HeaterCoversStart(facts.answer(heaterCoversStart(loop))));
  }

  private static Derived<Boolean> controlFitted(Setup setup) {
    return Derived.any(
        Derived.of(setup.diverter().part().isFitted()),
        Derived.of(setup.relay().part().isFitted()));
  }

  /**
   * Entered to call it, or to drive something not named here while the heat pump's input for such a
   * call is there. A word alone takes no wiring away.
   */
  private static Derived<Boolean> mayCall(Setup setup, RelayLoop loop) {
    Derived<Boolean> other =
        Derived.of(setup.relay().drives()).map(drives -> drives == Relay.Drives.OTHER);
    Derived<Boolean> input = Derived.of(setup.heatPump().surplusInput().part().isFitted());
    return Derived.any(loop.drivesHeatPump(), Derived.all(other, input));
  }

  private static Derived<Boolean> heaterWidensGap(RelayLoop loop) {
    Derived<Double> together = Derived.sum(Unit.KILOWATT, loop.gap_kW(), loop.heater_kW());
    return Derived.all(
        loop.heaterGivesWay(),
        together.with(loop.seenDraw_kW(), (width_kW, draw_kW) -> width_kW > draw_kW));
  }

  private static Derived<Boolean> heaterCoversStart(RelayLoop loop) {
    Derived<Double> together = Derived.sum(Unit.KILOWATT, loop.start_kW(), loop.heater_kW());
    return Derived.all(
        loop.heaterRunsAtStart(),
        together.with(loop.leastDraw_kW(), (surplus_kW, draw_kW) -> surplus_kW >= draw_kW));
  }
}
