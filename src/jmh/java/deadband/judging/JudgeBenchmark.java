package deadband.judging;

import deadband.days.DayRuns;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Judging a changed setup: at a glance, with remedies tried, and with day runs too. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class JudgeBenchmark {
  private static final LocalDate AS_OF = LocalDate.of(2026, 5, 31);

  private final RuleBook book = RuleBook.builtIn();
  private final Judge quick = new Judge(book, DayRuns.none());

  @Param({
    "good/mill-cottage.json",
    "faulty/stop-just-under-start.json",
    "faulty/half-filled-form.json"
  })
  private String sample;

  private Setup home;
  private int turn;

  @org.openjdk.jmh.annotations.Setup
  public void read() {
    home = ((SetupReading.Read) SetupReading.ofFile(Path.of("sample-configs", sample))).setup();
  }

  /** Another stop threshold each time, no fault in itself, so that no day is known from before. */
  private Setup changed() {
    double as_kW = home.relay().stop_kW().optional().orElse(0.2);
    return Change.of(home.relay().stop_kW(), as_kW + 0.000_001 * (++turn % 100_000)).applyTo(home);
  }

  @Benchmark
  public Judgement atAGlance() {
    return quick.glance(changed(), Limits.standard(), AS_OF);
  }

  @Benchmark
  public Judgement withoutDays() {
    return quick.judge(changed(), Limits.standard(), AS_OF);
  }

  @Benchmark
  public Judgement withDays() {
    return new Judge(book, DayRuns.remembered()).judge(changed(), Limits.standard(), AS_OF);
  }
}
