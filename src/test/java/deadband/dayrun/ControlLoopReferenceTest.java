package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;

/**
 * An independent count of relay closings, compressor starts and energies for twelve settings on two
 * measured days: {@code control_loop_reference.csv}, computed for this project; irradiance NREL
 * MIDC as carried in pvlib-python's test data (BSD-3).
 */
@Tag("outside")
class ControlLoopReferenceTest {
  private static final Offset<Double> KWH = within(0.001);

  @TestFactory
  Stream<DynamicTest> countsMatchExactlyAndEnergiesToAThousandthOfAKilowattHour() {
    var rows = Measured.rows("control_loop_reference.csv");
    assertThat(rows).hasSize(24);
    return rows.stream().map(row -> DynamicTest.dynamicTest(name(row), () -> check(row)));
  }

  private static String name(String[] row) {
    return String.join(" ", Arrays.copyOf(row, 12));
  }

  private static void check(String[] row) {
    Result result =
        DayRun.startingAt(20, installation(row), StepLength.MINUTE).through(day(row)).result();
    Result.Cycles cycles = result.cycles().orElseThrow();
    assertThat(cycles.relayClosings()).isEqualTo(Integer.parseInt(row[12]));
    assertThat(cycles.heatPumpStarts()).isEqualTo(Integer.parseInt(row[13]));
    assertThat(result.heatPump_kWh()).isCloseTo(number(row, 14), KWH);
    assertThat(result.immersion_kWh()).isCloseTo(number(row, 15), KWH);
    assertThat(result.import_kWh()).isCloseTo(number(row, 16), KWH);
    assertThat(result.importWhileOnSurplus_kWh()).isCloseTo(number(row, 17), KWH);
    assertThat(result.export_kWh()).isCloseTo(number(row, 18), KWH);
    if (row[19].isEmpty()) {
      assertThat(cycles.shortestRun_min()).isEmpty();
      assertThat(cycles.longestRun_min()).isEmpty();
    } else {
      assertThat(cycles.shortestRun_min()).hasValue(number(row, 19));
      assertThat(cycles.longestRun_min()).hasValue(number(row, 20));
    }
  }

  private static Day day(String[] row) {
    double perIrradiance = number(row, 1);
    double[] pv_kW =
        Arrays.stream(Measured.irradiance_W_per_m2(row[0]))
            .map(sun -> sun * perIrradiance)
            .toArray();
    double[] house_kW = new double[pv_kW.length];
    Arrays.fill(house_kW, number(row, 2));
    double[] draw_L = new double[pv_kW.length];
    return new Day(Profile.of(StepLength.MINUTE, 0, pv_kW, house_kW, draw_L), 10, 10);
  }

  private static Installation installation(String[] row) {
    Given given = Given.boundless().constantDraw(number(row, 7));
    given.start_kW = number(row, 3);
    given.stop_kW = number(row, 4);
    given.startDelay_min = number(row, 5);
    given.stopDelay_min = number(row, 6);
    given.counts = counts(row[8]);
    given.startLag_min = 0;
    given.minimumRun_min = number(row, 9);
    given.minimumOff_min = number(row, 10);
    given.immersion_kW = number(row, 11);
    given.minimum_kW = number(row, 21);
    return given.build();
  }

  private static Set<Counted> counts(String words) {
    Set<Counted> counts = EnumSet.of(Counted.EXPORT);
    for (String word : words.split("\\+", -1)) {
      switch (word) {
        case "export" -> counts.add(Counted.EXPORT);
        case "immersion" -> counts.add(Counted.IMMERSION);
        case "heat-pump" -> counts.add(Counted.HEAT_PUMP);
        default -> throw new IllegalArgumentException("counts " + word);
      }
    }
    return counts;
  }

  private static double number(String[] row, int column) {
    return Double.parseDouble(row[column]);
  }
}
