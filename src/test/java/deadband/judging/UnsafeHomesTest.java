package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.days.DayRuns;
import deadband.document.Document;
import deadband.document.Edit;
import deadband.document.Literal;
import deadband.document.Pointer;
import deadband.limits.Limits;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Attacks on good homes: a few values changed so that somebody is scalded, infected, shocked or
 * made to pay, by saying that a thing is not there or by typing a number. Each must be found, by
 * the check named and in its class or a worse one.
 *
 * <p>A row: the good sample | what was changed, {@code pointer = value} or {@code pointer -} to
 * leave it out | the check | its class at least; {@code open} where the check must not be clear.
 */
class UnsafeHomesTest {

  private static final Judge QUICK = new Judge(Setups.JUDGE.book(), DayRuns.none());

  private static final String ATTACKS =
      """
      # scald: outlets
      mill-cottage | outlets = [{"at":"bath","mixed_C":41}]; blending.valve = none | outlet-not-blended | hazard
      mill-cottage | outlets = [{"at":"bath","blended":true}]; blending.valve = none | outlet-not-blended | hazard
      mill-cottage | outlets = [{"at":"shower","blended":true,"mixed_C":41}]; blending = {"fitted":false} | outlet-not-blended | hazard
      mill-cottage | blending = {"fitted":false} | outlet-not-blended | hazard
      mill-cottage | blending.fitted = false | outlet-not-blended | hazard
      mill-cottage | blending.fitted = false | absent-part-described | query
      mill-cottage | blending.valve = none | absent-part-described | query
      mill-cottage | blending -; outlets = [{"at":"bath","mixed_C":41}] | outlet-not-blended | open
      mill-cottage | outlets[0].blended = false | outlet-not-blended | hazard
      mill-cottage | outlets[1].blended = false; diverter.limit_C = 50 | outlet-not-blended | hazard
      mill-cottage | outlets[0].at = other; outlets[0].blended = false; outlets[1].at = other; outlets[2].at = other | no-washing-outlet-listed | query
      mill-cottage | outlets = [] | no-washing-outlet-listed | query
      mill-cottage | outlets = []; blending = {"fitted":false} | no-washing-outlet-listed | query
      mill-cottage | outlets = [{"at":"kitchen","blended":false}] | no-washing-outlet-listed | query
      mill-cottage | outlets = [{"at":"bidet","blended":true,"mixed_C":38}] | no-washing-outlet-listed | query
      mill-cottage | outlets - | outlet-not-blended | open
      mill-cottage | outlets[0].mixed_C = 60 | mixed-above-outlet-maximum | query
      mill-cottage | outlets[1].mixed_C = 55 | mixed-above-outlet-maximum | query
      fernleigh-bungalow | outlets[3].mixed_C = 52 | mixed-above-outlet-maximum | query
      fernleigh-bungalow | outlets[0] = {"at":"other","blended":true,"mixed_C":55} | mixed-above-outlet-maximum | query
      fernleigh-bungalow | outlets[3] = {"at":"kitchen","blended":false} | outlet-not-blended | query
      fernleigh-bungalow | outlets[2] = {"at":"basin","blended":false} | outlet-not-blended | hazard
      fernleigh-bungalow | outlets[2] = {"at":"basin","blended":true}; blending.valve = none | outlet-not-blended | hazard
      fernleigh-bungalow | outlets[2] = {"at":"other","blended":false} | outlet-not-blended | query
      fernleigh-bungalow | blending.valve = TMV2 | vulnerable-without-type-3 | query
      fernleigh-bungalow | site.vulnerableOccupants -; outlets[3].blended = false | outlet-not-blended | open
      # scald: the supply of the mixing valve
      mill-cottage | blending.hotSupplyMax_C = 95; diverter.limit_C = 80; immersion.thermostat_C = 82 | peak-above-blending-limit | hazard
      mill-cottage | blending.hotSupplyMax_C = 95; diverter.limit_C = 80 | supply-entered-above-valve-type | query
      mill-cottage | blending = {"valve":"TMV3","hotSupplyMax_C":75}; diverter.limit_C = 70 | peak-above-blending-limit | hazard
      mill-cottage | blending = {"valve":"TMV3","hotSupplyMax_C":66} | supply-entered-above-valve-type | query
      mill-cottage | blending = {"valve":"EN 15092","hotSupplyMax_C":99}; heatPump.surplus.stop_C = 92 | peak-above-blending-limit | hazard
      mill-cottage | blending = {"valve":"other","hotSupplyMax_C":99} | supply-entered-above-valve-type | query
      mill-cottage | blending = {"valve":"other","hotSupplyMax_C":99}; diverter.limit_C = 95 | peak-above-blending-limit | hazard
      mill-cottage | blending = {"valve":"none","hotSupplyMax_C":65} | absent-part-described | query
      mill-cottage | heatPump.surplus.stop_C = 70 | peak-above-blending-limit | hazard
      mill-cottage | heatPump.disinfection.target_C = 70 | peak-above-blending-limit | hazard
      mill-cottage | heatPump.everyday.stop_C = 68 | peak-above-blending-limit | hazard
      mill-cottage | heatPump.everyday.stop_C = 68; heatPump.everyday.enabled - | peak-above-blending-limit | hazard
      mill-cottage | immersion.timed = ["02:00-05:00"]; immersion.thermostat_C = 75 | peak-above-blending-limit | hazard
      mill-cottage | immersion.timed = ["00:00-00:00"]; immersion.thermostat_C = 72 | peak-above-blending-limit | hazard
      mill-cottage | immersion.timed -; immersion.thermostat_C = 75 | peak-above-blending-limit | open
      mill-cottage | heatPump = {"fitted":false}; diverter = {"fitted":false}; immersion.thermostat_C = 75 | peak-above-blending-limit | hazard
      mill-cottage | heatPump = {"fitted":false}; diverter = {"fitted":false}; relay = {"fitted":false}; outlets[0].blended = false | outlet-not-blended | hazard
      mill-cottage | immersion.timed = ["02:00-05:00"]; immersion.thermostat_C = 60; diverter = {"fitted":false}; heatPump = {"fitted":false}; outlets[1].blended = false | outlet-not-blended | hazard
      mill-cottage | immersion.timed = ["02:00-05:00"]; immersion.thermostat_C = 78 | cut-out-too-near-peak | query
      # safety chain
      mill-cottage | tank.unvented = false; tank.relief_C -; immersion.cutOut_C = 99 | cut-out-near-boiling | hazard
      mill-cottage | tank.unvented = false; tank.relief_C -; tank.coil.cutOut_C = 99 | cut-out-near-boiling | hazard
      mill-cottage | tank.unvented = false; tank.relief_C -; immersion.cutOut_C = 100 | chain-out-of-order | hazard
      mill-cottage | immersion.cutOut_C = 94; tank.relief_C = 95 | cut-out-near-boiling | query
      mill-cottage | immersion.ownCutOut = false | source-without-cut-out | hazard
      mill-cottage | immersion.ownCutOut = false; immersion.thermostat_C = 70; immersion.cutOut_C = 65 | chain-out-of-order | hazard
      mill-cottage | tank.coil.ownCutOut = false; tank.coil.cutOut_C = 60 | chain-out-of-order | hazard
      mill-cottage | tank.relief_C = 78 | chain-out-of-order | hazard
      mill-cottage | tank.relief_C = 85 | relief-below-class-a | query
      mill-cottage | tank.relief_C - | chain-out-of-order | open
      mill-cottage | tank.unvented - ; tank.relief_C - | chain-out-of-order | open
      mill-cottage | immersion.cutOut_C - | chain-out-of-order | open
      # Legionella: a disinfection that disinfects nothing
      zonnedijk | heatPump.everyday.start_C = 40; heatPump.disinfection.target_C = 30 | store-in-growth-band | hazard
      zonnedijk | heatPump.everyday.start_C = 40; heatPump.disinfection.every_days = 3650 | store-in-growth-band | hazard
      zonnedijk | heatPump.everyday.start_C = 40; heatPump.disinfection.hold_min = 1 | store-in-growth-band | hazard
      zonnedijk | heatPump.everyday.start_C = 40; heatPump.disinfection.hold_min = 0 | store-in-growth-band | hazard
      zonnedijk | heatPump.everyday.start_C = 40; heatPump.disinfection.every_days = 14 | store-in-growth-band | query
      ferme-des-tilleuls | tank.volume_L = 300; heatPump.everyday.start_C = 30; heatPump.disinfection = {"enabled":true,"target_C":30,"hold_min":0,"every_days":3650,"heater":"heat pump"} | store-in-growth-band | hazard
      ferme-des-tilleuls | tank.volume_L = 399; heatPump.everyday.start_C = 44; heatPump.disinfection.target_C = 50 | store-in-growth-band | hazard
      ferme-des-tilleuls | tank.volume_L = 399; heatPump.everyday.start_C = 44; heatPump.disinfection.every_days = 90 | store-in-growth-band | hazard
      ferme-des-tilleuls | tank.volume_L = 399; heatPump.everyday.start_C = 44; heatPump.disinfection.every_days = 20 | store-in-growth-band | query
      ferme-des-tilleuls | tank.volume_L = 399; heatPump.everyday.start_C = 46; heatPump.disinfection.enabled = false | no-disinfection | query
      ferme-des-tilleuls | tank.volume_L = 399; heatPump.everyday.start_C = 46; heatPump.disinfection.target_C = 45 | no-disinfection | query
      mill-cottage | heatPump.everyday.start_C = 44; heatPump.disinfection.target_C = 50 | store-in-growth-band | hazard
      mill-cottage | heatPump.everyday.start_C = 44; heatPump.disinfection.heater = none | store-in-growth-band | hazard
      mill-cottage | heatPump.everyday.start_C = 44; heatPump.disinfection.hold_min - | store-in-growth-band | open
      mill-cottage | heatPump.disinfection.target_C = 55 | disinfection-target-too-low | query
      mill-cottage | heatPump.disinfection.hold_min = 5 | disinfection-hold-too-short | query
      mill-cottage | heatPump.disinfection.every_days = 30 | disinfection-too-rare | query
      gum-tree-lane | immersion.height_mm = 825; heatPump.disinfection.mixesStore = false; heatPump.disinfection.hold_min = 31 | part-of-store-untreated | hazard
      gum-tree-lane | immersion.height_mm = 825; heatPump.disinfection.mixesStore = false; heatPump.disinfection.every_days = 14 | part-of-store-untreated | hazard
      gum-tree-lane | immersion.height_mm = 825; heatPump.disinfection.mixesStore = false; heatPump.disinfection.target_C = 59 | part-of-store-untreated | hazard
      # Legionella: a heater that is not there, or is not let
      zonnedijk | immersion = {"fitted":false} | no-disinfection | hazard
      zonnedijk | immersion = {"fitted":false} | absent-part-described | query
      zonnedijk | immersion.fitted = false | absent-part-described | query
      zonnedijk | heatPump.disinfection.heater = backup heater | no-disinfection | hazard
      mill-cottage | heatPump.disinfection.heater = backup heater; heatPump.backupHeater = {"fitted":false}; heatPump.everyday.start_C = 44 | store-in-growth-band | hazard
      zonnedijk | immersion - | no-disinfection | open
      zonnedijk | heatPump.disinfection.heater = surplus | disinfection-needs-sun | hazard
      zonnedijk | heatPump.disinfection.enabled = false | no-disinfection | hazard
      mill-cottage | immersion = {"fitted":false}; relay.drives = other | no-disinfection | query
      mill-cottage | diverter.limit_C = 58 | limit-below-disinfection | hazard
      mill-cottage | immersion.thermostat_C = 57 | immersion-thermostat-below-disinfection | hazard
      mill-cottage | diverter.demandInput = {"fitted":false} | demand-not-answered | hazard
      mill-cottage | diverter.demandInput.action = surplus only | disinfection-needs-sun | hazard
      mill-cottage | diverter.demandInput.action = none | demand-not-answered | hazard
      mill-cottage | diverter.limit_C = 57; heatPump.disinfection.target_C = 57.8 | disinfection-inside-sensor-error | query
      # Legionella: an everyday programme that does not run
      zonnedijk | heatPump.everyday = {"start_C":60,"stop_C":64,"blocked":[],"enabled":false,"timed":[]}; heatPump.disinfection.enabled = false | no-disinfection | hazard
      zonnedijk | heatPump.everyday = {"start_C":60,"stop_C":64,"blocked":[],"enabled":false,"timed":[]}; heatPump.disinfection.enabled = false | store-not-kept-warm | hazard
      zonnedijk | heatPump.everyday = {"start_C":60,"stop_C":64,"blocked":["00:00-00:00"],"enabled":true,"timed":[]}; heatPump.disinfection.enabled = false | store-not-kept-warm | hazard
      zonnedijk | heatPump.everyday = {"start_C":60,"stop_C":64,"blocked":["00:10-00:00"],"enabled":true,"timed":[]}; heatPump.disinfection.enabled = false | store-not-kept-warm | query
      zonnedijk | heatPump.everyday = {"start_C":60,"stop_C":64,"blocked":[],"enabled":true,"timed":["03:00-03:05"]}; heatPump.disinfection.enabled = false | no-disinfection | hazard
      zonnedijk | heatPump.everyday = {"start_C":60,"stop_C":64,"blocked":["02:00-04:00"],"enabled":true,"timed":["02:00-04:00"]}; heatPump.disinfection.enabled = false | store-not-kept-warm | hazard
      zonnedijk | heatPump.everyday = {"start_C":60,"stop_C":64,"blocked":[],"timed":[]}; heatPump.disinfection.enabled = false | no-disinfection | open
      ferme-des-tilleuls | tank.volume_L = 300; heatPump.everyday.enabled = false; heatPump.disinfection.enabled = false | store-not-kept-warm | hazard
      mill-cottage | heatPump.everyday.enabled = false; heatPump.disinfection.enabled = false; immersion.timed = ["03:00-03:01"] | store-not-kept-warm | hazard
      mill-cottage | heatPump.everyday.enabled = false; heatPump.disinfection.enabled = false; immersion.timed = ["00:00-06:00"]; immersion.thermostat_C = 40 | store-not-kept-warm | hazard
      # Legionella: a cycle of somewhere else
      mill-cottage | site.disinfectionCycle = Order of 30 Nov 2005; heatPump.disinfection.enabled = false; heatPump.everyday.start_C = 45.5 | no-disinfection | query
      mill-cottage | site.disinfectionCycle = Order of 30 Nov 2005 | cycle-does-not-cover-store | query
      zonnedijk | site.disinfectionCycle = Order of 30 Nov 2005; heatPump.disinfection.enabled = false | no-disinfection | hazard
      zonnedijk | site.disinfectionCycle = GB domestic; heatPump.disinfection.enabled = false | no-disinfection | hazard
      zonnedijk | site.disinfectionCycle = AS 3498; heatPump.disinfection.hold_min = 0; heatPump.disinfection.every_days = 1 | disinfection-hold-too-short | hazard
      ferme-des-tilleuls | site.disinfectionCycle = ISSO 55.1; heatPump.disinfection.every_days = 7 | disinfection-too-rare | hazard
      gum-tree-lane | site.country = CH; site.disinfectionCycle = Order of 30 Nov 2005 | cycle-does-not-cover-store | query
      # Legionella: no heat pump, circulation, a tank that is not there
      mill-cottage | heatPump = {"fitted":false}; relay = {"fitted":false}; diverter.limit_C = 35 | store-in-growth-band | hazard
      mill-cottage | heatPump = {"fitted":false}; relay = {"fitted":false}; immersion.thermostat_C = 40 | store-in-growth-band | hazard
      mill-cottage | heatPump = {"fitted":false}; relay = {"fitted":false}; diverter.limit_C = 50 | no-disinfection | query
      mill-cottage | heatPump = {"fitted":false}; relay = {"fitted":false}; diverter = {"fitted":false}; immersion.thermostat_C = 45 | store-in-growth-band | hazard
      mill-cottage | heatPump = {"fitted":false}; relay = {"fitted":false}; immersion.timed = ["03:00-03:01"] | store-not-kept-warm | query
      mill-cottage | heatPump.fitted = false | absent-part-described | query
      mill-cottage | heatPump = {"fitted":false} | absent-part-described | query
      mill-cottage | tank.fitted = false | absent-part-described | query
      mill-cottage | tank = {"fitted":false} | absent-part-described | query
      mill-cottage | tank.circulation = true; tank.circulationTimes = [] | circulation-hardly-runs | query
      mill-cottage | tank.circulation = true; tank.circulationTimes = ["06:00-06:01"] | circulation-hardly-runs | query
      mill-cottage | tank.circulation = true | circulation-hardly-runs | open
      # shock and fire
      mill-cottage | isolation.provedDead = false | mains-demand-not-proved-dead | hazard
      mill-cottage | isolation.demandSignalIsolated = false | mains-demand-not-proved-dead | hazard
      mill-cottage | isolation - | mains-demand-not-proved-dead | open
      mill-cottage | diverter.demandInput.fitted = false; isolation.provedDead = false | absent-part-described | query
      ferme-des-tilleuls | diverter.demandInput = {"from":"heat pump","signal":"mains","accepts":"mains","phase":"L2","action":"full power"}; diverter.phase = L1 | demand-signal-on-other-phase | hazard
      mill-cottage | diverter.demandInput.accepts = volt-free | demand-signal-mismatched | hazard
      mill-cottage | immersion.circuit.secondSwitch = true | second-switch-bypasses-diverter | hazard
      mill-cottage | immersion.circuit.ownCircuit = false | shared-circuit | hazard
      mill-cottage | immersion.circuit.flexHeatResistant = false | flex-not-heat-resistant | hazard
      mill-cottage | immersion.circuit.flex_mm2 = 0.75 | flex-too-small | hazard
      mill-cottage | immersion.circuit.breaker_A = 40 | breaker-above-cable | hazard
      mill-cottage | relay.segregated = false | extra-low-voltage-beside-mains | hazard
      mill-cottage | relay.voltFree = false | contact-not-volt-free | damage
      mill-cottage | immersion.fitted = false; immersion.circuit.flexHeatResistant = false | absent-part-described | query
      # the grid pays
      mill-cottage | relay.start_kW = 0.2; relay.stop_kW = 0.1 | gap-below-heat-pump-draw | damage
      mill-cottage | relay.stop_kW = 3.2 | stop-not-below-start | damage
      mill-cottage | relay.stop_kW = -2 | stop-lets-grid-in | waste
      mill-cottage | gridSensor = {"fitted":false} | no-grid-sensor | waste
      mill-cottage | gridSensor.heatPumpBehind = false | heat-pump-outside-meter | waste
      mill-cottage | heatPump.backupHeater.allowedOnSurplus = true | backup-joins-on-surplus | waste
      """;

  record Attack(String home, String changes, String check, String least) {

    static Attack of(String row) {
      String[] cells = row.split(" \\| ", -1);
      return new Attack(cells[0].strip(), cells[1].strip(), cells[2].strip(), cells[3].strip());
    }

    String text() {
      String text = Setups.text(Path.of("sample-configs/good", home + ".json"));
      for (String change : changes.split(";", -1)) {
        text = changed(text, change.strip());
      }
      return text;
    }

    private static String changed(String text, String change) {
      Document document = Setups.read("attack", text).document();
      if (change.endsWith(" -")) {
        return document.without(Pointer.ofDotted(change.replace(" -", "")));
      }
      String[] sides = change.split(" = ", 2);
      return Edit.set(document, Pointer.ofDotted(sides[0]), literal(sides[1])).apply(document);
    }

    private static Literal literal(String value) {
      boolean json = value.matches("[\\[{].*|-?[0-9.]+|true|false");
      return json ? Literal.of(Fragment.parse(value)) : Literal.of(value);
    }
  }

  static Stream<Attack> attacks() {
    return ATTACKS.lines().filter(line -> !line.startsWith("#")).map(Attack::of);
  }

  @ParameterizedTest
  @MethodSource("attacks")
  void anAttackIsFound(Attack attack) {
    Judgement judgement =
        QUICK.judge(Setups.read("attack", attack.text()).setup(), Limits.standard(), Setups.AS_OF);
    List<String> found =
        judgement.findings().stream()
            .map(finding -> finding.check().name() + " " + finding.consequence().word())
            .toList();
    if (attack.least().equals("open")) {
      assertThat(judgement.notJudged())
          .anyMatch(open -> open.check().name().equals(attack.check()));
      return;
    }
    Consequence least = Consequence.of(attack.least());
    assertThat(judgement.findings())
        .as("%s", found)
        .anyMatch(
            finding ->
                finding.check().name().equals(attack.check())
                    && finding.consequence().compareTo(least) <= 0);
    assertThat(judgement.verdict()).isNotEqualTo(Verdict.READY);
  }

  @Test
  void thereAreAHundredAttacksAndMore() {
    assertThat(attacks().distinct()).hasSizeGreaterThanOrEqualTo(100);
  }
}
