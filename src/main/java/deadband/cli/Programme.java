package deadband.cli;

import deadband.dayrun.Day;
import deadband.dayrun.StepLength;
import deadband.dayrun.Surroundings;
import deadband.reading.ProfileReading;
import java.time.LocalDate;
import java.time.Year;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The days that are simulated.
 *
 * @param name what they are called in the report
 * @param date the day, or the first of the year
 * @param days one after the other
 * @param disinfects whether disinfection cycles fall due in them
 */
record Programme(String name, LocalDate date, List<Day> days, boolean disinfects) {

  static final String YEAR = "year";

  /**
   * Days by the word for them; empty where there are none of that name.
   *
   * @param date null for the one that belongs to them
   */
  static Optional<Programme> builtIn(
      String word, @Nullable LocalDate date, Surroundings surroundings) {
    LocalDate spring = date == null ? surroundings.springDate() : date;
    LocalDate winter = date == null ? surroundings.winterDate() : date;
    return switch (word) {
      case "clear" -> one("clear day", spring, surroundings.clear(spring));
      case "cloud" -> one("broken cloud", spring, surroundings.cloud(spring));
      case "winter" -> one("dull winter day", winter, surroundings.dull(winter));
      case YEAR -> {
        Year year = Year.of(spring.getYear());
        List<Day> days = surroundings.year(year).toList();
        yield Optional.of(new Programme("a year of days", year.atDay(1), days, true));
      }
      default -> Optional.empty();
    };
  }

  /** The day of a file; what it lacks comes from the built-in household and a clear sky. */
  static Programme of(
      ProfileReading.Read csv, @Nullable LocalDate date, Surroundings surroundings) {
    LocalDate on = date == null ? surroundings.springDate() : date;
    Day clear = surroundings.clear(on);
    Day whole = new Day(csv.completedBy(clear.profile()), clear.coldWater_C(), clear.source_C());
    return new Programme(csv.name(), on, List.of(whole), false);
  }

  private static Optional<Programme> one(String name, LocalDate date, Day day) {
    return Optional.of(new Programme(name, date, List.of(day), false));
  }

  int steps(StepLength step) {
    int seconds =
        days.stream()
            .mapToInt(day -> day.profile().length() * day.profile().step().seconds())
            .sum();
    return seconds / step.seconds();
  }
}
