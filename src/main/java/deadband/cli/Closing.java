package deadband.cli;

import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.Trust;
import deadband.judging.Verdict;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What several files came to, and how the program ends because of it. */
final class Closing {

  private final Map<Verdict, Integer> verdicts = new EnumMap<>(Verdict.class);
  private int unreadable;
  private int faulty;
  private int exit = Exit.READY;
  private @Nullable Finding worst;
  private String worstFile = "";

  void unreadable() {
    unreadable++;
    exit = Math.max(exit, Exit.UNREADABLE);
  }

  /** Counts a file at which the program failed. */
  void faulty() {
    faulty++;
    exit = Exit.FAULT;
  }

  /**
   * What one judged file came to: no more than is needed here, since many wait for their turn.
   *
   * @param file its path; empty for standard input, which cannot be read again
   * @param ending the status it leads to
   * @param first the finding that is shown first; null where there is none
   */
  record Judged(String file, Verdict verdict, int ending, @Nullable Finding first) {

    /**
     * Of a judgement.
     *
     * @param ending status that its verdict alone would lead to
     */
    static Judged of(String file, Judgement judgement, int ending) {
      return new Judged(
          file,
          judgement.verdict(),
          judgement.isEmpty() ? Exit.NOTHING_CHECKED : ending,
          judgement.findings().stream()
              .filter(finding -> finding.causedBy() == null)
              .findFirst()
              .orElse(null));
    }
  }

  /** Counts one judged file. */
  void judged(Judged judged) {
    verdicts.merge(judged.verdict, 1, Integer::sum);
    exit = Math.max(exit, judged.ending);
    Finding first = judged.first;
    if (first != null && (worst == null || isGraver(first, worst))) {
      worst = first;
      worstFile = judged.file;
    }
  }

  private static boolean isGraver(Finding one, Finding other) {
    return one.consequence().compareTo(other.consequence()) < 0;
  }

  /** The highest status of all files. */
  int exit() {
    return exit;
  }

  /** How many there were. */
  int files() {
    return unreadable + faulty + verdicts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** How many files came to what. */
  String totals() {
    return files() + (files() == 1 ? " file: " : " files: ") + String.join(", ", counts());
  }

  /** What to say at the end. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    if (files() > 1) {
      lines.add(totals());
    }
    if (exit == Exit.NOTHING_CHECKED) {
      lines.add("nothing could be checked: the file holds no value that a check needs");
    }
    if (worst != null) {
      lines.addAll(next(worst));
    }
    return lines;
  }

  /** A remedy that was proven is one to propose; else the page says what to look for. */
  private List<String> next(Finding finding) {
    if (finding.trust() != Trust.NEEDS_INPUT && !worstFile.isEmpty()) {
      return List.of(
          "next: deadband propose "
              + ShellWord.of(worstFile)
                  .orElse(
                      "FILE, the name of which holds characters that are not shown: " + worstFile));
    }
    return finding.check().isHouse()
        ? List.of()
        : List.of("next: deadband explain " + finding.check().name());
  }

  private List<String> counts() {
    List<String> counts = new ArrayList<>();
    verdicts.forEach((verdict, number) -> counts.add(number + " " + verdict.words()));
    if (unreadable > 0) {
      counts.add(unreadable + " unreadable");
    }
    if (faulty > 0) {
      counts.add(faulty + " not judged for a fault of the program");
    }
    return counts;
  }
}
