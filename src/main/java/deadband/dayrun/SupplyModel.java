package deadband.dayrun;

import deadband.trade.Metering;

/**
 * The supply: what each line conductor carries, what the billing meter makes of it, and what a
 * sensor on one or all lines sees. Import positive, as in {@link Metering}.
 */
public final class SupplyModel {
  private final double[] line_kW = new double[3];
  private final boolean perPhase;
  private final double exportLimit_kW;

  SupplyModel(Spec spec) {
    perPhase = spec.perPhase;
    exportLimit_kW = spec.exportLimit_kW;
  }

  /**
   * How the site is connected.
   *
   * @param perPhase whether the billing meter counts each line for itself instead of netting
   * @param exportLimit_kW most that may be exported, summed over the lines [kW]; infinite for none
   * @param house where the house load sits
   */
  public record Spec(boolean perPhase, double exportLimit_kW, Line house) {}

  void clear() {
    line_kW[0] = 0;
    line_kW[1] = 0;
    line_kW[2] = 0;
  }

  /** Draws a power from a line, negative to feed it [kW]. */
  void draw(Line line, double power_kW) {
    if (power_kW == 0) {
      return;
    }
    if (line == Line.ALL) {
      double third_kW = power_kW / 3;
      line_kW[0] += third_kW;
      line_kW[1] += third_kW;
      line_kW[2] += power_kW - 2 * third_kW;
    } else {
      line_kW[line.index()] += power_kW;
    }
  }

  /** What a sensor sees leaving the house, import negative [kW]. */
  double leaving_kW(Line sensed) {
    return sensed == Line.ALL ? -(line_kW[0] + line_kW[1] + line_kW[2]) : -line_kW[sensed.index()];
  }

  /** What the generator has to hold back to keep to the export limit [kW]. */
  double toCurtail_kW(double generated_kW) {
    if (generated_kW == 0) {
      return 0;
    }
    double beyond_kW = leaving_kW(Line.ALL) - exportLimit_kW;
    return beyond_kW > 0 ? Math.min(generated_kW, beyond_kW) : 0;
  }

  double import_kW() {
    return perPhase ? Metering.perPhaseImport(line_kW) : Metering.nettedImport(line_kW);
  }

  double export_kW() {
    return perPhase ? Metering.perPhaseExport(line_kW) : Metering.nettedExport(line_kW);
  }
}
