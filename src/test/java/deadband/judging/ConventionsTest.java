package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.setup.Unit;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the page of conventions says once for all pages is what the tool does. */
class ConventionsTest {

  private static final String PAGE = Setups.text(Path.of("rules", "CONVENTIONS.md"));

  /** The cells of the table rows that stand under a header. */
  private static List<List<String>> table(String header) {
    return PAGE.lines()
        .dropWhile(line -> !line.startsWith(header))
        .skip(2)
        .takeWhile(line -> line.startsWith("|"))
        .map(line -> List.of(line.substring(1, line.length() - 1).split("\\|")))
        .map(cells -> cells.stream().map(String::strip).toList())
        .toList();
  }

  @Test
  void theStepsAreThoseOfTheUnits() {
    List<List<String>> rows = table("| unit | step |");

    assertThat(rows).hasSameSizeAs(Unit.values());
    List<Unit> units = List.of(Unit.values());
    for (int i = 0; i < rows.size(); i++) {
      Unit unit = units.get(i);
      double step = Double.parseDouble(rows.get(i).get(1));
      assertThat(rows.get(i).get(0)).contains(unit == Unit.NONE ? "plain" : unit.printed());
      assertThat(unit.round(100 * step + 0.4 * step)).isEqualTo(unit.round(100 * step));
      assertThat(unit.round(100 * step + 0.6 * step)).isEqualTo(unit.round(101 * step));
      assertThat(unit.round(step)).isEqualTo(step);
    }
  }

  @Test
  void aHalfGoesToTheEvenStep() {
    assertThat(Unit.KILOWATT.round(0.0005)).isZero();
    assertThat(Unit.KILOWATT.round(0.0015)).isEqualTo(0.002);
    assertThat(Unit.KILOWATT.round(0.0025)).isEqualTo(0.002);
    assertThat(Unit.KILOWATT.round(3.2 - 0.3)).isEqualTo(2.9);
  }
}
