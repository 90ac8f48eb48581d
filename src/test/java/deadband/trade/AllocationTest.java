package deadband.trade;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** What the minute-by-minute run calls in every step must leave nothing for the collector. */
class AllocationTest {
  private static final int STEPS = 20_000;
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private final double[] layers_C = new double[12];

  @Test
  void aStepAllocatesNothing() {
    steps();
    long before = THREADS.getCurrentThreadAllocatedBytes();
    double sum = steps();
    long allocated = THREADS.getCurrentThreadAllocatedBytes() - before;
    assertThat(sum).isFinite();
    assertThat(allocated).as("bytes in %s steps", STEPS).isLessThan(STEPS);
  }

  private double steps() {
    Arrays.fill(layers_C, 40);
    double sum = 0;
    for (int step = 0; step < STEPS; step++) {
      sum += step(step % 40);
    }
    return sum;
  }

  private double step(double t) {
    double capacity = Water.heatCapacity_kWh_per_LK(30 + t) * 25;
    Layers.heat(layers_C, 1, 6, 0.02, capacity);
    Layers.settle(layers_C);
    Layers.cool_K(layers_C, 20, StandingLoss.keptShare(1.5, capacity, 1));
    double drawn_C = Layers.draw_C(layers_C, 25, t / 10, 10);
    HeatPumpCop.Fit fit = HeatPumpCop.Fit.RUHNAU_GROUND;
    double input_kW = fit.inputAt_kW(2.5, 1.8, 5, 5, 60, t + 20);
    double output_kW = HeatPumpCop.output_kW(input_kW, fit.copClamped(t));
    double seen_W = ControlLoop.watts(ControlLoop.heater(t / 10, 3, 0.15));
    return drawn_C + output_kW + seen_W + CompressorReach.outputShare(t + 20, 70, 5);
  }
}
