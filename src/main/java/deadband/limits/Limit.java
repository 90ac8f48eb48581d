package deadband.limits;

import static deadband.trade.Known.COMMON_PRACTICE;
import static deadband.trade.Known.DERIVED;
import static deadband.trade.Known.READ;
import static deadband.trade.Known.SECOND_HAND;

import deadband.setup.Unit;
import deadband.trade.Blending;
import deadband.trade.CompressorReach;
import deadband.trade.CompressorTimes;
import deadband.trade.DisinfectionCycle;
import deadband.trade.Figure;
import deadband.trade.HeaterCircuit;
import deadband.trade.Hygiene;
import deadband.trade.Known;
import deadband.trade.SafetyChain;
import deadband.trade.Scald;
import deadband.trade.SignalContact;
import java.util.Map;
import java.util.Optional;

/** The limits of the rule book. Each name carries its unit; a limits file uses the same names. */
// Error Prone cannot see that a record of numbers and text never changes.
@SuppressWarnings("ImmutableEnumChecker")
public enum Limit {
  DISINFECTION_TEMPERATURE(
      "disinfectionTemperature_C",
      Hygiene.STORE_C.value(),
      "temperature that stored hot water must reach for disinfection",
      "UK HSE, hot and cold water systems (HSG274 Part 2, 2014); WHO 2007",
      Hygiene.STORE_C.known(),
      Weaker.BELOW),
  IMPORT_SHARE_OF_DRAW(
      "importShareOfInput",
      0.10,
      "share of the heat pump's power input that may be imported while held on surplus",
      "none",
      COMMON_PRACTICE),
  CLOUD_COST(
      "cloudCost_kWh",
      0.5,
      "energy that may be imported in one cloud to zero surplus",
      "none",
      COMMON_PRACTICE),
  THRESHOLD_PLAUSIBLE(
      "thresholdPlausible_kW",
      23,
      "maximum of a domestic single-phase supply: 100 A at 230 V",
      "arithmetic",
      DERIVED),
  HOT_SUPPLY_TYPE_2(
      "hotSupplyType2_C",
      Blending.Valve.TMV2.hotSupply_C().most(),
      "maximum hot supply of a Type 2 thermostatic mixing valve",
      "UK TMV2 scheme, conditions of use",
      Blending.Valve.TMV2.known(),
      Weaker.ABOVE),
  HOT_SUPPLY_TYPE_3(
      "hotSupplyType3_C",
      Blending.Valve.TMV3.hotSupply_C().most(),
      "maximum hot supply of a Type 3 thermostatic mixing valve",
      "UK TMV3 scheme, Table 1",
      Blending.Valve.TMV3.known(),
      Weaker.ABOVE),
  HOT_SUPPLY_IN_LINE(
      "hotSupplyInLine_C",
      Blending.Valve.EN_15092.hotSupply_C().most(),
      "maximum hot supply of an in-line tempering valve at the store",
      "EN 15092:2008, abstract",
      Blending.Valve.EN_15092.known(),
      Weaker.ABOVE),
  HOT_SUPPLY_ASSUMED("hotSupplyAssumed_C", Blending.ASSUMED_HOT_SUPPLY_C, Weaker.ABOVE),
  LEAST_SUPPLY_TYPE_3(
      "minimumSupplyType3_C",
      Blending.Valve.TMV3.hotSupply_C().least(),
      "minimum hot supply of a Type 3 thermostatic mixing valve",
      "UK TMV3 scheme, Table 1",
      Blending.Valve.TMV3.known()),
  THERMOSTAT_USUAL(
      "thermostatUsual_C",
      70,
      "highest usual setting of an immersion heater's thermostat",
      "none",
      COMMON_PRACTICE),
  TOPS_APART(
      "stopsApart_K",
      5,
      "difference by which the heat pump may stop below the diverter's opening: both are usually 60 to 65 °C",
      "none",
      COMMON_PRACTICE),
  OUTLET_BATH("outletBath_C", Scald.Outlet.BATH),
  OUTLET_SHOWER("outletShower_C", Scald.Outlet.SHOWER),
  OUTLET_BASIN("outletBasin_C", Scald.Outlet.BASIN),
  OUTLET_BIDET("outletBidet_C", Scald.Outlet.BIDET),
  OUTLET_NEW_BATH_GB("outletNewBathGB_C", Scald.NEW_DWELLING_BATH_C, Weaker.ABOVE),
  OUTLET_AU("outletAU_C", Scald.AUSTRALIA_C, Weaker.ABOVE),
  OUTLET_NZ("outletNZ_C", Scald.NEW_ZEALAND_C, Weaker.ABOVE),
  OUTLET_CARE_AU_NZ("outletCareAUNZ_C", Scald.CARE_AU_NZ_C, Weaker.ABOVE),
  OUTLET_FR("outletFR_C", Scald.FRANCE_C, Weaker.ABOVE),
  OUTLET_VULNERABLE_BODY("outletVulnerableBody_C", Scald.VULNERABLE_C, Weaker.ABOVE),
  OUTLET_VULNERABLE(
      "outletVulnerable_C",
      Scald.VULNERABLE_C.value(),
      "maximum at any other outlet that vulnerable people use",
      "carried over from whole-body immersion (UK HSE)",
      COMMON_PRACTICE,
      Weaker.ABOVE),
  OUTLET_LEAST(
      "outletMinimum_C",
      50,
      "temperature that hot water should reach at the outlet within a minute",
      "UK HSE, hot and cold water systems (HSG274 Part 2, 2014)",
      READ,
      Weaker.BELOW),
  EVERYDAY_HEAT(
      "everydayHeat_min",
      60,
      "time per day for which something other than surplus must be free to heat the store",
      "none",
      COMMON_PRACTICE,
      Weaker.BELOW),
  DISINFECTION_FORGOTTEN(
      "disinfectionForgotten_days",
      31,
      "interval of disinfection beyond which the store counts as not disinfected",
      "none",
      COMMON_PRACTICE,
      Weaker.ABOVE),
  STORED_WATER("storedWater_C", SafetyChain.STORED_WATER_C, Weaker.ABOVE),
  CUT_OUT_MARGIN("cutOutMargin_K", SafetyChain.CUT_OUT_MARGIN_K),
  CUT_OUT_HIGHEST("cutOutHighest_C", SafetyChain.CUT_OUT_C, Weaker.ABOVE),
  RELIEF_CLASS_A(
      "reliefClassA_C",
      SafetyChain.ReliefClass.A.opens_C().least(),
      "lowest opening temperature of a class A temperature and pressure relief valve",
      "prEN 1490:2025, abstract",
      SafetyChain.ReliefClass.KNOWN,
      Weaker.BELOW),
  GROWTH_BAND_TOP("growthBandTop_C", Hygiene.GROWTH_TO_C, Weaker.BELOW),
  STARTS_PER_HOUR("startsPerHour", CompressorTimes.STARTS_PER_HOUR),
  TIMER_RUNS_SHARE(
      "timerRunsShare",
      0.5,
      "share of a day's compressor runs that may last only because of the minimum run",
      "none",
      COMMON_PRACTICE),
  SUN_LOST(
      "pvUnused_kWh",
      1,
      "PV energy that may be exported on a clear day while the tank could store it",
      "none",
      COMMON_PRACTICE),
  GROWTH_BAND_TIME(
      "growthBandTime_min",
      120,
      "time of a day that a store without disinfection may stand at 20 to 45 °C",
      "none",
      COMMON_PRACTICE),
  CYCLE_SHARE(
      "cycleShare",
      DisinfectionCycle.AS_3498.treatments().get(0).share(),
      "share of the store that a disinfection cycle should hold at its target",
      "AS 3498, whole treatment",
      DisinfectionCycle.AS_3498.known()),
  SG_READY_HOLD("sgReadyHold_min", SignalContact.SG_READY_HOLD_MIN),
  VOLT_DROP_SHARE("voltDropShare", HeaterCircuit.VOLT_DROP_SHARE, Weaker.ABOVE),
  HEATER_POWER_TOLERANCE("heaterPowerTolerance", HeaterCircuit.POWER_TOLERANCE, Weaker.ABOVE),
  OWN_CIRCUIT_ABOVE("ownCircuitAbove_L", HeaterCircuit.OWN_CIRCUIT_ABOVE_L, Weaker.ABOVE),
  LEAD_ASSUMED(
      "leadAssumed_ohm",
      5,
      "resistance assumed for the leads of a tank sensor where it is not entered: 30 m of pair",
      "none",
      COMMON_PRACTICE),
  CLOCK_ERROR(
      "clockError_min", 15, "permitted clock error of a controller", "none", COMMON_PRACTICE),
  TOP_UP_AFTER_RUN(
      "topUpAfterRun_min",
      60,
      "time after a run of the heat pump within which a timed top-up follows it",
      "none",
      COMMON_PRACTICE),
  CIRCULATION_RUNS(
      "circulationMaximum_min",
      960,
      "maximum time per day of a secondary circulation that rests eight hours",
      "DVGW W 551, which lets it rest 8 h of 24",
      SECOND_HAND),
  CIRCULATION_LEAST(
      "circulationMinimum_min",
      60,
      "minimum time per day of a secondary circulation, so that water does not stand warm in its pipes",
      "none",
      COMMON_PRACTICE),
  TREATED_SHARE_OF_WHOLE(
      "treatedShareOfWhole",
      0.90,
      "share of an upright store that counts as the whole: no heater reaches below its own edge",
      "carried over from AS 3498",
      COMMON_PRACTICE,
      Weaker.BELOW),
  SHARE_BELOW_SENSOR(
      "shareBelowSensor",
      0.50,
      "share of the store that may lie below the sensor of a disinfection",
      "none",
      COMMON_PRACTICE),
  SUN_ROOM_SHARE(
      "pvRoomShare",
      0.15,
      "share of the usable surplus of a sunny day that the tank must be able to store",
      "none",
      COMMON_PRACTICE),
  WIDEST_SWING(
      "usualDifferential_K",
      10,
      "maximum differential usual for a hot water programme",
      "none",
      COMMON_PRACTICE),
  COIL_AREA_OF_HEAT_PUMP("coilAreaOfHeatPump_m2", CompressorReach.COIL_AREA_M2),
  COIL_AREA_FOR_EACH_KILOWATT("coilAreaForEachKilowatt_m2", CompressorReach.COIL_AREA_M2_PER_KW),
  NOON_HOURS_FROM(
      "noonHoursFrom_min",
      600,
      "minute of the day from which a clear day gives most of its PV energy",
      "none",
      COMMON_PRACTICE),
  NOON_HOURS_UNTIL(
      "noonHoursUntil_min",
      960,
      "minute of the day until which a clear day gives most of its PV energy",
      "none",
      COMMON_PRACTICE),
  NOON_HOURS_BLOCKED(
      "noonHoursBlocked",
      0.5,
      "share of these hours in which a surplus programme may be blocked",
      "none",
      COMMON_PRACTICE),
  OBSERVED_TO(
      "observedTo_min",
      1,
      "accuracy of timing a run or a pause by watching it",
      "none",
      COMMON_PRACTICE),
  STORE_PER_PERSON(
      "storePerPerson_L",
      35,
      "tank volume per person, lower end of the rule of thumb",
      "none",
      COMMON_PRACTICE),
  NIGHT_FROM(
      "nightFrom_min",
      1320,
      "minute of the day from which there is no PV in any season",
      "none",
      COMMON_PRACTICE),
  NIGHT_UNTIL(
      "nightUntil_min",
      300,
      "minute of the day until which there is no PV in any season",
      "none",
      COMMON_PRACTICE);

  private final Limits.Entry entry;
  private final Weaker weaker;

  Limit(String name, double value, String what, String source, Known known) {
    this(name, value, what, source, known, Weaker.NOWHERE);
  }

  Limit(String name, Figure figure) {
    this(name, figure, Weaker.NOWHERE);
  }

  Limit(String name, Figure figure, Weaker weaker) {
    this(name, figure.value(), figure.what(), figure.source(), figure.known(), weaker);
  }

  Limit(String name, double value, String what, String source, Known known, Weaker weaker) {
    this.entry = new Limits.Entry(name, what, value, Unit.of(name), source, known);
    this.weaker = weaker;
  }

  Limit(String name, Scald.Outlet outlet) {
    this(
        name,
        outlet.most_C(),
        "maximum mixed temperature at that outlet",
        "UK TMV2 and TMV3 schemes, a recommendation",
        READ,
        Weaker.ABOVE);
  }

  /** On which side of its own value a limit would let more of a hazard pass. */
  public enum Weaker {
    ABOVE,
    BELOW,
    /** No hazard is decided by it. */
    NOWHERE
  }

  public Weaker weaker() {
    return weaker;
  }

  /** Whether this value in its place would let more of a hazard pass. */
  public boolean isWeakenedBy(double value) {
    return switch (weaker) {
      case ABOVE -> value > entry.value();
      case BELOW -> value < entry.value();
      case NOWHERE -> false;
    };
  }

  /** The limit as the rule book has it. */
  public Limits.Entry entry() {
    return entry;
  }

  /** Names that limits had before; limits files that hold them stay readable. */
  private static final Map<String, String> FORMERLY =
      Map.of(
          "importShareOfDraw", "importShareOfInput",
          "topsApart_K", "stopsApart_K",
          "leastSupplyType3_C", "minimumSupplyType3_C",
          "outletLeast_C", "outletMinimum_C",
          "sunLost_kWh", "pvUnused_kWh",
          "circulationRuns_min", "circulationMaximum_min",
          "circulationLeast_min", "circulationMinimum_min",
          "sunRoomShare", "pvRoomShare",
          "widestSwing_K", "usualDifferential_K");

  /** The limit of this name, or that once had it. */
  public static Optional<Limit> named(String name) {
    String now = FORMERLY.getOrDefault(name, name);
    for (Limit limit : values()) {
      if (limit.entry.name().equals(now)) {
        return Optional.of(limit);
      }
    }
    return Optional.empty();
  }
}
