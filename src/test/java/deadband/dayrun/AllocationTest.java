package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

/** No step allocates: a day costs what its ends cost, whatever its length. */
class AllocationTest {
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  @Test
  void aLongRunAllocatesNoMoreThanAShortOne() {
    Generated made = Generated.forTest("allocation");
    for (int number = 0; number < 20; number++) {
      Installation installation = made.installation().build();
      Day day = made.day(StepLength.MINUTE);
      DayRun run = DayRun.startingAt(50, installation, StepLength.MINUTE);
      allocated_B(run, day);
      assertThat(allocated_B(run, day)).as("1440 steps, " + Generated.seed()).isLessThan(1440);
    }
  }

  private static long allocated_B(DayRun run, Day day) {
    long before_B = THREADS.getCurrentThreadAllocatedBytes();
    run.through(day);
    return THREADS.getCurrentThreadAllocatedBytes() - before_B;
  }
}
