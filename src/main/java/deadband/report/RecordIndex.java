package deadband.report;

import deadband.judging.Consequence;
import deadband.judging.Judgement;
import deadband.judging.RulePage;
import io.jstach.jstache.JStache;
import io.jstach.jstache.JStacheConfig;
import io.jstach.jstache.JStachePartial;
import io.jstach.jstache.JStachePartials;
import io.jstach.jstache.JStacheType;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The records of several files on one page, worst first; those that could not be judged lead. */
public final class RecordIndex {

  private RecordIndex() {}

  /**
   * One file.
   *
   * @param page name of its record in the same folder; empty where there is none
   * @param judgement null where it could not be judged
   * @param why what kept it from being judged
   */
  public record Entry(
      String page, String title, String file, @Nullable Judgement judgement, String why) {

    public static Entry of(JobRecord job, String page) {
      return new Entry(page, job.title(), job.report().file(), job.report().judgement(), "");
    }

    public static Entry unreadable(String file, String why) {
      return new Entry("", file, file, null, why);
    }

    public boolean isJudged() {
      return judgement != null;
    }

    String verdict() {
      return judgement == null ? "not judged" : judgement.verdict().words();
    }

    String verdictWord() {
      return judgement == null ? "not-judged" : judgement.verdict().word();
    }

    /** How many findings of each class. */
    String found() {
      if (judgement == null) {
        return "";
      }
      String counts =
          Arrays.stream(Consequence.values())
              .filter(each -> judgement.count(each) > 0)
              .map(each -> Words.count(judgement.count(each), each))
              .collect(Collectors.joining(", "));
      return counts.isEmpty() ? "-" : counts;
    }

    /** The first finding, or what kept the file from being judged. */
    String first() {
      return judgement == null
          ? why
          : judgement.findings().stream()
              .findFirst()
              .map(finding -> RulePage.of(finding.check()).says())
              .orElse("-");
    }

    private int count(Consequence consequence) {
      return judgement == null ? 0 : judgement.count(consequence);
    }
  }

  /** The page. */
  @JStache(path = "deadband/report/index.html")
  @JStachePartials(@JStachePartial(name = "head", path = "deadband/report/head.html"))
  @JStacheConfig(type = JStacheType.STACHE)
  record Model(RecordModel.Sheet sheet, String counts, List<Entry> entries, String tool) {}

  public static String html(List<Entry> entries, String tool) {
    return new ModelRenderer(String::valueOf, Svg::escaped)
        .execute(new Model(PageStyle.sheet("Records"), counts(entries), worstFirst(entries), tool));
  }

  public static String markdown(List<Entry> entries, String tool) {
    StringBuilder text = new StringBuilder("# Records\n\n" + counts(entries) + "\n\n");
    text.append("| verdict | job | file | found | first finding |\n|---|---|---|---|---|\n");
    for (Entry entry : worstFirst(entries)) {
      String title = MarkdownText.of(entry.title());
      text.append("| ").append(entry.verdict()).append(" | ");
      text.append(entry.isJudged() ? "[" + title + "](" + entry.page() + ")" : title);
      text.append(" | ").append(MarkdownText.of(entry.file()));
      text.append(" | ").append(entry.found());
      text.append(" | ").append(MarkdownText.of(entry.first())).append(" |\n");
    }
    return text + "\nDeadband " + tool + "\n";
  }

  private static String counts(List<Entry> entries) {
    return Words.count(entries.size(), "file")
        + ": "
        + worstFirst(entries).stream()
            .map(Entry::verdict)
            .distinct()
            .map(each -> count(entries, each) + " " + each)
            .collect(Collectors.joining(", "));
  }

  private static long count(List<Entry> entries, String verdict) {
    return entries.stream().filter(entry -> entry.verdict().equals(verdict)).count();
  }

  /** By verdict, the worst first. */
  private static int worse(Entry one, Entry other) {
    return one.judgement() == null || other.judgement() == null
        ? 0
        : other.judgement().verdict().compareTo(one.judgement().verdict());
  }

  private static List<Entry> worstFirst(List<Entry> entries) {
    Comparator<Entry> order = Comparator.comparingInt(entry -> entry.isJudged() ? 1 : 0);
    order = order.thenComparing(RecordIndex::worse);
    for (Consequence each : Consequence.values()) {
      order = order.thenComparing(Comparator.<Entry>comparingInt(of -> of.count(each)).reversed());
    }
    return entries.stream()
        .sorted(order.thenComparing(Entry::title).thenComparing(Entry::file))
        .toList();
  }
}
