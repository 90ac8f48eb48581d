package deadband.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import deadband.dayrun.Profile;
import deadband.dayrun.StepLength;
import deadband.reading.ProfileReading.Column;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a day file may look like, and what is read from it. */
class ProfileReadingTest {

  private static ProfileReading.Read read(String text) {
    return read(text, Gaps.refused());
  }

  private static ProfileReading.Read read(String text, Gaps gaps) {
    ProfileReading reading = ProfileReading.ofText("day.csv", text, gaps);
    assertThat(reading).isInstanceOf(ProfileReading.Read.class);
    return (ProfileReading.Read) reading;
  }

  private static double[] pv_kW(Profile profile) {
    double[] values = new double[profile.length()];
    Arrays.setAll(values, profile::pv_kW);
    return values;
  }

  @Test
  void readsEveryColumnInItsUnit() {
    ProfileReading.Read read =
        read(
            """
            time,pv_kW,house_W,draw_L
            07:00,0.5,410,0
            07:01,0.75,1e3,8.25
            """);
    Profile profile = read.profile();
    assertThat(read.name()).isEqualTo("day.csv");
    assertThat(read.entered()).containsExactly(Column.PV, Column.HOUSE, Column.DRAW);
    assertThat(read.filled()).isZero();
    assertThat(profile.step()).isEqualTo(StepLength.MINUTE);
    assertThat(profile.start_s()).isEqualTo(7 * 3600);
    assertThat(profile.length()).isEqualTo(2);
    assertThat(profile.pv_kW(1)).isEqualTo(0.75);
    assertThat(profile.house_kW(0)).isCloseTo(0.41, within(1e-12));
    assertThat(profile.house_kW(1)).isEqualTo(1);
    assertThat(profile.draw_L(1)).isEqualTo(8.25);
    assertThat(profile.surplusGiven()).isFalse();
  }

  @Test
  void takesSunAndHouseAsInTheSurplus() {
    ProfileReading.Read read = read("surplus_W,time\n1500,10:00\n-250,10:15\n");
    assertThat(read.entered()).containsExactly(Column.SURPLUS);
    assertThat(read.profile().surplusGiven()).isTrue();
    assertThat(read.profile().step()).isEqualTo(StepLength.ofMinutes(15));
    assertThat(read.profile().pv_kW(0)).isEqualTo(1.5);
    assertThat(read.profile().house_kW(1)).isEqualTo(0.25);
  }

  @Test
  void whatIsNotToldIsZero() {
    Profile profile = read("time,house_kW\n00:00,0.3\n00:30,0.4\n").profile();
    assertThat(profile.pv_kWh()).isZero();
    assertThat(profile.drawn_L()).isZero();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "time,pv_kW\n10:00,1.5\n10:05,2\n",
        "time,pv_kW\r\n10:00,1.5\r\n10:05,2\r\n",
        "time,pv_kW\r10:00,1.5\r10:05,2",
        "\uFEFFtime,pv_kW\n10:00,1.5\n10:05,2",
        "time;pv_kW\n10:00;1,5\n10:05;2\n",
        "time;pv_kW\n10:00;1.5\n10:05;2\n",
        "time\tpv_kW\n10:00\t1,5\n10:05\t2\n",
        "\"time\",\"pv_kW\"\n\"10:00\",\"1.5\"\n10:05,\"2\"\n",
        "time , \"pv_kW\"\n 10:00 , \"1.5\"\n10:05,\t2\n",
        "# a day\n\ntime,pv_kW\n\n10:00,1.5\n# and on\n10:05,2\n\n",
        "time,pv_kW,\n10:00,1.5,\n10:05,2,\n,,\n",
        "time,pv_W\n10:00:00,1500\n10:05:00,+2e3\n",
        "pv_kW,time\n1.5,10:00\n2.0,10:05\n",
        "time,pv_kW\n2026-04-21T10:00,1.5\n2026-04-21T10:05,2\n",
        "time,pv_kW\n2026-04-21 10:00:00.000,1.5\n2026-04-21 10:05:00,2\n",
        "time,pv_kW\n2026-04-21T10:00Z,1.5\n2026-04-21T10:05:00Z,2\n",
        "time,pv_kW\n2026-04-21T10:00+02:00,1.5\n2026-04-21T10:05+0200,2\n",
        "time,pv_kW\n2026-04-21 10:00:00-07:00,1.5\n2026-04-21 10:05:00 -07,2\n",
      })
  void isWrittenInManyWays(String text) {
    Profile profile = read(text).profile();
    assertThat(profile.step()).isEqualTo(StepLength.ofMinutes(5));
    assertThat(profile.start_s()).isEqualTo(10 * 3600);
    assertThat(pv_kW(profile)).containsExactly(1.5, 2);
  }

  @Test
  void aClockGoesOnOverMidnight() {
    Profile profile = read("time,pv_kW\n23:45,0\n00:00,0\n00:15,0\n").profile();
    assertThat(profile.start_s()).isEqualTo(23 * 3600 + 45 * 60);
    assertThat(profile.length()).isEqualTo(3);
  }

  /** The night of the change in central Europe, 25 October 2026: 02:30+02:00, then 02:00+01:00. */
  @Test
  void anOffsetThatChangesIsNoGap() {
    Profile profile =
        read("""
            time,pv_kW
            2026-10-25T02:00+02:00,1
            2026-10-25T02:30+02:00,2
            2026-10-25T02:00+01:00,3
            2026-10-25T02:30+01:00,4
            """)
            .profile();
    assertThat(profile.start_s()).isEqualTo(2 * 3600);
    assertThat(pv_kW(profile)).containsExactly(1, 2, 3, 4);
  }

  @ParameterizedTest
  @CsvSource({"1", "10", "60", "90", "300", "720", "900", "1800", "3600"})
  void anyStepThatDividesAnHourWillDo(int step_s) {
    String text =
        "time,pv_kW\n%s,1\n%s,2\n%s,3\n"
            .formatted(clock(3600), clock(3600 + step_s), clock(3600 + 2 * step_s));
    assertThat(read(text).profile().step()).isEqualTo(new StepLength(step_s));
  }

  private static String clock(int second) {
    return String.format(
        Locale.ROOT, "%02d:%02d:%02d", second / 3600, second / 60 % 60, second % 60);
  }

  @Test
  void holdsPowersAndDrawsNothingInAGapIfAsked() {
    ProfileReading.Read read =
        read(
            """
            time,pv_kW,draw_L
            10:00,1,5
            10:01,2,6
            10:04,3,7
            10:05,,8
            10:06,4,
            """,
            Gaps.filledUpTo(2));
    assertThat(pv_kW(read.profile())).containsExactly(1, 2, 2, 2, 3, 3, 4);
    assertThat(read.profile().drawn_L()).isEqualTo(26);
    assertThat(read.profile().draw_L(2)).isZero();
    // two rows, one sun, one draw-off
    assertThat(read.filled()).isEqualTo(4);
  }

  @Test
  void anotherDayCompletesWhatIsNotTold() {
    double[] hours = new double[24];
    Arrays.setAll(hours, hour -> hour);
    double[] litres = new double[24];
    Arrays.fill(litres, 6);
    Profile day = Profile.of(StepLength.ofMinutes(60), 0, hours, hours, litres);

    Profile drawn = read("time,draw_L\n23:30,1\n00:00,2\n00:30,3\n").completedBy(day);
    assertThat(pv_kW(drawn)).containsExactly(23, 0, 0);
    assertThat(drawn.drawn_L()).isEqualTo(6);

    Profile sunny = read("time,pv_kW\n05:50,1\n06:00,2\n").completedBy(day);
    assertThat(pv_kW(sunny)).containsExactly(1, 2);
    assertThat(sunny.house_kW(0)).isEqualTo(5);
    assertThat(sunny.house_kW(1)).isEqualTo(6);
    assertThat(sunny.draw_L(0)).isCloseTo(1, within(1e-12));

    Profile surplus = read("time,surplus_kW\n05:50,1\n06:00,-2\n").completedBy(day);
    assertThat(surplus.surplusGiven()).isTrue();
    assertThat(surplus.house_kW(1)).isEqualTo(2);
    assertThat(surplus.draw_L(1)).isCloseTo(1, within(1e-12));
  }

  @Test
  void onlyAWholeDayCompletes() {
    Profile half =
        Profile.of(StepLength.ofMinutes(60), 0, new double[12], new double[12], new double[12]);
    ProfileReading.Read read = read("time,draw_L\n23:30,1\n00:00,2\n");
    assertThatIllegalArgumentException().isThrownBy(() -> read.completedBy(half));
  }

  /** Steps of 90 s against a day in minutes: no step divides the other. */
  @Test
  void aDayIsReadByTheClockAtAnyStep() {
    double[] minutes = new double[1440];
    Arrays.setAll(minutes, minute -> minute);
    Profile day = Profile.of(StepLength.MINUTE, 0, minutes, minutes, minutes);
    Profile span = day.over(new StepLength(90), 86_400 - 30, 2);
    assertThat(span.pv_kW(0)).isCloseTo((1439 + 0 + 0) / 3.0, within(1e-9));
    assertThat(span.pv_kW(1)).isCloseTo((1 + 1 + 2) / 3.0, within(1e-9));
    assertThat(span.draw_L(1)).isCloseTo(0.5 + 0.5 + 1, within(1e-9));
  }

  /** A day of numbers, written out with its columns in one order. */
  private static String written(Profile profile, List<Column> order) {
    StringBuilder text = new StringBuilder("time");
    order.forEach(column -> text.append(',').append(column.header()));
    for (int at = 0; at < profile.length(); at++) {
      int step = at;
      int second = (profile.start_s() + at * profile.step().seconds()) % 86_400;
      text.append('\n').append(clock(second)).append(',');
      text.append(
          order.stream()
              .map(column -> Double.toString(value(profile, column, step)))
              .collect(Collectors.joining(",")));
    }
    return text.append('\n').toString();
  }

  private static double value(Profile profile, Column column, int at) {
    return switch (column) {
      case PV -> profile.pv_kW(at);
      case HOUSE -> profile.house_kW(at);
      case SURPLUS -> profile.pv_kW(at) - profile.house_kW(at);
      case DRAW -> profile.draw_L(at);
    };
  }

  private static Profile random(Random random) {
    int[] steps_s = {1, 20, 60, 300, 1200, 3600};
    StepLength step = new StepLength(steps_s[random.nextInt(steps_s.length)]);
    int length = 2 + random.nextInt(300);
    double[] pv_kW = random.doubles(length, 0, 12).toArray();
    double[] house_kW = random.doubles(length, 0, 5).toArray();
    double[] draw_L = random.doubles(length, 0, 1).toArray();
    return Profile.of(step, random.nextInt(86_400), pv_kW, house_kW, draw_L);
  }

  private static void same(Profile one, Profile other) {
    assertThat(one.step()).isEqualTo(other.step());
    assertThat(one.start_s()).isEqualTo(other.start_s());
    assertThat(one.length()).isEqualTo(other.length());
    for (int at = 0; at < one.length(); at++) {
      for (Column column : Column.values()) {
        assertThat(value(one, column, at)).isEqualTo(value(other, column, at));
      }
    }
  }

  @Test
  void whatIsWrittenIsReadAgainWhateverTheOrderOfItsColumns() {
    Random random = new Random(11);
    for (int number = 0; number < 200; number++) {
      Profile profile = random(random);
      List<Column> order = new ArrayList<>(List.of(Column.PV, Column.HOUSE, Column.DRAW));
      Collections.shuffle(order, random);
      same(read(written(profile, order)).profile(), profile);
    }
  }

  @Test
  void theBitsInWhichAStreamComesChangeNothing() {
    Random random = new Random(12);
    for (int number = 0; number < 50; number++) {
      Profile profile = random(random);
      String text = written(profile, List.of(Column.PV, Column.HOUSE, Column.DRAW));
      InputStream bits = new Bits(text.getBytes(StandardCharsets.UTF_8), random);
      ProfileReading reading = ProfileReading.ofStream("-", bits);
      same(((ProfileReading.Read) reading).profile(), profile);
    }
  }

  /** Gives a few bytes at a time. */
  private static final class Bits extends ByteArrayInputStream {
    private final Random random;

    Bits(byte[] bytes, Random random) {
      super(bytes);
      this.random = random;
    }

    @Override
    public synchronized int read(byte[] into, int offset, int length) {
      return super.read(into, offset, Math.min(length, 1 + random.nextInt(7)));
    }
  }

  @Test
  void aYearOfMinutesIsRead(@TempDir Path folder) throws IOException {
    StringBuilder text = new StringBuilder("time,pv_kW,house_kW,draw_L\n");
    for (int minute = 0; minute < 365 * 1440; minute++) {
      text.append(clock(minute % 1440 * 60)).append(",3.217,0.412,0\n");
    }
    Path file = Files.writeString(folder.resolve("year.csv"), text);
    ProfileReading.Read read = (ProfileReading.Read) ProfileReading.ofFile(file);
    assertThat(read.profile().length()).isEqualTo(525_600);
    assertThat(read.profile().pv_kWh()).isCloseTo(3.217 * 8760, within(1e-6));
  }

  /** AC power of a measured system, PVDAQ system 50 as carried in pvanalytics (MIT). */
  @Tag("outside")
  @Test
  void readsAMeasuredSeries() throws IOException {
    String folder = System.getProperty("deadband.data", "");
    assumeTrue(!folder.isBlank(), "skipped: set -Ddeadband.data to the folder of measured data");
    List<String> lines = Files.readAllLines(Path.of(folder, "pv_ac_1min_2022-03-18_19.csv"));
    // what the inverter draws at night stands there as sun below zero
    String text = String.join("\n", lines).replaceAll(",-[0-9.]+", ",0");
    Profile profile = read(text.replace(lines.get(0), "time,pv_W")).profile();
    assertThat(profile.start_s()).isEqualTo((4 * 60 + 33) * 60);
    assertThat(profile.length()).isEqualTo(lines.size() - 1);
    double sum_kWh =
        lines.stream()
                .skip(1)
                .mapToDouble(line -> Math.max(0, Double.parseDouble(line.split(",", -1)[1])))
                .sum()
            / 60_000;
    assertThat(profile.pv_kWh()).isCloseTo(sum_kWh, within(1e-9));
    assertThat(profile.pv_kWh()).isBetween(10.0, 80.0);
  }
}
