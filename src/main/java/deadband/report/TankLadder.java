package deadband.report;

import deadband.document.Pointer;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.loop.TankLimit;
import deadband.provenance.Derived;
import deadband.setup.Entered;
import deadband.setup.Outlet;
import deadband.setup.Programme;
import deadband.setup.Setup;
import deadband.setup.Unit;
import deadband.trade.SafetyChain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Every temperature that is entered for the tank, hottest first: set points with the band in which
 * each device moves, limits of the mixing valve and of the rule book, cut-outs and the relief
 * valve. What is not entered is not on it.
 */
final class TankLadder {

  private final Setup setup;
  private final List<Rung> rungs = new ArrayList<>();

  private TankLadder(Setup setup) {
    this.setup = setup;
  }

  /** What a temperature is. */
  enum Kind {
    BAND("band of a device"),
    SET_POINT("set point"),
    LIMIT("limit"),
    CUT_OUT("cut-out"),
    RELIEF("relief valve");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  /**
   * One temperature, or the two between which a device moves.
   *
   * @param source the value of the file, or where the limit comes from
   */
  record Rung(String device, Kind kind, double from_C, double to_C, String source) {

    /** As it is written beside the mark. */
    String temperature() {
      return from_C == to_C
          ? Words.withUnit(to_C, "°C")
          : Words.number(from_C) + " to " + Words.withUnit(to_C, "°C");
    }
  }

  static List<Rung> of(Setup setup, Limits limits) {
    TankLadder ladder = new TankLadder(setup);
    ladder.safety();
    ladder.heaters();
    ladder.water();
    if (!setup.heatPump().disinfection().enabled().says(false)) {
      ladder.rule(limits.of(Limit.DISINFECTION_TEMPERATURE));
    }
    return ladder.rungs.stream()
        .sorted(Comparator.comparingDouble(Rung::to_C).thenComparingDouble(Rung::from_C).reversed())
        .toList();
  }

  private void safety() {
    rungs.add(
        new Rung(
            "Stored water, maximum",
            Kind.LIMIT,
            SafetyChain.STORED_WATER_C.value(),
            SafetyChain.STORED_WATER_C.value(),
            SafetyChain.STORED_WATER_C.source()));
    point("Temperature and pressure relief valve", Kind.RELIEF, setup.tank().relief_C());
    point("Immersion cut-out", Kind.CUT_OUT, setup.immersion().cutOut_C());
    point("Coil cut-out", Kind.CUT_OUT, setup.tank().coil().cutOut_C());
  }

  private void heaters() {
    point("Immersion thermostat", Kind.SET_POINT, setup.immersion().thermostat_C());
    diverter(new TankLimit(setup));
    programme("Heat pump, everyday", setup.heatPump().everyday());
    programme("Heat pump, on a surplus call", setup.heatPump().surplus());
    if (!setup.heatPump().disinfection().enabled().says(false)) {
      point("Disinfection target", Kind.SET_POINT, setup.heatPump().disinfection().target_C());
    }
    Derived<Double> reach_C =
        Derived.difference(
            Unit.CELSIUS,
            Derived.of(setup.heatPump().maximumFlow_C()),
            Derived.of(setup.heatPump().flowAboveTank_K()));
    if (reach_C.isKnown()) {
      rungs.add(
          new Rung(
              "Heat pump, maximum tank temperature",
              Kind.LIMIT,
              reach_C.get(),
              reach_C.get(),
              "heatPump.maximumFlow_C - heatPump.flowAboveTank_K"));
    }
  }

  private void diverter(TankLimit limit) {
    Derived<Double> opening_C = limit.highestOpening_C().or(limit.limit_C());
    if (opening_C.isKnown()) {
      Derived<Double> closing_C = limit.closing_C().or(opening_C);
      band("Diverter, tank limit", setup.diverter().limit_C(), closing_C.get(), opening_C.get());
    }
  }

  private void programme(String device, Programme programme) {
    if (!programme.enabled().says(false)) {
      programme
          .stop_C()
          .optional()
          .ifPresent(
              stop ->
                  band(
                      device,
                      programme.stop_C(),
                      programme.start_C().optional().orElse(stop),
                      stop));
    }
  }

  private void water() {
    point("Mixing valve, maximum hot supply", Kind.LIMIT, setup.blending().hotSupplyMax_C());
    for (Outlet outlet : setup.outlets().optional().orElse(List.of())) {
      String at = outlet.at().optional().map(Outlet.Kind::word).orElse("outlet");
      point("Mixed water, " + at, Kind.SET_POINT, outlet.mixed_C());
    }
  }

  private void rule(Limits.Entry minimum) {
    rungs.add(
        new Rung(
            "Disinfection, minimum",
            Kind.LIMIT,
            minimum.value(),
            minimum.value(),
            minimum.source()));
  }

  private void point(String device, Kind kind, Entered<Double> entered) {
    entered
        .optional()
        .ifPresent(value -> rungs.add(new Rung(device, kind, value, value, at(entered.pointer()))));
  }

  private void band(String device, Entered<?> entered, double from_C, double to_C) {
    Kind kind = from_C == to_C ? Kind.SET_POINT : Kind.BAND;
    rungs.add(
        new Rung(
            device, kind, Math.min(from_C, to_C), Math.max(from_C, to_C), at(entered.pointer())));
  }

  private static String at(Pointer pointer) {
    return pointer.dotted();
  }
}
