package deadband.topics;

import deadband.days.DayRuns;
import deadband.facts.Facts;
import deadband.limits.Limits;
import deadband.plant.HeatPumpFacts;
import deadband.plant.PartFacts;
import deadband.plant.RelayFacts;
import deadband.plant.SiteFacts;
import deadband.plant.TankFacts;
import deadband.setup.Setup;
import deadband.topics.coordination.Coordination;
import deadband.topics.cycling.Cycling;
import deadband.topics.day.DayCases;
import deadband.topics.disinfection.DisinfectedStore;
import deadband.topics.disinfection.DisinfectionCare;
import deadband.topics.disinfection.DisinfectionCourse;
import deadband.topics.disinfection.DisinfectionFacts;
import deadband.topics.grid.BoughtHeat;
import deadband.topics.grid.ExportMarginBelowZero;
import deadband.topics.grid.GridDraw;
import deadband.topics.grid.GridPhases;
import deadband.topics.house.ControlSensors;
import deadband.topics.house.HouseRunning;
import deadband.topics.house.Observations;
import deadband.topics.house.PumpPlate;
import deadband.topics.house.SurplusHours;
import deadband.topics.ladder.RoomForSun;
import deadband.topics.ladder.TankTemperatures;
import deadband.topics.metering.MeteringInputs;
import deadband.topics.metering.TankSensing;
import deadband.topics.records.AbsentParts;
import deadband.topics.records.DataSheets;
import deadband.topics.records.Paperwork;
import deadband.topics.siting.Siting;
import deadband.topics.thresholds.RelayDelays;
import deadband.topics.thresholds.Thresholds;
import deadband.topics.wiring.CallWiring;
import deadband.topics.wiring.HeaterWiring;
import deadband.topics.wiring.SourceCutOuts;
import java.util.List;
import java.util.function.BiConsumer;

/** The facts of every topic. */
public final class Topics {

  /** How the facts of one topic are derived. */
  private interface Derivation {

    void derive(Setup setup, Limits limits, DayRuns runs, Facts facts);

    /** From the setup alone. */
    static Derivation of(BiConsumer<Setup, Facts> derive) {
      return (setup, limits, runs, facts) -> derive.accept(setup, facts);
    }

    /** From the setup and the limits. */
    static Derivation held(WithLimits derive) {
      return (setup, limits, runs, facts) -> derive.derive(setup, limits, facts);
    }
  }

  private interface WithLimits {
    void derive(Setup setup, Limits limits, Facts facts);
  }

  /** The one whose facts rest on day runs. */
  private static final Derivation DAYS = DayCases::derive;

  private static final List<Derivation> ALL =
      List.of(
          Derivation.of(PartFacts::derive),
          Derivation.of(RelayFacts::derive),
          Derivation.of(HeatPumpFacts::derive),
          Derivation.of(TankFacts::derive),
          Derivation.of(SiteFacts::derive),
          Derivation.held(Thresholds::derive),
          Derivation.held(RelayDelays::derive),
          Derivation.held(TankTemperatures::derive),
          Derivation.held(DisinfectionCare::derive),
          Derivation.held(DisinfectionCourse::derive),
          Derivation.held(DisinfectedStore::derive),
          Derivation.held(DisinfectionFacts::derive),
          Derivation.held(RoomForSun::derive),
          Derivation.held(Cycling::derive),
          Derivation.of(GridDraw::derive),
          Derivation.of(GridPhases::derive),
          Derivation.of(BoughtHeat::derive),
          Derivation.held(Coordination::derive),
          Derivation.of(MeteringInputs::derive),
          Derivation.held(CallWiring::derive),
          Derivation.held(HeaterWiring::derive),
          Derivation.of(SourceCutOuts::derive),
          Derivation.held(TankSensing::derive),
          Derivation.held(HouseRunning::derive),
          Derivation.held(SurplusHours::derive),
          Derivation.of(PumpPlate::derive),
          Derivation.held(Observations::derive),
          Derivation.of(ControlSensors::derive),
          Derivation.of(Siting::derive),
          Derivation.of(Paperwork::derive),
          Derivation.of(AbsentParts::derive),
          Derivation.of(DataSheets::derive),
          DAYS,
          Derivation.of(ExportMarginBelowZero::derive));

  /** Topics, numbered from 0. */
  public static final int COUNT = ALL.size();

  /** The one whose facts rest on day runs. */
  public static final int OF_DAYS = ALL.indexOf(DAYS);

  private Topics() {}

  /** Every fact of a setup. */
  public static Facts of(Setup setup, Limits limits, DayRuns runs) {
    Facts facts = new Facts();
    ALL.forEach(topic -> topic.derive(setup, limits, runs, facts));
    return facts;
  }

  /** The facts of one topic. */
  public static Facts of(int topic, Setup setup, Limits limits, DayRuns runs) {
    Facts facts = new Facts();
    ALL.get(topic).derive(setup, limits, runs, facts);
    return facts;
  }
}
