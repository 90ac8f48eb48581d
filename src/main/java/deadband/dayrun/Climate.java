package deadband.dayrun;

import deadband.trade.AverageClimate;
import deadband.trade.HotWaterUse;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;

/**
 * Month by month what a year brings: how much of the clear sky's sun arrives, how warm it is
 * outside, how cold the water comes in and how much of it is used. South of the equator half a year
 * later.
 *
 * <p>Sun: the share of clear, broken and dull days of a month is chosen so that an array like the
 * one of the European average climate (Reg. (EU) 814/2013; taken as facing south at 45° and 50° N,
 * our reading) gets the climate's irradiance. The same shares then hold at any place: cloudiness is
 * carried over, not irradiance. A third of the days are broken wherever that can be.
 */
final class Climate {
  private static final int MONTHS = 12;
  private static final int HALF_A_YEAR = 6;
  private static final int MINUTES_PER_DAY = Window.MINUTES_PER_DAY;
  private static final double W_PER_KW = 1000;
  private static final double BROKEN_SHARE = 1 / 3.0;
  private static final int MID_MONTH = 15;

  /** Fractional steps of the golden ratio visit every part of a span evenly. */
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /** 1 kW at 1000 W/m² and no losses: its power in kW is the irradiance in kW/m². */
  private static final SolarArray REFERENCE = new SolarArray(50, 45, 180, 1, Double.MAX_VALUE, 1);

  private static final int REFERENCE_YEAR = 2026;
  private static final double[] CLEAR_SHARE = new double[MONTHS];
  private static final double[] DULL_SHARE = new double[MONTHS];

  static {
    for (int month = 1; month <= MONTHS; month++) {
      setShares(month);
    }
  }

  private Climate() {}

  private static void setShares(int month) {
    LocalDate middle = LocalDate.of(REFERENCE_YEAR, month, MID_MONTH);
    double clear = mean_W_per_m2(middle, Sky.CLEAR);
    double broken = mean_W_per_m2(middle, Sky.BROKEN);
    double dull = mean_W_per_m2(middle, Sky.DULL);
    double target = AverageClimate.irradiance_W_per_m2(month);
    double wanted = (target - BROKEN_SHARE * broken - (1 - BROKEN_SHARE) * dull) / (clear - dull);
    double clearShare = Math.max(0, Math.min(1 - BROKEN_SHARE, wanted));
    double brokenShare =
        Math.max(0, Math.min(1, (target - clearShare * (clear - dull) - dull) / (broken - dull)));
    CLEAR_SHARE[month - 1] = clearShare;
    DULL_SHARE[month - 1] = Math.max(0, 1 - clearShare - brokenShare);
  }

  private static double mean_W_per_m2(LocalDate date, Sky sky) {
    double[] power_kW = REFERENCE.power_kW(date, sky.share(0));
    return Arrays.stream(power_kW).sum() / MINUTES_PER_DAY * W_PER_KW;
  }

  /** The month of the northern year that a date is like, 1 to 12. */
  static int month(LocalDate date, double latitude_deg) {
    int month = date.getMonthValue();
    return latitude_deg < 0 ? (month + HALF_A_YEAR - 1) % MONTHS + 1 : month;
  }

  /** The sky of a day of the year. */
  static Sky sky(LocalDate date, double latitude_deg) {
    int month = month(date, latitude_deg);
    double place = date.getDayOfYear() * GOLDEN % 1;
    if (place < CLEAR_SHARE[month - 1]) {
      return Sky.CLEAR;
    }
    return place < 1 - DULL_SHARE[month - 1] ? Sky.BROKEN : Sky.DULL;
  }

  /**
   * Cold water of a month [°C]: its yearly mean less what the rise of SAP 2012 Table 1d lies above
   * its own.
   */
  static double coldWater_C(double yearly_C, int month) {
    double mean_K = 0;
    for (int each = 1; each <= MONTHS; each++) {
      mean_K +=
          HotWaterUse.rise_K(each) * YearMonth.of(REFERENCE_YEAR, each).lengthOfMonth() / 365.0;
    }
    return yearly_C + mean_K - HotWaterUse.rise_K(month);
  }
}
