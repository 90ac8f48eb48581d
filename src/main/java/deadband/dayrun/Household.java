package deadband.dayrun;

import deadband.trade.HotWaterUse;
import deadband.trade.StoredHeat;
import deadband.trade.TappingProfile;
import deadband.trade.TappingProfile.DrawOff;
import java.util.Arrays;

/**
 * The people of the house, for built-in days.
 *
 * <p>House load is the base load and, on top, kettle and oven: a day of our own, the same every
 * day, of steps of 2 to 3 kW and 3 to 10 minutes. Hot water is drawn by a tapping profile of Reg.
 * (EU) 814/2013.
 *
 * @param baseLoad_kW power the house always draws [kW]
 * @param tapping tapping profile
 * @param share factor on its draw-offs; 1 for the profile as it stands
 * @param storedAt_C temperature at which the store delivers them [°C]
 * @param coldWater_C cold water, mean of the year [°C]
 */
public record Household(
    double baseLoad_kW,
    TappingProfile tapping,
    double share,
    double storedAt_C,
    double coldWater_C) {
  private static final int MONTHS = 12;

  /** Water at the tap is at least this much above cold [K]. */
  private static final double LEAST_RISE_K = 1;

  private static final double KETTLE_KW = 2.8;
  private static final double OVEN_KW = 2.2;

  /** Minute of the day, length in minutes. */
  private static final int[][] KETTLE = {
    {400, 3}, {455, 4}, {640, 3}, {785, 3}, {940, 4}, {1050, 3}, {1250, 3}
  };

  /** Minute of the day, length in minutes; each oven warms up first, then holds. */
  private static final int[][] OVEN = {
    {735, 10}, {753, 4}, {765, 4}, {1065, 10}, {1083, 4}, {1095, 4}, {1107, 4}, {1119, 4}
  };

  /**
   * A household whose tapping profile follows from its size: the smallest whose day takes the heat
   * that so many people use (SAP 2012, mean of the months).
   */
  public static Household of(
      double occupants, double baseLoad_kW, double storedAt_C, double coldWater_C) {
    double yearly_kWh = 0;
    for (int month = 1; month <= MONTHS; month++) {
      yearly_kWh += HotWaterUse.daily_kWh(occupants, month);
    }
    TappingProfile tapping = TappingProfile.atLeast(yearly_kWh / MONTHS);
    return new Household(baseLoad_kW, tapping, 1, storedAt_C, coldWater_C);
  }

  /** The same household, drawing so many litres a day from the store. */
  public Household drawing_L(double daily_L) {
    double whole_L = Arrays.stream(withShare(1).draw_L()).sum();
    return withShare(daily_L / whole_L);
  }

  /** The same household with its draw-offs scaled. */
  Household withShare(double share) {
    return new Household(baseLoad_kW, tapping, share, storedAt_C, coldWater_C);
  }

  /** House load, minute by minute [kW]. */
  double[] load_kW() {
    double[] load_kW = new double[Window.MINUTES_PER_DAY];
    Arrays.fill(load_kW, baseLoad_kW);
    add(load_kW, KETTLE, KETTLE_KW);
    add(load_kW, OVEN, OVEN_KW);
    return load_kW;
  }

  private static void add(double[] load_kW, int[][] steps, double power_kW) {
    for (int[] step : steps) {
      for (int minute = step[0]; minute < step[0] + step[1]; minute++) {
        load_kW[minute] += power_kW;
      }
    }
  }

  /**
   * Water drawn from the store, minute by minute [L], each draw-off as long as its flow at the tap
   * takes. The litres are those that carry the profile's heat with cold water at its yearly mean;
   * in a colder month they take more heat.
   */
  double[] draw_L() {
    double[] draw_L = new double[Window.MINUTES_PER_DAY];
    for (DrawOff drawOff : tapping.drawOffs()) {
      double stored_L = StoredHeat.drawn_L(drawOff.heat_kWh(), storedAt_C, coldWater_C);
      spread(draw_L, drawOff.minute(), minutes(drawOff), share * stored_L);
    }
    return draw_L;
  }

  private int minutes(DrawOff drawOff) {
    double useful_C = Math.max(drawOff.useful_C(), drawOff.peak_C().orElse(0));
    double atTap_C = Math.max(useful_C, coldWater_C + LEAST_RISE_K);
    double atTap_L = StoredHeat.drawn_L(drawOff.heat_kWh(), atTap_C, coldWater_C);
    return (int) Math.max(1, Math.round(atTap_L / drawOff.flow_L_per_min()));
  }

  private static void spread(double[] draw_L, int from, int minutes, double volume_L) {
    for (int minute = from; minute < from + minutes; minute++) {
      draw_L[minute % draw_L.length] += volume_L / minutes;
    }
  }
}
