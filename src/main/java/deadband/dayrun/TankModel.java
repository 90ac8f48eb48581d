package deadband.dayrun;

import deadband.trade.Layers;
import deadband.trade.StandingLoss;
import deadband.trade.Water;
import java.util.Arrays;

/**
 * The hot water tank: a column of equal layers, bottom first, that keeps account of its heat.
 *
 * <p>The element heats the layer it lies in, the coil the layers along it, the colder ones more;
 * what is then warmer than the water above it rises and mixes. Water below the element or the coil
 * stays as cold as it came in: no conduction down the column or the wall is calculated. One heat
 * capacity holds throughout, that of water at 50 °C; between 10 and 65 °C the true one lies within
 * 1.6 % of it.
 */
public final class TankModel {
  /** Layers that serve where nothing speaks for another number. */
  public static final int LAYERS = 20;

  private static final double CAPACITY_AT_C = 50;

  /** Parts in which the coil gives the heat that would lift its layers as far as the flow. */
  private static final double PARTS_PER_LIFT = 4;

  /** The flow lies at least this far above the coil's mean while heat passes [K]. */
  static final double LEAST_ABOVE_K = 0.1;

  private final double[] layer_C;
  private final double[] coilShare;
  private final int coilLowest;
  private final int coilHighest;
  private final int fullestCoilLayer;
  private final double height_mm;
  private final double layer_L;
  private final double litre_kWh_per_K;
  private final double layer_kWh_per_K;
  private final double room_C;
  private final double keptShare;

  private double start_kWh;
  private double given_kWh;
  private double lost_kWh;
  private double drawn_kWh;

  TankModel(Spec spec, double start_C, StepLength step) {
    layer_C = new double[spec.layers];
    Arrays.fill(layer_C, start_C);
    height_mm = spec.height_mm;
    layer_L = spec.volume_L / spec.layers;
    litre_kWh_per_K = Water.heatCapacity_kWh_per_LK(CAPACITY_AT_C);
    layer_kWh_per_K = layer_L * litre_kWh_per_K;
    room_C = spec.room_C;
    keptShare =
        StandingLoss.keptShare(
            StandingLoss.coefficient_W_per_K(spec.loss_kWh_per_day),
            spec.volume_L * litre_kWh_per_K,
            step.minutes());
    coilLowest = at(spec.coilBottom_mm);
    coilHighest = Math.max(coilLowest, lastTouched(spec));
    coilShare = shares(spec);
    fullestCoilLayer = fullest(coilShare);
    start_kWh = content_kWh();
  }

  /**
   * What is fitted; heights above the base of the tank.
   *
   * @param volume_L water content [L]
   * @param height_mm height of the water inside [mm]
   * @param loss_kWh_per_day standing loss in 24 h, 45 K above the room [kWh]
   * @param coilBottom_mm lower end of the coil [mm]
   * @param coilTop_mm upper end of the coil [mm]
   * @param coilCutOut_C non-self-resetting cut-out of the coil [°C]
   * @param room_C temperature around the tank [°C]
   * @param layers number of layers; {@link #LAYERS} is usual
   */
  public record Spec(
      double volume_L,
      double height_mm,
      double loss_kWh_per_day,
      double coilBottom_mm,
      double coilTop_mm,
      double coilCutOut_C,
      double room_C,
      int layers) {}

  /** The layer in which a height [mm] lies. */
  int at(double above_mm) {
    return Layers.at(above_mm, height_mm, layer_C.length);
  }

  /** A coil that ends on the boundary of two layers does not touch the upper one. */
  private int lastTouched(Spec spec) {
    int last = at(spec.coilTop_mm);
    return last * height_mm / layer_C.length >= spec.coilTop_mm ? last - 1 : last;
  }

  private double[] shares(Spec spec) {
    double[] shares = new double[layer_C.length];
    double layer_mm = height_mm / layer_C.length;
    double coil_mm = spec.coilTop_mm - spec.coilBottom_mm;
    for (int layer = coilLowest; layer <= coilHighest; layer++) {
      double from_mm = Math.max(spec.coilBottom_mm, layer * layer_mm);
      double to_mm = Math.min(spec.coilTop_mm, (layer + 1) * layer_mm);
      shares[layer] = coilLowest == coilHighest ? 1 : (to_mm - from_mm) / coil_mm;
    }
    return shares;
  }

  private static int fullest(double[] shares) {
    int fullest = 0;
    for (int layer = 1; layer < shares.length; layer++) {
      fullest = shares[layer] > shares[fullest] ? layer : fullest;
    }
    return fullest;
  }

  double layer_C(int layer) {
    return layer_C[layer];
  }

  double top_C() {
    return layer_C[layer_C.length - 1];
  }

  double bottom_C() {
    return layer_C[0];
  }

  /** Mean of the water along the coil [°C]. */
  double coil_C() {
    double sum_C = 0;
    for (int layer = coilLowest; layer <= coilHighest; layer++) {
      sum_C += coilShare[layer] * layer_C[layer];
    }
    return sum_C;
  }

  /** The warmest water along the coil [°C]. */
  double coilTop_C() {
    return layer_C[coilHighest];
  }

  /** Heat that brings a layer and all above it to a limit, were it spread so [kWh]. */
  double room_kWh(int lowest, double limit_C) {
    return room_kWh(lowest, limit_C, Double.POSITIVE_INFINITY);
  }

  /** The same; where it is more than {@code ample_kWh}, anything from there up to it. */
  double room_kWh(int lowest, double limit_C, double ample_kWh) {
    double ample_K = ample_kWh / layer_kWh_per_K;
    double room_K = 0;
    for (int layer = lowest; layer < layer_C.length && room_K <= ample_K; layer++) {
      double below_K = limit_C - layer_C[layer];
      if (below_K > 0) {
        room_K += below_K;
      }
    }
    return room_K * layer_kWh_per_K;
  }

  /**
   * Heat that the coil can give before its mean reaches a limit, and the layers above with it
   * [kWh]. A layer that the coil crosses only in part counts in part.
   */
  double coilRoom_kWh(double limit_C) {
    double crossed_kWh_per_K = layer_kWh_per_K / coilShare[fullestCoilLayer];
    double coil_kWh = Math.max(0, limit_C - coil_C()) * crossed_kWh_per_K;
    return coil_kWh + room_kWh(coilHighest + 1, limit_C);
  }

  /** Heats the layer of the element; what is then warmer than the water above rises. */
  void heatElement(int layer, double heat_kWh) {
    Layers.heat(layer_C, layer, layer, heat_kWh, layer_kWh_per_K);
    Layers.settle(layer_C);
    given_kWh += heat_kWh;
  }

  /**
   * Heats through the coil: each layer in proportion to its length of coil and to how far the flow
   * lies above it. Much heat is given in parts, so that no layer gets hotter than the flow.
   *
   * @param heat_kWh heat [kWh]
   * @param above_K how far the flow lies above the coil's mean [K], positive
   * @param limit_C highest flow temperature [°C]; where the coil is that hot already the flow lies
   *     {@link #LEAST_ABOVE_K} above it
   */
  void heatCoil(double heat_kWh, double above_K, double limit_C) {
    double coil_kWh_per_K = layer_kWh_per_K * (coilHighest - coilLowest + 1);
    double least_K = Math.max(LEAST_ABOVE_K, Math.min(above_K, limit_C - coil_C()));
    double parts = Math.ceil(PARTS_PER_LIFT * heat_kWh / (coil_kWh_per_K * least_K));
    for (int part = 0; part < parts; part++) {
      double coil_C = coil_C();
      double flow_C = Math.max(coil_C + LEAST_ABOVE_K, Math.min(coil_C + above_K, limit_C));
      share(heat_kWh / parts, flow_C);
      Layers.settle(layer_C);
    }
    given_kWh += heat_kWh;
  }

  private void share(double heat_kWh, double flow_C) {
    double sum_K = 0;
    for (int layer = coilLowest; layer <= coilHighest; layer++) {
      sum_K += coilShare[layer] * Math.max(0, flow_C - layer_C[layer]);
    }
    double rise = heat_kWh / layer_kWh_per_K / sum_K;
    for (int layer = coilLowest; layer <= coilHighest; layer++) {
      layer_C[layer] += rise * coilShare[layer] * Math.max(0, flow_C - layer_C[layer]);
    }
  }

  /** Loses heat to the room for one step. */
  void cool() {
    lost_kWh += Layers.cool_K(layer_C, room_C, keptShare) * layer_kWh_per_K;
  }

  /** Draws from the top while cold water enters at the bottom. */
  void draw(double drawn_L, double cold_C) {
    if (drawn_L > 0) {
      double drawn_C = Layers.draw_C(layer_C, layer_L, drawn_L, cold_C);
      drawn_kWh += drawn_L * litre_kWh_per_K * (drawn_C - cold_C);
      Layers.settle(layer_C);
    }
  }

  /** Heat above 0 °C [kWh]. */
  double content_kWh() {
    return Layers.mean_C(layer_C) * layer_C.length * layer_kWh_per_K;
  }

  double lost_kWh() {
    return lost_kWh;
  }

  /** Heat given less lost, drawn and kept [kWh]: 0 but for rounding. */
  double imbalance_kWh() {
    return given_kWh - lost_kWh - drawn_kWh - (content_kWh() - start_kWh);
  }

  /** Begins its account anew with the heat it holds now. */
  void accountAfresh() {
    start_kWh = content_kWh();
    given_kWh = 0;
    lost_kWh = 0;
    drawn_kWh = 0;
  }

  /** Number of layers. */
  int layers() {
    return layer_C.length;
  }

  double given_kWh() {
    return given_kWh;
  }

  double drawn_kWh() {
    return drawn_kWh;
  }
}
