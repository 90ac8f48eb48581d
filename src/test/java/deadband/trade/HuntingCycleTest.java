package deadband.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.HuntingCycle.Delays;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HuntingCycleTest {
  private static final Delays ONE_MINUTE = new Delays(1, 1, 0, 1);

  @Test
  void handWorked() {
    // one-minute delays and a start lag of 1 min: 60/(1 + 1 + 1) = 20 calls an hour
    Delays delays = new Delays(1, 1, 1, 1);
    assertThat(HuntingCycle.withoutTimers(delays).startsPerHour()).isEqualTo(20);
    // with 10 min least run and 10 min least rest: 3 starts an hour
    HuntingCycle cycle = HuntingCycle.withTimers(delays, 10, 10);
    assertThat(cycle).isEqualTo(new HuntingCycle(10, 10));
    assertThat(cycle.period_min()).isEqualTo(20);
    assertThat(cycle.startsPerHour()).isEqualTo(3);
  }

  @Test
  void theLongerOfDelayAndTimerCounts() {
    Delays delays = new Delays(5, 3, 2, 1);
    assertThat(HuntingCycle.withTimers(delays, 2, 6)).isEqualTo(new HuntingCycle(3, 7));
    assertThat(HuntingCycle.withTimers(delays, 10, 20)).isEqualTo(new HuntingCycle(10, 20));
    assertThat(HuntingCycle.withTimers(delays, 3, 7)).isEqualTo(new HuntingCycle(3, 7));
  }

  @Test
  void noDelayIsStillOneStep() {
    assertThat(HuntingCycle.withoutTimers(new Delays(0, 0, 0, 1)))
        .isEqualTo(new HuntingCycle(1, 1));
    assertThat(HuntingCycle.withoutTimers(new Delays(0, 0, 0, 1)).startsPerHour()).isEqualTo(30);
    assertThat(HuntingCycle.withoutTimers(new Delays(3, 2, 0, 5)))
        .isEqualTo(new HuntingCycle(5, 5));
  }

  @Test
  void longerDelaysNeverMeanMoreStarts() {
    for (int delay = 1; delay < 30; delay++) {
      assertThat(HuntingCycle.withTimers(new Delays(delay + 1, 1, 0, 1), 5, 5).startsPerHour())
          .isLessThanOrEqualTo(
              HuntingCycle.withTimers(new Delays(delay, 1, 0, 1), 5, 5).startsPerHour());
    }
  }

  @Test
  void refusesNegativeTimes() {
    assertThatThrownBy(() -> new Delays(-1, 1, 0, 1)).hasMessageContaining("startDelay_min");
    assertThatThrownBy(() -> new Delays(1, -1, 0, 1)).hasMessageContaining("stopDelay_min");
    assertThatThrownBy(() -> new Delays(1, 1, -1, 1)).hasMessageContaining("startLag_min");
    assertThatThrownBy(() -> new Delays(1, 1, 0, 0)).hasMessageContaining("step_min");
    assertThatThrownBy(() -> HuntingCycle.withTimers(ONE_MINUTE, -1, 0))
        .hasMessageContaining("minimumRun_min");
    assertThatThrownBy(() -> HuntingCycle.withTimers(ONE_MINUTE, 0, -1))
        .hasMessageContaining("minimumOff_min");
    assertThatThrownBy(() -> new HuntingCycle(0, 1)).hasMessageContaining("run_min");
    assertThatThrownBy(() -> new HuntingCycle(1, -1)).hasMessageContaining("pause_min");
  }

  // ------------------------------------------------------------- against a run, step by step

  /**
   * A relay and a heat pump at constant surplus inside the hunting band, decided step by step: the
   * relay counts steps, the pump obeys its timers and is decided after the relay, and what is
   * decided at the end of a step holds for the next.
   */
  private static final class Loop {
    private final Delays delays;
    private final int minimumRun;
    private final int minimumOff;
    private boolean closed;
    private boolean running;
    private int inFavour;
    private int onFor;
    private int offFor = 1_000_000;
    private int lagFor = -1;
    private final List<Integer> runs = new ArrayList<>();
    private final List<Integer> pauses = new ArrayList<>();

    Loop(Delays delays, int minimumRun, int minimumOff) {
      this.delays = delays;
      this.minimumRun = minimumRun;
      this.minimumOff = minimumOff;
    }

    void step() {
      onFor = running ? onFor + 1 : 0;
      offFor = running ? 0 : offFor + 1;
      decideRelay();
      decidePump();
    }

    /** In the band: closes whenever the pump is off, opens whenever it draws. */
    private void decideRelay() {
      boolean turns = closed == running;
      inFavour = turns ? inFavour + 1 : 0;
      double delay = closed ? delays.stopDelay_min() : delays.startDelay_min();
      if (inFavour >= Math.max(1, delay)) {
        closed = !closed;
        inFavour = 0;
      }
    }

    private void decidePump() {
      if (running) {
        stopIfNothingCalls();
        return;
      }
      if (!closed) {
        lagFor = -1;
        return;
      }
      boolean mayPrepare = offFor >= minimumOff - delays.startLag_min();
      lagFor = lagFor >= 0 ? lagFor + 1 : mayPrepare ? 0 : -1;
      if (lagFor >= delays.startLag_min() && offFor >= minimumOff) {
        pauses.add(offFor);
        running = true;
      }
    }

    private void stopIfNothingCalls() {
      if (!closed && onFor >= minimumRun) {
        runs.add(onFor);
        running = false;
        lagFor = -1;
      }
    }
  }

  @Test
  void agreesWithARunStepByStep() {
    Random random = new Random(60);
    for (int trial = 0; trial < 4_000; trial++) {
      Delays delays = new Delays(random.nextInt(8), random.nextInt(8), random.nextInt(5), 1);
      int minimumRun = random.nextInt(16);
      int minimumOff = random.nextInt(24);
      Loop loop = new Loop(delays, minimumRun, minimumOff);
      for (int minute = 0; minute < 400; minute++) {
        loop.step();
      }
      HuntingCycle cycle = HuntingCycle.withTimers(delays, minimumRun, minimumOff);
      assertThat(loop.runs)
          .as("%s, run %s, off %s", delays, minimumRun, minimumOff)
          .hasSizeGreaterThan(5)
          .allMatch(run -> run == cycle.run_min());
      assertThat(loop.pauses.subList(1, loop.pauses.size()))
          .as("%s, run %s, off %s", delays, minimumRun, minimumOff)
          .allMatch(pause -> pause == cycle.pause_min());
    }
  }

  // ------------------------------------------------------------- what the tank allows

  @Test
  void riseOfTheTankInOneRun() {
    // 7 kW for 10 min = 1.1667 kWh into 150 L at 50 °C: 0.15 m³ · 988.13 · 4.1791 / 3600 =
    // 0.17206 kWh/K; 6.780 K
    HuntingCycle cycle = new HuntingCycle(10, 10);
    assertThat(cycle.rise_K(7, 150, 50)).isCloseTo(6.780, within(0.002));
    assertThatThrownBy(() -> cycle.rise_K(0, 150, 50)).hasMessageContaining("output_kW");
    assertThatThrownBy(() -> cycle.rise_K(7, 0, 50)).hasMessageContaining("heated_L");
  }

  @Test
  void startsUntilTheTankIsWarm() {
    // from 45 to a start temperature of 57 °C by 6.78 K a run: starts at 45, 51.8, 58.6 would be
    // too
    // warm: two
    assertThat(HuntingCycle.startsInARow(57, 45, 6.78)).isEqualTo(2);
    // exactly on the start temperature one more start is possible
    assertThat(HuntingCycle.startsInARow(57, 57, 5)).isEqualTo(1);
    assertThat(HuntingCycle.startsInARow(57, 47, 5)).isEqualTo(3);
    assertThat(HuntingCycle.startsInARow(57, 57.01, 5)).isZero();
    // raw doubles would miss the equal case: (57.3 − 57.0)/0.1 is below 3
    assertThat((57.3 - 57.0) / 0.1).isLessThan(3);
    assertThat(HuntingCycle.startsInARow(57.3, 57.0, 0.1)).isEqualTo(4);
    assertThatThrownBy(() -> HuntingCycle.startsInARow(57, 45, 0)).hasMessageContaining("rise_K");
  }

  @Test
  void startsAgreeWithCountingThem() {
    Random random = new Random(99);
    for (int trial = 0; trial < 20_000; trial++) {
      int start = 4000 + random.nextInt(2500);
      int tank = 3000 + random.nextInt(3600);
      int rise = 1 + random.nextInt(900);
      int starts = 0;
      for (int now = tank; now <= start; now += rise) {
        starts++;
      }
      assertThat(HuntingCycle.startsInARow(start / 100.0, tank / 100.0, rise / 100.0))
          .as("start %s, tank %s, rise %s", start, tank, rise)
          .isEqualTo(starts);
    }
  }

  @Test
  void whatACloudCosts() {
    // 2.5 kW held for 10 min of minimum run: 0.4167 kWh; a longer stop delay costs more
    assertThat(HuntingCycle.cloudCost_kWh(2.5, 3, 10)).isCloseTo(0.41667, within(1e-5));
    assertThat(HuntingCycle.cloudCost_kWh(2.5, 12, 10)).isCloseTo(0.5, within(1e-12));
    assertThat(HuntingCycle.cloudCost_kWh(0, 12, 10)).isZero();
    assertThatThrownBy(() -> HuntingCycle.cloudCost_kWh(-1, 1, 1)).hasMessageContaining("draw_kW");
    assertThatThrownBy(() -> HuntingCycle.cloudCost_kWh(1, -1, 1))
        .hasMessageContaining("stopDelay_min");
    assertThatThrownBy(() -> HuntingCycle.cloudCost_kWh(1, 1, -1))
        .hasMessageContaining("restOfMinimumRun_min");
  }
}
