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

/** The facts of every topic. */
public final class Topics {

  private Topics() {}

  /** Every fact of a setup. */
  public static Facts of(Setup setup, Limits limits, DayRuns runs) {
    Facts facts = new Facts();
    PartFacts.derive(setup, facts);
    RelayFacts.derive(setup, facts);
    HeatPumpFacts.derive(setup, facts);
    TankFacts.derive(setup, facts);
    SiteFacts.derive(setup, facts);
    Thresholds.derive(setup, limits, facts);
    RelayDelays.derive(setup, limits, facts);
    TankTemperatures.derive(setup, limits, facts);
    DisinfectionCare.derive(setup, limits, facts);
    DisinfectionCourse.derive(setup, limits, facts);
    DisinfectedStore.derive(setup, limits, facts);
    DisinfectionFacts.derive(setup, limits, facts);
    RoomForSun.derive(setup, limits, facts);
    Cycling.derive(setup, limits, facts);
    GridDraw.derive(setup, facts);
    GridPhases.derive(setup, facts);
    BoughtHeat.derive(setup, facts);
    Coordination.derive(setup, limits, facts);
    MeteringInputs.derive(setup, facts);
    CallWiring.derive(setup, limits, facts);
    HeaterWiring.derive(setup, limits, facts);
    SourceCutOuts.derive(setup, facts);
    TankSensing.derive(setup, limits, facts);
    HouseRunning.derive(setup, limits, facts);
    SurplusHours.derive(setup, limits, facts);
    PumpPlate.derive(setup, facts);
    Observations.derive(setup, limits, facts);
    ControlSensors.derive(setup, facts);
    Siting.derive(setup, facts);
    Paperwork.derive(setup, facts);
    AbsentParts.derive(setup, facts);
    DataSheets.derive(setup, facts);
    DayCases.derive(setup, limits, runs, facts);
    ExportMarginBelowZero.derive(setup, facts);
    return facts;
  }
}
