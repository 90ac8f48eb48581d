package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Pointer;
import deadband.limits.Limits;
import deadband.setup.Change;
import deadband.setup.Disinfection;
import deadband.setup.Diverter;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.setup.TankSensor;
import deadband.setup.Unit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What the pages of the temperature ladder cannot say one check at a time. */
class LadderTest {

  private static final String TOLD_PEAK =
      """
      { "blending": { "hotSupplyMax_C": 65 },
        "diverter": { "limit_C": %s, "hysteresis_K": 0 %s },
        "heatPump": { "fitted": false } }
      """;

  private static Consequence classOf(Judgement judgement, String check) {
    return finding(judgement, check).consequence();
  }

  private static Finding finding(Judgement judgement, String check) {
    return judgement.findings().stream()
        .filter(finding -> finding.check().name().equals(check))
        .findFirst()
        .orElseThrow(() -> new AssertionError("not found: " + check));
  }

  private static boolean isClear(Judgement judgement, String check) {
    return judgement.clear().stream().anyMatch(clear -> clear.name().equals(check));
  }

  @Test
  void aSetPointThatIsTooHotIsAHazardWhateverIsNotToldOfTheSensor() {
    Judgement judgement = Setups.judge(TOLD_PEAK.formatted("65.1", ""));

    assertThat(classOf(judgement, "peak-above-blending-limit")).isEqualTo(Consequence.HAZARD);
  }

  @Test
  void aPeakThatIsTooHotOnlyByAnAssumedSensorIsAQuestion() {
    Judgement judgement = Setups.judge(TOLD_PEAK.formatted("64.9", ""));

    assertThat(classOf(judgement, "peak-above-blending-limit")).isEqualTo(Consequence.QUERY);
  }

  @Test
  void theSamePeakByTheToleranceOfASensorThatIsToldIsAQuestionToo() {
    String sensor = ", \"sensor\": { \"element\": \"Pt1000\", \"toleranceClass\": \"B\" }";
    Judgement judgement = Setups.judge(TOLD_PEAK.formatted("64.9", sensor));

    assertThat(classOf(judgement, "peak-above-blending-limit")).isEqualTo(Consequence.QUERY);
  }

  @Test
  void equalDecimalsAreEqual() {
    assertThat(64.68 + 0.14 + 0.18).isGreaterThan(65);

    Judgement judgement =
        Setups.judge(
            """
            { "blending": { "hotSupplyMax_C": 65 }, "heatPump": { "fitted": false }, "immersion": { "timed": [] },
              "diverter": { "limit_C": 64.68, "hysteresis_K": 0.14, "hysteresisLies": "both",
                            "sensor": { "tolerance_K": 0.18 } } }
            """);

    assertThat(isClear(judgement, "peak-above-blending-limit")).isTrue();
  }

  @Test
  void aHeatPumpAloneIsJudgedByItsOwnSensor() {
    Judgement judgement =
        Setups.judge(
            """
            { "blending": { "hotSupplyMax_C": 65 }, "diverter": { "fitted": false }, "immersion": { "fitted": false },
              "heatPump": { "sensorTolerance_K": 1, "everyday": { "stop_C": 55 },
                            "surplus": { "stop_C": 64 }, "disinfection": { "enabled": false } } }
            """);

    assertThat(isClear(judgement, "peak-above-blending-limit")).isTrue();
  }

  @Test
  void aValveToldNotToBeThereIsDoubtedWhereAnOutletIsBlended() {
    String noValve =
        """
        { "blending": { "valve": "none" }, "diverter": { "limit_C": 70 },
          "outlets": [ { "at": "bath", "blended": %s } ] }
        """;

    assertThat(classOf(Setups.judge(noValve.formatted("true")), "peak-above-blending-limit"))
        .isEqualTo(Consequence.QUERY);
    assertThat(Setups.judge(noValve.formatted("false")).notFitted())
        .extracting(Check::name)
        .contains("peak-above-blending-limit");
  }

  @Test
  void eachOutletIsJudgedByItself() {
    Judgement judgement =
        Setups.judge(
            """
            { "site": { "vulnerableOccupants": false }, "diverter": { "limit_C": 60 },
              "outlets": [ { "at": "bath", "blended": false }, { "at": "shower" },
                           { "at": "shower", "blended": false } ] }
            """);

    assertThat(judgement.findings())
        .filteredOn(finding -> finding.check().name().equals("outlet-not-blended"))
        .extracting(finding -> finding.subject().dotted())
        .containsExactlyInAnyOrder("outlets[0]", "outlets[2]");
    assertThat(judgement.notJudged())
        .filteredOn(open -> open.check().name().equals("outlet-not-blended"))
        .flatExtracting(NotJudged::missing)
        .contains(Pointer.ofDotted("outlets[1].blended"));
  }

  @Test
  void oneThermostatThatIsTooLowIsOneStory() {
    Judgement judgement =
        Setups.judge(
            """
            { "immersion": { "thermostat_C": 55, "power_kW": 3 },
              "diverter": { "limit_C": 62, "hysteresis_K": 1, "hysteresisLies": "both" },
              "heatPump": { "disinfection": { "enabled": true, "heater": "immersion",
                                              "target_C": 60 } } }
            """);

    assertThat(finding(judgement, "immersion-thermostat-below-opening").causedBy())
        .isEqualTo(finding(judgement, "immersion-thermostat-below-disinfection").key());
  }

  @Test
  void aHeatPumpThatGoesFurtherThanTheDiverterIsTheUsualOrder() {
    Judgement judgement =
        Setups.judge(
            """
            { "diverter": { "limit_C": 60, "hysteresis_K": 0, "sensor": { "tolerance_K": 0.5 } },
              "immersion": { "power_kW": 3 },
              "heatPump": { "maximumFlow_C": 75, "flowAboveTank_K": 5,
                            "everyday": { "start_C": 45, "stop_C": 50 },
                            "surplus": { "start_C": 60, "stop_C": 65 } } }
            """);

    assertThat(judgement.findings())
        .extracting(f -> f.check().name())
        .doesNotContain("tops-disagree");
  }

  @Test
  void aLimitThatIsTooHotForValveAndCutOutIsOneStory() {
    Judgement judgement =
        Setups.judge(
            """
            { "blending": { "valve": "TMV2" }, "immersion": { "cutOut_C": 75, "timed": [] },
              "diverter": { "limit_C": 68, "hysteresis_K": 0, "sensor": { "tolerance_K": 0.5 } },
              "heatPump": { "everyday": { "stop_C": 50 }, "surplus": { "stop_C": 60 },
                            "disinfection": { "enabled": false } } }
            """);

    assertThat(finding(judgement, "cut-out-too-near-peak").causedBy())
        .isEqualTo(finding(judgement, "peak-above-blending-limit").key());
  }

  @Test
  void aCureKeepsTheSwingOfTheProgrammeThatItLowers() {
    Judgement judgement =
        Setups.judge(
            """
            { "blending": { "valve": "TMV2" }, "diverter": { "fitted": false }, "immersion": { "fitted": false },
              "heatPump": { "sensorTolerance_K": 0.5, "everyday": { "start_C": 50, "stop_C": 55 },
                            "surplus": { "start_C": 66, "stop_C": 70 },
                            "disinfection": { "enabled": false } } }
            """);

    assertThat(finding(judgement, "peak-above-blending-limit").changes())
        .containsExactly(
            new Change(Pointer.ofDotted("heatPump.surplus.stop_C"), 70.0, 64.5),
            new Change(Pointer.ofDotted("heatPump.surplus.start_C"), 66.0, 60.5));
  }

  /** Whatever the physical range of each value lets through is judged, never thrown at. */
  @Test
  void noSetupIsTooOddToJudge() {
    Random random = new Random(20260531);
    for (int i = 0; i < 150; i++) {
      Judgement judgement = Setups.JUDGE.judge(odd(random), Limits.standard(), Setups.AS_OF);
      assertThat(judgement.findings())
          .allSatisfy(finding -> assertThat(finding.size().value()).isPositive());
    }
  }

  private static final List<String> NUMBERS =
      List.of(
          "/blending/hotSupplyMax_C",
          "/blending/leastDifferential_K",
          "/diverter/limit_C",
          "/diverter/hysteresis_K",
          "/diverter/sensor/tolerance_K",
          "/heatPump/everyday/start_C",
          "/heatPump/everyday/stop_C",
          "/heatPump/surplus/start_C",
          "/heatPump/surplus/stop_C",
          "/heatPump/disinfection/target_C",
          "/heatPump/maximumFlow_C",
          "/heatPump/flowAboveTank_K",
          "/heatPump/sensorTolerance_K",
          "/heatPump/minimumRun_min",
          "/heatPump/minimumOff_min",
          "/heatPump/hotWaterOutput_kW",
          "/immersion/thermostat_C",
          "/immersion/cutOut_C",
          "/tank/relief_C",
          "/tank/volume_L",
          "/tank/height_mm",
          "/tank/coil/bottom_mm",
          "/tank/coil/area_m2",
          "/immersion/height_mm",
          "/immersion/power_kW",
          "/heatPump/backupHeater/power_kW",
          "/heatPump/hotWaterInput_kW",
          "/heatPump/disinfection/hold_min",
          "/heatPump/disinfection/timeAllowed_min",
          "/heatPump/disinfection/sensor_mm",
          "/buffer/volume_L",
          "/buffer/systemVolume_L",
          "/buffer/swing_K",
          "/buffer/leastHeatOutput_kW",
          "/buffer/leastHeatDemand_kW",
          "/battery/power_kW",
          "/solar/peak_kW",
          "/house/baseLoad_kW",
          "/tank/coil/cutOut_C");

  private static Setup odd(Random random) {
    Setup setup = (Setup) Shape.of(Setup.class).allOpen(Pointer.root());
    for (String name : NUMBERS) {
      if (random.nextInt(8) > 0) {
        setup = set(setup, name, number(Unit.of(name), random));
      }
    }
    setup = set(setup, "/diverter/hysteresisLies", any(Diverter.HysteresisLies.values(), random));
    setup = set(setup, "/diverter/sensor/element", any(TankSensor.Element.values(), random));
    setup = set(setup, "/heatPump/disinfection/enabled", random.nextBoolean());
    return set(setup, "/heatPump/disinfection/heater", any(Disinfection.Heater.values(), random));
  }

  private static Setup set(Setup setup, String name, Object value) {
    return new Change(Pointer.parse(name), null, value).applyTo(setup);
  }

  /** One of the ends, or anything between. */
  private static double number(Unit unit, Random random) {
    return switch (random.nextInt(6)) {
      case 0 -> unit.least();
      case 1 -> unit.most();
      default -> unit.least() + random.nextDouble() * (Math.min(unit.most(), 2000) - unit.least());
    };
  }

  private static <T> T any(T[] choices, Random random) {
    return choices[random.nextInt(choices.length)];
  }
}
