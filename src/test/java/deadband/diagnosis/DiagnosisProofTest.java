package deadband.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.meterlog.MeterLog;
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
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * How often the right cause is found in the logs of homes that are made by chance ({@link
 * GeneratedHome}), and a healthy home is called healthy. Prints the table of DEVELOPERS.md.
 *
 * <p>The noise was settled on homes of other seeds. What is aimed at is the right cause first in 90
 * % and among the first two in 97 %, and 98 % of healthy homes called healthy; the floors are what
 * is reached, and below that.
 */
class DiagnosisProofTest {

  private static final long FIRST_SEED = 88_000;
  private static final int[] FINE_S = {1, 10, 30, 60, 120, 10, 30, 60, 60, 120};
  private static final int HEALTHY = 50;

  /**
   * Faults that act only in some minutes of a log and leave the runs as they are in a healthy home:
   * less is reached for them, and only that is held.
   */
  private static final Set<Cause> FAINT =
      EnumSet.of(Cause.METER_ERROR, Cause.READING_LAG, Cause.SENSOR_BLIND, Cause.TANK_SENSOR);

  private record Tried(Cause fault, Diagnosis diagnosis) {

    static Tried of(Cause fault, long seed, int interval_s) {
      GeneratedHome home = GeneratedHome.of(fault, seed, interval_s);
      MeterLog log = home.log();
      return new Tried(
          fault, Diagnosis.of(Optional.of(home.setup()), Optional.of(log), ObservedWords.of("")));
    }

    boolean isRanked() {
      return !diagnosis.causes().isEmpty();
    }

    boolean amongFirst(int places) {
      return diagnosis.causes().stream().limit(places).anyMatch(c -> c.first() == fault);
    }

    String first() {
      return isRanked() ? diagnosis.causes().get(0).word() : "not ranked";
    }
  }

  private static final Map<Cause, List<Tried>> TRIED = new EnumMap<>(Cause.class);

  @BeforeAll
  static void tryAll() {
    for (Cause cause : Cause.values()) {
      int homes = cause == Cause.NOTHING_UNUSUAL ? HEALTHY : FINE_S.length;
      TRIED.put(
          cause,
          IntStream.range(0, homes)
              .parallel()
              .mapToObj(
                  home ->
                      Tried.of(
                          cause,
                          FIRST_SEED + home,
                          home < FINE_S.length ? FINE_S[home] : FINE_S[1 + home % 9]))
              .toList());
    }
    System.out.println(table());
  }

  private static String table() {
    StringBuilder table = new StringBuilder("| fault | logs | first | in the first two | else |\n");
    table.append("|---|---|---|---|---|\n");
    for (Map.Entry<Cause, List<Tried>> row : TRIED.entrySet()) {
      List<Tried> ranked = row.getValue().stream().filter(Tried::isRanked).toList();
      Map<String, Long> others =
          row.getValue().stream()
              .filter(tried -> !tried.amongFirst(1))
              .collect(Collectors.groupingBy(Tried::first, Collectors.counting()));
      table.append(
          String.format(
              Locale.ROOT,
              "| %s | %d | %d | %d | %s |%n",
              row.getKey().word(),
              row.getValue().size(),
              ranked.stream().filter(tried -> tried.amongFirst(1)).count(),
              ranked.stream().filter(tried -> tried.amongFirst(2)).count(),
              others.entrySet().stream()
                  .sorted(Comparator.comparing(Map.Entry::getKey))
                  .map(entry -> entry.getKey() + " " + entry.getValue())
                  .collect(Collectors.joining(", "))));
    }
    return table.toString();
  }

  private static double share(Set<Cause> causes, int places) {
    List<Tried> ranked =
        causes.stream().flatMap(c -> TRIED.get(c).stream()).filter(Tried::isRanked).toList();
    return ranked.stream().filter(tried -> tried.amongFirst(places)).count()
        / (double) ranked.size();
  }

  private static Set<Cause> faults() {
    return EnumSet.complementOf(EnumSet.of(Cause.NOTHING_UNUSUAL));
  }

  @Test
  void theRightCauseIsFirst() {
    Set<Cause> clear = faults();
    clear.removeAll(FAINT);
    assertThat(share(clear, 1)).isGreaterThanOrEqualTo(0.86);
    assertThat(share(clear, 2)).isGreaterThanOrEqualTo(0.95);
    assertThat(share(FAINT, 1)).isGreaterThanOrEqualTo(0.4);
    assertThat(share(FAINT, 2)).isGreaterThanOrEqualTo(0.78);
  }

  @Test
  void aHealthyHomeIsCalledHealthy() {
    List<Tried> healthy = TRIED.get(Cause.NOTHING_UNUSUAL);
    long called = healthy.stream().filter(t -> t.diagnosis.healthy().orElse(false)).count();
    long accused = healthy.stream().filter(t -> !t.diagnosis.healthy().orElse(true)).count();
    assertThat(called / (double) healthy.size()).isGreaterThanOrEqualTo(0.94);
    assertThat(accused / (double) healthy.size()).isLessThanOrEqualTo(0.04);
  }

  @Test
  void coarseReadingsNeverGiveAWrongCause() {
    List<String> wrong = new ArrayList<>();
    for (Cause fault : Cause.values()) {
      for (int home = 0; home < 4; home++) {
        Tried tried = Tried.of(fault, FIRST_SEED + 500 + home, 900);
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
