package deadband.trade;

/**
 * What a store loses to the room while nothing heats or draws from it.
 *
 * <p>The declared loss over 24 h is measured with the store 45 K above the room (EN 12897: 65 °C in
 * 20 °C); the regulations state the same loss as a mean power.
 */
public final class StandingLoss {
  /** Store above room in the standing loss test [K] (BS EN 12897, Annex B; read). */
  public static final double TEST_DIFFERENCE_K = 45;

  /**
   * Storage volumes the ecodesign limit speaks of: up to 2000 L (Regulation (EU) 814/2013, from
   * memory).
   */
  public static final ValidRange ECODESIGN_VOLUME_L =
      new ValidRange("storage volume", Double.MIN_VALUE, 2000, "L");

  private static final double HOURS_PER_DAY = 24;
  private static final double W_PER_KW = 1000;

  private StandingLoss() {}

  /**
   * Heat loss coefficient from a 24 h standing loss.
   *
   * <p>H = 1000·Q₂₄/(24·45). BS EN 12897 Annex B, as used by the UK government's calculation engine
   * (read): 1.68 kWh in 24 h → 1.5556 W/K.
   *
   * @param loss_kWh_per_day standing loss [kWh/24 h], 0 or more
   * @return coefficient [W/K]
   */
  public static double coefficient_W_per_K(double loss_kWh_per_day) {
    return power_W(loss_kWh_per_day) / TEST_DIFFERENCE_K;
  }

  /** Mean power [W] of a loss stated over 24 h [kWh]: P = 1000·Q₂₄/24. */
  public static double power_W(double loss_kWh_per_day) {
    return W_PER_KW * Require.notNegative("loss_kWh_per_day", loss_kWh_per_day) / HOURS_PER_DAY;
  }

  /** Loss over 24 h [kWh] of a loss stated as a mean power [W]: Q₂₄ = 24·P/1000. */
  public static double perDay_kWh(double power_W) {
    return Require.notNegative("power_W", power_W) * HOURS_PER_DAY / W_PER_KW;
  }

  /**
   * Loss power at another temperature, P = H·(T − T_room).
   *
   * @param coefficient_W_per_K heat loss coefficient [W/K], 0 or more
   * @param store_C mean store temperature [°C]
   * @param room_C temperature around the store [°C]
   * @return power [W], negative where the room is warmer
   */
  public static double power_W(double coefficient_W_per_K, double store_C, double room_C) {
    return Require.notNegative("coefficient_W_per_K", coefficient_W_per_K) * (store_C - room_C);
  }

  /**
   * Share of the difference to the room that is left after a time: exp(−H·t/C).
   *
   * @param coefficient_W_per_K heat loss coefficient H [W/K], 0 or more
   * @param capacity_kWh_per_K heat capacity C of the store [kWh/K], positive
   * @param time_min time t [min], 0 or more
   * @return share, 0 to 1
   */
  public static double keptShare(
      double coefficient_W_per_K, double capacity_kWh_per_K, double time_min) {
    Require.notNegative("coefficient_W_per_K", coefficient_W_per_K);
    Require.positive("capacity_kWh_per_K", capacity_kWh_per_K);
    double hours = Require.notNegative("time_min", time_min) / 60;
    return Math.exp(-coefficient_W_per_K / W_PER_KW * hours / capacity_kWh_per_K);
  }

  /**
   * Ecodesign limit on the standing loss, S = 16.66 + 8.33·V^0.4. Regulation (EU) 814/2013, Annex
   * II (read).
   *
   * @param volume_L storage volume V [L], above 0, to 2000
   * @return limit [W]
   * @throws IllegalArgumentException outside that range
   */
  public static double ecodesignLimit_W(double volume_L) {
    return 16.66 + 8.33 * Math.pow(ECODESIGN_VOLUME_L.check(volume_L), 0.4);
  }
}
