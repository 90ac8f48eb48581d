package deadband.dayrun;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * A disinfection cycle run by itself: after a dull day of ordinary use, with no sun, house load or
 * draw-off while it lasts.
 *
 * @param result of the cycle alone
 * @param toTarget_min time until its sensor first stood at the target [min]; empty where it never
 *     did
 * @param held whether its sensor stood at the target for the whole hold, within the time allowed
 * @param heldShare share of the store's volume that stood at the target for the whole hold, 0 to 1
 */
public record CycleRun(Result result, OptionalDouble toTarget_min, boolean held, double heldShare) {

  private static final StepLength STEP = StepLength.MINUTE;

  /** Runs the cycle of a programme. */
  static CycleRun of(
      Installation installation, Surroundings surroundings, Disinfection.Spec cycle) {
    Day before = surroundings.dull(surroundings.winterDate());
    double beginsAt_min = before.profile().length();
    Installation due = installation.with(cycle.firstDue(beginsAt_min));
    DayRun run = DayRun.of(due, STEP).through(before).countingFromHere();
    int length = (int) Math.ceil(cycle.timeAllowed_min()) + 1;
    Watch watch = new Watch(run.tank(), cycle, length);
    Day still = Day.still(length, before.coldWater_C(), before.source_C());
    Result result = run.watchedBy(watch).through(still).result();
    return watch.cycle(result);
  }

  /** Watches each layer for how long it stands at the target. */
  private static final class Watch implements Trace {
    private final Tank tank;
    private final double target_C;
    private final int holdSteps;
    private final int sensorLayer;
    private final int[] standing;
    private final int[] longest;
    private int steps;
    private int reached = -1;

    Watch(Tank tank, Disinfection.Spec cycle, int length) {
      this.tank = tank;
      this.target_C = cycle.target_C();
      this.holdSteps = Math.min(length, STEP.delay(cycle.hold_min()));
      this.sensorLayer = tank.at(cycle.sensor_mm());
      this.standing = new int[tank.layers()];
      this.longest = new int[tank.layers()];
    }

    @Override
    public void step(Step step) {
      steps++;
      for (int layer = 0; layer < standing.length; layer++) {
        standing[layer] = tank.layer_C(layer) >= target_C ? standing[layer] + 1 : 0;
        longest[layer] = Math.max(longest[layer], standing[layer]);
      }
      if (reached < 0 && standing[sensorLayer] > 0) {
        reached = steps;
      }
    }

    CycleRun cycle(Result result) {
      long treated = Arrays.stream(longest).filter(steps -> steps >= holdSteps).count();
      return new CycleRun(
          result,
          reached < 0 ? OptionalDouble.empty() : OptionalDouble.of(reached * STEP.minutes()),
          longest[sensorLayer] >= holdSteps,
          (double) treated / longest.length);
    }
  }
}
