package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.trade.ControlLoop;
import deadband.trade.HuntingCycle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/**
 * Constant surplus in the day run against the control loop's definition, edge for edge: the tables
 * of the control loop in closed form, and a calculation in whole watts that shares no code with
 * either.
 */
class ConstantSurplusTest {
  private static final int SETTINGS = 800;
  private static final int MINUTES = 240;

  /** One setting in whole watts and minutes. */
  private record Setting(
      boolean immersionCounted,
      boolean pumpCounted,
      int start_W,
      int stop_W,
      int draw_W,
      int heater_W,
      int least_W,
      int startDelay,
      int stopDelay,
      int lag,
      int minimumRun,
      int minimumOff) {

    int heater(int left_W) {
      int taken_W = Math.min(heater_W, Math.max(0, left_W));
      return taken_W < least_W ? 0 : taken_W;
    }

    int seen(int surplus_W, int pump_W) {
      int taken_W = heater(surplus_W - pump_W);
      int export_W = surplus_W - pump_W - taken_W;
      return export_W + (immersionCounted ? taken_W : 0) + (pumpCounted ? pump_W : 0);
    }

    boolean closes(int surplus_W) {
      return seen(surplus_W, 0) >= start_W;
    }

    boolean opens(int surplus_W) {
      return seen(surplus_W, draw_W) <= stop_W;
    }

    boolean hunts(int surplus_W) {
      return closes(surplus_W) && opens(surplus_W);
    }

    ControlLoop closedForm() {
      return new ControlLoop(
          new ControlLoop.Counts(true, immersionCounted, pumpCounted),
          start_W / 1000.0,
          stop_W / 1000.0,
          draw_W / 1000.0,
          heater_W / 1000.0,
          least_W / 1000.0);
    }

    Installation installation() {
      Given given = Given.boundless().constantDraw(draw_W / 1000.0);
      given.counts = EnumSet.of(Counted.EXPORT);
      if (immersionCounted) {
        given.counts.add(Counted.IMMERSION);
      }
      if (pumpCounted) {
        given.counts.add(Counted.HEAT_PUMP);
      }
      given.start_kW = start_W / 1000.0;
      given.stop_kW = stop_W / 1000.0;
      given.immersion_kW = heater_W / 1000.0;
      given.minimum_kW = least_W / 1000.0;
      given.startDelay_min = startDelay;
      given.stopDelay_min = stopDelay;
      given.startLag_min = lag;
      given.minimumRun_min = minimumRun;
      given.minimumOff_min = minimumOff;
      return given.build();
    }
  }

  /** Minutes in which the compressor started, and the lengths of the runs that ended. */
  private static final class Watch implements Trace {
    private final List<Integer> starts = new ArrayList<>();
    private final List<Integer> runs = new ArrayList<>();
    private int minute;
    private boolean running;

    @Override
    public void step(Step now) {
      boolean runs = now.heatPump() == HeatPumpModel.State.RUNNING;
      if (runs && !running) {
        starts.add(minute);
      }
      if (!runs && running) {
        this.runs.add(minute - starts.get(starts.size() - 1));
      }
      running = runs;
      minute++;
    }
  }

  private static Setting made(Generated made) {
    return new Setting(
        made.chance(0.5),
        made.chance(0.5),
        made.between(2, 45) * 100,
        made.between(-10, 45) * 100,
        made.between(3, 40) * 100,
        made.chance(0.3) ? 0 : made.between(2, 40) * 100,
        made.oneOf(List.of(0, 100, 150)),
        made.between(0, 9),
        made.between(0, 9),
        made.between(0, 4),
        made.chance(0.5) ? 0 : made.between(1, 20),
        made.chance(0.5) ? 0 : made.between(1, 20));
  }

  /** Every edge a power could make, one watt either side, and a few values between. */
  private static Set<Integer> surpluses_W(Setting setting, Generated made) {
    Set<Integer> surpluses_W = new HashSet<>();
    for (int threshold_W : new int[] {setting.start_W, setting.stop_W}) {
      for (int pump_W : new int[] {0, setting.draw_W}) {
        for (int heater_W : new int[] {0, setting.heater_W}) {
          for (int off_W = -1; off_W <= 1; off_W++) {
            surpluses_W.add(threshold_W + pump_W + heater_W + off_W);
          }
        }
      }
    }
    for (int more = 0; more < 6; more++) {
      surpluses_W.add(made.between(-1000, 12000));
    }
    return surpluses_W;
  }

  @Test
  void dayRunAgreesWithTheControlLoopEdgeForEdge() {
    Generated made = Generated.forTest("constantSurplus");
    int hunting = 0;
    for (int number = 0; number < SETTINGS; number++) {
      Setting setting = made(made);
      for (int surplus_W : surpluses_W(setting, made)) {
        int surplus = surplus_W;
        Supplier<String> what = () -> setting + " at " + surplus + " W, " + Generated.seed();
        checkClosedForm(setting, surplus_W, what);
        hunting += setting.hunts(surplus_W) ? 1 : 0;
        if (setting.start_W > setting.stop_W) {
          checkRun(setting, surplus_W, what);
        }
      }
    }
    assertThat(hunting).isGreaterThan(SETTINGS);
  }

  private static void checkClosedForm(Setting setting, int surplus_W, Supplier<String> what) {
    ControlLoop loop = setting.closedForm();
    double surplus_kW = surplus_W / 1000.0;
    boolean inBand = loop.hunting().stream().anyMatch(band -> band.holds(surplus_kW));
    assertThat(loop.closes(surplus_kW)).as(what).isEqualTo(setting.closes(surplus_W));
    assertThat(loop.opens(surplus_kW)).as(what).isEqualTo(setting.opens(surplus_W));
    assertThat(inBand).as(what).isEqualTo(setting.hunts(surplus_W));
  }

  private static void checkRun(Setting setting, int surplus_W, Supplier<String> what) {
    double[] surplus_kW = new double[MINUTES];
    Arrays.fill(surplus_kW, surplus_W / 1000.0);
    Profile profile = Profile.ofSurplus(StepLength.MINUTE, 0, surplus_kW, new double[MINUTES]);
    Watch watch = new Watch();
    DayRun run = DayRun.startingAt(20, setting.installation(), StepLength.MINUTE).watchedBy(watch);
    Result.Cycles cycles = run.through(new Day(profile, 10, 10)).result().cycles().orElseThrow();
    if (!setting.closes(surplus_W)) {
      assertThat(cycles.relayClosings()).as(what).isZero();
      assertThat(watch.starts).as(what).isEmpty();
    } else if (!setting.opens(surplus_W)) {
      assertThat(cycles.relayClosings()).as(what).isEqualTo(1);
      assertThat(watch.starts).as(what).containsExactly(firstStart(setting));
      assertThat(watch.runs).as(what).isEmpty();
    } else {
      checkHunting(setting, watch, cycles, what);
    }
  }

  private static int firstStart(Setting setting) {
    return Math.max(1, setting.startDelay) + setting.lag;
  }

  /** Starts in the 60 minutes from each start on; one that is decided for the end counts too. */
  private static int inWorstHour(List<Integer> starts) {
    return starts.stream()
        .mapToInt(from -> (int) starts.stream().filter(to -> to >= from && to < from + 60).count())
        .max()
        .orElse(0);
  }

  private static void checkHunting(
      Setting setting, Watch watch, Result.Cycles cycles, Supplier<String> what) {
    int run = Math.max(Math.max(1, setting.stopDelay), setting.minimumRun);
    int pause = Math.max(firstStart(setting), setting.minimumOff);
    List<Integer> expected = new ArrayList<>();
    for (int start = firstStart(setting); start < MINUTES; start += run + pause) {
      expected.add(start);
    }
    assertThat(watch.starts).as(what).isEqualTo(expected);
    assertThat(watch.runs).as(what).containsOnly(run);
    boolean byTimer = setting.minimumRun > Math.max(1, setting.stopDelay);
    assertThat(cycles.startsInWorstHour()).as(what).isEqualTo(inWorstHour(expected));
    long ended = expected.stream().filter(start -> start + run <= MINUTES).count();
    assertThat(cycles.runsEndedByTimer()).as(what).isEqualTo(byTimer ? (int) ended : 0);
    var delays = new HuntingCycle.Delays(setting.startDelay, setting.stopDelay, setting.lag, 1);
    var cycle = HuntingCycle.withTimers(delays, setting.minimumRun, setting.minimumOff);
    assertThat(cycle.run_min()).as(what).isEqualTo(run);
    assertThat(cycle.pause_min()).as(what).isEqualTo(pause);
  }

  @Test
  void theTableOfTheControlLoopHoldsRowByRow() {
    // counts export + immersion; A 3.0, B 2.7, P 2.8: hunts for S in [A, B + P] = [3.0, 5.5]
    checkBand(new Setting(true, false, 3000, 2700, 2800, 3000, 150, 1, 1, 0, 0, 0), 3000, 5500);
    // export alone, heater active, B >= d: [A + R, B + P + R]
    checkBand(new Setting(false, false, 500, 300, 2000, 3000, 150, 1, 1, 0, 0, 0), 3500, 5300);
    // export alone, heater active, B < 0: [A + R, B + P]
    checkBand(new Setting(false, false, 500, -100, 4000, 3000, 150, 1, 1, 0, 0, 0), 3500, 3900);
    // export + heat pump, heater active, B >= P: [A + R, B + R] needs A <= B, which runs free
    checkNone(new Setting(false, true, 2500, 2400, 2000, 3000, 150, 1, 1, 0, 0, 0));
    // export + heat pump, heater active, B < P: [A + R, B] needs A + R <= B, never with A > B
    checkNone(new Setting(false, true, 1500, 1300, 2000, 3000, 150, 1, 1, 0, 0, 0));
    // export + immersion + heat pump: none while A > B
    checkNone(new Setting(true, true, 1500, 1400, 2000, 3000, 150, 1, 1, 0, 0, 0));
  }

  private static void checkBand(Setting setting, int from_W, int to_W) {
    for (int surplus_W : new int[] {from_W - 1, from_W, to_W, to_W + 1}) {
      boolean inside = surplus_W >= from_W && surplus_W <= to_W;
      assertThat(setting.hunts(surplus_W)).as(setting + " " + surplus_W).isEqualTo(inside);
      checkRun(setting, surplus_W, setting::toString);
    }
  }

  private static void checkNone(Setting setting) {
    for (int surplus_W = 0; surplus_W <= 9000; surplus_W += 50) {
      assertThat(setting.hunts(surplus_W)).as(setting + " " + surplus_W).isFalse();
      checkRun(setting, surplus_W, setting::toString);
    }
  }
}
