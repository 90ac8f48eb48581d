package deadband.dayrun;

/**
 * What each load uses of the PV power at once, in the order of the loads. Where the billing meter
 * counts each line for itself, only PV on the same line can be used: what is fed in on one line is
 * exported there while the load on another is imported.
 */
final class SelfConsumption {
  private final boolean byLine;
  private final double[] left_kW = new double[3];

  SelfConsumption(SupplyModel.Spec supply) {
    byLine = supply.perPhase();
  }

  /** Begins a step with this PV power, none of it used. */
  void begin(Line generator, double pv_kW) {
    left_kW[0] = 0;
    left_kW[1] = 0;
    left_kW[2] = 0;
    use_kW(generator, -pv_kW);
  }

  /** Uses what is left for a load, and gives how much of it came from PV [kW]. */
  double use_kW(Line line, double power_kW) {
    if (power_kW == 0) {
      return 0;
    }
    if (!byLine) {
      return useOn_kW(0, power_kW);
    }
    if (line != Line.ALL) {
      return useOn_kW(line.index(), power_kW);
    }
    double third_kW = power_kW / 3;
    return useOn_kW(0, third_kW) + useOn_kW(1, third_kW) + useOn_kW(2, third_kW);
  }

  private double useOn_kW(int index, double power_kW) {
    double before_kW = left_kW[index];
    left_kW[index] = Math.max(0, before_kW - power_kW);
    return before_kW - left_kW[index];
  }
}
