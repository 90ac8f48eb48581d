package deadband.reading;

import deadband.setup.Shape;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A date as people write it: 31/05/2026, 31.5.2026, 05-06-26. */
final class OtherDate {

  private static final Pattern FORM =
      Pattern.compile("(\\d{1,2})([./-])(\\d{1,2})\\2(\\d{4}|\\d{2})");

  private OtherDate() {}

  /**
   * The dates that may be meant, the day first; one only where it is beyond doubt, as where points
   * part it or no month has that number.
   */
  static List<String> meant(String text) {
    Matcher date = FORM.matcher(text.strip());
    if (!date.matches()) {
      return List.of();
    }
    String year = date.group(4).length() == 2 ? "20" + date.group(4) : date.group(4);
    Optional<LocalDate> dayFirst = date(year, date.group(3), date.group(1));
    Optional<LocalDate> monthFirst =
        date.group(2).equals(".") ? Optional.empty() : date(year, date.group(1), date.group(3));
    return Stream.of(dayFirst, monthFirst)
        .flatMap(Optional::stream)
        .map(LocalDate::toString)
        .distinct()
        .toList();
  }

  private static Optional<LocalDate> date(String year, String month, String day) {
    return Shape.date(
        String.format(
            Locale.ROOT, "%s-%02d-%02d", year, Integer.parseInt(month), Integer.parseInt(day)));
  }
}
