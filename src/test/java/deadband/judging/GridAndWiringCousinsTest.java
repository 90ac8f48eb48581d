package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import deadband.document.Document;
import deadband.document.Edit;
import deadband.document.Literal;
import deadband.document.Pointer;
import deadband.limits.Limits;
import deadband.reading.JsonReading;
import deadband.reading.SetupReading;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Good homes with one thing typed or left out to fool the checks of grid and wiring. None may come
 * out ready, and the check named must say why, or be open.
 */
class GridAndWiringCousinsTest {

  /** Sample; what is changed; the check that must find it, or be left open for want of a value. */
  private static final String ATTEMPTS =
      """
      tanners-row ; diverter.exportMargin_kW = -0.1 ; export-margin-imports
      tanners-row ; diverter.exportMargin_kW = -0.5 ; export-margin-imports
      tanners-row ; diverter.exportMargin_kW = -3 ; export-margin-imports
      tanners-row ; diverter.exportMargin_kW = -1, supply.exportPaid = true ; export-margin-imports
      tanners-row ; diverter.exportMargin_kW = -1, gridSensor.accuracyClass = 1 ; export-margin-imports
      fernleigh-bungalow ; diverter.exportMargin_kW = -0.25 ; export-margin-imports
      gum-tree-lane ; diverter.exportMargin_kW = -0.6 ; export-margin-imports
      tanners-row ; immersion.timed = ["00:00-00:00"] ; immersion-timed-from-grid
      tanners-row ; immersion.timed = ["00:00-12:00", "12:00-00:00"] ; immersion-timed-from-grid
      tanners-row ; immersion.timed = ["03:00-05:00"] ; immersion-timed-from-grid
      tanners-row ; immersion.timed = ["22:00-23:00"] ; immersion-timed-from-grid
      tanners-row ; immersion.timed = ["10:00-16:00"] ; immersion-timed-from-grid
      tanners-row ; immersion.timed = ["01:00-02:00", "13:00-14:00"] ; immersion-timed-from-grid
      tanners-row ; immersion.timed = ["00:00-23:59"], immersion.thermostat_C = 61 ; immersion-timed-from-grid
      tanners-row ; immersion.timed = ["00:00-00:00"], heatPump.everyday.enabled = false ; immersion-timed-from-grid
      fernleigh-bungalow ; immersion.timed = ["02:00-05:00"] ; immersion-timed-from-grid
      fernleigh-bungalow ; immersion.timed = ["00:00-00:00"], diverter.demandInput.action = none ; immersion-timed-from-grid
      gum-tree-lane ; immersion.timed = ["23:00-06:00"] ; immersion-timed-from-grid
      fernleigh-bungalow ; battery.mayDischargeInto = ["immersion"] ; battery-feeds-immersion
      fernleigh-bungalow ; battery.mayDischargeInto = ["house", "immersion", "charger"] ; battery-feeds-immersion
      fernleigh-bungalow ; battery.mayDischargeInto = ["heat pump", "immersion"] ; battery-feeds-immersion
      fernleigh-bungalow ; battery.power_kW = 0.5, battery.mayDischargeInto = ["immersion"] ; battery-feeds-immersion
      gum-tree-lane ; solar.phase = L2 ; pv-on-other-phase
      gum-tree-lane ; solar.phase = L3 ; sensor-on-wrong-phase
      gum-tree-lane ; diverter.phase = L2 ; pv-on-other-phase
      gum-tree-lane ; diverter.phase = L2, gridSensor.phases = 3 ; pv-on-other-phase
      gum-tree-lane ; heatPump.phase = L3 ; pv-on-other-phase
      gum-tree-lane ; heatPump.phase = L3, gridSensor.phases = 3 ; pv-on-other-phase
      gum-tree-lane ; heatPump.phases = 3 ; three-phase-draw-on-one-phase-surplus
      gum-tree-lane ; gridSensor.phase = L2 ; sensor-on-wrong-phase
      gum-tree-lane ; gridSensor.phase = L2, diverter.phase = L2 ; pv-on-other-phase
      gum-tree-lane ; supply.billing = netted ; controller-sees-one-phase
      gum-tree-lane ; supply.billing = netted, solar.phase = L2 ; sensor-on-wrong-phase
      gum-tree-lane ; supply.phases = 1, solar.phase = L2 ; phases-beyond-supply
      gum-tree-lane ; supply.phases = 1, diverter.phase = L3 ; phases-beyond-supply
      gum-tree-lane ; supply.phases = 1, heatPump.phase = L2 ; phases-beyond-supply
      gum-tree-lane ; supply.phases = 1, heatPump.phases = 3 ; phases-beyond-supply
      gum-tree-lane ; supply.phases = 1, solar.phases = 3 ; phases-beyond-supply
      tanners-row ; gridSensor.phases = 3 ; phases-beyond-supply
      tanners-row ; solar.phases = 2 ; phases-beyond-supply
      fernleigh-bungalow ; vehicleCharger.phases = 3 ; phases-beyond-supply
      fernleigh-bungalow ; diverter.phase = L2 ; phases-beyond-supply
      tanners-row ; gridSensor.heatPumpBehind = not entered ; heat-pump-outside-meter
      tanners-row ; gridSensor.heatPumpBehind = false ; heat-pump-outside-meter
      gum-tree-lane ; gridSensor.heatPumpBehind = not entered ; heat-pump-outside-meter
      fernleigh-bungalow ; gridSensor.heatPumpBehind = not entered ; heat-pump-outside-meter
      tanners-row ; solar.fitted = false ; no-pv-for-surplus
      tanners-row ; solar.peak_kW = 0 ; no-pv-for-surplus
      tanners-row ; solar.inverter_kW = 0 ; no-pv-for-surplus
      gum-tree-lane ; solar.fitted = false ; no-pv-for-surplus
      fernleigh-bungalow ; solar.fitted = false ; no-pv-for-surplus
      tanners-row ; relay.drives = other ; surplus-input-not-called
      tanners-row ; relay.drives = element ; surplus-input-not-called
      tanners-row ; relay.fitted = false ; surplus-input-not-called
      fernleigh-bungalow ; relay.drives = other ; surplus-input-not-called
      gum-tree-lane ; relay.drives = other ; surplus-input-not-called
      tanners-row ; relay.drives = other, heatPump.surplusInput.via = network ; surplus-input-not-called
      tanners-row ; relay.drives = other, relay.segregated = false ; extra-low-voltage-beside-mains
      tanners-row ; relay.drives = other, relay.voltFree = false ; contact-not-volt-free
      tanners-row ; relay.drives = other, heatPump.surplusInput.via = supply ; call-by-supply-cut
      tanners-row ; relay.drives = other, heatPump.surplusInput.closedMeans = block ; surplus-input-is-block
      tanners-row ; relay.drives = other, relay.contact = normally closed ; contact-sense-reversed
      tanners-row ; relay.drives = other, relay.segregated = not entered ; extra-low-voltage-beside-mains
      tanners-row ; heatPump.fitted = false ; absent-part-described
      tanners-row ; immersion.fitted = false ; absent-part-described
      tanners-row ; gridSensor.fitted = false ; absent-part-described
      tanners-row ; gridSensor.fitted = false ; no-grid-sensor
      tanners-row ; relay.counts = ["export", "immersion", "battery"] ; absent-part-described
      fernleigh-bungalow ; battery.fitted = false ; absent-part-described
      gum-tree-lane ; immersion.fitted = false ; absent-part-described
      fernleigh-bungalow ; heatPump.fitted = false ; absent-part-described
      tanners-row ; gridSensor.rated_A = 10 ; sensor-rated-too-low
      tanners-row ; gridSensor.rated_A = 15 ; sensor-rated-too-low
      fernleigh-bungalow ; gridSensor.rated_A = 40 ; sensor-rated-too-low
      gum-tree-lane ; gridSensor.rated_A = 20 ; sensor-rated-too-low
      tanners-row ; immersion.circuit.cableRating_A = 40 ; entered-rating-above-conductor
      tanners-row ; immersion.circuit.cableRating_A = 28 ; entered-rating-above-conductor
      tanners-row ; immersion.circuit.method = 103 ; breaker-above-cable
      tanners-row ; immersion.circuit.method = 103, immersion.circuit.cableRating_A = 16 ; breaker-above-cable
      tanners-row ; immersion.circuit.breaker_A = 32, immersion.circuit.cableRating_A = 32 ; breaker-above-cable
      tanners-row ; immersion.circuit.breaker_A = 63, immersion.circuit.cableRating_A = 63 ; breaker-above-cable
      tanners-row ; immersion.circuit.cable_mm2 = 1.5, immersion.circuit.breaker_A = 32, immersion.circuit.cableRating_A = 32 ; breaker-above-cable
      tanners-row ; site.country = FR, immersion.circuit.cable_mm2 = 1.5, immersion.circuit.cableRating_A = 50 ; entered-rating-above-conductor
      tanners-row ; site.country = FR, immersion.circuit.breaker_A = 32, immersion.circuit.cable_mm2 = 1.5, immersion.circuit.cableRating_A = 50 ; breaker-above-cable
      tanners-row ; site.country = NL, immersion.circuit.breaker_A = 32 ; breaker-above-cable
      tanners-row ; immersion.circuit.flex_mm2 = 0.75 ; flex-too-small
      tanners-row ; immersion.circuit.flex_mm2 = 0.75, immersion.circuit.flexRating_A = 32 ; flex-too-small
      tanners-row ; immersion.circuit.flex_mm2 = 0.5, immersion.circuit.flexRating_A = 16 ; flex-too-small
      tanners-row ; immersion.circuit.flex_mm2 = 1.0, immersion.circuit.flexRating_A = 20 ; flex-too-small
      tanners-row ; immersion.circuit.flexRating_A = 30 ; entered-rating-above-conductor
      tanners-row ; immersion.circuit.rcdType = none ; rcd-type-for-electronics
      tanners-row ; immersion.circuit.rcdType = AC ; rcd-type-for-electronics
      tanners-row ; diverter.maximum_kW = 2 ; element-above-diverter-rating
      tanners-row ; immersion.power_kW = 6, diverter.maximum_kW = not entered ; element-above-diverter-rating
      tanners-row ; immersion.circuit.ownCircuit = false ; shared-circuit
      tanners-row ; immersion.circuit.secondSwitch = true ; second-switch-bypasses-diverter
      tanners-row ; immersion.circuit.length_m = 80 ; volt-drop-too-large
      tanners-row ; immersion.power_kW = 4, immersion.circuit.breaker_A = 13 ; heater-current-above-breaker
      tanners-row ; immersion.ratedAt_V = 230, immersion.circuit.breaker_A = 13 ; heater-current-above-breaker
      tanners-row ; diverter.sensor.measured_ohm = 1175 ; tank-sensor-implausible
      tanners-row ; diverter.sensor.measured_ohm = 1187.5 ; tank-sensor-implausible
      fernleigh-bungalow ; vehicleCharger.ordered = false, vehicleCharger.before = ["heat pump"] ; two-followers-one-surplus
      tanners-row ; relay.start_kW = -0.5, relay.stop_kW = -0.5 ; stop-lets-grid-in
      tanners-row ; isolation.immersionIsolated = false ; isolation-not-confirmed
      """;

  @TestFactory
  Stream<DynamicTest> noneComesOutReady() {
    return ATTEMPTS
        .lines()
        .map(line -> Arrays.stream(line.split(";")).map(String::strip).toList())
        .map(parts -> dynamicTest(String.join(" ; ", parts), () -> assertFound(parts)));
  }

  private static void assertFound(List<String> parts) {
    String text = Setups.text(Path.of("sample-configs/good", parts.get(0) + ".json"));
    for (String change : parts.get(1).split(",(?=\\s*[a-zA-Z]+\\.)", -1)) {
      String[] sides = change.split("=", 2);
      text = changed(text, Pointer.ofDotted(sides[0].strip()), sides[1].strip());
    }
    SetupReading.Read read = Setups.read(parts.get(0), text);
    Judgement judgement = Setups.JUDGE.glance(read.setup(), Limits.standard(), Setups.AS_OF);

    List<String> said =
        Stream.concat(
                judgement.findings().stream().map(finding -> finding.check().name()),
                judgement.notJudged().stream().map(open -> open.check().name()))
            .toList();
    assertThat(said).contains(parts.get(2));
    assertThat(judgement.verdict()).isNotEqualTo(Verdict.READY);
  }

  private static String changed(String setup, Pointer pointer, String value) {
    Document document = Setups.read("attempt", setup).document();
    if (value.equals("not entered")) {
      return document.find(pointer).isPresent() ? document.without(pointer) : setup;
    }
    return Edit.set(document, pointer, literal(value)).apply(document);
  }

  private static Literal literal(String value) {
    JsonReading reading = JsonReading.ofText("value", "{ \"value\": " + value + " }");
    return reading instanceof JsonReading.Read read && read.problems().isEmpty()
        ? Literal.of(read.document().root().get("value").orElseThrow())
        : Literal.of(value);
  }
}
