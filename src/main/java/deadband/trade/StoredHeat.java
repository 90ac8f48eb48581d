package deadband.trade;

/**
 * Heat in a hot water store, the time to put it there, and the water it can deliver.
 *
 * <p>Volumes are water content in litres, temperatures in °C between 0 and 100, heat in kWh. Water
 * properties are taken at the mean of the two temperatures ({@link Water}).
 */
public final class StoredHeat {
  private static final double MINUTES_PER_HOUR = 60;

  private StoredHeat() {}

  /**
   * Heat held by a fully mixed store above a reference temperature.
   *
   * <p>Q = V·(ρ·c)(T̄)·(T − T_ref), T̄ = (T + T_ref)/2.
   *
   * @param volume_L water content V [L], positive
   * @param from_C reference temperature T_ref [°C]
   * @param to_C store temperature T [°C]
   * @return heat [kWh], negative where {@code to_C} lies below {@code from_C}
   * @throws IllegalArgumentException where a temperature is outside 0 to 100 °C
   */
  public static double heat_kWh(double volume_L, double from_C, double to_C) {
    Require.positive("volume_L", volume_L);
    return volume_L * meanHeatCapacity_kWh_per_LK(from_C, to_C) * (to_C - from_C);
  }

  /**
   * Heat held by a layered store above a reference temperature: the sum over equal layers of {@link
   * #heat_kWh(double, double, double)}.
   *
   * @param volume_L water content of the whole store [L], positive
   * @param layer_C temperatures of equal layers, bottom first [°C]; at least one
   * @param reference_C reference temperature [°C]
   * @return heat [kWh]
   */
  public static double heat_kWh(double volume_L, double[] layer_C, double reference_C) {
    Require.positive("number of layers", layer_C.length);
    double heat_kWh = 0;
    for (double temperature_C : layer_C) {
      heat_kWh += heat_kWh(volume_L / layer_C.length, reference_C, temperature_C);
    }
    return heat_kWh;
  }

  /**
   * Time to heat a mixed store at constant power, without loss or draw-off. With power and volume
   * of the part that a coil heats it is also the longest run the tank alone can give a compressor.
   *
   * <p>t = Q/P.
   *
   * @param volume_L water content [L], positive
   * @param from_C temperature at the start [°C]
   * @param to_C temperature to reach [°C]
   * @param power_kW heating power [kW], positive
   * @return time [min]; 0 where the store is already there
   */
  public static double heatingTime_min(
      double volume_L, double from_C, double to_C, double power_kW) {
    Require.positive("power_kW", power_kW);
    double heat_kWh = heat_kWh(volume_L, from_C, to_C);
    return Math.max(0, heat_kWh) / power_kW * MINUTES_PER_HOUR;
  }

  /**
   * Store water to be drawn for a given useful heat: V = Q/((ρ·c)(T̄)·(T − T_ref)).
   *
   * @param heat_kWh useful heat above cold water [kWh], 0 or more
   * @param hot_C temperature of the water drawn [°C], above {@code cold_C}
   * @param cold_C cold water [°C]
   * @return volume [L]
   */
  public static double drawn_L(double heat_kWh, double hot_C, double cold_C) {
    Require.notNegative("heat_kWh", heat_kWh);
    Require.above("hot_C", hot_C, "cold_C", cold_C);
    return heat_kWh / heat_kWh(1, cold_C, hot_C);
  }

  private static double meanHeatCapacity_kWh_per_LK(double from_C, double to_C) {
    Water.RANGE_C.check(from_C);
    Water.RANGE_C.check(to_C);
    return Water.heatCapacity_kWh_per_LK((from_C + to_C) / 2);
  }
}
