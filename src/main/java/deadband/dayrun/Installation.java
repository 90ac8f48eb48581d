package deadband.dayrun;

/**
 * One installation as the day run sees it: plain numbers, every default already decided.
 *
 * @param supply the supply and its billing meter
 * @param generator the solar generator's inverter
 * @param sensor the grid sensor from which surplus is calculated
 * @param diverter the proportional controller
 * @param immersion the heater it feeds
 * @param relay the surplus relay
 * @param heatPump the heat pump
 * @param backup the heat pump's electric back-up heater
 * @param disinfection the heat pump's disinfection programme
 * @param battery the battery
 * @param charger the vehicle charger
 * @param tank the hot water tank
 */
public record Installation(
    SupplyModel.Spec supply,
    Generator generator,
    GridSensorModel.Spec sensor,
    DiverterModel.Spec diverter,
    ImmersionModel.Spec immersion,
    RelayModel.Spec relay,
    HeatPumpModel.Spec heatPump,
    BackupHeaterModel.Spec backup,
    DisinfectionModel.Spec disinfection,
    BatteryModel.Spec battery,
    Charger.Spec charger,
    TankModel.Spec tank) {

  /**
   * The solar generator.
   *
   * @param inverter_kW power of the inverter [kW]
   * @param line where it feeds in
   */
  public record Generator(double inverter_kW, Line line) {}

  /** The same installation with another disinfection programme. */
  public Installation with(DisinfectionModel.Spec programme) {
    return new Installation(
        supply, generator, sensor, diverter, immersion, relay, heatPump, backup, programme, battery,
        charger, tank);
  }

  /**
   * The shortest delay that a step must not exceed if cycles are to be counted [min]: of the
   * relay's delays, and of lag and timers where there are any; none counts as less than a minute.
   */
  double shortestDelay_min() {
    double shortest_min = Math.min(relay.startDelay_min(), relay.stopDelay_min());
    double[] timers_min = {
      heatPump.startLag_min(), heatPump.minimumRun_min(), heatPump.minimumOff_min()
    };
    for (double timer_min : timers_min) {
      shortest_min = timer_min > 0 ? Math.min(shortest_min, timer_min) : shortest_min;
    }
    return Math.max(1, shortest_min);
  }
}
