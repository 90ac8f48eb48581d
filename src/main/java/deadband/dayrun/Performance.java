package deadband.dayrun;

import deadband.trade.CompressorReach;
import deadband.trade.HeatPumpCop;

/**
 * What the compressor draws and gives at a tank temperature.
 *
 * <p>Toward the stop, or the flow its plate speaks of where that is lower, the power input rises as
 * {@link HeatPumpCop.Fit#inputAt_kW} says; above that flow it stays and the heat falls. As the flow
 * nears its limit the coil passes on less ({@link CompressorReach#outputShare}) and the compressor
 * turns down with it; where it would have to go below its least draw it has reached its limit. The
 * COP is that of the fit at the flow temperature, times a factor, and is held at the ends of the
 * fit's range.
 */
public final class Performance {
  private final Spec spec;
  private double source_C;
  private double copAtStop;
  private double coil_C;
  private double input_kW;

  /** Nothing that is not fitted can run. */
  private boolean atLimit = true;

  Performance(Spec spec) {
    this.spec = spec;
  }

  /**
   * What is fitted.
   *
   * @param fit published COP fit
   * @param factor this machine's COP over the fit's, positive
   * @param minimumInput_kW the least it draws [kW]
   * @param hotWaterInput_kW the most it draws, from {@code stop_C} up [kW]; 0 for none
   * @param stop_C tank temperature at which it comes to draw that [°C]
   * @param maximumFlow_C highest flow temperature the compressor reaches [°C]
   * @param flowAboveTank_K how far the flow lies above the tank at full output [K], positive
   */
  public record Spec(
      HeatPumpCop.Fit fit,
      double factor,
      double minimumInput_kW,
      double hotWaterInput_kW,
      double stop_C,
      double maximumFlow_C,
      double flowAboveTank_K) {}

  /** Takes its heat from a source at this temperature from now on. */
  void source(double source_C) {
    this.source_C = source_C;
    copAtStop = spec.fit.copClamped(spec.stop_C + (spec.flowAboveTank_K - source_C));
  }

  /** Works out what follows from the water around the coil [°C]. */
  void at(double coil_C) {
    this.coil_C = coil_C;
    double wanted_kW =
        Math.min(
            spec.hotWaterInput_kW,
            HeatPumpCop.input_kW(
                spec.hotWaterInput_kW,
                spec.minimumInput_kW,
                copAtStop,
                spec.fit.copClamped(coil_C + (spec.flowAboveTank_K - source_C))));
    double share = CompressorReach.outputShare(coil_C, spec.maximumFlow_C, spec.flowAboveTank_K);
    atLimit = share == 0 || share * wanted_kW < spec.minimumInput_kW;
    input_kW = Math.max(spec.minimumInput_kW, share * wanted_kW);
  }

  /** COP while it runs. */
  double cop() {
    double flow_C = Math.min(coil_C + spec.flowAboveTank_K, spec.maximumFlow_C);
    return spec.factor * spec.fit.copClamped(flow_C - source_C);
  }

  /** Whether anything is fitted that could run. */
  boolean fitted() {
    return spec.hotWaterInput_kW > 0;
  }

  /** Electrical input while it runs [kW]. */
  double input_kW() {
    return input_kW;
  }

  /** Heat it gives while it runs [kW]. */
  double output_kW() {
    return HeatPumpCop.output_kW(input_kW, cop());
  }

  /** Whether the flow would have to go higher than it can. */
  boolean atLimit() {
    return atLimit;
  }

  double maximumFlow_C() {
    return spec.maximumFlow_C;
  }

  double flowAboveTank_K() {
    return spec.flowAboveTank_K;
  }
}
