package deadband.days;

/**
 * What the settings of a setup come to over a year of built-in days, disinfection cycles included:
 * the numbers of {@code simulate --day year}, for a remedy to be weighed by.
 *
 * @param solarHeat_kWh heat from PV that the tank received [kWh]
 * @param solarHeatByHeatPump_kWh of this, made by the compressor [kWh]
 * @param import_kWh bought, by the billing meter's way of counting [kWh]
 * @param export_kWh exported, by the same counting [kWh]
 * @param curtailed_kWh PV energy held back at the export limit [kWh]
 * @param relayClosings times the relay closed
 * @param heatPumpStarts times the compressor started
 * @param heatPumpOnSurplus_kWh electricity the compressor took while it ran for the relay [kWh]
 */
public record YearEffect(
    double solarHeat_kWh,
    double solarHeatByHeatPump_kWh,
    double import_kWh,
    double export_kWh,
    double curtailed_kWh,
    int relayClosings,
    int heatPumpStarts,
    double heatPumpOnSurplus_kWh) {

  /** The heat pump's share of the heat from PV, 0 to 1; 0 where there is none. */
  public double heatPumpShare() {
    return solarHeat_kWh > 0 ? solarHeatByHeatPump_kWh / solarHeat_kWh : 0;
  }
}
