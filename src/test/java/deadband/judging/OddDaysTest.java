package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.dayrun.TestDays;
import deadband.days.DayEvidence;
import deadband.days.DayModel;
import deadband.days.DayRuns;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.reading.SetupReading;
import deadband.setup.Change;
import deadband.setup.FieldKind;
import deadband.setup.Setup;
import deadband.setup.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the physical range of each value lets through can be run, or is entered not to be. */
class OddDaysTest {
  private static final long SEED = Long.getLong("deadband.seed", 20261125);

  @ParameterizedTest
  @ValueSource(strings = {"mill-cottage", "fernleigh-bungalow", "gum-tree-lane", "tanners-row"})
  void noHomeIsTooOddToRun(String home) {
    Path file = Path.of("sample-configs/good", home + ".json");
    SetupReading.Read read = Setups.read(home, Setups.text(file));
    List<Pointer> numbers =
        Setups.leaves(read.document()).stream()
            .filter(at -> !at.startsWith(Pointer.ofDotted("asFound")))
            .filter(at -> read.document().find(at).orElseThrow() instanceof Node.Numeral)
            .toList();
    Random random = new Random(SEED);
    DayRuns runs = DayRuns.remembered();
    for (int turn = 0; turn < 250; turn++) {
      Setup setup = odd(read.setup(), numbers, random);
      Optional<TestDays> days = DayEvidence.days(setup, runs);
      days.ifPresent(
          known ->
              assertThat(DayEvidence.of(known))
                  .as("seed %s, turn %s", SEED, turn(known))
                  .allSatisfy(measure -> assertThat(measure.value()).isFinite()));
      assertThat(DayModel.of(setup).provenance().missing().isEmpty())
          .isEqualTo(DayModel.of(setup).isKnown());
    }
  }

  private static String turn(TestDays days) {
    return days.clear().toString();
  }

  private static Setup odd(Setup setup, List<Pointer> numbers, Random random) {
    Setup changed = setup;
    for (int change = 0; change < 4; change++) {
      Pointer at = numbers.get(random.nextInt(numbers.size()));
      FieldKind.Num kind = (FieldKind.Num) EveryValueTest.kind(at);
      if (kind.unit() != Unit.NONE && kind.unit() != Unit.DEGREE) {
        double share = random.nextInt(3) == 0 ? random.nextInt(2) : random.nextDouble();
        double value = kind.unit().round(kind.least() + share * (kind.most() - kind.least()));
        changed = new Change(at, null, value).applyTo(changed);
      }
    }
    return changed;
  }
}
