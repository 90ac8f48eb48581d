package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import deadband.document.Pointer;
import deadband.document.ProblemText;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.remedy.Proposal;
import deadband.remedy.Proposer;
import deadband.setup.Change;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Homes that an engineer judged before the tool did, where the data folder is there: what was said
 * of each, in terms of class and subject.
 */
class FieldHomesTest {

  private static Path folder() {
    @Nullable String data = System.getProperty("deadband.data");
    Path homes = Path.of(data == null ? "" : data, "field");
    assumeTrue(
        data != null && !data.isBlank() && Files.isDirectory(homes),
        "skipped: set -Ddeadband.data to the folder that holds field/");
    return homes;
  }

  private static SetupReading.Read read(String home) {
    return Setups.read(home, Setups.text(folder().resolve(home + ".json")));
  }

  private static Judgement judge(String home) {
    return Setups.judge(read(home));
  }

  /**
   * A home to sign: nothing is found but the questions an engineer asks: a 150 L tank that the
   * element fills first, a stop that only the tolerance of the sensor puts out of reach.
   */
  static Stream<Map.Entry<String, Set<String>>> toSign() {
    return new TreeMap<>(
            Map.of(
                "good/g2-canal-terrace-150L", Set.of("heater-fills-tank-first"),
                "good/g4-polderhuis-battery-charger", Set.<String>of(),
                "good/g6-clonmore-pump-counted", Set.of("stop-above-compressor-reach"),
                "good/mill4450", Set.<String>of()))
        .entrySet().stream();
  }

  @ParameterizedTest
  @MethodSource("toSign")
  void aGoodHomeIsSigned(Map.Entry<String, Set<String>> home) {
    Judgement judgement = judge(home.getKey());

    assertThat(judgement.verdict()).as(said(judgement)).isNotEqualTo(Verdict.NOT_READY);
    assertThat(judgement.findings())
        .as(said(judgement))
        .allMatch(finding -> home.getValue().contains(finding.check().name()));
    assertThat(judgement.notJudged()).as(said(judgement)).noneMatch(NotJudged::holdsUpSignOff);
  }

  @ParameterizedTest
  @CsvSource({
    "faulty/f1-support-desk-short-cycling, damage, gap-below-heat-pump-draw, /relay/stop_kW",
    "faulty/f1-support-desk-short-cycling, damage, no-cloud-delay, /relay/stopDelay_min",
    "faulty/f1-support-desk-short-cycling, waste, own-heater-not-counted, /relay/counts",
    "faulty/f1-support-desk-short-cycling, waste, start-below-heat-pump-draw, /relay/start_kW",
    "faulty/f3-R410A-asked-too-much, hazard, disinfection-above-compressor-reach, /heatPump/disinfection/target_C",
    "faulty/f3-R410A-asked-too-much, damage, stop-above-compressor-reach, /heatPump/surplus/stop_C",
    "faulty/f3-R410A-asked-too-much, damage, stop-above-compressor-reach, /heatPump/everyday/stop_C",
    "faulty/f3-R410A-asked-too-much, waste, backup-joins-on-surplus, /heatPump/backupHeater/allowedOnSurplus",
    "faulty/f3-R410A-asked-too-much, waste, start-command-with-auxiliary, /heatPump/surplusInput/sgReadyState",
    "faulty/f3-R410A-asked-too-much, waste, surplus-start-below-everyday-stop, /heatPump/surplus/start_C",
    "faulty/f3-R410A-asked-too-much, waste, circulation-cools-store, /tank/circulation",
    "faulty/f3-R410A-asked-too-much, query, call-also-heats-rooms, /heatPump/surplusInput/alsoHeatsRooms",
    "faulty/f3-R410A-asked-too-much, query, call-hold-below-minimum, /heatPump/surplusInput/hold_min",
    "faulty/f6-retrofit-wiring, hazard, second-switch-bypasses-diverter, /immersion/circuit/secondSwitch",
    "faulty/f6-retrofit-wiring, hazard, demand-signal-on-other-phase, /diverter/demandInput/phase",
    "faulty/f6-retrofit-wiring, hazard, demand-signal-mismatched, /diverter/demandInput/signal",
    "faulty/f6-retrofit-wiring, hazard, shared-circuit, /immersion/circuit/ownCircuit",
    "faulty/f6-retrofit-wiring, hazard, flex-not-heat-resistant, /immersion/circuit/flexHeatResistant",
    "faulty/f6-retrofit-wiring, hazard, extra-low-voltage-beside-mains, /relay/segregated",
    "faulty/f6-retrofit-wiring, hazard, mains-demand-not-proved-dead, /isolation/demandSignalIsolated",
    "faulty/f6-retrofit-wiring, hazard, disinfection-needs-sun, /diverter/demandInput/action",
    "faulty/f6-retrofit-wiring, damage, contact-not-volt-free, /relay/voltFree",
    "faulty/f6-retrofit-wiring, damage, unused-sensor-input-assigned, /diverter/currentSensors",
    "faulty/f6-retrofit-wiring, damage, clearance-too-small, /diverter",
    "faulty/f6-retrofit-wiring, damage, ambient-above-rating, /diverter/ambient_C",
    "faulty/f6-retrofit-wiring, waste, contact-sense-reversed, /relay/contact",
    "faulty/f6-retrofit-wiring, waste, heat-pump-outside-meter, /gridSensor/heatPumpBehind",
    "faulty/f6-retrofit-wiring, query, tank-sensor-implausible, /diverter/sensor/measured_ohm",
    "faulty/f6-retrofit-wiring, query, tank-sensor-loose, /diverter/sensor/inPocket",
    "faulty/f6-retrofit-wiring, query, sensor-facing-unchecked, /gridSensor/facing",
    "faulty/f6-retrofit-wiring, query, rcd-type-for-electronics, /immersion/circuit/rcdType",
    "faulty/f6-retrofit-wiring, record, as-found-not-recorded, /asFound/photographed",
  })
  void aFaultIsFoundInItsClass(String home, String consequence, String check, String at) {
    Judgement judgement = judge(home);

    assertThat(judgement.verdict()).isEqualTo(Verdict.NOT_READY);
    assertThat(judgement.findings())
        .as(said(judgement))
        .anyMatch(
            finding ->
                finding.check().name().equals(check)
                    && finding.consequence().word().equals(consequence)
                    && finding.detail().at().stream().anyMatch(p -> isUnder(p, at)));
  }

  /** One fault each, which once came out ready: it is found, or asked for, at its place. */
  @ParameterizedTest
  @CsvSource({
    "single/01-battery-into-immersion, /battery",
    "single/03-pv-L2-rest-L1-per-phase, /solar/phase /diverter/phase",
    "single/05-CT-20A-on-8kW, /gridSensor/rated_A",
    "single/06-surplus-blocked-by-day, /heatPump/surplus/blocked",
    "single/09-hp-sensor-below-coil, /heatPump/sensor_mm",
    "single/11-north-roof, /relay/start_kW /solar/azimuth_deg",
    "single/13-timed-immersion-at-night, /immersion/timed",
    "single/15-margin-imports, /diverter/exportMargin_kW",
    "single/16-COP-below-1, /heatPump/hotWaterOutput_kW",
    "single/19-relay-drives-other, /relay/drives",
    "single/obs, /observed/startsPerHour /observed/typicalRun_min",
    "unsafe/R01a, /outlets /blending",
    "unsafe/R02a, /blending /outlets",
    "unsafe/R03, /blending/hotSupplyMax_C /diverter/limit_C",
    "unsafe/R04, /outlets",
    "unsafe/R05, /outlets",
    "unsafe/R06, /immersion/thermostat_C /outlets",
    "unsafe/R07, /diverter/limit_C",
    "unsafe/R08, /site/disinfectionCycle /heatPump/disinfection /heatPump/everyday",
    "unsafe/R09b, /heatPump/disinfection /heatPump/everyday",
    "unsafe/R10a, /heatPump/everyday",
    "unsafe/R11b, /relay/drives /immersion",
    "unsafe/R12, /heatPump/disinfection/allowed",
    "unsafe/R15a, /diverter/exportMargin_kW",
    "unsafe/R16, /immersion/timed",
    "unsafe/R18, /gridSensor/heatPumpBehind",
    "unsafe/R20a, /immersion/circuit",
    "unsafe/R25, /tank /immersion/cutOut_C",
    "unsafe/m04a, /heatPump/disinfection/allowed",
    "unsafe/m18c, /diverter/phase /solar/phase",
    "unsafe/m48, /heatPump/surplus/blocked",
  })
  void aSingleFaultIsNotReady(String home, String places) {
    Judgement judgement = judge(home);

    assertThat(judgement.verdict()).as(said(judgement)).isNotEqualTo(Verdict.READY);
    assertThat(touched(judgement))
        .as(said(judgement))
        .anyMatch(p -> Stream.of(places.split(" ")).anyMatch(at -> isUnder(p, at)));
  }

  private static Stream<Pointer> touched(Judgement judgement) {
    return Stream.concat(
        judgement.findings().stream().flatMap(finding -> finding.detail().at().stream()),
        judgement.notJudged().stream().flatMap(open -> open.missing().stream()));
  }

  private static boolean isUnder(Pointer pointer, String place) {
    return pointer.startsWith(Pointer.parse(place));
  }

  private static String said(Judgement judgement) {
    List<String> found =
        judgement.findings().stream()
            .map(f -> f.consequence().word() + " " + f.check().name() + " " + f.detail().at())
            .toList();
    return found + ", not judged " + judgement.notJudged();
  }

  /** Legal or nearly legal values: judged, and a proposal made, or refused with a clear message. */
  @ParameterizedTest
  @CsvSource({
    "crash/limit_C-101",
    "crash/hysteresis_K-100",
    "crash/rated_A-0",
    "crash/propose-volume-1"
  })
  void noValueEndsInAFault(String home) {
    SetupReading reading = SetupReading.ofText(home, Setups.text(folder().resolve(home + ".json")));
    if (reading instanceof SetupReading.Unreadable unreadable) {
      assertThat(ProblemText.of(unreadable.problems(), 100)).contains(" ");
      return;
    }
    assertThat(proposal((SetupReading.Read) reading).before().verdict()).isNotNull();
  }

  private static Proposal proposal(SetupReading.Read read) {
    return new Proposer(Setups.JUDGE, Limits.standard(), Setups.AS_OF, List.of())
        .propose(read.setup());
  }

  /** Every change that a finding or the proposal offers. */
  private static List<Change> offered(String home) {
    SetupReading.Read read = read(home);
    Stream<Change> byFinding =
        Setups.judge(read).findings().stream().flatMap(finding -> finding.changes().stream());
    return Stream.concat(byFinding, proposal(read).changes().stream()).toList();
  }

  @ParameterizedTest
  @CsvSource({"remedy/breaker", "faulty/f6-retrofit-wiring"})
  void noLargerBreakerIsOffered(String home) {
    assertThat(offered(home))
        .noneMatch(c -> isUnder(c.pointer(), "/immersion/circuit/breaker_A") && isRaised(c));
  }

  private static boolean isRaised(Change change) {
    return !(change.from() instanceof Double from) || (Double) change.to() > from;
  }

  @Test
  void noHeaterThatIsNotFittedIsOffered() {
    assertThat(offered("remedy/heater-none-no-immersion-norelay"))
        .noneMatch(
            change ->
                isUnder(change.pointer(), "/heatPump/disinfection/heater")
                    && change.to().toString().equals("IMMERSION"));
  }

  @Test
  void noStopBelowItsStartIsOffered() {
    SetupReading.Read read = read("remedy/small-tank");
    List<Judgement> changed =
        Setups.judge(read).findings().stream()
            .map(
                finding ->
                    Setups.JUDGE.glance(
                        Change.all(finding.changes(), read.setup()),
                        Limits.standard(),
                        Setups.AS_OF))
            .toList();

    assertThat(changed).isNotEmpty();
    assertThat(changed)
        .allMatch(
            after ->
                after.findings().stream()
                    .noneMatch(f -> f.check().name().equals("stop-not-above-start")));
  }
}
