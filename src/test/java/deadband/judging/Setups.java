package deadband.judging;

import static org.assertj.core.api.Assertions.fail;

import deadband.days.DayRuns;
import deadband.days.YearRuns;
import deadband.document.Document;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.ProblemText;
import deadband.limits.Limits;
import deadband.reading.EquipmentFolder;
import deadband.reading.SetupReading;
import deadband.report.JsonReport;
import deadband.report.Report;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Setups of the tests: read from text, judged, and taken apart. */
public final class Setups {

  /** The date on which the tests judge. */
  public static final LocalDate AS_OF = LocalDate.of(2026, 5, 31);

  /** Days are run once for all tests. */
  static final DayRuns RUNS = DayRuns.remembered();

  public static final Judge JUDGE = new Judge(RuleBook.builtIn(), RUNS, YearRuns.remembered());

  private static final EquipmentFolder EQUIPMENT =
      EquipmentFolder.at(Path.of("sample-configs/equipment"));

  private Setups() {}

  /** The files of a folder of the project, by name. */
  public static List<Path> files(String folder, String ending) {
    try (Stream<Path> found = Files.walk(Path.of(folder))) {
      return found.filter(path -> path.toString().endsWith(ending)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The setups under {@code sample-configs/good}. */
  public static List<Path> good() {
    return files("sample-configs/good", ".json");
  }

  /** The pages of the checks, a topic a folder. */
  public static List<Path> pages() {
    return files("rules", ".md").stream().filter(page -> page.getNameCount() == 3).toList();
  }

  public static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A setup that must be readable. */
  public static SetupReading.Read read(String name, String text) {
    SetupReading reading = withSheets(SetupReading.ofText(name, text));
    if (reading instanceof SetupReading.Unreadable unreadable) {
      return fail(ProblemText.of(unreadable.problems(), 100));
    }
    return (SetupReading.Read) reading;
  }

  private static SetupReading withSheets(SetupReading reading) {
    return reading instanceof SetupReading.Read read && EquipmentFolder.isNamedBy(read)
        ? EquipmentFolder.withSheets(read, EQUIPMENT)
        : reading;
  }

  public static Judgement judge(SetupReading.Read read) {
    return JUDGE.judge(read.setup(), Limits.standard(), AS_OF);
  }

  /** The same without remedies and causes. */
  static Judgement glance(SetupReading.Read read) {
    return JUDGE.glance(read.setup(), Limits.standard(), AS_OF);
  }

  public static Judgement judge(String text) {
    return judge(read("test", text));
  }

  /** The JSON report of a setup. */
  public static String json(SetupReading.Read read) {
    return json(read, judge(read));
  }

  static String json(SetupReading.Read read, Judgement judgement) {
    return JsonReport.of(new Report(read.document(), read.setup(), judgement), "test", true);
  }

  /** The places of every value that is not a section or a list of sections. */
  public static List<Pointer> leaves(Document document) {
    List<Pointer> leaves = new ArrayList<>();
    leaves(document.root(), Pointer.root(), leaves);
    return leaves;
  }

  private static void leaves(Node node, Pointer at, List<Pointer> leaves) {
    if (node instanceof Node.Section section) {
      section.members().forEach(m -> leaves(m.value(), at.child(m.name()), leaves));
    } else if (node instanceof Node.Sequence list
        && list.items().stream().anyMatch(Node.Section.class::isInstance)) {
      for (int i = 0; i < list.items().size(); i++) {
        leaves(list.items().get(i), at.child(i), leaves);
      }
    } else {
      leaves.add(at);
    }
  }
}
