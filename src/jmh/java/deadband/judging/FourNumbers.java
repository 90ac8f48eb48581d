package deadband.judging;

import deadband.dayrun.DayRunBenchmark;
import deadband.days.DayRuns;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;

/**
 * Four ratios that show in about a minute whether something became slow: a year over the bare loop
 * of its tank, a check of the rule book over one written by hand, trying remedies over looking
 * once, and a home with its days over one without. Each is of CPU time of one thread in one run,
 * the best of several passes, so that what else the machine does counts little.
 */
public final class FourNumbers {

  private static final LocalDate AS_OF = LocalDate.of(2026, 5, 31);
  private static final int PASSES = 5;

  /** Homes until what is done once for each is compiled for good. */
  private static final int WARM = 2000;

  private static final int HOMES = 100;
  private static final int CHECKS_BY_HAND = 20;
  private static final double NANOS_PER_MICRO = 1000;

  private final RuleBook book = RuleBook.builtIn();
  private final Judge quick = new Judge(book, DayRuns.none());
  private int turn;
  private int kept;

  private FourNumbers() {}

  /** Prints them. */
  public static void main(String[] arguments) {
    new FourNumbers().print();
  }

  private void print() {
    DayRunBenchmark days = new DayRunBenchmark();
    double bare_us = best_us(1, turn -> (int) days.tankAlone());
    double year_us = best_us(1, turn -> (int) days.year().import_kWh());
    Setup quiet = home("good/mill-cottage.json");
    Setup faulty = home("faulty/stop-just-under-start.json");
    for (int home = 0; home < WARM; home++) {
      kept += judged(changed(home % 4 == 0 ? faulty : quiet), quick);
    }
    List<Setup> homes = Stream.generate(() -> changed(quiet)).limit(HOMES).toList();
    double byHand_us = best_us(HOMES * HOMES, turn -> TwentyChecks.found(homes.get(turn % HOMES)));
    double glance_us = best_us(HOMES, turn -> glance(changed(quiet)));
    double glanceFaulty_us = best_us(HOMES, turn -> glance(changed(faulty)));
    double judged_us = best_us(HOMES / 2, turn -> judged(changed(faulty), quick));
    double without_us = best_us(HOMES, turn -> judged(changed(quiet), quick));
    double with_us =
        best_us(HOMES / 2, turn -> judged(changed(quiet), new Judge(book, DayRuns.remembered())));
    double checkByHand_us = byHand_us / CHECKS_BY_HAND;
    double check_us = glance_us / book.checks().size();
    row("a year / the bare loop of its tank", year_us, bare_us);
    row("a check of the rule book / one written by hand", check_us, checkByHand_us);
    row("a faulty home with remedies / at a glance", judged_us, glanceFaulty_us);
    row("a quiet home with its days / without", with_us, without_us);
    System.out.println(kept == 0 ? " " : "");
  }

  private static void row(String what, double one_us, double other_us) {
    System.out.printf(
        "%-48s %8.2f   (%.3f over %.3f us)%n", what, one_us / other_us, one_us, other_us);
  }

  private static Setup home(String sample) {
    Path file = Path.of("sample-configs", sample);
    return ((SetupReading.Read) SetupReading.ofFile(file)).setup();
  }

  /** Another stop threshold each time, no fault in itself, so that no day is known from before. */
  private Setup changed(Setup home) {
    double as_kW = home.relay().stop_kW().optional().orElse(0.2);
    return Change.of(home.relay().stop_kW(), as_kW + 0.000_001 * (++turn % 100_000)).applyTo(home);
  }

  private int glance(Setup setup) {
    return quick.glance(setup, Limits.standard(), AS_OF).findings().size();
  }

  private static int judged(Setup setup, Judge judge) {
    return judge.judge(setup, Limits.standard(), AS_OF).findings().size();
  }

  /** CPU time of one of so many turns, in the best pass. */
  private double best_us(int turns, IntUnaryOperator work) {
    double best = Double.POSITIVE_INFINITY;
    for (int pass = 0; pass < PASSES; pass++) {
      long from = cpu_ns();
      for (int each = 0; each < turns; each++) {
        kept += work.applyAsInt(each);
      }
      best = Math.min(best, (cpu_ns() - from) / NANOS_PER_MICRO / turns);
    }
    return best;
  }

  private static long cpu_ns() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
