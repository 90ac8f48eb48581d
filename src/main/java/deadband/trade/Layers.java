package deadband.trade;

/**
 * What happens between the equal layers of a store, for the minute-by-minute run.
 *
 * <p>A store is an array of layer temperatures, bottom first. One heat capacity holds for all
 * layers, so heat is proportional to the sum of temperatures: mixing keeps that sum, heating and
 * cooling change it by a stated amount. Every function works in place and allocates nothing.
 */
public final class Layers {
  private Layers() {}

  /**
   * Layer in which a height lies.
   *
   * @param height_mm height above the base of the tank [mm]; below 0 counts as the lowest layer,
   *     above the top as the highest
   * @param tankHeight_mm height of the tank [mm], positive
   * @param layers number of layers, positive
   * @return index, 0 at the bottom
   */
  public static int at(double height_mm, double tankHeight_mm, int layers) {
    Require.positive("tankHeight_mm", tankHeight_mm);
    Require.positive("layers", layers);
    Require.finite("height_mm", height_mm);
    double index = Math.floor(height_mm / tankHeight_mm * layers);
    return (int) Math.min(layers - 1.0, Math.max(0, index));
  }

  /**
   * Mixes layers until none is warmer than the one above it. Buoyancy does this in minutes; the
   * result is the only stable profile reached by mixing neighbours (pooling adjacent violators).
   * The sum of temperatures stays the same.
   */
  public static void settle(double[] layer_C) {
    for (int top = 1; top < layer_C.length; top++) {
      if (layer_C[top - 1] > layer_C[top]) {
        mixDownFrom(layer_C, top);
      }
    }
  }

  private static void mixDownFrom(double[] layer_C, int top) {
    int bottom = top;
    double sum = layer_C[top];
    double mean = sum;
    while (bottom > 0 && layer_C[bottom - 1] > mean) {
      bottom--;
      sum += layer_C[bottom];
      mean = sum / (top - bottom + 1);
    }
    for (int layer = bottom; layer <= top; layer++) {
      layer_C[layer] = mean;
    }
  }

  /**
   * Adds heat to the layers from {@code lowest} to {@code highest}, shared equally; {@link #settle}
   * afterwards carries what is too warm to the layers above.
   *
   * @param layer_C temperatures, bottom first [°C]
   * @param lowest lowest layer heated
   * @param highest highest layer heated, not below {@code lowest}
   * @param heat_kWh heat [kWh], negative for heat taken
   * @param layer_kWh_per_K heat capacity of one layer [kWh/K], positive
   */
  public static void heat(
      double[] layer_C, int lowest, int highest, double heat_kWh, double layer_kWh_per_K) {
    Require.positive("layer_kWh_per_K", layer_kWh_per_K);
    Require.positive("layers heated", highest - lowest + 1.0);
    double rise_K = heat_kWh / (layer_kWh_per_K * (highest - lowest + 1));
    for (int layer = lowest; layer <= highest; layer++) {
      layer_C[layer] += rise_K;
    }
  }

  /**
   * Lets each layer lose heat to the room, exactly for a constant room temperature: T ← T_room + (T
   * − T_room)·share, share = exp(−H·Δt/C).
   *
   * @param layer_C temperatures, bottom first [°C]
   * @param room_C temperature around the store [°C]
   * @param keptShare what is left of the difference after the step, 0 to 1; from {@link
   *     StandingLoss#keptShare}
   * @return sum over the layers of the fall in temperature [K]; times the heat capacity of one
   *     layer it is the heat lost
   */
  public static double cool_K(double[] layer_C, double room_C, double keptShare) {
    double fall_K = 0;
    for (int layer = 0; layer < layer_C.length; layer++) {
      double loss_K = (layer_C[layer] - room_C) * (1 - keptShare);
      layer_C[layer] -= loss_K;
      fall_K += loss_K;
    }
    return fall_K;
  }

  /**
   * Draws water from the top while cold enters at the bottom, as plug flow: the profile moves up by
   * the volume drawn and is averaged over the layers again. That averaging is the model's only
   * mixing by inflow; more layers make it smaller.
   *
   * @param layer_C temperatures, bottom first [°C]
   * @param layer_L water content of one layer [L], positive
   * @param drawn_L volume drawn [L], 0 or more; more than the store holds is allowed
   * @param cold_C water that enters [°C]
   * @return mean temperature of the water drawn [°C]; the top layer's where nothing is drawn
   */
  public static double draw_C(double[] layer_C, double layer_L, double drawn_L, double cold_C) {
    Require.positive("layer_L", layer_L);
    double share = Require.notNegative("drawn_L", drawn_L) / layer_L;
    double drawn_C = meanOfTop_C(layer_C, share, cold_C);
    int whole = (int) Math.min(layer_C.length, Math.floor(share));
    double part = Math.min(share - whole, 1);
    for (int layer = layer_C.length - 1; layer >= 0; layer--) {
      layer_C[layer] =
          (1 - part) * below(layer_C, layer - whole, cold_C)
              + part * below(layer_C, layer - whole - 1, cold_C);
    }
    return drawn_C;
  }

  /** Mean temperature of the top {@code share} layers; what the store lacks is cold water. */
  private static double meanOfTop_C(double[] layer_C, double share, double cold_C) {
    if (share == 0) {
      return layer_C[layer_C.length - 1];
    }
    double left = share;
    double sum = 0;
    for (int layer = layer_C.length - 1; layer >= 0 && left > 0; layer--) {
      double part = Math.min(1, left);
      sum += part * layer_C[layer];
      left -= part;
    }
    return (sum + left * cold_C) / share;
  }

  private static double below(double[] layer_C, int layer, double cold_C) {
    return layer < 0 ? cold_C : layer_C[layer];
  }

  /** Mean temperature of the store [°C]. */
  public static double mean_C(double[] layer_C) {
    double sum = 0;
    for (double temperature_C : layer_C) {
      sum += temperature_C;
    }
    return sum / layer_C.length;
  }
}
