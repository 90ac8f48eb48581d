package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The checks of the loop against the loop itself: over a grid of settings, what the relay sees is
 * calculated watt by watt from the definition, surplus by surplus, in every state of the heater
 * that can be reached. No closed form is used here.
 */
class LoopAgainstDefinitionTest {

  private static final int LEAST_W = 150;
  private static final int STEP_W = 50;
  private static final int LIMIT_C = 62;
  private static final int HYSTERESIS_K = 1;

  /** One loop, all powers in watts; the margin is what the diverter leaves to export. */
  private record Loop(
      boolean countsImmersion,
      boolean countsPump,
      int start,
      int stop,
      int draw,
      int heater,
      int margin,
      int pumpStart_C) {

    /** What the relay sees at a surplus, with the pump drawing or not. */
    int seen(int surplus, boolean running, int heaterMost) {
      int left = surplus - (running ? draw : 0);
      int taken = Math.min(heaterMost, Math.max(0, left - margin));
      taken = taken < LEAST_W ? 0 : taken;
      return left - taken + (countsImmersion ? taken : 0) + (countsPump && running ? draw : 0);
    }

    /** The heater's states in which the pump may start; both sensors at one height. */
    List<Integer> heaterStates() {
      return pumpStart_C >= LIMIT_C - HYSTERESIS_K ? List.of(heater, 0) : List.of(heater);
    }

    boolean closes(int surplus, int heaterMost) {
      return seen(surplus, false, heaterMost) >= start;
    }

    boolean hunts() {
      return start > stop
          && heaterStates().stream()
              .anyMatch(most -> anySurplus(s -> closes(s, most) && seen(s, true, most) <= stop));
    }

    boolean startsShort() {
      return heaterStates().stream().anyMatch(most -> anySurplus(s -> closes(s, most) && s < draw));
    }

    private static boolean anySurplus(IntPredicate holds) {
      return IntStream.rangeClosed(-40, 240).map(step -> step * STEP_W).anyMatch(holds);
    }

    String asSetup() {
      return String.format(
          Locale.ROOT,
          """
          { "supply": { "phases": 1, "voltage_V": 230 },
            "relay": { "drives": "heat pump", "counts": ["export"%s%s], "start_kW": %s, "stop_kW": %s },
            "heatPump": { "minimumInput_kW": %s, "hotWaterInput_kW": %s, "sensor_mm": 900, "surplus": { "start_C": %d } },
            "immersion": { "power_kW": %s, "ratedAt_V": 230 },
            "diverter": { "minimum_kW": 0.15, "exportMargin_kW": %s, "limit_C": %d, "hysteresis_K": %d, "sensor": { "height_mm": 900 } } }
          """,
          countsImmersion ? ", \"immersion\"" : "",
          countsPump ? ", \"heat pump\"" : "",
          kW(start),
          kW(stop),
          kW(draw),
          kW(draw),
          pumpStart_C,
          kW(heater),
          kW(margin),
          LIMIT_C,
          HYSTERESIS_K);
    }

    private static String kW(int power_W) {
      return String.format(Locale.ROOT, "%.3f", power_W / 1000.0);
    }
  }

  private static List<Loop> grid() {
    List<Loop> grid = new ArrayList<>();
    int[] starts = {100, 500, 1000, 3000};
    int[] stops = {-100, 0, 100, 900, 2500};
    int[] draws = {100, 1100, 2000, 3500};
    int[] heaters = {100, 3000};
    int[][] states = {{0, 55}, {0, 62}, {200, 55}, {-100, 61}};
    for (int start : starts) {
      for (int stop : stops) {
        for (int draw : draws) {
          for (int heater : heaters) {
            for (int[] state : states) {
              for (int counts = 0; counts < 4; counts++) {
                grid.add(
                    new Loop(
                        counts % 2 == 1,
                        counts / 2 == 1,
                        start,
                        stop,
                        draw,
                        heater,
                        state[0],
                        state[1]));
              }
            }
          }
        }
      }
    }
    return grid;
  }

  @Test
  void firesExactlyWhereTheLoopHuntsOrStartsShortAndIsCuredByWhatItShows() {
    int hunting = 0;
    int resting = 0;
    for (Loop loop : grid()) {
      var read = Setups.read("test", loop.asSetup());
      // a remedy is needed where one is to be looked at
      Judgement judgement = loop.hunts() ? Setups.judge(read) : Setups.glance(read);
      assertOutcome(judgement, "gap-below-heat-pump-draw", loop.hunts(), loop);
      assertOutcome(judgement, "start-below-heat-pump-draw", loop.startsShort(), loop);
      assertCured(judgement, loop);
      hunting += loop.hunts() ? 1 : 0;
      resting += loop.hunts() ? 0 : 1;
    }
    assertThat(hunting).isGreaterThan(200);
    assertThat(resting).isGreaterThan(200);
  }

  private static void assertOutcome(Judgement judgement, String check, boolean fires, Loop loop) {
    boolean found = found(judgement, check).findAny().isPresent();
    boolean clear = judgement.clear().stream().anyMatch(other -> other.name().equals(check));
    assertThat(found).as("%s found on %s", check, loop).isEqualTo(fires);
    assertThat(clear).as("%s clear on %s", check, loop).isEqualTo(!fires);
  }

  private static Stream<Finding> found(Judgement judgement, String check) {
    return judgement.findings().stream().filter(f -> f.check().name().equals(check));
  }

  private static void assertCured(Judgement judgement, Loop loop) {
    found(judgement, "gap-below-heat-pump-draw")
        .filter(finding -> !finding.changes().isEmpty())
        .forEach(
            finding ->
                assertThat(changed(loop, finding).hunts())
                    .as("%s by %s", loop, finding.changes())
                    .isFalse());
  }

  private static Loop changed(Loop loop, Finding finding) {
    int start = loop.start;
    int stop = loop.stop;
    boolean countsPump = loop.countsPump;
    for (var change : finding.changes()) {
      switch (change.pointer().last()) {
        case "start_kW" -> start = watts(change.to());
        case "stop_kW" -> stop = watts(change.to());
        case "counts" -> countsPump = true;
        default -> throw new AssertionError(change);
      }
    }
    return new Loop(
        loop.countsImmersion,
        countsPump,
        start,
        stop,
        loop.draw,
        loop.heater,
        loop.margin,
        loop.pumpStart_C);
  }

  private static int watts(Object power_kW) {
    return (int) Math.round((double) power_kW * 1000);
  }
}
