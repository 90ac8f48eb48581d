package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import deadband.facts.Size;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every hazard has a size, and the sizes of all hazards stand on one scale. */
class SeverityTest {

  private static final Pattern BLOCK =
      Pattern.compile("^```jsonc\\n(.*?)^```", Pattern.MULTILINE | Pattern.DOTALL);

  private static List<Finding> hazards() {
    List<Finding> hazards = new ArrayList<>();
    for (Check check : Setups.JUDGE.book().checks()) {
      if (check.consequence() == Consequence.HAZARD) {
        Matcher fires = BLOCK.matcher(RulePage.of(check).sections().getOrDefault("Fires", ""));
        while (fires.find()) {
          Setups.judge(fires.group(1)).findings().stream()
              .filter(finding -> finding.check().equals(check))
              .forEach(hazards::add);
        }
      }
    }
    return hazards;
  }

  /** Printed, for the eye: the order in which hazards would stand in one report. */
  @Test
  void everyHazardPageHasASize() {
    List<Finding> hazards = hazards();
    hazards.sort(Comparator.comparing(finding -> -finding.size().severity()));
    hazards.forEach(
        finding ->
            System.out.printf(
                Locale.ROOT,
                "%6.2f  %8.3f %-24s %s%n",
                finding.size().severity(),
                finding.size().value(),
                finding.size().unit().printed(),
                finding.check().name()));

    assertThat(hazards).allMatch(finding -> finding.size().severity() > 0);
    assertThat(hazards.stream().map(finding -> finding.check().name()).distinct())
        .hasSameElementsAs(
            Setups.JUDGE.book().checks().stream()
                .filter(check -> check.consequence() == Consequence.HAZARD)
                .map(Check::name)
                .toList());
  }

  @Test
  void whatCanKillDoesNotRankBelowAKelvin() {
    double oneKelvin = Size.kelvin(1).severity();

    assertThat(Size.overload(16, 13.5).severity()).isGreaterThan(oneKelvin);
    assertThat(Size.overload(20, 10).severity()).isGreaterThan(oneKelvin);
    assertThat(Size.WHOLE.severity()).isGreaterThan(oneKelvin);
    assertThat(Size.time(10, 60).severity()).isGreaterThan(oneKelvin);
  }

  /** The amounts on the page of conventions are those of the units, in their order. */
  @Test
  void theScaleIsTheOneOnThePage() {
    List<String> rows =
        Setups.text(Path.of("rules", "CONVENTIONS.md"))
            .lines()
            .dropWhile(line -> !line.startsWith("| size | severity 1 at |"))
            .skip(2)
            .takeWhile(line -> line.startsWith("|"))
            .map(line -> line.split("\\|", -1)[2].strip().split(" ", -1)[0])
            .toList();

    assertThat(rows.stream().map(Double::valueOf))
        .containsExactlyElementsOf(
            Arrays.stream(Size.Unit.values()).map(Size.Unit::whole).toList());
  }

  @Test
  void whatIsLeftOfNothingIsMissing() {
    assertThat(Size.time(0, 60)).isEqualTo(Size.WHOLE);
    assertThat(Size.time(60 / 80.0, 60).severity()).isCloseTo(1, within(0.01));
    assertThat(Size.overload(1.45 * 16, 16).severity()).isCloseTo(1, within(1e-9));
  }
}
