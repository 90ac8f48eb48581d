package deadband.judging;

import deadband.days.DayRuns;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.report.JsonReport;
import deadband.report.Report;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The whole way of a home in a stream on one thread, from bytes to a report as JSON, without days:
 * one sample after the other, or several side by side.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 6, time = 5)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class StreamBenchmark {
  private static final LocalDate AS_OF = LocalDate.of(2026, 5, 31);
  private static final int HOMES = 24;

  private final Judge judge = new Judge(RuleBook.builtIn(), DayRuns.none());

  @Param({"good", "faulty"})
  private String samples;

  @Param({"1", "8"})
  private int sideBySide;

  private final List<byte[]> files = new ArrayList<>();
  private int turn;

  /** All good samples; of the faulty ones, those with one to three findings. */
  @Setup
  public void read() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("sample-configs", samples))) {
      for (Path file : all.filter(each -> each.toString().endsWith(".json")).sorted().toList()) {
        byte[] bytes = Files.readAllBytes(file);
        int findings =
            judge.glance(setup(bytes).setup(), Limits.standard(), AS_OF).findings().size();
        if (samples.equals("good") || (findings >= 1 && findings <= 3)) {
          files.add(bytes);
        }
      }
    }
  }

  private static SetupReading.Read setup(byte[] bytes) {
    return (SetupReading.Read)
        SetupReading.ofStream("standard input", new ByteArrayInputStream(bytes));
  }

  @Benchmark
  @OperationsPerInvocation(HOMES)
  public int toReports() {
    int length = 0;
    for (int home = 0; home < HOMES; home += sideBySide) {
      length += reports();
    }
    return length;
  }

  private int reports() {
    List<SetupReading.Read> homes = new ArrayList<>();
    for (int i = 0; i < sideBySide; i++) {
      homes.add(setup(files.get(turn++ % files.size())));
    }
    List<Judgement> judgements = new ArrayList<>();
    for (Supplier<Trials> trials :
        judge.trials(homes.stream().map(SetupReading.Read::setup).toList(), Limits.standard())) {
      judgements.add(judge.judge(trials.get(), AS_OF));
    }
    int length = 0;
    for (int i = 0; i < sideBySide; i++) {
      SetupReading.Read home = homes.get(i);
      length +=
          JsonReport.of(new Report(home.document(), home.setup(), judgements.get(i)), "1", false)
              .length();
    }
    return length;
  }
}
