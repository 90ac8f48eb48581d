package deadband.dayrun;

import deadband.trade.AverageClimate;
import deadband.trade.HeatPumpCop;
import deadband.trade.HotWaterUse;
import java.time.LocalDate;
import java.time.Year;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What the built-in days bring to one installation: sun by array and date, house load and draw-off
 * by household, source and cold water by month. Days run in solar time and do not depend on today.
 *
 * @param array the solar array and where it stands
 * @param household the people of the house
 * @param source what the heat pump takes its heat from
 */
public record Surroundings(SolarArray array, Household household, Source source) {
  /** Clouds of the built-in broken-cloud day. */
  private static final int PATTERN = 0;

  private static final LocalDate SPRING = LocalDate.of(2026, 4, 21);
  private static final LocalDate WINTER = LocalDate.of(2026, 1, 15);
  private static final int HALF_A_YEAR = 6;
  private static final int SKIES = 3;

  /** A day takes 35 kB. */
  private static final Kept<Key, Day> LAST = new Kept<>(64);

  /** Days of all seasons. */
  static final int SEASONS = 12 * SKIES;

  /** What the heat pump takes its heat from. */
  public enum Source {
    /** Outdoor air: the European average climate, month by month. */
    AIR,
    /** Brine, or ground water behind its heat exchanger: the same all year. */
    GROUND
  }

  /** Date of the built-in clear and broken-cloud days where none is asked for. */
  public LocalDate springDate() {
    return array.latitude_deg() < 0 ? SPRING.plusMonths(HALF_A_YEAR) : SPRING;
  }

  /** Date of the built-in winter day where none is asked for. */
  public LocalDate winterDate() {
    return array.latitude_deg() < 0 ? WINTER.plusMonths(HALF_A_YEAR) : WINTER;
  }

  /** A clear day. */
  public Day clear(LocalDate date) {
    return kept(date, Sky.CLEAR);
  }

  /** A day of broken cloud. */
  public Day cloud(LocalDate date) {
    return kept(date, Sky.BROKEN);
  }

  /** A dull day; in winter the least the sun does. */
  public Day dull(LocalDate date) {
    return kept(date, Sky.DULL);
  }

  /**
   * Every day of a year, with the sky, temperatures and use of its month; made as they are asked
   * for.
   */
  public Stream<Day> year(Year year) {
    return IntStream.rangeClosed(1, year.length()).mapToObj(day -> ofYear(year.atDay(day)));
  }

  /**
   * One of a dull, a broken and a clear day for each month, from midsummer on: what is to be seen
   * in any season is mostly seen soon.
   */
  Day season(int index) {
    LocalDate date = springDate().plusMonths(2 + index / SKIES);
    return switch (index % SKIES) {
      case 0 -> dull(date);
      case 1 -> cloud(date);
      default -> clear(date);
    };
  }

  private Day ofYear(LocalDate date) {
    int month = Climate.month(date, array.latitude_deg());
    Household then = household.withShare(household.share() * HotWaterUse.monthFactor(month));
    Sky sky = Climate.sky(date, array.latitude_deg());
    return new Surroundings(array, then, source).day(date, sky, date.getDayOfYear());
  }

  /** The days of the seasons on which one home after the other, or with changes, is judged. */
  private Day kept(LocalDate date, Sky sky) {
    return LAST.of(new Key(this, date, sky), key -> day(date, sky, PATTERN));
  }

  private record Key(Surroundings surroundings, LocalDate date, Sky sky) {}

  private Day day(LocalDate date, Sky sky, int pattern) {
    int month = Climate.month(date, array.latitude_deg());
    double cold_C = Climate.coldWater_C(household.coldWater_C(), month);
    double[] pv_kW = array.power_kW(date, sky.share(pattern));
    Profile profile =
        Profile.of(StepLength.MINUTE, 0, pv_kW, household.load_kW(), household.draw_L());
    return new Day(profile, cold_C, source_C(month));
  }

  private double source_C(int month) {
    return source == Source.AIR ? AverageClimate.outdoor_C(month) : HeatPumpCop.brine_C();
  }
}
