package deadband.cases;

import deadband.setup.Setup;
import deadband.setup.Unit;

/** What rules join about the surplus relay: what it calls, what it counts, and what gives way. */
public final class RelayFacts {

  private RelayFacts() {}

  /** A surplus relay is fitted. */
  public record RelayFitted(Answer answer) implements Presence {}

  /** A heat pump is fitted. */
  public record HeatPumpFitted(Answer answer) implements Presence {}

  /** PV is fitted. */
  public record SolarFitted(Answer answer) implements Presence {}

  /** A diverter feeds an immersion heater. */
  public record DivertedHeaterFitted(Answer answer) implements Presence {}

  /** The relay calls the heat pump for hot water. */
  public record RelayCallsHeatPump(Answer answer) implements Condition {}

  /** The relay switches an immersion heater itself. */
  public record RelaySwitchesElement(Answer answer) implements Condition {}

  /** The relay counts the power exported to the grid. */
  public record RelayCountsExport(Answer answer) implements Condition {}

  /** The relay counts the power exported to the grid, or nobody has said what it counts. */
  public record RelayMayCountExport(Answer answer) implements Condition {}

  /** The relay adds the heat pump's power input back to the surplus. */
  public record RelayCountsHeatPump(Answer answer) implements Condition {}

  /** The relay adds the power of the element it switches back to the surplus. */
  public record RelayCountsElement(Answer answer) implements Condition {}

  /** The element that the relay switches is fed by nothing else. */
  public record ElementIsRelaysAlone(Answer answer) implements Condition {}

  /** The stop threshold lies below the start threshold. */
  public record StopBelowStart(Answer answer) implements Condition {}

  /** The diverted heater takes its power before the relay sees it. */
  public record HeaterTakesFirst(Answer answer) implements Condition {}

  /** With the heater going off first, the gap is wider than the heat pump's power input. */
  public record HeaterWidensGap(Answer answer) implements Condition {}

  /** With the heater on, what the relay closes at covers the heat pump's power input. */
  public record HeaterCoversStart(Answer answer) implements Condition {}

  /** The heater goes off before the relay opens. */
  public record HeaterGivesWay(Answer answer) implements Condition {}

  /** A grid sensor is fitted. */
  public record GridSensorFitted(Answer answer) implements Presence {}

  /** An immersion heater is fitted. */
  public record ImmersionFitted(Answer answer) implements Presence {}

  static void derive(Setup setup, Cases cases) {
    RelayLoop loop = new RelayLoop(setup);
    ElementLoop element = new ElementLoop(setup, loop);
    cases.add(new RelayFitted(cases.answer(Derived.of(setup.relay().part().isFitted()))));
    cases.add(new HeatPumpFitted(cases.answer(Derived.of(setup.heatPump().part().isFitted()))));
    cases.add(new SolarFitted(cases.answer(Derived.of(setup.solar().part().isFitted()))));
    cases.add(new DivertedHeaterFitted(cases.answer(loop.heaterFitted())));
    cases.add(new RelayCallsHeatPump(cases.answer(loop.drivesHeatPump())));
    cases.add(new RelaySwitchesElement(cases.answer(element.drivesElement())));
    cases.add(new RelayCountsExport(cases.answer(loop.countsExport())));
    cases.add(
        new RelayMayCountExport(cases.answer(loop.countsExport().or(Derived.constant(true)))));
    cases.add(new RelayCountsHeatPump(cases.answer(loop.countsHeatPump())));
    cases.add(new RelayCountsElement(cases.answer(element.countsElement())));
    cases.add(new ElementIsRelaysAlone(cases.answer(element.isRelaysAlone())));
    cases.add(new StopBelowStart(cases.answer(loop.stopBelowStart())));
    cases.add(new HeaterTakesFirst(cases.answer(loop.heaterHidden())));
    cases.add(new HeaterGivesWay(cases.answer(loop.heaterGivesWay())));
    cases.add(new HeaterWidensGap(cases.answer(heaterWidensGap(loop))));
    cases.add(new HeaterCoversStart(cases.answer(heaterCoversStart(loop))));
    cases.add(new GridSensorFitted(cases.answer(Derived.of(setup.gridSensor().part().isFitted()))));
    cases.add(new ImmersionFitted(cases.answer(Derived.of(setup.immersion().part().isFitted()))));
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
