package deadband.setup;

import deadband.document.Pointer;
import java.util.regex.Pattern;

/** What it takes to change a value of the setup file on site. */
public enum ChangeKind {
  /** Entered at a controller or turned on a dial. */
  SETTING,
  /** Somebody has to fit, replace, move or adjust something. */
  WORK_ON_SITE,
  /** Describes the home or what was seen there; it is not changed to clear a finding. */
  FACT;

  private static final Pattern SETTINGS =
      Pattern.compile(
          "relay\\.(counts|reads|start_kW|stop_kW|startDelay_min|stopDelay_min)"
              + "|diverter\\.(limit_C|hysteresis_K|hysteresisLies|minimum_kW|exportMargin_kW)"
              + "|diverter\\.(demandInput\\.action|sensor\\.element)"
              + "|diverter\\.currentSensors\\[\\d+]\\.assigned"
              + "|heatPump\\.(everyday|surplus)\\..*"
              + "|heatPump\\.disinfection\\.(?!sensor_mm|mixesStore).*"
              + "|heatPump\\.(minimumRun_min|minimumOff_min)"
              + "|heatPump\\.surplusInput\\.(hold_min|alsoHeatsRooms|sgReadyState|endsOnLinkLoss)"
              + "|heatPump\\.backupHeater\\.allowedOnSurplus"
              + "|immersion\\.(thermostat_C|timed)"
              + "|tank\\.circulationTimes|buffer\\.swing_K"
              + "|battery\\.(chargesBefore|mayDischargeInto)"
              + "|vehicleCharger\\.(followsSurplus|before|ordered)"
              + "|group\\[\\d+]\\..*");

  private static final Pattern FACTS =
      Pattern.compile(
          "deadband|(site|supply|house|asFound|isolation|accepted|observed)\\b.*"
              + "|solar\\.(latitude_deg|azimuth_deg|tilt_deg)"
              + "|relay\\.(declared|drives)|diverter\\.sensor\\.(declared|displayed_C|measured_ohm)"
              + "|heatPump\\.(source|minimumInput_kW|hotWaterInput_kW|hotWaterOutput_kW)"
              + "|heatPump\\.(maximumFlow_C|flowAboveTank_K|startLag_min|startsPerHour)"
              + "|heatPump\\.(phases|sensorTolerance_K|surplusInput\\.confirmed)");

  /** What it takes to change the value at a place; what is no setting is work on site. */
  public static ChangeKind of(Pointer pointer) {
    String dotted = pointer.dotted();
    if (SETTINGS.matcher(dotted).matches()) {
      return SETTING;
    }
    return FACTS.matcher(dotted).matches() ? FACT : WORK_ON_SITE;
  }
}
