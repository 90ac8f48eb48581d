package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import deadband.days.DayModel;
import deadband.days.DayRuns;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.report.JsonReport;
import deadband.report.Report;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is judged again after a change comes to what judging all anew comes to. */
class RejudgingTest {
  private static final long SEED = Long.getLong("deadband.seed", 20261128);
  private static final int HOMES = Integer.getInteger("deadband.turns", 5000);
  private static final int WITH_DAYS = HOMES / 50;

  private static List<SetupReading.Read> samples() throws Exception {
    List<SetupReading.Read> samples = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("sample-configs"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".json")).sorted().toList()) {
        if (SetupReading.ofFile(file) instanceof SetupReading.Read read) {
          samples.add(read);
        }
      }
    }
    return samples;
  }

  @Test
  void everySampleWithItsDaysIsJudgedTheSame() throws Exception {
    List<SetupReading.Read> samples = samples();
    assertThat(samples).hasSizeGreaterThan(80);
    samples.parallelStream().forEach(read -> assertSame(read, read.setup(), DayRuns.remembered()));
  }

  @Test
  void everyGeneratedHomeIsJudgedTheSame() throws Exception {
    SetupReading.Read form = samples().get(0);
    IntStream.range(0, HOMES)
        .parallel()
        .forEach(
            turn ->
                assertSame(
                    form,
                    FaultyHomes.faulty(new Random(SEED + turn)),
                    turn < WITH_DAYS ? DayRuns.remembered() : DayRuns.none()));
  }

  @Test
  void setupsSideBySideAreJudgedAsEachAlone() throws Exception {
    List<SetupReading.Read> samples = samples();
    Judge judge = new Judge(Setups.JUDGE.book(), DayRuns.none());
    List<Supplier<Trials>> trials =
        judge.trials(samples.stream().map(SetupReading.Read::setup).toList(), Limits.standard());

    assertThat(trials).hasSameSizeAs(samples);
    for (int i = 0; i < trials.size(); i++) {
      SetupReading.Read read = samples.get(i);
      Trials together = trials.get(i).get();
      assertThat(report(read, read.setup(), judge.judge(together, Setups.AS_OF)))
          .isEqualTo(report(read, read.setup(), judge));
      assertThat(judge.glance(together, Setups.AS_OF))
          .isEqualTo(judge.glance(read.setup(), Limits.standard(), Setups.AS_OF));
    }
  }

  @Test
  void whatFailsForOneSetupLeavesThoseBesideItAsTheyAre() throws Exception {
    List<Setup> good = new ArrayList<>();
    for (Path file : Setups.good().subList(0, 3)) {
      good.add(Setups.read(file.toString(), Setups.text(file)).setup());
    }
    DayModel broken = DayModel.of(good.get(1)).get();
    DayRuns runs =
        model -> {
          if (model.equals(broken)) {
            throw new IllegalStateException("no day comes of this home");
          }
          return Optional.empty();
        };
    Judge judge = new Judge(Setups.JUDGE.book(), runs);
    List<Supplier<Trials>> trials = judge.trials(good, Limits.standard());

    assertThatThrownBy(() -> trials.get(1).get()).hasMessage("no day comes of this home");
    for (int i : List.of(0, 2)) {
      assertThat(judge.judge(trials.get(i).get(), Setups.AS_OF).verdict())
          .isEqualTo(judge.judge(good.get(i), Limits.standard(), Setups.AS_OF).verdict());
    }
  }

  private static void assertSame(SetupReading.Read form, Setup setup, DayRuns runs) {
    Judge judge = new Judge(Setups.JUDGE.book(), runs);
    assertThat(report(form, setup, judge)).isEqualTo(report(form, setup, judge.judgingAnew()));
  }

  private static String report(SetupReading.Read form, Setup setup, Judge judge) {
    return report(form, setup, judge.judge(setup, Limits.standard(), Setups.AS_OF));
  }

  private static String report(SetupReading.Read form, Setup setup, Judgement judgement) {
    return JsonReport.of(new Report(form.document(), setup, judgement), "test", true);
  }

  /** Were what a change touches not derived again, this home would keep the fault it was given. */
  @Test
  void aChangeIsSeen() throws Exception {
    Setup good =
        Setups.read(Setups.good().get(0).toString(), Setups.text(Setups.good().get(0))).setup();
    Change narrow = Change.of(good.relay().stop_kW(), good.relay().start_kW().value());
    Rejudging rejudging =
        Rejudging.of(
                Setups.JUDGE.book(),
                Setups.JUDGE.book().checks().stream()
                    .filter(each -> !Acceptance.isAbout(each))
                    .toList(),
                List.of(good),
                Limits.standard(),
                DayRuns.none())
            .get(0);

    assertThat(rejudging.of(good)).isSameAs(rejudging.before());
    assertThat(rejudging.before().findings()).isEmpty();
    assertThat(rejudging.of(narrow.applyTo(good)).findings())
        .extracting(finding -> finding.check().topic())
        .contains("thresholds");
  }
}
