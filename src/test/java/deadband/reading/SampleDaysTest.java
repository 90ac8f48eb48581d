package deadband.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import deadband.Snapshot;
import deadband.dayrun.Household;
import deadband.dayrun.Profile;
import deadband.dayrun.SolarArray;
import deadband.dayrun.StepLength;
import deadband.dayrun.Surroundings;
import deadband.dayrun.Surroundings.Source;
import deadband.reading.ProfileReading.Column;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The sample days: of our own invention, made from the built-in days, each in another way of
 * writing.
 */
class SampleDaysTest {

  private static final Path DAYS = Path.of("sample-configs", "days");
  private static final Surroundings SURROUNDINGS =
      new Surroundings(
          new SolarArray(52, 35, 180, 6, 5, 0.85), Household.of(3, 0.35, 55, 10), Source.AIR);
  private static final LocalDate SPRING = SURROUNDINGS.springDate();

  private static Map<String, String> made() {
    Map<String, String> made = new TreeMap<>();
    made.put("clear-with-draw-off.csv", clearWithDrawOff());
    made.put("cloud-at-the-meter.csv", cloudAtTheMeter());
    made.put("two-days-over-the-clock-change.csv", overTheClockChange());
    return made;
  }

  private static String clearWithDrawOff() {
    Profile day = SURROUNDINGS.clear(SPRING).profile();
    StringBuilder text =
        new StringBuilder(
            """
            # A clear spring day: 6 kW facing south, kettle and oven, three people's hot water.
            # Invented: made by formula.
            time,pv_kW,house_kW,draw_L
            """);
    for (int minute = 0; minute < day.length(); minute++) {
      text.append(
          String.format(
              Locale.ROOT,
              "%02d:%02d,%.3f,%.3f,%.2f\n",
              minute / 60,
              minute % 60,
              day.pv_kW(minute),
              day.house_kW(minute),
              day.draw_L(minute)));
    }
    return text.toString();
  }

  private static String cloudAtTheMeter() {
    Profile day = SURROUNDINGS.cloud(SPRING).profile();
    StringBuilder text =
        new StringBuilder(
            """
            # A day of broken cloud as a grid meter sees it, decimals with a comma.
            # Invented: made by formula.
            time;surplus_kW
            """);
    for (int minute = 0; minute < day.length(); minute++) {
      double surplus_kW = day.pv_kW(minute) - day.house_kW(minute);
      text.append(
          String.format(Locale.ROOT, "%02d:%02d;%.3f\n", minute / 60, minute % 60, surplus_kW)
              .replace('.', ','));
    }
    return text.toString();
  }

  /** Central Europe, 25 October 2026: the clocks go back at 03:00. */
  private static String overTheClockChange() {
    ZoneId zone = ZoneId.of("Europe/Berlin");
    LocalDate saturday = LocalDate.of(2026, 10, 24);
    Profile day = SURROUNDINGS.cloud(saturday).profile().at(StepLength.ofMinutes(15));
    StringBuilder text =
        new StringBuilder(
            """
            # Two autumn days by the quarter hour in watts, summer time ending between them.
            # Invented: made by formula.
            time,house_W,pv_W
            """);
    OffsetDateTime time = saturday.atStartOfDay(zone).toOffsetDateTime();
    for (int step = 0; step < 2 * day.length(); step++) {
      text.append(
          String.format(
              Locale.ROOT,
              "%s,%.0f,%.0f\n",
              time.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME),
              1000 * day.house_kW(step % day.length()),
              1000 * day.pv_kW(step % day.length())));
      time = time.plusMinutes(15).atZoneSameInstant(zone).toOffsetDateTime();
    }
    return text.toString();
  }

  @Test
  @Tag("snapshot")
  void areTheOnesThatAreMade() throws IOException {
    Map<String, String> made = made();
    made.forEach((name, text) -> Snapshot.isKept(DAYS.resolve(name), text));
    try (Stream<Path> files = Files.list(DAYS)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(made.keySet());
    }
  }

  private static ProfileReading.Read read(String name) {
    return (ProfileReading.Read) ProfileReading.ofFile(DAYS.resolve(name));
  }

  @Test
  void areRead() {
    ProfileReading.Read clear = read("clear-with-draw-off.csv");
    assertThat(clear.entered()).containsExactly(Column.PV, Column.HOUSE, Column.DRAW);
    assertThat(clear.profile().pv_kWh()).isBetween(25.0, 45.0);
    assertThat(clear.profile().drawn_L()).isBetween(80.0, 250.0);

    ProfileReading.Read cloud = read("cloud-at-the-meter.csv");
    assertThat(cloud.entered()).containsExactly(Column.SURPLUS);
    assertThat(cloud.profile().length()).isEqualTo(1440);

    ProfileReading.Read two = read("two-days-over-the-clock-change.csv");
    assertThat(two.profile().step()).isEqualTo(StepLength.ofMinutes(15));
    assertThat(two.profile().start_s()).isZero();
    assertThat(two.profile().length()).isEqualTo(2 * 96);
  }

  @Test
  void completedByABuiltInDayHoldTheirOwnAndItsDrawOff() {
    Profile clear = SURROUNDINGS.clear(SPRING).profile();
    Profile two = read("two-days-over-the-clock-change.csv").completedBy(clear);
    assertThat(two.drawn_L()).isCloseTo(2 * clear.drawn_L(), within(1e-9));
    assertThat(two.house_kW(0)).isCloseTo(0.35, within(1e-12));
  }
}
