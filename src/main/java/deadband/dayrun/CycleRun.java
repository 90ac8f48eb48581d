package deadband.dayrun;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * A disinfection cycle run by itself: after a dull day of ordinary use, with no sun, house load or
 * draw-off while it lasts. It begins with the longest stretch of the day in which it may run; what
 * stays hot outside such times is not counted as held, since nothing holds it.
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
  public static CycleRun of(
      Installation installation, Surroundings surroundings, DisinfectionModel.Spec cycle) {
    Day before = surroundings.dull(surroundings.winterDate());
    int begins_min = cycle.longest().from_min();
    Installation due = installation.with(cycle.firstDue(before.profile().length() + begins_min));
    DayRun run = DayRun.of(due, STEP).through(before).through(still(before, 0, begins_min));
    int length = (int) Math.ceil(cycle.timeAllowed_min()) + 1;
    Watch watch = new Watch(run.tank(), cycle, length);
    run.countingFromHere().watchedBy(watch).through(still(before, begins_min, length));
    return watch.cycle(run.result());
  }

  private static Day still(Day after, int from_min, int length_min) {
    return Day.still(from_min, length_min, after.coldWater_C(), after.source_C());
  }

  /** Watches each layer for how long it stands at the target. */
  private static final class Watch implements Trace {
    private final TankModel tank;
    private final double target_C;
    private final Hours open;
    private final int holdSteps;
    private final int sensorLayer;
    private final int[] standing;
    private final int[] longest;
    private int steps;
    private int reached = -1;

    Watch(TankModel tank, DisinfectionModel.Spec cycle, int length) {
      this.tank = tank;
      this.target_C = cycle.target_C();
      this.open = cycle.open();
      this.holdSteps = Math.min(length, STEP.delay(cycle.hold_min()));
      this.sensorLayer = tank.at(cycle.sensor_mm());
      this.standing = new int[tank.layers()];
      this.longest = new int[tank.layers()];
    }

    @Override
    public void step(Step step) {
      steps++;
      boolean held = open.hold(step.secondOfDay());
      for (int layer = 0; layer < standing.length; layer++) {
        standing[layer] = held && tank.layer_C(layer) >= target_C ? standing[layer] + 1 : 0;
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
