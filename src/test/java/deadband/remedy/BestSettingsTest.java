package deadband.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Pointer;
import deadband.judging.Finding;
import deadband.judging.Setups;
import deadband.limits.Limits;
import deadband.remedy.BestSettings.Front;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** The front of the best settings: sound, unbeaten, the same each time, and ended when asked. */
class BestSettingsTest {
  private static final int SETS = 48;
  private static final Setup HOME =
      Setups.read("home", Setups.text(Path.of("sample-configs/good/mill-cottage.json"))).setup();

  private static BestSettings search(List<Pointer> kept, int sets) {
    return new BestSettings(Setups.JUDGE, Limits.standard(), Setups.AS_OF, kept, sets);
  }

  private static Front front(List<Pointer> kept) {
    return search(kept, SETS)
        .from(HOME, List.of(), (looked, most, front) -> {}, () -> false)
        .orElseThrow();
  }

  @Test
  void everyOptionIsSoundAndUnbeaten() {
    Front found = front(List.of());

    assertThat(found.looked()).isEqualTo(SETS);
    assertThat(found.stopped()).isFalse();
    assertThat(found.front()).isNotEmpty();
    for (Option option : found.front()) {
      Setup changed = Change.all(option.changes(), HOME);
      assertThat(Setups.JUDGE.glance(changed, Limits.standard(), Setups.AS_OF).findings())
          .noneMatch(Finding::isOpen);
      assertThat(found.front())
          .noneMatch(other -> !other.equals(option) && option.isBeatenBy(other));
    }
    assertThat(found.front())
        .anyMatch(o -> o.equals(found.asItIs()) || found.asItIs().isBeatenBy(o));
  }

  @Test
  void theSameSetupGivesTheSameFront() {
    assertThat(front(List.of())).isEqualTo(front(List.of()));
  }

  @Test
  void turnsNothingKept() {
    assertThat(front(List.of(Pointer.ofDotted("heatPump"))).front())
        .flatMap(Option::changes)
        .noneMatch(change -> change.pointer().startsWith(Pointer.ofDotted("heatPump")));
  }

  @Test
  void endsWithTheBestSoFarWhenAsked() {
    AtomicInteger asked = new AtomicInteger();
    Front found =
        search(List.of(), 10_000)
            .from(
                HOME, List.of(), (looked, most, front) -> {}, () -> asked.incrementAndGet() > 1000)
            .orElseThrow();

    assertThat(found.stopped()).isTrue();
    assertThat(found.front()).isNotEmpty();
    assertThat(found.looked()).isLessThan(10_000);
    // Years under way are left within a day, not run to their end.
    assertThat(asked.get()).isLessThan(1000 + found.looked() + 100);
  }

  @Test
  void isStoppedEvenInTheFirstYear() {
    assertThat(
            search(List.of(), SETS).from(HOME, List.of(), (looked, most, front) -> {}, () -> true))
        .isEmpty();
  }

  @Test
  void aHazardThatCannotBeJudgedBarsEverySetting() {
    String text =
        Setups.read("home", Setups.text(Path.of("sample-configs/good/mill-cottage.json")))
            .document()
            .without(Pointer.ofDotted("immersion.circuit.cable_mm2"));
    Front found =
        search(List.of(), SETS)
            .from(
                Setups.read("open", text).setup(),
                List.of(),
                (looked, most, front) -> {},
                () -> false)
            .orElseThrow();

    assertThat(found.barredBy()).contains("breaker-above-cable");
    assertThat(found.front()).isEmpty();
  }

  /** From a setup with a fault, the proposal is looked at too; the fault itself is no row. */
  @Test
  void comparesWithTheSettingsAsTheyAre() {
    Setup hunting = Change.of(HOME.relay().stop_kW(), 2.7).applyTo(HOME);
    List<Change> proposed =
        new Proposer(Setups.JUDGE, Limits.standard(), Setups.AS_OF, List.of())
            .propose(hunting)
            .changes();
    Front found =
        search(List.of(), SETS)
            .from(hunting, proposed, (looked, most, front) -> {}, () -> false)
            .orElseThrow();

    assertThat(found.asItIs().changes()).isEmpty();
    assertThat(found.front()).isNotEmpty().noneMatch(option -> option.changes().isEmpty());
    assertThat(found.rows()).hasSizeBetween(1, 8);
  }

  @Test
  void aSetupThatCannotBeRunHasNoFront() {
    Setup bare = Setups.read("bare", "{ \"relay\": { \"start_kW\": 3 } }").setup();

    assertThat(
            search(List.of(), SETS).from(bare, List.of(), (looked, most, front) -> {}, () -> false))
        .isEmpty();
  }
}
