package deadband.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.diagnosis.GeneratedHome.Sizes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * How often the right cause is found in the logs of homes that are made by chance ({@link
 * GeneratedHome}), and a healthy home is called healthy.
 *
 * <p>A build tries a few homes. {@code -Ddeadband.homes=20} tries so many of each cause, and ten
 * times as many healthy ones, in the usual sizes and in others (the noise was settled in both by
 * other seeds), and prints the tables of DEVELOPERS.md. What is aimed at is the right cause first
 * in 90 % and among the first two in 97 %, and 98 % of healthy homes called healthy; the floors are
 * below what is reached.
 */
class DiagnosisProofTest {

  private static final long FIRST_SEED = 88_000;
  private static final int[] FINE_S = {30, 60, 10, 60, 120, 30, 10, 60, 1, 120};
  private static final int HOMES = Integer.getInteger("deadband.homes", 2);
  private static final int HEALTHY = HOMES > 2 ? 10 : 3;

  private record Tried(Cause fault, Diagnosis diagnosis) {

    static Tried of(Cause fault, Sizes sizes, long seed, int interval_s) {
      GeneratedHome home = GeneratedHome.of(fault, sizes, seed, interval_s);
      return new Tried(
          fault,
          Diagnosis.of(Optional.of(home.setup()), Optional.of(home.log()), ObservedWords.of("")));
    }

    boolean isRanked() {
      return !diagnosis.causes().isEmpty();
    }

    boolean amongFirst(int places) {
      return diagnosis.causes().stream().limit(places).anyMatch(c -> c.first() == fault);
    }

    String first() {
      return isRanked() ? diagnosis.causes().get(0).word() : "cannot be seen";
    }
  }

  private static Map<Cause, List<Tried>> all(Sizes sizes) {
    Map<Cause, List<Tried>> tried = new EnumMap<>(Cause.class);
    for (Cause cause : Cause.values()) {
      int homes = cause == Cause.NOTHING_UNUSUAL ? HEALTHY * HOMES : HOMES;
      tried.put(
          cause,
          IntStream.range(0, homes)
              .parallel()
              .mapToObj(
                  home -> Tried.of(cause, sizes, FIRST_SEED + home, FINE_S[home % FINE_S.length]))
              .toList());
    }
    return tried;
  }

  private static String table(Map<Cause, List<Tried>> all) {
    StringBuilder table = new StringBuilder("| fault | logs | first | in the first two | else |\n");
    table.append("|---|---|---|---|---|\n");
    for (Map.Entry<Cause, List<Tried>> row : all.entrySet()) {
      List<Tried> tried = row.getValue();
      Map<String, Long> others =
          tried.stream()
              .filter(one -> !one.amongFirst(1))
              .collect(Collectors.groupingBy(Tried::first, Collectors.counting()));
      table.append(
          String.format(
              Locale.ROOT,
              "| %s | %d | %d | %d | %s |%n",
              row.getKey().word(),
              tried.size(),
              tried.stream().filter(one -> one.amongFirst(1)).count(),
              tried.stream().filter(one -> one.amongFirst(2)).count(),
              others.entrySet().stream()
                  .sorted(Map.Entry.comparingByKey(Comparator.naturalOrder()))
                  .map(entry -> entry.getKey() + " " + entry.getValue())
                  .collect(Collectors.joining(", "))));
    }
    return table.toString();
  }

  /** Share of the logs of all faults that can be ranked. */
  private static double share(Map<Cause, List<Tried>> all, int places) {
    Set<Cause> faults = EnumSet.complementOf(EnumSet.of(Cause.NOTHING_UNUSUAL));
    List<Tried> ranked =
        faults.stream().flatMap(c -> all.get(c).stream()).filter(Tried::isRanked).toList();
    return ranked.stream().filter(one -> one.amongFirst(places)).count() / (double) ranked.size();
  }

  private static double healthy(Map<Cause, List<Tried>> all, boolean called) {
    List<Tried> homes = all.get(Cause.NOTHING_UNUSUAL);
    return homes.stream().filter(t -> t.diagnosis.healthy().orElse(!called) == called).count()
        / (double) homes.size();
  }

  private static void holds(Sizes sizes, double first, double two, double called, double accused) {
    Map<Cause, List<Tried>> all = all(sizes);
    System.out.printf(
        Locale.ROOT,
        "%s%n%s%nfirst %.1f %%, in the first two %.1f %%; healthy: called so %.1f %%, called"
            + " faulty %.1f %%%n%n",
        sizes,
        table(all),
        100 * share(all, 1),
        100 * share(all, 2),
        100 * healthy(all, true),
        100 * healthy(all, false));
    assertThat(share(all, 1)).isGreaterThanOrEqualTo(first);
    assertThat(share(all, 2)).isGreaterThanOrEqualTo(two);
    assertThat(healthy(all, true)).isGreaterThanOrEqualTo(called);
    assertThat(healthy(all, false)).isLessThanOrEqualTo(accused);
  }

  @Test
  void theRightCauseIsFirst() {
    holds(Sizes.USUAL, 0.9, 0.94, HOMES > 2 ? 0.98 : 0.83, 0.02);
  }

  @Test
  void inOtherSizes() {
    if (HOMES > 2) {
      holds(Sizes.OTHER, 0.87, 0.94, 0.98, 0.02);
    }
  }

  /** Of the five logs one shows no cycles of the relay. */
  @Test
  void twoFaultsAreFoundTogether() {
    int first = 0;
    int second = 0;
    for (int home = 0; home < 5; home++) {
      GeneratedHome both = GeneratedHome.onBattery(Cause.GAP_BELOW_INPUT, FIRST_SEED + home, 60);
      List<Set<Cause>> causes =
          Diagnosis.of(Optional.of(both.setup()), Optional.of(both.log()), ObservedWords.of(""))
              .causes()
              .stream()
              .limit(2)
              .map(ranked -> Set.copyOf(ranked.causes()))
              .toList();
      int place = causes.indexOf(Set.of(Cause.GAP_BELOW_INPUT, Cause.BATTERY));
      first += place == 0 ? 1 : 0;
      second += place == 1 ? 1 : 0;
    }
    assertThat(first).as("found first").isGreaterThanOrEqualTo(2);
    assertThat(first + second).as("among the first two").isGreaterThanOrEqualTo(4);
  }

  @Test
  void coarseReadingsNeverGiveAWrongCause() {
    List<String> wrong = new ArrayList<>();
    for (Cause fault : Cause.values()) {
      for (int home = 0; home < Math.max(1, HOMES / 4); home++) {
        Tried tried = Tried.of(fault, Sizes.USUAL, FIRST_SEED + 500 + home, 900);
        assertThat(tried.diagnosis.cannotSee())
            .anyMatch(
                says -> says.startsWith("15-minute readings hide cycles shorter than 30 min"));
        boolean healthy = tried.diagnosis.healthy().orElse(false);
        if ((tried.isRanked() && !tried.amongFirst(1))
            || (healthy && fault != Cause.NOTHING_UNUSUAL)) {
          wrong.add(fault.word() + ": " + tried.first());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }
}
