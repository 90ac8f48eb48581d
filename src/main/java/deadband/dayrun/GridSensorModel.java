package deadband.dayrun;

import java.util.Set;

/**
 * The grid sensor, and what diverter and relay make of it. It sees the line it sits on, or all; of
 * what the relay counts besides, it sees the share on that line.
 */
public final class GridSensorModel {
  private final Line sensed;
  private final boolean seesHeatPump;
  private final double heatPumpShare;
  private final boolean countsExport;
  private final double countedImmersion;
  private final double countedHeatPump;
  private final double countedBattery;

  GridSensorModel(Installation installation) {
    sensed = installation.sensor().line();
    seesHeatPump = installation.sensor().seesHeatPump();
    heatPumpShare = installation.heatPump().line().shareOn(sensed);
    Set<Counted> counts = installation.relay().counts();
    countsExport = counts.contains(Counted.EXPORT);
    countedImmersion =
        counts.contains(Counted.IMMERSION) ? installation.diverter().line().shareOn(sensed) : 0;
    countedHeatPump = counts.contains(Counted.HEAT_PUMP) ? heatPumpShare : 0;
    countedBattery =
        counts.contains(Counted.BATTERY) ? installation.battery().line().shareOn(sensed) : 0;
  }

  /**
   * Where it sits.
   *
   * @param line the line it sits on, or all
   * @param seesHeatPump whether the heat pump lies on the house side of it
   */
  public record Spec(Line line, boolean seesHeatPump) {}

  /** What it sees leaving the house, import negative [kW]. */
  double leaving_kW(SupplyModel supply, Step now) {
    double leaving_kW = supply.leaving_kW(sensed);
    double appliance_kW = now.heatPump_kW + now.backup_kW;
    return seesHeatPump ? leaving_kW : leaving_kW + heatPumpShare * appliance_kW;
  }

  /** The sum of what the relay counts [kW]. */
  double counted_kW(SupplyModel supply, Step now) {
    double counted_kW = countsExport ? leaving_kW(supply, now) : 0;
    return counted_kW
        + countedImmersion * now.diverted_kW
        + countedHeatPump * now.heatPump_kW
        + countedBattery * (now.charge_kW - now.discharge_kW);
  }
}
