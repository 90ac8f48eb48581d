package deadband.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import deadband.meterlog.Assembly;
import deadband.meterlog.Heading;
import deadband.meterlog.LogUnit;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import deadband.meterlog.Readings;
import deadband.reading.LogOptions;
import deadband.reading.LogReading;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class CycleFinderTest {

  private static MeterLog log(Meaning meaning, int interval_s, int rows, IntToDoubleFunction kW) {
    Heading heading = new Heading(meaning.word(), meaning, LogUnit.KW, "");
    Readings readings = new Readings("test", List.of(heading), true, true);
    for (int row = 0; row < rows; row++) {
      readings.add(
          1_777_593_600L + (long) row * interval_s, 0, new double[] {kW.applyAsDouble(row)});
    }
    return Assembly.of(readings);
  }

  @Test
  void fourMinutesOnElevenOffInAMinuteLog() {
    MeterLog log =
        log(Meaning.HEAT_PUMP, 60, 600, minute -> minute % 15 >= 5 && minute % 15 < 9 ? 2.8 : 0.01);
    Cycles cycles = CycleFinder.find(log, OptionalDouble.empty());
    assertThat(cycles.count()).isEqualTo(40);
    assertThat(cycles.startsInWorstHour()).isEqualTo(4);
    assertThat(cycles.list().get(3).run_min()).isEqualTo(4, within(0.1));
    assertThat(cycles.pauses_min().get(3)).isEqualTo(11, within(0.1));
    assertThat(cycles.list().get(3).energy_kWh()).isEqualTo(2.8 * 4 / 60, within(0.01));
  }

  @Test
  void standbyNoiseMakesNoRun() {
    MeterLog log = log(Meaning.HEAT_PUMP, 60, 600, minute -> 0.01 + (minute % 7) * 0.012);
    assertThat(CycleFinder.find(log, OptionalDouble.of(2.8)).list()).isEmpty();
  }

  @Test
  void partsOfAReadingCountByTheirPower() {
    double[] kWh = {0.01, 0.01, 0.35, 0.70, 0.70, 0.175, 0.01, 0.01};
    MeterLog log = log(Meaning.HEAT_PUMP, 900, 80, row -> kWh[row % 8] * 4);
    Cycle cycle = CycleFinder.find(log, OptionalDouble.empty()).list().get(2);
    // 0.35 of 0.7 and 0.175 of 0.7 kWh, less standby of 0.01: 7.4, 15, 15 and 3.6 min
    assertThat(cycle.running_h() * 60).isEqualTo(41, within(0.6));
  }

  @Test
  void aGapCutsARun() {
    MeterLog whole =
        log(Meaning.HEAT_PUMP, 60, 100, minute -> minute < 40 || minute > 60 ? 0.01 : 2.8);
    Heading heading = new Heading("hp", Meaning.HEAT_PUMP, LogUnit.KW, "");
    Readings torn = new Readings("test", List.of(heading), true, true);
    for (int row = 0; row < whole.rows(); row++) {
      if (row < 50 || row > 55) {
        torn.add(whole.at_s(row), 0, new double[] {whole.columns().get(0).value(row)});
      }
    }
    Cycles cycles = CycleFinder.find(Assembly.of(torn), OptionalDouble.empty());
    assertThat(cycles.list()).allMatch(Cycle::cut);
    assertThat(cycles.pauses_min()).isEmpty();
  }

  @Test
  void stepsOfTheHouseNearTheInput() {
    MeterLog log =
        log(
            Meaning.HOUSE,
            60,
            600,
            minute ->
                0.4
                    + (minute % 60 >= 10 && minute % 60 < 25 ? 2.8 : 0)
                    + (minute % 97 < 3 ? 1.2 : 0));
    Cycles cycles = CycleFinder.find(log, OptionalDouble.of(2.7));
    assertThat(cycles.count()).isBetween(9, 10);
    assertThat(cycles.list()).allMatch(cycle -> Math.abs(cycle.run_min() - 15) < 2);
    assertThat(cycles.list()).allMatch(cycle -> cycle.confidence() > 0.5);
    assertThat(CycleFinder.find(log, OptionalDouble.empty()).how()).contains("not entered");
  }

  /**
   * One heat pump on a meter of its own, and the result of the paper's method on it: Brudermueller,
   * Kreft, Fleisch, Staake 2023, Applied Energy 350, 121734, example data.
   */
  @Test
  @Tag("outside")
  void aMeasuredSeriesAgreesWithThePublishedResult() {
    String folder = System.getProperty("deadband.data", "");
    Path file = Path.of(folder, "heat_pump_15min_2021.csv");
    assumeTrue(!folder.isEmpty() && Files.exists(file), "the measured series is not here");
    MeterLog log = ((LogReading.Read) LogReading.ofFile(file, LogOptions.none())).log();
    Cycles cycles = CycleFinder.find(log, OptionalDouble.empty());
    int[] starts = {9, 9, 9, 8, 8};
    double[] hours = {6.93, 7.07, 7.90, 7.58, 8.06};
    List<Cycles.PerDay> days = cycles.perDay(log);
    for (int day = 0; day < 5; day++) {
      assertThat(days.get(day).starts()).isBetween(starts[day] - 1, starts[day] + 1);
      assertThat(days.get(day).hours()).isEqualTo(hours[day], within(0.05 * hours[day]));
    }
    double[] first_kWh = {3.41, 3.45, 4.86, 3.27, 3.5};
    for (int run = 0; run < first_kWh.length; run++) {
      assertThat(cycles.list().get(run).energy_kWh()).isEqualTo(first_kWh[run], within(0.02));
    }
  }
}
