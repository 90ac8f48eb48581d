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
   * Time without sun, house load or draw-off, from midnight: for a disinfection cycle by itself.
   *
   * @param length_min how long [min]
   */
  public static Day still(int length_min, double coldWater_C, double source_C) {
    double[] nothing = new double[length_min];
    Profile profile = Profile.of(StepLength.MINUTE, 0, nothing, nothing, nothing);
    return new Day(profile, coldWater_C, source_C);
  }
}
