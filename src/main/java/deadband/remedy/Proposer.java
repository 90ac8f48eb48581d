package deadband.remedy;

import deadband.document.Pointer;
import deadband.judging.Finding;
import deadband.judging.Judge;
import deadband.judging.Judgement;
import deadband.judging.Proof;
import deadband.judging.Remedy;
import deadband.judging.Trials;
import deadband.limits.Limits;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Looks for settings that bring a setup as near to sign-off as settings can.
 *
 * <p>Finding by finding, the worst first, the remedy that the check of the file advises is taken,
 * else the next it offers, as long as it brings the whole nearer; then each change without which
 * the setup is as near is left out. Every set is tried against the setup as it is: what no remedy
 * may do, all of them together may not do either, and no finding that stays may grow.
 *
 * <pre>{@code
 * Proposal proposal = new Proposer(judge, Limits.standard(), asOf, List.of()).propose(setup);
 * }</pre>
 */
public final class Proposer {

  private static final int MOST_ROUNDS = 40;

  private final Judge judge;
  private final Limits limits;
  private final LocalDate asOf;
  private final List<Pointer> kept;

  /**
   * A proposer.
   *
   * @param kept values, or sections of them, that are not to be changed
   */
  public Proposer(Judge judge, Limits limits, LocalDate asOf, List<Pointer> kept) {
    this.judge = judge;
    this.limits = limits;
    this.asOf = asOf;
    this.kept = List.copyOf(kept);
  }

  /** The proposal for a setup. */
  public Proposal propose(Setup setup) {
    Search search = new Search(setup);
    List<Change> changes = search.changes();
    Optional<Proof> proof =
        changes.isEmpty() ? Optional.empty() : search.origin.proof(changes, true);
    Judgement before = judge.judge(search.origin, asOf);
    Judgement after =
        changes.isEmpty() ? before : judge.judge(Change.all(changes, setup), limits, asOf);
    return new Proposal(changes, before, after, proof);
  }

  private boolean isKept(Change change) {
    return kept.stream()
        .anyMatch(
            pointer ->
                change.pointer().startsWith(pointer) || pointer.startsWith(change.pointer()));
  }

  Distance distance(Setup setup) {
    return Distance.of(judge.glance(setup, limits, asOf));
  }

  /** The search for one setup. */
  private final class Search {

    private final Setup setup;
    private final Trials origin;

    Search(Setup setup) {
      this.setup = setup;
      this.origin = judge.trials(setup, limits);
    }

    List<Change> changes() {
      List<Change> changes = List.of();
      Distance reached = distance(setup);
      for (int round = 0; round < MOST_ROUNDS; round++) {
        Optional<List<Change>> next = next(changes, reached);
        if (next.isEmpty()) {
          return changes;
        }
        reached = distance(Change.all(next.get(), setup));
        changes = withoutIdle(next.get(), reached);
      }
      return changes;
    }

    /** The changes and one remedy more that together bring the setup nearer. */
    private Optional<List<Change>> next(List<Change> changes, Distance reached) {
      Setup now = Change.all(changes, setup);
      Trials trials = changes.isEmpty() ? origin : judge.trials(now, limits);
      return judge.glance(now, limits, asOf).findings().stream()
          .filter(Finding::isOpen)
          .flatMap(finding -> trials.remedies(finding).stream())
          .filter(Remedy::isSetting)
          .map(Remedy::changes)
          .filter(remedy -> remedy.stream().noneMatch(Proposer.this::isKept))
          .map(remedy -> together(changes, remedy))
          .filter(all -> isNearer(all, reached))
          .findFirst();
    }

    private boolean isNearer(List<Change> all, Distance reached) {
      return isAllowed(all) && distance(Change.all(all, setup)).isNearerThan(reached);
    }

    /** Whether they may be offered together, and no finding of the setup as it is grows. */
    private boolean isAllowed(List<Change> all) {
      return all.isEmpty()
          || origin.proof(all, false).filter(proof -> proof.enlarges().isEmpty()).isPresent();
    }

    /** Both sets as one from the setup as it is: the later change of a value counts. */
    private List<Change> together(List<Change> changes, List<Change> more) {
      Map<Pointer, Change> byPointer = new TreeMap<>();
      Stream.concat(changes.stream(), more.stream())
          .forEach(change -> byPointer.put(change.pointer(), single(change)));
      byPointer.values().removeIf(change -> change.to().equals(change.from()));
      return List.copyOf(byPointer.values());
    }

    /** The same change, from what the setup says. */
    private Change single(Change change) {
      return new Change(change.pointer(), Change.entered(setup, change.pointer()), change.to());
    }

    private List<Change> withoutIdle(List<Change> changes, Distance reached) {
      List<Change> needed = changes;
      for (Change change : changes) {
        List<Change> less = needed.stream().filter(other -> !other.equals(change)).toList();
        if (isAllowed(less) && !reached.isNearerThan(distance(Change.all(less, setup)))) {
          needed = less;
        }
      }
      return needed;
    }
  }
}
