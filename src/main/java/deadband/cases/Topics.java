package deadband.cases;

import deadband.setup.Setup;

/** The facts of every topic. */
public final class Topics {

  private Topics() {}

  /** Every fact of a setup. */
  public static Cases of(Setup setup, Limits limits, DayRuns runs) {
    Cases cases = new Cases();
    RelayFacts.derive(setup, cases);
    Thresholds.derive(setup, limits, cases);
    RelayDelays.derive(setup, limits, cases);
    TemperatureLadder.derive(setup, limits, cases);
    DisinfectionCare.derive(setup, limits, cases);
    DisinfectionCourse.derive(setup, limits, cases);
    DisinfectedStore.derive(setup, limits, cases);
    RoomForSun.derive(setup, limits, cases);
    Cycling.derive(setup, limits, cases);
    GridDraw.derive(setup, cases);
    GridPhases.derive(setup, cases);
    BoughtHeat.derive(setup, cases);
    Coordination.derive(setup, limits, cases);
    MeteringInputs.derive(setup, cases);
    CallWiring.derive(setup, limits, cases);
    HeaterWiring.derive(setup, limits, cases);
    SourceCutOuts.derive(setup, cases);
    TankSensing.derive(setup, limits, cases);
    HouseRunning.derive(setup, limits, cases);
    SurplusHours.derive(setup, limits, cases);
    PumpPlate.derive(setup, cases);
    Observations.derive(setup, limits, cases);
    ControlSensors.derive(setup, cases);
    Siting.derive(setup, cases);
    Paperwork.derive(setup, cases);
    AbsentParts.derive(setup, cases);
    DayCases.derive(setup, limits, runs, cases);
    return cases;
  }
}
