package deadband.report;

import deadband.document.Printable;
import deadband.judging.Consequence;
import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What many files came to: a line each, the worst first, and totals. */
public final class BriefTable {

  private static final int VERDICT = 15;
  private static final int COUNT = 7;
  private static final String NOT_READ = "not read";
  private static final String FAULT = "not judged";

  private final List<Row> rows = new ArrayList<>();

  /**
   * One file.
   *
   * @param verdict null where it was not judged
   * @param word for the verdict, or for why there is none
   * @param counts findings of each class, the worst first, then checks not judged
   */
  private record Row(
      @Nullable Verdict verdict, String word, List<Integer> counts, String worst, String file) {

    /** Whether the first class of which the two have different numbers has more in this one. */
    int compareCounts(Row other) {
      for (int i = 0; i < counts.size(); i++) {
        int order = Integer.compare(other.counts.get(i), counts.get(i));
        if (order != 0) {
          return order;
        }
      }
      return 0;
    }
  }

  /** Adds a file that was judged. */
  public void judged(Report report) {
    Judgement judgement = report.judgement();
    List<Integer> counts = new ArrayList<>();
    for (Consequence consequence : Consequence.values()) {
      counts.add(judgement.count(consequence));
    }
    counts.add(judgement.notJudged().size());
    String worst =
        judgement.findings().stream()
            .filter(Finding::isOpen)
            .findFirst()
            .map(finding -> finding.check().name())
            .orElse("-");
    rows.add(
        new Row(judgement.verdict(), judgement.verdict().word(), counts, worst, report.file()));
  }

  /** Adds a file that could not be read. */
  public void unreadable(String file) {
    rows.add(without(NOT_READ, file));
  }

  /** Adds a file at which the program failed. */
  public void faulty(String file) {
    rows.add(without(FAULT, file));
  }

  private static Row without(String word, String file) {
    List<Integer> none =
        IntStream.rangeClosed(0, Consequence.values().length).mapToObj(i -> 0).toList();
    return new Row(null, word, none, "-", file);
  }

  /**
   * The table, ending in a line end.
   *
   * @param totals how many files came to which verdict, in words
   */
  public String text(String totals, Layout layout) {
    StringBuilder text = new StringBuilder();
    text.append(line("verdict", heads(), "worst, file", layout));
    rows.stream()
        .sorted(
            Comparator.comparing(Row::verdict, Comparator.nullsFirst(Comparator.reverseOrder()))
                .thenComparing(Row::compareCounts)
                .thenComparing(Row::file))
        .forEach(row -> text.append(line(row, layout)));
    List<String> sums =
        IntStream.rangeClosed(0, Consequence.values().length)
            .mapToObj(i -> "" + rows.stream().mapToInt(row -> row.counts().get(i)).sum())
            .toList();
    return text.append(line("total", sums, totals, layout)).toString();
  }

  private static List<String> heads() {
    List<String> heads = new ArrayList<>();
    for (Consequence consequence : Consequence.values()) {
      heads.add(consequence.word());
    }
    heads.add("open");
    return heads;
  }

  private static String line(Row row, Layout layout) {
    boolean counted = row.verdict() != null;
    List<String> counts =
        row.counts().stream().map(count -> counted ? count.toString() : "-").toList();
    return line(row.word(), counts, row.worst() + ", " + Printable.of(row.file()), layout);
  }

  private static String line(String verdict, List<String> counts, String rest, Layout layout) {
    String numbers =
        counts.stream()
            .map(count -> " ".repeat(Math.max(1, COUNT - 1 - count.length())) + count)
            .collect(Collectors.joining());
    return layout.wrapped(Layout.pad(verdict, VERDICT) + numbers + "  ", rest);
  }
}
