package deadband.cli;

import deadband.judging.Judgement;
import deadband.report.JobRecord;
import deadband.report.RecordIndex;
import deadband.report.RecordMarkdown;
import deadband.report.RecordPage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Where records go: standard output, one file, or a folder with a page for each setup. */
final class RecordFiles {

  private static final int LONGEST_NAME = 80;

  private final Console console;
  private final Outputs writer;
  private final CheckCommand.Format format;
  private final @Nullable Path out;
  private final boolean folder;
  private final List<RecordIndex.Entry> entries = new ArrayList<>();
  private final List<String> pages = new ArrayList<>();
  private final Set<String> taken = new HashSet<>(Set.of("index"));

  /**
   * A place for records.
   *
   * @param out the file or folder named; null for standard output
   * @param folder whether it is a folder, which may not be there yet
   */
  RecordFiles(
      Console console,
      Outputs writer,
      CheckCommand.Format format,
      @Nullable Path out,
      boolean folder) {
    this.console = console;
    this.writer = writer;
    this.format = format;
    this.out = out;
    this.folder = folder;
  }

  /** Takes the record of one file; what it was judged to be. */
  Judgement add(JobRecord job) {
    boolean html = format == CheckCommand.Format.HTML;
    pages.add(html ? RecordPage.of(job) : RecordMarkdown.of(job));
    entries.add(RecordIndex.Entry.of(job, nameFor(job.fileName())));
    return job.report().judgement();
  }

  /** Takes a file that has no record, and says why; nothing is printed in its place. */
  void unreadable(String file, String why) {
    console.tellLines(why);
    entries.add(RecordIndex.Entry.unreadable(file, why));
  }

  /** A name of its own in the folder, of letters that any file system takes. */
  private String nameFor(String file) {
    String plain = file.replaceFirst("(?i)\\.jsonc?$", "").replaceAll("[^A-Za-z0-9._-]+", "-");
    String stem =
        plain.substring(0, Math.min(plain.length(), LONGEST_NAME)).replaceAll("^[.-]+", "");
    String name = stem.isEmpty() ? "record" : stem;
    for (int next = 2; !taken.add(name.toLowerCase(Locale.ROOT)); next++) {
      name = (stem.isEmpty() ? "record" : stem) + "-" + next;
    }
    return name + format.ending();
  }

  /** Writes the pages taken; whether all could be written. */
  boolean write() {
    if (!folder) {
      return pages.isEmpty() || print(pages.get(0));
    }
    return made() && write("index" + format.ending(), index()) && pages();
  }

  private String index() {
    return format == CheckCommand.Format.HTML
        ? RecordIndex.html(entries, Version.number())
        : RecordIndex.markdown(entries, Version.number());
  }

  private boolean pages() {
    List<RecordIndex.Entry> judged = entries.stream().filter(RecordIndex.Entry::isJudged).toList();
    for (int at = 0; at < pages.size(); at++) {
      if (!write(judged.get(at).page(), pages.get(at))) {
        return false;
      }
    }
    return true;
  }

  private boolean write(String name, String text) {
    return out == null || writer.write(out.resolve(name), to -> to.append(text));
  }

  private boolean made() {
    if (out == null || Files.isDirectory(out)) {
      return true;
    }
    try {
      Files.createDirectories(out);
      return true;
    } catch (IOException e) {
      console.tell(out + " cannot be made a folder");
      return false;
    }
  }

  /** Writes a page to the file named, else to standard output. */
  private boolean print(String report) {
    if (out == null) {
      console.out().print(report);
      return true;
    }
    return writer.write(out, to -> to.append(report));
  }
}
