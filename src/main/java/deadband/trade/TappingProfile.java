package deadband.trade;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The ten load profiles of hot water heaters: what is drawn in a standard day.
 *
 * <p>Regulation (EU) 814/2013, Annex III, Table 1 (read). Each line below is one draw-off: time of
 * day, useful energy content [kWh], flow rate [L/min], temperature from which the water counts as
 * useful [°C] and, where the table asks for one, the peak temperature to be reached [°C].
 */
// Error Prone cannot see that the list is unmodifiable.
@SuppressWarnings("ImmutableEnumChecker")
public enum TappingProfile {
  XXXS(
      "3XS",
      0.345,
      """
      07:00 0.015 2 25
      07:05 0.015 2 25
      07:15 0.015 2 25
      07:26 0.015 2 25
      07:30 0.015 2 25
      09:00 0.015 2 25
      09:30 0.015 2 25
      11:30 0.015 2 25
      11:45 0.015 2 25
      12:00 0.015 2 25
      12:30 0.015 2 25
      12:45 0.015 2 25
      14:30 0.015 2 25
      15:00 0.015 2 25
      15:30 0.015 2 25
      16:00 0.015 2 25
      18:30 0.015 2 25
      19:00 0.015 2 25
      19:30 0.015 2 25
      21:15 0.015 2 25
      21:30 0.015 2 25
      21:35 0.015 2 25
      21:45 0.015 2 25
      """),
  XXS(
      "XXS",
      2.100,
      """
      07:00 0.105 2 25
      07:30 0.105 2 25
      08:30 0.105 2 25
      09:30 0.105 2 25
      11:30 0.105 2 25
      11:45 0.105 2 25
      12:00 0.105 2 25
      12:30 0.105 2 25
      12:45 0.105 2 25
      18:00 0.105 2 25
      18:15 0.105 2 25
      18:30 0.105 2 25
      19:00 0.105 2 25
      19:30 0.105 2 25
      20:00 0.105 2 25
      20:45 0.105 2 25
      21:00 0.105 2 25
      21:15 0.105 2 25
      21:35 0.105 2 25
      21:45 0.105 2 25
      """),
  XS(
      "XS",
      2.100,
      """
      07:30 0.525 3 35
      12:45 0.525 3 35
      20:30 1.05 3 35
      """),
  S(
      "S",
      2.100,
      """
      07:00 0.105 3 25
      07:30 0.105 3 25
      08:30 0.105 3 25
      09:30 0.105 3 25
      11:30 0.105 3 25
      11:45 0.105 3 25
      12:45 0.315 4 10 55
      18:00 0.105 3 25
      18:15 0.105 3 40
      20:30 0.42 4 10 55
      21:30 0.525 5 45
      """),
  M(
      "M",
      5.845,
      """
      07:00 0.105 3 25
      07:05 1.4 6 40
      07:30 0.105 3 25
      08:01 0.105 3 25
      08:15 0.105 3 25
      08:30 0.105 3 25
      08:45 0.105 3 25
      09:00 0.105 3 25
      09:30 0.105 3 25
      10:30 0.105 3 10 40
      11:30 0.105 3 25
      11:45 0.105 3 25
      12:45 0.315 4 10 55
      14:30 0.105 3 25
      15:30 0.105 3 25
      16:30 0.105 3 25
      18:00 0.105 3 25
      18:15 0.105 3 40
      18:30 0.105 3 40
      19:00 0.105 3 25
      20:30 0.735 4 10 55
      21:15 0.105 3 25
      21:30 1.4 6 40
      """),
  L(
      "L",
      11.655,
      """
      07:00 0.105 3 25
      07:05 1.4 6 40
      07:30 0.105 3 25
      07:45 0.105 3 25
      08:05 3.605 10 10 40
      08:25 0.105 3 25
      08:30 0.105 3 25
      08:45 0.105 3 25
      09:00 0.105 3 25
      09:30 0.105 3 25
      10:30 0.105 3 10 40
      11:30 0.105 3 25
      11:45 0.105 3 25
      12:45 0.315 4 10 55
      14:30 0.105 3 25
      15:30 0.105 3 25
      16:30 0.105 3 25
      18:00 0.105 3 25
      18:15 0.105 3 40
      18:30 0.105 3 40
      19:00 0.105 3 25
      20:30 0.735 4 10 55
      21:00 3.605 10 10 40
      21:30 0.105 3 25
      """),
  XL(
      "XL",
      19.07,
      """
      07:00 0.105 3 25
      07:15 1.82 6 40
      07:26 0.105 3 25
      07:45 4.42 10 10 40
      08:01 0.105 3 25
      08:15 0.105 3 25
      08:30 0.105 3 25
      08:45 0.105 3 25
      09:00 0.105 3 25
      09:30 0.105 3 25
      10:00 0.105 3 25
      10:30 0.105 3 10 40
      11:00 0.105 3 25
      11:30 0.105 3 25
      11:45 0.105 3 25
      12:45 0.735 4 10 55
      14:30 0.105 3 25
      15:00 0.105 3 25
      15:30 0.105 3 25
      16:00 0.105 3 25
      16:30 0.105 3 25
      17:00 0.105 3 25
      18:00 0.105 3 25
      18:15 0.105 3 40
      18:30 0.105 3 40
      19:00 0.105 3 25
      20:30 0.735 4 10 55
      20:46 4.42 10 10 40
      21:15 0.105 3 25
      21:30 4.42 10 10 40
      """),
  XXL(
      "XXL",
      24.53,
      """
      07:00 0.105 3 25
      07:15 1.82 6 40
      07:26 0.105 3 25
      07:45 6.24 16 10 40
      08:01 0.105 3 25
      08:15 0.105 3 25
      08:30 0.105 3 25
      08:45 0.105 3 25
      09:00 0.105 3 25
      09:30 0.105 3 25
      10:00 0.105 3 25
      10:30 0.105 3 10 40
      11:00 0.105 3 25
      11:30 0.105 3 25
      11:45 0.105 3 25
      12:45 0.735 4 10 55
      14:30 0.105 3 25
      15:00 0.105 3 25
      15:30 0.105 3 25
      16:00 0.105 3 25
      16:30 0.105 3 25
      17:00 0.105 3 25
      18:00 0.105 3 25
      18:15 0.105 3 40
      18:30 0.105 3 40
      19:00 0.105 3 25
      20:30 0.735 4 10 55
      20:46 6.24 16 10 40
      21:15 0.105 3 25
      21:30 6.24 16 10 40
      """),
  XXXL(
      "3XL",
      46.76,
      """
      07:00 11.2 48 40
      08:01 5.04 24 25
      09:00 1.68 24 25
      10:30 0.84 24 10 40
      11:45 1.68 24 25
      12:45 2.52 32 10 55
      15:30 2.52 24 25
      18:30 3.36 24 25
      20:30 5.88 32 10 55
      21:30 12.04 48 40
      """),
  XXXXL(
      "4XL",
      93.52,
      """
      07:00 22.4 96 40
      08:01 10.08 48 25
      09:00 3.36 48 25
      10:30 1.68 48 10 40
      11:45 3.36 48 25
      12:45 5.04 64 10 55
      15:30 5.04 48 25
      18:30 6.72 48 25
      20:30 11.76 64 10 55
      21:30 24.08 96 40
      """);

  private final String size;
  private final double reference_kWh;
  private final List<DrawOff> drawOffs;

  TappingProfile(String size, double reference_kWh, String table) {
    this.size = size;
    this.reference_kWh = reference_kWh;
    this.drawOffs = table.lines().map(DrawOff::of).toList();
  }

  /** The profile as the regulation writes it, such as "3XS" or "M". */
  public String size() {
    return size;
  }

  /** Reference energy of the day, Q_ref [kWh]: the sum of its draw-offs. */
  public double reference_kWh() {
    return reference_kWh;
  }

  /** The draw-offs in order of time. */
  public List<DrawOff> drawOffs() {
    return drawOffs;
  }

  /**
   * Smallest profile whose day takes at least this much heat, the largest where none does.
   *
   * @param daily_kWh heat drawn in a day [kWh], 0 or more
   */
  public static TappingProfile atLeast(double daily_kWh) {
    Require.notNegative("daily_kWh", daily_kWh);
    for (TappingProfile profile : values()) {
      if (profile.reference_kWh >= daily_kWh) {
        return profile;
      }
    }
    return XXXXL;
  }

  /**
   * One draw-off of a profile.
   *
   * @param minute minute of the day at which it begins
   * @param heat_kWh useful heat above cold water of 10 °C [kWh]
   * @param flow_L_per_min flow rate [L/min]
   * @param useful_C temperature from which the water counts as useful [°C]
   * @param peak_C temperature to be reached [°C], where the table asks for one
   */
  public record DrawOff(
      int minute, double heat_kWh, double flow_L_per_min, double useful_C, OptionalDouble peak_C) {

    private static DrawOff of(String line) {
      String[] cell = line.split("[ :]", -1);
      return new DrawOff(
          Integer.parseInt(cell[0]) * 60 + Integer.parseInt(cell[1]),
          Double.parseDouble(cell[2]),
          Double.parseDouble(cell[3]),
          Double.parseDouble(cell[4]),
          cell.length > 5
              ? OptionalDouble.of(Double.parseDouble(cell[5]))
              : OptionalDouble.empty());
    }
  }
}
