package deadband.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.dayrun.TestDays;
import deadband.days.DayRuns;
import deadband.days.YearRuns;
import deadband.judging.Consequence;
import deadband.judging.FaultyHomes;
import deadband.judging.Finding;
import deadband.judging.Judge;
import deadband.judging.Remedy;
import deadband.judging.Setups;
import deadband.judging.Trust;
import deadband.limits.Limits;
import deadband.reading.ChangedText;
import deadband.reading.SetupReading;
import deadband.setup.Change;
import deadband.setup.Disinfection;
import deadband.setup.Entered;
import deadband.setup.Programme;
import deadband.setup.Relay;
import deadband.setup.Setup;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * What an engineer would never do, held against the proposals and remedies of generated faulty
 * homes. The list is written here from the trade's side and shares nothing with the one that the
 * remedies are made by.
 */
class ProhibitionsTest {
  private static final long SEED = Long.getLong("deadband.seed", 20261127);
  private static final int HOMES = Integer.getInteger("deadband.turns", 2000);

  /** Homes with example days, and of these with a year. */
  private static final int WITH_DAYS = HOMES / 10;

  private static final int WITH_YEAR = HOMES / 100;

  private static final List<SetupReading.Read> GOOD =
      Setups.good().stream().map(file -> Setups.read(file.toString(), Setups.text(file))).toList();

  /** Capacity of flat twin and earth clipped direct, the most that any method gives [A]. */
  private static final Map<Double, Double> CLIPPED_A =
      Map.of(1.0, 16.0, 1.5, 20.0, 2.5, 27.0, 4.0, 37.0, 6.0, 47.0, 10.0, 64.0, 16.0, 85.0);

  @Test
  void noProposalDoesWhatAnEngineerWouldNever() {
    Judge quick = new Judge(Setups.JUDGE.book(), DayRuns.none());
    List<List<Change>> proposed =
        IntStream.range(WITH_DAYS, HOMES)
            .parallel()
            .mapToObj(turn -> held(quick, new Random(SEED + turn), "home " + turn))
            .toList();

    assertThat(proposed.stream().filter(changes -> !changes.isEmpty()).count())
        .isGreaterThan(HOMES / 10);
  }

  @Test
  void norWithExampleDaysAndAYear() {
    Judge days = new Judge(Setups.JUDGE.book(), DayRuns.remembered());
    Judge year = new Judge(Setups.JUDGE.book(), DayRuns.remembered(), YearRuns.remembered());
    List<List<Change>> proposed =
        IntStream.range(0, WITH_DAYS)
            .parallel()
            .mapToObj(
                turn ->
                    held(turn < WITH_YEAR ? year : days, new Random(SEED + turn), "home " + turn))
            .toList();

    assertThat(proposed.stream().filter(changes -> !changes.isEmpty()).count())
        .isGreaterThan(WITH_DAYS / 10);
  }

  private static List<Change> held(Judge judge, Random random, String home) {
    Setup setup = FaultyHomes.faulty(random);
    Proposal proposal =
        new Proposer(judge, Limits.standard(), Setups.AS_OF, List.of()).propose(setup);
    Setup changed = Change.all(proposal.changes(), setup);

    assertSettingsAlone(proposal.changes(), home);
    assertAllowed(setup, changed, home);
    assertNothingLarger(proposal, home);
    assertRelayStillStarts(proposal, setup, changed, home);
    for (Finding finding : proposal.before().findings()) {
      for (Remedy remedy : finding.remedies()) {
        assertAllowed(setup, Change.all(remedy.changes(), setup), home + " " + remedy);
        assertNotSilenced(finding, remedy, home);
      }
    }
    return proposal.changes();
  }

  /** Nobody rewires by entering a value. */
  private static void assertSettingsAlone(List<Change> changes, String home) {
    assertThat(changes)
        .as(home)
        .noneMatch(
            change ->
                change
                    .pointer()
                    .dotted()
                    .matches(
                        "(immersion\\.(circuit|cutOut|power|height)|outlets|blending|tank\\.(?!circ)"
                            + "|solar|supply|house|site|gridSensor|observed|isolation).*"));
  }

  private static void assertAllowed(Setup was, Setup now, String home) {
    assertRelay(was, now, home);
    assertProtection(was, now, home);
    assertHygiene(was, now, home);
    assertProgramme(was.heatPump().everyday(), now.heatPump().everyday(), home);
    assertProgramme(was.heatPump().surplus(), now.heatPump().surplus(), home);
  }

  private static double of(Entered<Double> entered) {
    return entered.optional().orElse(Double.NaN);
  }

  private static boolean differs(Entered<?> one, Entered<?> other) {
    return !one.optional().equals(other.optional());
  }

  private static void assertRelay(Setup was, Setup now, String home) {
    Relay relay = now.relay();
    if (differs(relay.stop_kW(), was.relay().stop_kW())) {
      assertThat(of(relay.stop_kW())).as(home).isNotNegative().isLessThanOrEqualTo(100);
    }
    if (differs(relay.start_kW(), was.relay().start_kW())) {
      double reach_kW =
          Math.min(of(now.solar().peak_kW()), of(now.solar().inverter_kW()))
              - of(now.house().baseLoad_kW());
      assertThat(of(relay.start_kW())).as(home).isGreaterThan(of(relay.stop_kW()));
      assertThat(of(relay.start_kW()) > reach_kW + 1e-9)
          .as("%s: above %s", home, reach_kW)
          .isFalse();
    }
  }

  private static void assertProtection(Setup was, Setup now, String home) {
    assertNotHigher(was.immersion().cutOut_C(), now.immersion().cutOut_C(), home);
    assertNotHigher(was.tank().coil().cutOut_C(), now.tank().coil().cutOut_C(), home);
    assertNotHigher(was.tank().relief_C(), now.tank().relief_C(), home);
    assertNotHigher(was.blending().hotSupplyMax_C(), now.blending().hotSupplyMax_C(), home);
    double valve_C = of(now.blending().hotSupplyMax_C());
    assertBelowIfRaised(was.diverter().limit_C(), now.diverter().limit_C(), valve_C, home);
    assertBelowIfRaised(
        was.immersion().thermostat_C(), now.immersion().thermostat_C(), valve_C, home);
    double carries_A = CLIPPED_A.getOrDefault(of(now.immersion().circuit().cable_mm2()), 0.0);
    double entered_A = now.immersion().circuit().cableRating_A().optional().orElse(carries_A);
    if (of(now.immersion().circuit().breaker_A()) > of(was.immersion().circuit().breaker_A())) {
      assertThat(of(now.immersion().circuit().breaker_A())).as(home).isLessThanOrEqualTo(entered_A);
    }
    was.outlets()
        .optional()
        .ifPresent(
            outlets -> {
              for (int i = 0; i < outlets.size(); i++) {
                assertNotHigher(
                    outlets.get(i).mixed_C(),
                    now.outlets().optional().orElseThrow().get(i).mixed_C(),
                    home);
              }
            });
  }

  private static void assertNotHigher(Entered<Double> was, Entered<Double> now, String home) {
    assertThat(of(now) > of(was)).as("%s: %s", home, now).isFalse();
  }

  private static void assertBelowIfRaised(
      Entered<Double> was, Entered<Double> now, double most_C, String home) {
    boolean tooHot = of(now) > of(was) && of(now) > most_C;
    assertThat(tooHot).as("%s: %s of %s", home, now, most_C).isFalse();
  }

  private static void assertHygiene(Setup was, Setup now, String home) {
    Disinfection before = was.heatPump().disinfection();
    Disinfection after = now.heatPump().disinfection();
    assertThat(before.enabled().says(true) && after.enabled().says(false)).as(home).isFalse();
    assertThat(of(after.every_days()) > of(before.every_days())).as(home).isFalse();
    assertThat(of(after.target_C()) < of(before.target_C()) && of(after.target_C()) < 60)
        .as("%s: %s", home, after.target_C())
        .isFalse();
    if (differs(before.heater(), after.heater())) {
      assertThat(after.heater().says(Disinfection.Heater.NONE)).as(home).isFalse();
      assertThat(
              !after.heater().says(Disinfection.Heater.IMMERSION)
                  || now.immersion().part().isFitted().says(true))
          .as(home)
          .isTrue();
    }
    double target_C = Math.max(60, of(after.target_C()));
    assertThat(
            of(now.diverter().limit_C()) < of(was.diverter().limit_C())
                && of(now.diverter().limit_C()) < target_C)
        .as("%s: tank limit %s below %s", home, now.diverter().limit_C(), target_C)
        .isFalse();
    Entered<Double> rests = now.heatPump().everyday().start_C();
    assertThat(of(rests) < of(was.heatPump().everyday().start_C()) && of(rests) < 45)
        .as("%s: rests at %s", home, rests)
        .isFalse();
  }

  /** A programme that is changed has a stop above its start. */
  private static void assertProgramme(Programme was, Programme now, String home) {
    if (differs(was.start_C(), now.start_C()) || differs(was.stop_C(), now.stop_C())) {
      assertThat(of(now.stop_C()) <= of(now.start_C())).as("%s: %s", home, now).isFalse();
    }
  }

  /** Everyday temperatures are not changed to silence a query. */
  private static void assertNotSilenced(Finding finding, Remedy remedy, String home) {
    if (finding.consequence().compareTo(Consequence.QUERY) >= 0) {
      assertThat(remedy.changes())
          .as("%s: %s", home, finding.key())
          .noneMatch(change -> change.pointer().dotted().matches("heatPump\\.everyday\\..*_C"));
    }
  }

  private static void assertNothingLarger(Proposal proposal, String home) {
    Map<Finding.Key, Finding> before = byKey(proposal.before().findings());
    for (Finding finding : proposal.after().findings()) {
      Finding was = before.get(finding.key());
      if (was != null) {
        assertThat(finding.consequence()).as(home).isGreaterThanOrEqualTo(was.consequence());
        assertThat(
                finding.consequence() == was.consequence()
                    && finding.size().severity() > was.size().severity() + 1e-6)
            .as("%s: %s grew from %s", home, finding.key(), was.detail().size())
            .isFalse();
      }
    }
    if (proposal.proof().isPresent() && proposal.trust() == Trust.SAFE) {
      assertThat(before.keySet()).as(home).containsAll(byKey(proposal.after().findings()).keySet());
      assertThat(proposal.after().notJudged())
          .as(home)
          .noneMatch(open -> open.check().consequence() == Consequence.HAZARD);
    }
  }

  private static Map<Finding.Key, Finding> byKey(Collection<Finding> findings) {
    Map<Finding.Key, Finding> byKey = new HashMap<>();
    findings.forEach(finding -> byKey.put(finding.key(), finding));
    return byKey;
  }

  private static void assertRelayStillStarts(Proposal proposal, Setup was, Setup now, String home) {
    if (proposal.before().days().isEmpty() || proposal.after().days().isEmpty()) {
      return;
    }
    if (onSurplus_kWh(proposal.before().days().get()) > 0) {
      assertThat(onSurplus_kWh(proposal.after().days().get())).as(home).isPositive();
    } else if (differs(was.relay().start_kW(), now.relay().start_kW())) {
      int closings = proposal.after().days().get().clear().cycles().orElseThrow().relayClosings();
      assertThat(closings).as("%s: start not reached on a clear day", home).isPositive();
    }
  }

  private static double onSurplus_kWh(TestDays days) {
    return days.clear().heatPumpOnSurplus_kWh() + days.cloud().heatPumpOnSurplus_kWh();
  }

  /** A file with the changes can be read again, whatever the values were. */
  @Test
  void everyProposalCanBeWritten() {
    Judge quick = new Judge(Setups.JUDGE.book(), DayRuns.none());
    List<String> written = new ArrayList<>();
    for (SetupReading.Read home : GOOD) {
      Setup faulty = Change.of(home.setup().relay().stop_kW(), 2.9).applyTo(home.setup());
      Proposal proposal =
          new Proposer(quick, Limits.standard(), Setups.AS_OF, List.of()).propose(faulty);
      written.add(ChangedText.of(home.document(), proposal.changes()));
    }
    assertThat(written)
        .allMatch(text -> SetupReading.ofText("written", text) instanceof SetupReading.Read);
  }
}
