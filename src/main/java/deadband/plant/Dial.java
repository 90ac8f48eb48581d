package deadband.plant;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Values as a dial accepts them, rounded to the side that is safe. */
public final class Dial {

  private static final double STEPS_PER_KW = 10;
  private static final double STEPS_PER_K = 2;
  private static final double STEP_MIN = 10;
  private static final double TINY = 1e-9;

  /** Preferred ratings of small breakers, IEC 60898-1 (from memory). */
  private static final double[] BREAKERS_A = {6, 10, 13, 16, 20, 25, 32, 40, 50, 63};

  private Dial() {}

  /** The nearest tenth of a kilowatt at or above. */
  public static double up_kW(double power_kW) {
    return Math.ceil(power_kW * STEPS_PER_KW - TINY) / STEPS_PER_KW + 0.0;
  }

  /** The nearest tenth of a kilowatt at or below. */
  public static double down_kW(double power_kW) {
    return Math.floor(power_kW * STEPS_PER_KW + TINY) / STEPS_PER_KW + 0.0;
  }

  /** The nearest tenth of a kilowatt; half way, the higher. */
  public static double nearest_kW(double power_kW) {
    return Math.floor(power_kW * STEPS_PER_KW + 0.5 + TINY) / STEPS_PER_KW + 0.0;
  }

  /** The next ten minutes at or above. */
  public static double up_min(double time_min) {
    return Math.ceil(time_min / STEP_MIN - TINY) * STEP_MIN;
  }

  /** The nearest half degree at or above. */
  public static double up_C(double temperature_C) {
    return Math.ceil(temperature_C * STEPS_PER_K - TINY) / STEPS_PER_K;
  }

  /** The nearest half degree at or below. */
  public static double down_C(double temperature_C) {
    return Math.floor(temperature_C * STEPS_PER_K + TINY) / STEPS_PER_K;
  }

  /** The smallest breaker that carries a current. */
  public static OptionalDouble breakerUp_A(double current_A) {
    return Arrays.stream(BREAKERS_A).filter(breaker_A -> breaker_A >= current_A).findFirst();
  }

  /** The largest breaker that is not above a current. */
  public static OptionalDouble breakerDown_A(double current_A) {
    return Arrays.stream(BREAKERS_A).filter(breaker_A -> breaker_A <= current_A).max();
  }
}
