package deadband.dayrun;

import java.time.Year;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The day run on one core. Quote the year's time over that of the bare loop from the same run of
 * this benchmark, never a time by itself.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class DayRunBenchmark {
  private static final int YEAR = 365 * 1440;

  private final Installation installation = new Given().build();
  private final List<Day> days =
      new Surroundings(
              new SolarArray(52.3, 35, 180, 8.8, 8, 0.85),
              Household.of(4, 0.4, 56, 10),
              Surroundings.Source.GROUND)
          .year(Year.of(2026))
          .toList();

  /** A step of one minute, in a year of them. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  @OperationsPerInvocation(YEAR)
  public Result step() {
    return year();
  }

  /** A year at one minute. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public Result year() {
    DayRun run = DayRun.of(installation, StepLength.MINUTE);
    days.forEach(run::through);
    return run.result();
  }

  /** The bare loop: a year of the tank's arithmetic alone, heated as often as a year heats it. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public double tankAlone() {
    TankModel tank = new TankModel(installation.tank(), 56, StepLength.MINUTE);
    for (Day day : days) {
      Profile profile = day.profile();
      for (int index = 0; index < profile.length(); index++) {
        if (profile.pv_kW(index) > 1 && tank.layer_C(11) < 62) {
          tank.heatElement(1, 2.0 / 60);
        }
        tank.cool();
        tank.draw(profile.draw_L(index), day.coldWater_C());
      }
    }
    return tank.top_C();
  }
}
