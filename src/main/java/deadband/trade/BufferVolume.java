package deadband.trade;

/**
 * Buffer volume that keeps a heat source running long enough when the house takes less than its
 * least output.
 */
public final class BufferVolume {
  private static final double MINUTES_PER_HOUR = 60;

  private BufferVolume() {}

  /**
   * Volume needed in buffer and system together, V = t·(Q_source − q_load)/(ρ·c·ΔT). Hydronics
   * handbooks (read).
   *
   * @param run_min run time to reach t [min], 0 or more
   * @param source_kW least output of the source [kW], 0 or more
   * @param load_kW heat taken meanwhile [kW], 0 or more
   * @param swing_K temperature swing ΔT [K], positive
   * @param water_C mean water temperature, for its properties [°C]
   * @return volume [L]; 0 where the load takes the whole output and the source never stops
   */
  public static double volume_L(
      double run_min, double source_kW, double load_kW, double swing_K, double water_C) {
    double spare_kW =
        Require.notNegative("source_kW", source_kW) - Require.notNegative("load_kW", load_kW);
    double heat_kWh = Require.notNegative("run_min", run_min) / MINUTES_PER_HOUR * spare_kW;
    double capacity = Water.heatCapacity_kWh_per_LK(water_C);
    return Math.max(0, heat_kWh) / (capacity * Require.positive("swing_K", swing_K));
  }

  /**
   * Temperature swing with which a volume reaches a run time, ΔT = t·(Q_source − q_load)/(V·ρ·c):
   * {@link #volume_L} solved for the swing.
   *
   * @param run_min run time to reach t [min], 0 or more
   * @param source_kW least output of the source [kW], 0 or more
   * @param load_kW heat taken meanwhile [kW], 0 or more
   * @param volume_L water in buffer and system [L], positive
   * @param water_C mean water temperature, for its properties [°C]
   * @return swing [K]; 0 where the load takes the whole output and the source never stops
   */
  public static double swing_K(
      double run_min, double source_kW, double load_kW, double volume_L, double water_C) {
    return volume_L(run_min, source_kW, load_kW, 1, water_C)
        / Require.positive("volume_L", volume_L);
  }

  /**
   * Starts an hour of a source against a steady load, f = 60/(t_run + t_off), where the load alone
   * empties the swing while the source rests, t_off = V·ρ·c·ΔT/q_load. Most, Q_source/(4·V·ρ·c·ΔT),
   * at a load of half the output.
   *
   * @param volume_L water in buffer and system [L], positive
   * @param source_kW output of the source [kW], 0 or more
   * @param load_kW heat taken all the time [kW], 0 or more
   * @param swing_K temperature swing [K], positive
   * @param water_C mean water temperature, for its properties [°C]
   * @return [1/h]; 0 without a load, and where the load takes the whole output
   */
  public static double startsPerHour(
      double volume_L, double source_kW, double load_kW, double swing_K, double water_C) {
    double run_min =
        runTime_min(Require.positive("volume_L", volume_L), source_kW, load_kW, swing_K, water_C);
    double off_min = runTime_min(volume_L, load_kW, 0, swing_K, water_C);
    return MINUTES_PER_HOUR / (run_min + off_min);
  }

  /**
   * Run time of a source against a load, t = V·ρ·c·ΔT/(Q_source − q_load).
   *
   * @param volume_L water in buffer and system [L], 0 or more
   * @param source_kW output of the source [kW], 0 or more
   * @param load_kW heat taken meanwhile [kW], 0 or more
   * @param swing_K temperature swing [K], positive
   * @param water_C mean water temperature, for its properties [°C]
   * @return time [min]; +∞ where the load takes the whole output
   */
  public static double runTime_min(
      double volume_L, double source_kW, double load_kW, double swing_K, double water_C) {
    double spare_kW =
        Require.notNegative("source_kW", source_kW) - Require.notNegative("load_kW", load_kW);
    Require.notNegative("volume_L", volume_L);
    Require.positive("swing_K", swing_K);
    if (spare_kW <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    double heat_kWh = volume_L * Water.heatCapacity_kWh_per_LK(water_C) * swing_K;
    return heat_kWh / spare_kW * MINUTES_PER_HOUR;
  }
}
