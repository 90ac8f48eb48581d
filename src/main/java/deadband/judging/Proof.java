package deadband.judging;

import deadband.dayrun.Result;
import deadband.dayrun.TestDays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What came of trying a remedy: the setup with its changes was judged afresh, and its days were run
 * again where the changes touch them.
 *
 * @param clears checks whose findings went away, by name
 * @param raises checks that found something new, by name; none of the class cured, or worse
 * @param before the days without it; empty where none were run
 * @param after the days with it; empty where none were run
 */
public record Proof(
    List<String> clears, List<String> raises, Optional<TestDays> before, Optional<TestDays> after) {

  /** A difference in a day's energy that is worth a word [kWh]: our own choice. */
  private static final double NOTICED_KWH = 0.1;

  /** Safe where it raises nothing, and buys no more in a day, on surplus calls or at all. */
  public Trust trust() {
    boolean costs = rises(Result::importWhileOnSurplus_kWh) || rises(Result::import_kWh);
    return costs || !raises.isEmpty() ? Trust.TRADE_OFF : Trust.SAFE;
  }

  private boolean rises(ToDoubleFunction<Result> quantity) {
    if (before.isEmpty() || after.isEmpty()) {
      return false;
    }
    return rises(quantity, before.get().clear(), after.get().clear())
        || rises(quantity, before.get().cloud(), after.get().cloud());
  }

  private static boolean rises(ToDoubleFunction<Result> quantity, Result from, Result to) {
    return quantity.applyAsDouble(to) - quantity.applyAsDouble(from) > NOTICED_KWH;
  }
}
