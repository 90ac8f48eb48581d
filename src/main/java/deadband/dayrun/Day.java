package deadband.dayrun;

/**
 * A profile and what else the installation meets while it lasts.
 *
 * @param profile sun, house load and hot water drawn
 * @param coldWater_C water that enters the tank [°C]
 * @param source_C temperature of what the heat pump takes its heat from [°C]
 */
public record Day(Profile profile, double coldWater_C, double source_C) {
  public Day {
    if (!Double.isFinite(coldWater_C) || !Double.isFinite(source_C)) {
      throw new IllegalArgumentException(
          "cold water " + coldWater_C + " °C, source " + source_C + " °C: both must be finite");
    }
  }

  /**
   * Time without sun, house load or draw-off: for a disinfection cycle by itself.
   *
   * @param from_min minute of the day at which it begins [min]
   * @param length_min how long [min]
   */
  public static Day still(int from_min, int length_min, double coldWater_C, double source_C) {
    double[] nothing = new double[length_min];
    Profile still = Profile.of(StepLength.MINUTE, 60 * from_min, nothing, nothing, nothing);
    return new Day(still, coldWater_C, source_C);
  }
}
