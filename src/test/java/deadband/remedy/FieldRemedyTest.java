package deadband.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import deadband.days.DayRuns;
import deadband.days.YearRuns;
import deadband.document.Pointer;
import deadband.judging.Finding;
import deadband.judging.Judge;
import deadband.judging.Remedy;
import deadband.judging.Setups;
import deadband.judging.Trust;
import deadband.limits.Limits;
import deadband.setup.Change;
import deadband.setup.Disinfection.Heater;
import deadband.setup.Setup;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Homes with an engineer's verdict on what may be advised, and a hunting site with three phases.
 */
class FieldRemedyTest {
  private static final Judge JUDGE =
      new Judge(Setups.JUDGE.book(), DayRuns.remembered(), YearRuns.remembered());

  private static final Pointer START = Pointer.ofDotted("relay.start_kW");
  private static final Pointer STOP = Pointer.ofDotted("relay.stop_kW");
  private static final Pointer COUNTS = Pointer.ofDotted("relay.counts");

  private static Setup field(String name) {
    Path file = Path.of(System.getProperty("deadband.data", ""), "field", name);
    assumeTrue(Files.exists(file), "deadband.data holds no " + name);
    return Setups.read(name, Setups.text(file)).setup();
  }

  private static Proposal proposal(Setup setup) {
    return new Proposer(JUDGE, Limits.standard(), Setups.AS_OF, List.of()).propose(setup);
  }

  /** Every change that a check offers, in a remedy or an alternative. */
  private static Stream<Change> offered(Setup setup) {
    return JUDGE.judge(setup, Limits.standard(), Setups.AS_OF).findings().stream()
        .flatMap(finding -> finding.remedies().stream())
        .flatMap(remedy -> remedy.changes().stream());
  }

  @Test
  void neverALargerBreakerOnACableThatDoesNotCarryIt() {
    for (String name : List.of("remedy/breaker.json", "faulty/f6-retrofit-wiring.json")) {
      Setup setup = field(name);
      double breaker_A = setup.immersion().circuit().breaker_A().optional().orElseThrow();

      assertThat(offered(setup))
          .noneMatch(
              change ->
                  change.pointer().dotted().equals("immersion.circuit.breaker_A")
                      && (double) change.to() > breaker_A);
      assertThat(proposal(setup).changes())
          .noneMatch(change -> change.pointer().dotted().contains("circuit"));
    }
  }

  @Test
  void aStartThatIsOfferedIsReachedAndStartsTheHeatPump() {
    Setup setup = field("remedy/reach.json");
    Setup changed = Change.all(proposal(setup).changes(), setup);

    assertThat(changed.relay().start_kW().optional().orElseThrow()).isBetween(1.9, 2.4);
    assertThat(YearRuns.remembered().of(changed).orElseThrow().heatPumpOnSurplus_kWh())
        .isPositive();
  }

  @Test
  void neverAHeaterThatIsNotFitted() {
    Setup setup = field("remedy/heater-none-no-immersion-norelay.json");

    assertThat(offered(setup)).noneMatch(change -> Heater.IMMERSION.equals(change.to()));
  }

  @Test
  void neverAStopBelowItsStart() {
    Setup setup = field("remedy/small-tank.json");
    Setup changed = Change.all(proposal(setup).changes(), setup);

    assertThat(changed.heatPump().everyday().stop_C().optional().orElseThrow())
        .isGreaterThan(changed.heatPump().everyday().start_C().optional().orElseThrow());
  }

  /** Count the immersion, start 2.3 to 2.5, stop 0.1 to 0.2. */
  @Test
  void theSupportDesksHuntingIsCuredAsTheEngineerWould() {
    Setup setup = field("faulty/f1-support-desk-short-cycling.json");
    Setup changed = Change.all(proposal(setup).changes(), setup);

    assertThat(changed.relay().counts().optional().orElseThrow())
        .extracting(Object::toString)
        .containsExactly("EXPORT", "IMMERSION");
    assertThat(changed.relay().start_kW().optional().orElseThrow()).isBetween(2.3, 2.5);
    assertThat(changed.relay().stop_kW().optional().orElseThrow()).isBetween(0.1, 0.2);
  }

  /** Counting the pump, or 5.3 and 0.1; never a start far above the draw. */
  @Test
  void aHuntingSiteWithThreePhasesIsOfferedTheSmallStopOrThePumpCounted() {
    Setup setup =
        Setups.read(
                "three phases",
                """
                { "supply": { "phases": 3, "billing": "netted", "voltage_V": 230 },
                  "solar": { "peak_kW": 12, "inverter_kW": 10, "exportLimit_kW": 10, "phases": 3 },
                  "house": { "baseLoad_kW": 0.4 },
                  "gridSensor": { "phases": 3, "rated_A": 50, "accuracyClass": 0.5 },
                  "immersion": { "power_kW": 3, "ratedAt_V": 230 },
                  "diverter": { "limit_C": 62 },
                  "relay": { "drives": "heat pump", "counts": ["export", "immersion"],
                             "start_kW": 5.0, "stop_kW": 4.5, "startDelay_min": 3,
                             "stopDelay_min": 3 },
                  "heatPump": { "phases": 3, "hotWaterInput_kW": 5.0, "minimumInput_kW": 2.0 } }
                """)
            .setup();
    Finding hunts =
        JUDGE.judge(setup, Limits.standard(), Setups.AS_OF).findings().stream()
            .filter(finding -> finding.check().name().equals("gap-below-heat-pump-draw"))
            .findFirst()
            .orElseThrow();

    assertThat(hunts.remedies()).anyMatch(remedy -> sets(remedy, START, 5.3));
    assertThat(hunts.remedies()).anyMatch(remedy -> sets(remedy, STOP, 0.1));
    assertThat(hunts.remedies())
        .filteredOn(remedy -> remedy.changes().stream().anyMatch(c -> c.pointer().equals(COUNTS)))
        .singleElement()
        .satisfies(
            remedy -> {
              assertThat(remedy.trust()).isEqualTo(Trust.WORK_ON_SITE);
              assertThat(remedy.work()).singleElement().asString().contains("current transformer");
            });
    assertThat(hunts.remedies())
        .flatMap(Remedy::changes)
        .filteredOn(change -> change.pointer().equals(START))
        .allMatch(change -> (double) change.to() <= 5.5);
  }

  private static boolean sets(Remedy remedy, Pointer at, double to) {
    return remedy.changes().stream()
        .anyMatch(change -> change.pointer().equals(at) && change.to().equals(to));
  }
}
