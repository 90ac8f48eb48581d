package deadband.remedy;

import deadband.cases.Limits;
import deadband.document.Pointer;
import deadband.judging.Finding;
import deadband.judging.Judge;
import deadband.judging.Judgement;
import deadband.judging.Proof;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the smallest set of changes that brings a setup as near to sign-off as it can be
 * brought.
 *
 * <p>First remedy upon remedy, each time the one that brings it nearest, until none does. Then,
 * among all the changes that were considered, fewer of them that bring it just as near. Every set
 * is tried by the judge; a set that makes anything worse is never taken.
 *
 * <pre>{@code
 * Proposal proposal = new Proposer(judge, Limits.standard(), asOf, List.of()).propose(setup);
 * }</pre>
 */
public final class Proposer {

  /** Sets that are tried for a smaller one; beyond that, changes are only left out one by one. */
  private static final int MOST_SETS = 4000;

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
    List<Change> changes = search.smallest();
    Setup changed = Change.all(changes, setup);
    Judgement before = judge.judge(setup, limits, asOf);
    Judgement after = judge.judge(changed, limits, asOf);
    Proof proof =
        new Proof(missing(before, after), missing(after, before), before.days(), after.days());
    return new Proposal(changes, before, after, proof);
  }

  /** Checks with a finding in one judgement that the other does not have, by name. */
  private static List<String> missing(Judgement one, Judgement other) {
    Set<Finding.Key> there = new LinkedHashSet<>();
    other.findings().forEach(finding -> there.add(finding.key()));
    return one.findings().stream()
        .filter(finding -> !there.contains(finding.key()))
        .map(finding -> finding.check().name())
        .distinct()
        .sorted()
        .toList();
  }

  /** The remedies that the findings of a setup offer, as far as they touch nothing kept. */
  List<List<Change>> candidates(Setup setup) {
    return judge.glance(setup, limits, asOf).findings().stream()
        .filter(Finding::isOpen)
        .flatMap(finding -> finding.detail().cures().stream())
        .filter(cure -> cure.stream().noneMatch(this::isKept))
        .distinct()
        .toList();
  }

  private boolean isKept(Change change) {
    return kept.stream()
        .anyMatch(
            pointer ->
                change.pointer().startsWith(pointer) || pointer.startsWith(change.pointer()));
  }

  Standing standing(Setup setup) {
    return Standing.of(judge.glance(setup, limits, asOf));
  }

  /** The search for one setup. */
  private final class Search {

    private final Setup setup;

    /** Every single change that was considered, by value it sets. */
    private final Map<String, Change> pool = new LinkedHashMap<>();

    Search(Setup setup) {
      this.setup = setup;
    }

    /** Grows a set until nothing helps, makes it small, and looks whether that leaves more. */
    List<Change> smallest() {
      List<Change> changes = List.of();
      Standing reached = standing(setup);
      for (int round = 0; round < MOST_ROUNDS; round++) {
        List<Change> grown = grown(changes);
        Standing nearer = standing(Change.all(grown, setup));
        if (!nearer.isNearerThan(reached)) {
          return changes;
        }
        reached = nearer;
        changes = fewer(grown, reached);
      }
      return changes;
    }

    private List<Change> grown(List<Change> from) {
      List<Change> changes = from;
      for (int round = 0; round < MOST_ROUNDS; round++) {
        Optional<List<Change>> next = nearest(changes);
        if (next.isEmpty()) {
          return changes;
        }
        changes = next.get();
      }
      return changes;
    }

    /** The set with one remedy more that brings the setup nearest; empty where none does. */
    private Optional<List<Change>> nearest(List<Change> changes) {
      Setup now = Change.all(changes, setup);
      Standing best = standing(now);
      List<Change> found = null;
      for (List<Change> candidate : candidates(now)) {
        List<Change> all = together(changes, candidate);
        Standing standing = standing(Change.all(all, setup));
        candidate.forEach(this::consider);
        if (standing.isNearerThan(best) || isAsNearWithFewer(standing, all, best, found)) {
          best = standing;
          found = all;
        }
      }
      return Optional.ofNullable(found);
    }

    private void consider(Change change) {
      Change fromHere = single(change);
      pool.put(fromHere.pointer() + " " + fromHere.to(), fromHere);
    }

    private boolean isAsNearWithFewer(
        Standing standing, List<Change> all, Standing best, @Nullable List<Change> found) {
      return found != null && standing.compareTo(best) == 0 && all.size() < found.size();
    }

    /** Both sets as one from the setup as it is: the later change of a value counts. */
    private List<Change> together(List<Change> changes, List<Change> more) {
      Map<Pointer, Change> byPointer = new TreeMap<>();
      Stream.concat(changes.stream(), more.stream())
          .forEach(change -> byPointer.put(change.pointer(), single(change)));
      byPointer.values().removeIf(change -> change.to().equals(change.from()));
      return List.copyOf(byPointer.values());
    }

    /** The same change, told from what the setup says. */
    private Change single(Change change) {
      return new Change(change.pointer(), Change.told(setup, change.pointer()), change.to());
    }

    /** Fewer of the changes considered that bring the setup as near, or these. */
    private List<Change> fewer(List<Change> changes, Standing reached) {
      List<Change> all = List.copyOf(pool.values());
      for (int size = 1; size < changes.size(); size++) {
        if (sets(all.size(), size) > MOST_SETS) {
          return withoutIdle(changes, reached);
        }
        Optional<List<Change>> found =
            subsets(all, size).parallelStream()
                .filter(set -> !reached.isNearerThan(standing(Change.all(set, setup))))
                .findFirst();
        if (found.isPresent()) {
          return sorted(found.get());
        }
      }
      return changes;
    }

    private List<Change> withoutIdle(List<Change> changes, Standing reached) {
      List<Change> needed = new ArrayList<>(changes);
      for (Change change : changes) {
        List<Change> less = new ArrayList<>(needed);
        less.remove(change);
        if (!reached.isNearerThan(standing(Change.all(less, setup)))) {
          needed = less;
        }
      }
      return List.copyOf(needed);
    }

    private List<Change> sorted(Collection<Change> changes) {
      return together(List.of(), List.copyOf(changes));
    }
  }

  private static long sets(int of, int size) {
    long sets = 1;
    for (int i = 0; i < size; i++) {
      sets = sets * (of - i) / (i + 1);
    }
    return sets;
  }

  /** Every set of so many changes of different values, in order. */
  static List<List<Change>> subsets(List<Change> all, int size) {
    if (size == 0) {
      return List.of(List.of());
    }
    List<List<Change>> subsets = new ArrayList<>();
    for (int first = 0; first <= all.size() - size; first++) {
      Change change = all.get(first);
      for (List<Change> rest : subsets(all.subList(first + 1, all.size()), size - 1)) {
        if (rest.stream().noneMatch(other -> other.pointer().equals(change.pointer()))) {
          List<Change> set = new ArrayList<>(List.of(change));
          set.addAll(rest);
          subsets.add(List.copyOf(set));
        }
      }
    }
    return subsets;
  }
}
