package deadband.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.days.DayRuns;
import deadband.document.Pointer;
import deadband.judging.Finding;
import deadband.judging.Judge;
import deadband.judging.RulePage;
import deadband.judging.Setups;
import deadband.judging.Trust;
import deadband.judging.Verdict;
import deadband.limits.Limits;
import deadband.reading.ChangedText;
import deadband.reading.SetupReading;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Proposals: they bring a setup to sign-off, are small, keep what is to be kept, and last. */
class ProposerTest {
  /** Weighs by example days alone: a year for each of so many proposals would take long. */
  private static final Judge JUDGE = new Judge(Setups.JUDGE.book(), DayRuns.remembered());

  private static final Map<Path, Proposal> PROPOSALS = new ConcurrentHashMap<>();

  /** Why no change to the settings brings a faulty sample to sign-off. */
  private static final Map<String, String> WHY_NOT =
      Map.ofEntries(
          Map.entry("acceptance-past-its-day", "an acceptance is for a person to renew"),
          Map.entry("bath-as-hot-as-the-tank", "a mixing valve has to be fitted"),
          Map.entry("big-heat-pump-small-tank", "the tank is too small"),
          Map.entry("boxed-in-over-the-cylinder", "the controller has to move"),
          Map.entry("call-on-the-block-terminal", "the wire is on the wrong terminal"),
          Map.entry("call-wired-the-wrong-way", "the wiring has to be done again"),
          Map.entry(
              "circulation-for-half-an-hour", "only the household can say when it needs the loop"),
          Map.entry("coil-in-the-upper-part", "the coil sits too high"),
          Map.entry(
              "plate-of-a-larger-heat-pump", "only the plate says which of two values is right"),
          Map.entry("two-loads-on-one-surplus", "an order has to be agreed"),
          Map.entry("controller-without-pv", "there is no PV to follow"),
          Map.entry("ct-smaller-than-its-current", "a larger current transformer has to be fitted"),
          Map.entry("cut-out-at-70", "the tank's maker has to say which margin it needs"),
          Map.entry("cut-outs-out-of-order", "another relief valve has to be fitted"),
          Map.entry("cycle-for-a-larger-store", "the authority has to say which cycle applies"),
          Map.entry("diverter-set-to-import", "the height of the element is missing"),
          Map.entry("export-margin-below-zero", "the sign has to be read in the instructions"),
          Map.entry(
              "element-above-its-diverter", "a diverter that carries the element has to be fitted"),
          Map.entry("element-before-the-heat-pump", "the tariff has to be asked"),
          Map.entry("element-half-way-up", "the element sits too high"),
          Map.entry("element-on-a-night-timer", "the height of the element is missing"),
          Map.entry(
              "element-on-a-phase-without-pv", "the diverter has to move to the phase of the PV"),
          Map.entry("fuse-that-is-warm-at-noon", "a larger breaker has to be fitted"),
          Map.entry("half-filled-form", "too little is told"),
          Map.entry("heat-pump-on-another-meter", "the meter has to move"),
          Map.entry("heater-on-a-borrowed-circuit", "the heater wants its own circuit"),
          Map.entry("heater-on-a-fused-spur", "the heater wants a circuit that carries it"),
          Map.entry("less-heat-than-power", "the plate has to be read again"),
          Map.entry("loop-that-never-rests", "only the household can say when it needs the loop"),
          Map.entry(
              "lukewarm-and-never-disinfected", "only the household can say how warm it wants it"),
          Map.entry("margins-thinner-than-the-meters", "a step across a tolerance proves nothing"),
          Map.entry("no-cut-out-on-the-coil", "a cut-out has to be fitted"),
          Map.entry("no-bath-in-the-list", "somebody has to look where people wash"),
          Map.entry("disinfection-demand-not-answered", "the signal does not fit the input"),
          Map.entry("nothing-may-be-exported", "only the network operator can allow export"),
          Map.entry("nothing-measures-the-grid", "a sensor has to be fitted"),
          Map.entry("one-phase-seen-three-netted", "sensors on every phase have to be fitted"),
          Map.entry("open-store-cut-out-at-95", "another cut-out has to be fitted"),
          Map.entry("part-that-is-not-there", "only the site can say what is fitted"),
          Map.entry("powers-of-another-plate", "the plates have to be read again"),
          Map.entry("pv-and-heaters-on-two-phases", "the phases have to be wired again"),
          Map.entry("ratings-typed-too-high", "the ratings have to be read again"),
          Map.entry("relay-of-unknown-use", "only the site can say what the relay switches"),
          Map.entry("scald-accepted-away", "a hazard cannot be accepted away"),
          Map.entry("second-supply-in-the-box", "somebody has to prove it dead"),
          Map.entry("sensor-and-clock-astray", "somebody has to look at the sensor and the clock"),
          Map.entry("sensor-at-the-top", "the sensor has to move"),
          Map.entry("sensor-below-the-coil", "the sensor has to move"),
          Map.entry("sensor-on-the-other-phase", "the sensor has to move"),
          Map.entry("sensors-left-as-delivered", "somebody has to check which way it faces"),
          Map.entry("shower-set-too-hot", "another mixing valve has to be fitted"),
          Map.entry("start-inside-the-block", "only the household can say when it may run"),
          Map.entry("pv-on-one-phase-imported-on-two", "sun and heat pump are on other phases"),
          Map.entry("supply-cut-instead-of-called", "the call has to be wired to an input"),
          Map.entry("tank-full-at-sunrise", "only the household can say how warm it wants it"),
          Map.entry("three-phases-on-one", "the phases have to be read again"),
          Map.entry("two-phases-in-one-box", "the wiring has to be done again"),
          Map.entry("valve-entered-for-75", "the valve has to be read again"));

  static Stream<Path> faulty() {
    return Setups.files("sample-configs/faulty", ".json").stream();
  }

  static Stream<Path> all() {
    return Setups.files("sample-configs", ".json").stream();
  }

  private static Proposer proposer(List<Pointer> kept) {
    return new Proposer(JUDGE, Limits.standard(), Setups.AS_OF, kept);
  }

  /** The proposal for a sample; made once for all tests. */
  private static Proposal proposal(Path file) {
    return PROPOSALS.computeIfAbsent(file, name -> proposer(List.of()).propose(read(name).setup()));
  }

  private static SetupReading.Read read(Path file) {
    return Setups.read(file.toString(), Setups.text(file));
  }

  private static Distance distance(Setup setup) {
    return proposer(List.of()).distance(setup);
  }

  @ParameterizedTest
  @MethodSource("faulty")
  void reachesReadyOrItIsSaidWhyNot(Path file) {
    Proposal proposal = proposal(file);
    String name = file.getFileName().toString().replace(".json", "");

    if (WHY_NOT.containsKey(name)) {
      assertThat(proposal.after().verdict()).isNotEqualTo(Verdict.READY);
      assertThat(proposal.inTheWay().size() + proposal.waitedFor().size()).isPositive();
    } else {
      assertThat(proposal.inTheWay()).as("left in %s", name).isEmpty();
    }
    assertThat(Distance.of(proposal.after())).isLessThanOrEqualTo(Distance.of(proposal.before()));
  }

  /** Without any one of the changes a sample is further from sign-off. */
  @ParameterizedTest
  @MethodSource("faulty")
  void noChangeIsIdle(Path file) {
    Setup setup = read(file).setup();
    List<Change> changes = proposal(file).changes();
    Distance reached = distance(Change.all(changes, setup));

    for (Change change : changes) {
      List<Change> less = changes.stream().filter(other -> !other.equals(change)).toList();
      assertThat(reached.isNearerThan(distance(Change.all(less, setup))))
          .as("without %s of %s", change, changes)
          .isTrue();
    }
  }

  /** What the check of a sample advises first stands in its proposal. */
  @ParameterizedTest
  @MethodSource("faulty")
  void checkAndProposeAgree(Path file) {
    Setup setup = read(file).setup();
    List<Change> changes = proposal(file).changes();
    JUDGE.judge(setup, Limits.standard(), Setups.AS_OF).findings().stream()
        .filter(Finding::isOpen)
        .filter(finding -> finding.trust() == Trust.SAFE)
        .findFirst()
        .ifPresent(first -> assertThat(changes).containsAll(first.changes()));
  }

  @ParameterizedTest
  @MethodSource("all")
  void proposingAgainChangesNothing(Path file) {
    Setup setup = read(file).setup();
    Setup changed = Change.all(proposal(file).changes(), setup);

    assertThat(proposer(List.of()).propose(changed).changes()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("faulty")
  void touchesNothingKept(Path file) {
    Setup setup = read(file).setup();
    for (Change change : proposal(file).changes()) {
      Proposal proposal = proposer(List.of(change.pointer())).propose(setup);

      assertThat(proposal.changes())
          .noneMatch(other -> other.pointer().startsWith(change.pointer()));
      assertThat(Distance.of(proposal.after())).isLessThanOrEqualTo(Distance.of(proposal.before()));
    }
    assertThat(proposer(List.of(Pointer.root())).propose(setup).changes()).isEmpty();
  }

  /** Edit, then read, equals the changed setup. */
  @ParameterizedTest
  @MethodSource("faulty")
  void theWrittenFileIsTheChangedSetup(Path file) {
    SetupReading.Read read = read(file);
    List<Change> changes = proposal(file).changes();
    String text = ChangedText.of(read.document(), changes);

    assertThat(Setups.read("changed", text).setup()).isEqualTo(Change.all(changes, read.setup()));
    assertThat(text.lines().count()).isEqualTo(read.document().text().lines().count());
  }

  /** The change that a page's example shows takes its finding away. */
  @Test
  void everyPageExampleWithAChangeProvesIt() {
    Pattern setups = Pattern.compile("```jsonc\\n(.*?)```", Pattern.DOTALL);
    int proven = 0;
    for (Path page : Setups.files("rules", ".md")) {
      String fires = RulePage.parse(Setups.text(page)).sections().getOrDefault("Fires", "");
      for (MatchResult block : setups.matcher(fires).results().toList()) {
        proven += proven(page.toString(), block.group(1));
      }
    }
    assertThat(proven).isGreaterThan(100);
  }

  private static int proven(String page, String text) {
    Setup setup = Setups.read(page, text).setup();
    int proven = 0;
    for (Finding finding : JUDGE.judge(setup, Limits.standard(), Setups.AS_OF).findings()) {
      Setup cured = Change.all(finding.changes(), setup);
      boolean gone =
          JUDGE.glance(cured, Limits.standard(), Setups.AS_OF).findings().stream()
              .noneMatch(other -> other.key().equals(finding.key()));
      assertThat(gone).as("%s: %s", page, finding.key()).isEqualTo(finding.proof() != null);
      proven += gone ? 1 : 0;
    }
    return proven;
  }
}
