package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import deadband.dayrun.DisinfectionModel.Heater;
import deadband.trade.HeatPumpCop;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The order within a step and what the devices do to each other, case by case. */
class DayRunTest {
  private final Given given = Given.boundless().constantDraw(2.5).untimed();

  private static Day steady(double pv_kW, double house_kW, int minutes) {
    double[] pv = new double[minutes];
    double[] house = new double[minutes];
    Arrays.fill(pv, pv_kW);
    Arrays.fill(house, house_kW);
    return new Day(Profile.of(StepLength.MINUTE, 0, pv, house, new double[minutes]), 10, 10);
  }

  private Result run(double start_C, Day... days) {
    DayRun run = DayRun.startingAt(start_C, given.build(), StepLength.MINUTE);
    Arrays.stream(days).forEach(run::through);
    return run.result();
  }

  @Test
  void theHeaterTakesWhatHouseAndCompressorLeave() {
    given.start_kW = 99;
    Result result = run(20, steady(4, 1.5, 60));
    assertThat(result.immersion_kWh()).isCloseTo(2.5, within(1e-9));
    assertThat(result.export_kWh()).isCloseTo(0, within(1e-9));
    assertThat(result.solarKept_kWh()).isCloseTo(2.5, within(1e-9));
  }

  /** 4 kW of PV on L2, a 3 kW element on L1, each phase billed for itself: bought, not kept. */
  @Test
  void billedByPhaseAnElementOnAnotherPhaseIsBought() {
    given.start_kW = 99;
    given.perPhase = true;
    given.sensor = Line.ALL;
    given.generator = Line.L2;
    given.house = Line.L2;
    given.diverter = Line.L1;
    Result result = run(20, steady(4, 1, 60));
    assertThat(result.immersion_kWh()).isCloseTo(3, within(1e-9));
    assertThat(result.import_kWh()).isCloseTo(3, within(1e-9));
    assertThat(result.export_kWh()).isCloseTo(3, within(1e-9));
    assertThat(result.solarKept_kWh()).isZero();
    assertThat(result.solarHeat_kWh()).isZero();
    assertThat(result.diverted_kWh()).isCloseTo(3, within(1e-9));
    assertThat(result.divertedBought_kWh()).isCloseTo(3, within(1e-9));
  }

  /** 1 kW of PV, a margin 2 kW below zero: 3 kW diverted, of which 2 kW are bought. */
  @Test
  void aMarginBelowZeroBuysForTheElement() {
    given.start_kW = 99;
    given.exportMargin_kW = -2;
    Result result = run(20, steady(1, 0, 60));
    assertThat(result.diverted_kWh()).isCloseTo(3, within(1e-9));
    assertThat(result.divertedBought_kWh()).isCloseTo(2, within(1e-9));
    assertThat(result.solarKept_kWh()).isCloseTo(1, within(1e-9));
  }

  /**
   * In the hunting band the relay opens during each run and closes during each pause: closures and
   * starts are the same number, whatever the delays alone would allow.
   */
  @Test
  void withTheTimersInForceEachStartHasOneClosure() {
    given.start_kW = 3;
    given.stop_kW = 2.7;
    given.startDelay_min = 1;
    given.stopDelay_min = 1;
    given.minimumRun_min = 10;
    given.minimumOff_min = 10;
    Result.Cycles cycles = run(20, steady(4, 0, 600)).cycles().orElseThrow();
    assertThat(cycles.heatPumpStarts()).isBetween(29, 31);
    assertThat(cycles.relayClosings()).isBetween(29, 31);
  }

  /** 5 kW of PV: 2.5 kW into the compressor, 2.5 kW into the element; each heats by its own. */
  @Test
  void heatFromPvIsSplitByWhatMakesIt() {
    given.start_kW = 2;
    given.startDelay_min = 1;
    given.stop_kW = 0;
    Result result = run(20, steady(5, 0, 60));
    assertThat(result.import_kWh()).isCloseTo(0, within(1e-9));
    assertThat(result.solarHeatByHeatPump_kWh()).isCloseTo(result.heatPumpHeat_kWh(), within(1e-9));
    assertThat(result.solarHeat_kWh())
        .isCloseTo(result.heatPumpHeat_kWh() + result.immersion_kWh(), within(1e-9));
    assertThat(result.heatPumpHeat_kWh()).isGreaterThan(2 * result.heatPump_kWh());
  }

  @Test
  void theInverterLimitsTheSunAndGivenSurplusIsNotLimited() {
    given.start_kW = 99;
    given.immersion_kW = 0;
    given.inverter_kW = 2;
    assertThat(run(20, steady(4, 0, 60)).export_kWh()).isCloseTo(2, within(1e-9));
    double[] surplus_kW = {4, 4};
    Profile surplus = Profile.ofSurplus(StepLength.MINUTE, 0, surplus_kW, new double[2]);
    assertThat(run(20, new Day(surplus, 10, 10)).export_kWh()).isCloseTo(8 / 60.0, within(1e-9));
  }

  /** control-loop.md: S is capped by the export limit plus what the site can take. */
  @Test
  void theRelaySeesNoMoreThanTheExportLimitPlusWhatIsCounted() {
    given.exportLimit_kW = 1;
    given.immersion_kW = 2;
    given.start_kW = 3;
    given.startDelay_min = 1;
    assertThat(run(20, steady(8, 0, 60)).cycles().orElseThrow().relayClosings()).isEqualTo(1);
    given.start_kW = 3.001;
    Result short_of_it = run(20, steady(8, 0, 60));
    assertThat(short_of_it.cycles().orElseThrow().relayClosings()).isZero();
    assertThat(short_of_it.curtailed_kWh()).isCloseTo(5, within(1e-9));
  }

  private static BatteryModel.Spec battery(Set<Load> before, Set<Load> into, double stored_kWh) {
    return new BatteryModel.Spec(10, stored_kWh, 3, 1, before, into, Line.L1);
  }

  @Test
  void aBatteryThatStandsFirstLeavesTheHeaterTheRest() {
    given.start_kW = 99;
    given.battery = battery(EnumSet.of(Load.IMMERSION), Set.of(), 0);
    Result first = run(20, steady(4, 0, 60));
    assertThat(first.immersion_kWh()).isCloseTo(1, within(1e-9));
    given.battery = battery(Set.of(), Set.of(), 0);
    Result after = run(20, steady(4, 0, 60));
    assertThat(after.immersion_kWh()).isCloseTo(3, within(1e-9));
    assertThat(after.export_kWh()).isCloseTo(0, within(1e-9));
  }

  /** control-loop.md, Battery: it hides min(S, its charge power) unless its charge is counted. */
  @Test
  void aChargingBatteryHidesSurplusFromTheRelayUnlessItIsCounted() {
    given.immersion_kW = 0;
    given.start_kW = 3;
    given.battery = battery(EnumSet.of(Load.HEAT_PUMP), Set.of(), 0);
    given.counts = EnumSet.of(Counted.EXPORT);
    assertThat(run(20, steady(5, 0, 60)).cycles().orElseThrow().relayClosings()).isZero();
    given.counts = EnumSet.of(Counted.EXPORT, Counted.BATTERY);
    assertThat(run(20, steady(5, 0, 60)).cycles().orElseThrow().relayClosings()).isPositive();
  }

  /**
   * Before the heat pump the battery keeps its charge and the compressor buys; after, it yields.
   */
  @Test
  void aBatteryBeforeTheHeatPumpKeepsChargingWhileItRuns() {
    given.immersion_kW = 0;
    given.start_kW = 1.5;
    given.stop_kW = -1;
    given.startDelay_min = 1;
    given.battery = battery(EnumSet.of(Load.HEAT_PUMP), Set.of(), 0);
    assertThat(run(20, steady(5, 0, 61)).import_kWh()).isCloseTo(0.5, within(1e-9));
    given.battery = battery(EnumSet.of(Load.IMMERSION), Set.of(), 0);
    assertThat(run(20, steady(5, 0, 61)).import_kWh()).isZero();
  }

  /**
   * control-loop.md, Battery: it covers min(P − S, its power), so that what the relay sees stays.
   */
  @Test
  void aBatteryThatMayFeedTheHeatPumpHoldsTheRelayAndEmpties() {
    given.immersion_kW = 0;
    given.counts = EnumSet.of(Counted.EXPORT);
    given.start_kW = 1.5;
    given.stop_kW = -0.1;
    given.startDelay_min = 1;
    given.stopDelay_min = 1;
    Set<Load> heatPump = EnumSet.of(Load.HEAT_PUMP);
    given.battery = battery(Set.of(), heatPump, 5);
    BatteryModel.Spec full = new BatteryModel.Spec(5, 5, 3, 1, Set.of(), heatPump, Line.L1);
    given.battery = full;
    Result held = run(20, steady(1.5, 0, 240));
    assertThat(held.cycles().orElseThrow().relayClosings()).isEqualTo(1);
    assertThat(held.import_kWh()).isZero();
    given.battery = BatteryModel.Spec.none();
    assertThat(run(20, steady(1.5, 0, 240)).cycles().orElseThrow().relayClosings())
        .isGreaterThan(20);
  }

  @Test
  void aBatteryThatMayNotFeedTheHeatPumpCoversTheHouseOnly() {
    given.everydayStart_C = 51;
    given.battery = battery(Set.of(), EnumSet.of(Load.HOUSE), 5);
    Result result = run(20, steady(0, 0.5, 60));
    assertThat(result.import_kWh()).isCloseTo(result.heatPump_kWh(), within(1e-9));
    given.battery = battery(Set.of(), EnumSet.of(Load.HOUSE, Load.HEAT_PUMP), 5);
    assertThat(run(20, steady(0, 0.5, 60)).import_kWh()).isCloseTo(0, within(1e-9));
  }

  @Test
  void aVehicleChargerTakesItsTurn() {
    given.start_kW = 99;
    given.charger =
        new Charger.Spec(true, 1.4, 7, 99, Window.ALWAYS, EnumSet.of(Load.IMMERSION), Line.L1);
    assertThat(run(20, steady(5, 0, 60)).immersion_kWh()).isCloseTo(0, within(1e-9));
    given.charger = new Charger.Spec(true, 1.4, 7, 99, Window.ALWAYS, Set.of(), Line.L1);
    Result after = run(20, steady(5, 0, 60));
    assertThat(after.immersion_kWh()).isCloseTo(3, within(1e-9));
    assertThat(after.export_kWh()).isCloseTo(0, within(1e-9));
    // 3.5 kW leave 0.5 kW after the heater: below the charger's least power
    assertThat(run(20, steady(3.5, 0, 60)).export_kWh()).isCloseTo(0.5, within(1e-9));
  }

  /** Practice case 5: 6 kW of sun on L1, 2 kW of load on each line. */
  @Test
  void threePhasesDependOnTheMeter() {
    given.immersion_kW = 0;
    given.house = Line.ALL;
    given.sensor = Line.L1;
    given.start_kW = 3.9;
    given.startDelay_min = 1;
    given.hotWaterInput_kW = 0;
    given.surplusStart_C = Double.NEGATIVE_INFINITY;
    Result netted = run(20, steady(6, 6, 60));
    assertThat(netted.import_kWh()).isCloseTo(0, within(1e-9));
    assertThat(netted.export_kWh()).isCloseTo(0, within(1e-9));
    assertThat(netted.cycles().orElseThrow().relayClosings())
        .as("a controller on L1 sees 4 kW that is not there")
        .isEqualTo(1);
    given.perPhase = true;
    Result perPhase = run(20, steady(6, 6, 60));
    assertThat(perPhase.import_kWh()).isCloseTo(4, within(1e-9));
    assertThat(perPhase.export_kWh()).isCloseTo(4, within(1e-9));
    given.sensor = Line.ALL;
    assertThat(run(20, steady(6, 6, 60)).cycles().orElseThrow().relayClosings()).isZero();
  }

  /** Practice case 4: the sensor is not upstream of the heat pump; every surplus call is bought. */
  @Test
  void aHeatPumpOnAnotherMeterIsNotSeen() {
    given.immersion_kW = 0;
    given.seesHeatPump = false;
    given.start_kW = 1;
    given.stop_kW = 0.5;
    given.startDelay_min = 1;
    given.stopDelay_min = 1;
    Result result = run(20, steady(1, 0, 61));
    assertThat(result.cycles().orElseThrow().relayClosings()).isEqualTo(1);
    assertThat(result.importWhileOnSurplus_kWh()).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void theDiverterOnOneLineSeesAThirdOfABalancedCompressor() {
    given.heatPump = Line.ALL;
    given.sensor = Line.L1;
    given.everydayStart_C = 51;
    given.start_kW = 99;
    Result result = run(20, steady(2, 0, 61));
    // one minute before the compressor starts, then 2 − 2.5/3 kW
    double expected_kWh = 2 / 60.0 + 2 - 2.5 / 3;
    assertThat(result.immersion_kWh()).isCloseTo(expected_kWh, within(1e-9));
  }

  @Test
  void theBackUpHeaterJoinsOnSurplusOnlyWhereItIsAllowed() {
    given.immersion_kW = 0;
    given.start_kW = 2;
    given.stop_kW = -9;
    given.startDelay_min = 1;
    given.backup = new BackupHeaterModel.Spec(6, false);
    assertThat(run(20, steady(4, 0, 61)).backup_kWh()).isZero();
    given.backup = new BackupHeaterModel.Spec(6, true);
    Result joined = run(20, steady(4, 0, 61));
    assertThat(joined.backup_kWh()).isCloseTo(6, within(1e-9));
    assertThat(joined.importWhileOnSurplus_kWh()).isCloseTo(4.5, within(1e-9));
  }

  @Test
  void theBackUpHeaterGoesOnWhereTheCompressorCannot() {
    Given small = new Given().constantDraw(2.5);
    small.everydayStart_C = 51;
    small.everydayStop_C = 60;
    small.maximumFlow_C = 60;
    small.start_kW = 99;
    small.backup = new BackupHeaterModel.Spec(6, false);
    DayRun run = DayRun.startingAt(50, small.build(), StepLength.MINUTE);
    Result result = run.through(steady(0, 0, 240)).result();
    assertThat(result.backup_kWh()).isPositive();
    assertThat(run.tank().coil_C()).isBetween(59.0, 61.0);
    small.backup = BackupHeaterModel.Spec.none();
    DayRun without = DayRun.startingAt(50, small.build(), StepLength.MINUTE);
    without.through(steady(0, 0, 240));
    assertThat(without.tank().coil_C()).isLessThan(56);
  }

  @Test
  void aDisinfectionByTheImmersionHeaterLeavesWhatLiesBelowItUntreated() {
    Given home = new Given();
    home.opening_C = 64;
    home.closing_C = 62;
    home.everydayStart_C = Double.NEGATIVE_INFINITY;
    home.element_mm = 400;
    home.disinfection =
        new DisinfectionModel.Spec(Heater.IMMERSION, 60, 60, 7, 1440, 900, 400, List.of());
    DayRun run = DayRun.startingAt(55, home.build(), StepLength.MINUTE);
    double[] draw_L = new double[1440];
    Arrays.fill(draw_L, 600, 700, 1);
    double[] nothing = new double[1440];
    Profile usual = Profile.of(StepLength.MINUTE, 0, nothing, nothing, draw_L);
    run.through(new Day(usual, 10, 10)).countingFromHere();
    Result cycle = run.through(Day.still(0, 460, 10, 10)).result();
    assertThat(cycle.tankTop_C().max()).isGreaterThanOrEqualTo(64);
    assertThat(cycle.logReductionTop()).isEqualTo(8);
    assertThat(cycle.logReductionBottom()).isZero();
    assertThat(cycle.tankBottom_C().max()).isLessThan(20);
    assertThat(cycle.import_kWh()).isCloseTo(cycle.immersion_kWh(), within(1e-9));
  }

  /** 3 kW from 00:00 to 02:00 by a timer: 6 kWh bought, past the diverter and its limit. */
  @Test
  void aTimerFeedsTheElementFromTheGrid() {
    given.start_kW = 99;
    given.timed = List.of(new Window(0, 120));
    given.opening_C = 10;
    given.closing_C = 8;
    Result result = run(20, steady(0, 0, 240));
    assertThat(result.immersion_kWh()).isCloseTo(6, within(1e-9));
    assertThat(result.import_kWh()).isCloseTo(6, within(1e-9));
    assertThat(result.solarKept_kWh()).isZero();
  }

  @Test
  void aTimerStopsAtTheElementsOwnThermostat() {
    Given home = new Given();
    home.start_kW = 99;
    home.everydayStart_C = Double.NEGATIVE_INFINITY;
    home.timed = List.of(Window.ALWAYS);
    DayRun run = DayRun.startingAt(50, home.build(), StepLength.MINUTE);
    Result result = run.through(steady(0, 0, 1440)).result();
    assertThat(result.tankTop_C().max()).isBetween(home.thermostat_C, home.thermostat_C + 3);
  }

  /** 4 kW of PV, 1 kW of house, nothing may be exported: 3 kW are held back, none diverted. */
  @Test
  void behindAZeroExportLimitTheDiverterSeesNothing() {
    given.start_kW = 99;
    given.exportLimit_kW = 0;
    Result zero = run(20, steady(4, 1, 60));
    assertThat(zero.immersion_kWh()).isZero();
    assertThat(zero.curtailed_kWh()).isCloseTo(3, within(1e-9));
    given.exportLimit_kW = 0.5;
    Result half = run(20, steady(4, 1, 60));
    assertThat(half.immersion_kWh()).isCloseTo(3, within(1e-9));
    assertThat(half.curtailed_kWh()).isCloseTo(0, within(1e-9));
  }

  @Test
  void withoutImmersionHeaterNoCutOutOpens() {
    Given home = new Given();
    Installation with = home.build();
    Installation without =
        new Installation(
            with.supply(),
            with.generator(),
            with.sensor(),
            with.diverter(),
            ImmersionModel.Spec.none(),
            with.relay(),
            with.heatPump(),
            with.backup(),
            with.disinfection(),
            with.battery(),
            with.charger(),
            with.tank());
    DayRun run = DayRun.of(without, StepLength.MINUTE);
    assertThat(run.through(steady(4, 0, 600)).result().cutOutOpened()).isFalse();
  }

  /** A contact wired the wrong way calls for surplus at night and not by day. */
  @Test
  void aReversedContactCallsWhileTheRelayIsOpen() {
    given.call = RelayModel.Call.WHILE_OPEN;
    given.everydayStart_C = Double.NEGATIVE_INFINITY;
    Result night = run(20, steady(0, 0.2, 60));
    assertThat(night.heatPumpOnSurplus_kWh()).isGreaterThan(2);
    given.call = RelayModel.Call.NEVER;
    Result never = run(20, steady(9, 0.2, 60));
    assertThat(never.cycles().orElseThrow().relayClosings()).isEqualTo(1);
    assertThat(never.heatPump_kWh()).isZero();
  }

  @Test
  void aDemandNobodyAnswersHeatsNothing() {
    Given home = new Given();
    home.everydayStart_C = Double.NEGATIVE_INFINITY;
    home.answersDemand = false;
    home.disinfection =
        new DisinfectionModel.Spec(Heater.IMMERSION, 60, 60, 7, 0, 900, 400, List.of());
    DayRun run = DayRun.startingAt(55, home.build(), StepLength.MINUTE);
    assertThat(run.through(Day.still(0, 460, 10, 10)).result().immersion_kWh()).isZero();
  }

  @Test
  void disinfectionByTheHeatPumpHoldsItsTarget() {
    Given home = new Given();
    home.everydayStart_C = Double.NEGATIVE_INFINITY;
    home.maximumFlow_C = 75;
    home.disinfection =
        new DisinfectionModel.Spec(Heater.HEAT_PUMP, 60, 60, 7, 0, 700, 400, List.of());
    DayRun run = DayRun.startingAt(55, home.build(), StepLength.MINUTE);
    Result result = run.through(Day.still(0, 400, 10, 10)).result();
    assertThat(result.tankSensor_C().max()).isBetween(60.0, 63.5);
    assertThat(result.logReductionTop()).isEqualTo(8);
    assertThat(result.importWhileOnSurplus_kWh()).isZero();
  }

  @Test
  void aStepLongerThanTheShortestDelayGivesNoCounts() {
    Given home = new Given();
    Day day = steady(4, 0, 120);
    DayRun fine = DayRun.of(home.build(), StepLength.ofMinutes(2));
    assertThat(fine.through(day).result().cycles()).isPresent();
    DayRun coarse = DayRun.of(home.build(), StepLength.ofMinutes(3));
    assertThat(coarse.through(day).result().cycles()).isEmpty();
    Profile quarters = day.profile().at(StepLength.ofMinutes(15));
    DayRun coarseData = DayRun.of(home.build(), StepLength.MINUTE);
    assertThat(coarseData.through(new Day(quarters, 10, 10)).result().cycles()).isEmpty();
  }

  @Test
  void noDelaysAreOneStepOfAMinute() {
    Given home = new Given().untimed();
    home.startDelay_min = 0;
    home.stopDelay_min = 0;
    assertThat(DayRun.of(home.build(), StepLength.MINUTE).result().cycles()).isPresent();
    assertThat(DayRun.of(home.build(), StepLength.ofMinutes(2)).result().cycles()).isEmpty();
  }

  @Test
  void theTankStartsAtTheEverydayStop() {
    Result result = DayRun.of(new Given().build(), StepLength.MINUTE).result();
    assertThat(result.tankTop_C()).isEqualTo(new Result.Span(56, 56, 56));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DayRun.startingAt(Double.NaN, new Given().build(), StepLength.MINUTE))
        .withMessageContaining("NaN");
  }

  @Test
  void coldDrawAndTheGrowthBandAreCounted() {
    Given home = new Given();
    home.everydayStart_C = Double.NEGATIVE_INFINITY;
    double[] nothing = new double[60];
    double[] draw_L = new double[60];
    Arrays.fill(draw_L, 1);
    Profile profile = Profile.of(StepLength.MINUTE, 0, nothing, nothing, draw_L);
    Day day = new Day(profile, 10, 10);
    Result cool = DayRun.startingAt(39, home.build(), StepLength.MINUTE).through(day).result();
    assertThat(cool.coldDraw_L()).isEqualTo(60);
    assertThat(cool.minutes20to45()).isEqualTo(60);
    Result warm = DayRun.startingAt(50, home.build(), StepLength.MINUTE).through(day).result();
    assertThat(warm.coldDraw_L()).isZero();
    assertThat(warm.minutes20to45()).isZero();
  }

  @Test
  void aThermostatSetAboveTheCutOutTripsItForGood() {
    Given home = new Given();
    home.everydayStart_C = Double.NEGATIVE_INFINITY;
    home.start_kW = 99;
    home.opening_C = 95;
    home.closing_C = 94;
    home.thermostat_C = 90;
    home.cutOut_C = 70;
    Result result =
        DayRun.startingAt(65, home.build(), StepLength.MINUTE).through(steady(3, 0, 600)).result();
    assertThat(result.cutOutOpened()).isTrue();
    assertThat(result.tankTop_C().max()).isBetween(69.9, 70.1);
    // 285 L above the base of the element's layer by 5 K are 1.6 kWh, and some loss
    assertThat(result.immersion_kWh()).isBetween(1.6, 2.0);
    assertThat(DayRun.of(new Given().build(), StepLength.MINUTE).result().cutOutOpened()).isFalse();
  }

  @Test
  void importOfAnEverydayRunIsNotImportOnSurplus() {
    given.everydayStart_C = 51;
    Result result = run(20, steady(0, 0, 60));
    assertThat(result.import_kWh()).isGreaterThan(2);
    assertThat(result.importWhileOnSurplus_kWh()).isZero();
  }

  /** Ground at 10, coil at 20, flow at 25 °C: lift 15 K, held at the fit's 20 K. */
  @Test
  void heatIsInputTimesCop() {
    given.everydayStart_C = 51;
    Result result = run(20, steady(0, 0, 60));
    double cop = 0.85 * HeatPumpCop.Fit.STAFFELL_GROUND.cop(20);
    assertThat(result.heatPumpHeat_kWh()).isCloseTo(cop * result.heatPump_kWh(), within(1e-6));
    assertThat(result.heatPump_kWh()).isCloseTo(2.5 * 59 / 60, within(1e-9));
  }

  @Test
  void sunKeptIsWhatOfTheSunTheCompressorTook() {
    given.everydayStart_C = 51;
    given.immersion_kW = 0;
    given.start_kW = 99;
    assertThat(run(20, steady(1.5, 0.5, 61)).solarKept_kWh()).isCloseTo(1, within(1e-9));
  }

  @Test
  void aBatteryBeforeTheHouseTakesTheSunAndTheHouseBuys() {
    given.start_kW = 99;
    given.battery = battery(EnumSet.of(Load.HOUSE), EnumSet.of(Load.HOUSE), 0);
    Result result = run(20, steady(2, 1, 60));
    assertThat(result.import_kWh()).isCloseTo(1, within(1e-9));
    assertThat(result.immersion_kWh()).isZero();
  }

  @Test
  void aWatcherSeesEveryStepAndItsStates() {
    given.start_kW = 1;
    given.stop_kW = -5;
    given.startDelay_min = 1;
    given.startLag_min = 2;
    given.immersion_kW = 0;
    StringBuilder seen = new StringBuilder();
    DayRun run = DayRun.startingAt(20, given.build(), StepLength.MINUTE);
    run.watchedBy(
            step ->
                seen.append(step.secondOfDay() / 60)
                    .append(step.relayClosed() ? " closed " : " open ")
                    .append(step.heatPump())
                    .append(step.onSurplus() ? " on surplus " : " ")
                    .append(Math.round(1000 * step.counted_kW()))
                    .append('\n'))
        .through(steady(2, 0, 5));
    assertThat(seen)
        .hasToString(
            """
            0 open OFF 2000
            1 closed PRE_RUN 2000
            2 closed PRE_RUN 2000
            3 closed RUNNING on surplus -500
            4 closed RUNNING on surplus -500
            """);
  }

  @Test
  void countingFromHereForgetsWhatWas() {
    DayRun run = DayRun.of(new Given().build(), StepLength.MINUTE);
    double[] draw_L = new double[600];
    Arrays.fill(draw_L, 0.3);
    Profile draws = Profile.of(StepLength.MINUTE, 0, new double[600], new double[600], draw_L);
    Result after = run.through(new Day(draws, 10, 10)).countingFromHere().result();
    assertThat(after.steps()).isZero();
    assertThat(after.heatPump_kWh() + after.standingLoss_kWh() + after.balanceError_kWh()).isZero();
    assertThat(after.tankBottom_C().max()).isLessThan(20);
    assertThat(run.through(steady(0, 0, 60)).result().balanceError_kWh()).isLessThan(1e-9);
  }

  /** 60 L, a coil along its whole height, a back-up heater that a disinfection calls past 80 °C. */
  @Test
  void theCoilsCutOutEndsBackUpAndCompressorForGood() {
    Given home = new Given();
    home.volume_L = 60;
    home.coilBottom_mm = 0;
    home.coilTop_mm = 1600;
    home.coilCutOut_C = 75;
    home.backup = new BackupHeaterModel.Spec(6, false);
    home.disinfection =
        new DisinfectionModel.Spec(Heater.BACKUP_HEATER, 85, 60, 7, 0, 700, 900, List.of());
    DayRun run = DayRun.startingAt(55, home.build(), StepLength.MINUTE);
    Result result = run.through(Day.still(0, 120, 10, 10)).result();
    assertThat(result.cutOutOpened()).isTrue();
    assertThat(result.tankTop_C().max()).isBetween(74.9, 75.1);
    double[] draw_L = new double[60];
    Arrays.fill(draw_L, 1);
    Profile draws = Profile.of(StepLength.MINUTE, 0, new double[60], new double[60], draw_L);
    Result cold = run.countingFromHere().through(new Day(draws, 10, 10)).result();
    assertThat(cold.tankTop_C().end()).isLessThan(40);
    assertThat(cold.heatPump_kWh() + cold.backup_kWh()).isZero();
  }

  @Test
  void nothingFittedIsAHouseAndATank() {
    Given home = new Given();
    home.immersion_kW = 0;
    home.hotWaterInput_kW = 0;
    home.minimumInput_kW = 0;
    home.everydayStart_C = Double.NEGATIVE_INFINITY;
    home.surplusStart_C = Double.NEGATIVE_INFINITY;
    Result result =
        DayRun.startingAt(55, home.build(), StepLength.MINUTE).through(steady(2, 1, 60)).result();
    assertThat(result.export_kWh()).isCloseTo(1, within(1e-9));
    assertThat(result.heatPump_kWh() + result.immersion_kWh() + result.backup_kWh()).isZero();
    assertThat(result.tankTop_C().end()).isLessThan(55);
  }
}
