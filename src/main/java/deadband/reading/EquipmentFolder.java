package deadband.reading;

import deadband.document.NearestName;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.setup.Change;
import deadband.setup.DataSheet;
import deadband.setup.Entered;
import deadband.setup.Setup;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The folder of the equipment files that a firm keeps. A setup names them, and takes what they say
 * wherever it enters nothing itself.
 *
 * <p>Only files within the folder are read, whatever name or link leads elsewhere. An equipment
 * file names no other. A file is read once, however many setups name it; any number of threads may
 * ask.
 */
public final class EquipmentFolder {

  /** The folder that is looked for beside a setup file, and in the folders above it. */
  public static final String NAME = "equipment";

  private static final Pointer LIST = Pointer.root().child(NAME);
  private static final Pointer AS_FOUND = Pointer.parse("/asFound/settings/" + NAME);
  private static final int DEEPEST = 5;
  private static final int MOST_NAMES = 2000;

  private final Path folder;
  private final Map<String, SetupReading> read = new ConcurrentHashMap<>();

  private EquipmentFolder(Path folder) {
    this.folder = folder;
  }

  public static EquipmentFolder at(Path folder) {
    return new EquipmentFolder(folder);
  }

  /** The nearest folder of that name beside a setup file or above it; null where there is none. */
  public static @Nullable Path nearest(Path setupFile) {
    Path above = setupFile.toAbsolutePath().normalize().getParent();
    while (above != null && !Files.isDirectory(above.resolve(NAME))) {
      above = above.getParent();
    }
    return above == null ? null : shown(above.resolve(NAME), setupFile);
  }

  /** Relative where the setup file is named so. */
  private static Path shown(Path folder, Path setupFile) {
    Path here = Path.of("").toAbsolutePath();
    return setupFile.isAbsolute() || !folder.startsWith(here) ? folder : here.relativize(folder);
  }

  /** Whether a setup names equipment files that are yet to be read. */
  public static boolean isNamedBy(SetupReading reading) {
    return reading instanceof SetupReading.Read setup
        && (names(setup.setup().equipment()) || names(foundEquipment(setup.setup())));
  }

  private static boolean names(@Nullable Entered<List<DataSheet>> equipment) {
    return equipment != null && !equipment.optional().orElse(List.of()).isEmpty();
  }

  private static @Nullable Entered<List<DataSheet>> foundEquipment(Setup setup) {
    Setup found = setup.asFound().settings().value();
    return found == null ? null : found.equipment();
  }

  /** The setup with its data sheets, or what is wrong with them. */
  public static SetupReading withSheets(SetupReading.Read setup, @Nullable EquipmentFolder folder) {
    List<Problem> problems = new ArrayList<>();
    if (names(foundEquipment(setup.setup()))) {
      problems.add(
          at(setup, AS_FOUND, Kind.NOT_FITTING, "equipment of the settings as found")
              .right("enter equipment once, beside the sections of the setup"));
    } else if (folder == null) {
      problems.add(
          at(setup, LIST, Kind.NO_EQUIPMENT_FOLDER, names(setup))
              .right(
                  "--equipment DIR, or a folder called equipment beside the setup file or above"
                      + " it"));
    }
    return folder == null || !problems.isEmpty()
        ? new SetupReading.Unreadable(setup.name(), problems)
        : folder.read(setup);
  }

  private static String names(SetupReading.Read setup) {
    return Source.shortened(
        setup
            .document()
            .find(LIST)
            .map(node -> setup.document().source().slice(node.span()))
            .orElse(""));
  }

  private SetupReading read(SetupReading.Read setup) {
    List<DataSheet> sheets = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    List<DataSheet> named = setup.setup().equipment().optional().orElse(List.of());
    for (int i = 0; i < named.size(); i++) {
      DataSheet sheet = named.get(i);
      Pointer place = LIST.child(i);
      SetupReading file = read.computeIfAbsent(sheet.file(), this::file);
      if (file instanceof SetupReading.Read one) {
        sheets.add(sheet.read(one.document(), one.setup()));
      } else if (file instanceof SetupReading.Unreadable wrong) {
        wrong.problems().forEach(problem -> problems.add(placed(setup, place, problem)));
      }
    }
    if (problems.isEmpty()) {
      problems.addAll(contradictions(setup, sheets));
    }
    return problems.isEmpty()
        ? new SetupReading.Read(setup.document(), setup.setup().with(sheets), setup.pasted())
        : new SetupReading.Unreadable(setup.name(), problems);
  }

  /** A problem with a file as a whole stands where the setup names it. */
  private static Problem placed(SetupReading.Read setup, Pointer place, Problem problem) {
    return problem.span() != null
        ? problem
        : at(setup, place, problem.kind(), problem.found())
            .right(problem.right())
            .near(problem.nearest());
  }

  private static Problem at(SetupReading.Read setup, Pointer place, Kind kind, String found) {
    Problem problem = Problem.of(setup.document().source(), kind, found, "");
    return setup.document().find(place).map(node -> problem.at(place, node.span())).orElse(problem);
  }

  private SetupReading file(String name) {
    String shown = folder.resolve(name).toString();
    try {
      Path within = folder.toRealPath();
      Path file = within.resolve(name).toRealPath();
      if (!file.startsWith(within)) {
        return refused(shown, Kind.OUTSIDE_FOLDER, "a link to " + file, "a file in " + folder);
      }
      return SetupReading.ofSheet(shown, file);
    } catch (IOException e) {
      String right = Files.isDirectory(folder) ? "a file in " + folder : "a folder " + folder;
      Problem problem = Problem.of(Source.named(shown), Kind.NO_EQUIPMENT_FILE, name, right);
      List<Problem> problems = List.of(problem.near(NearestName.of(name, names())));
      return new SetupReading.Unreadable(shown, problems);
    }
  }

  private static SetupReading refused(String file, Kind kind, String found, String right) {
    return new SetupReading.Unreadable(
        file, List.of(Problem.of(Source.named(file), kind, found, right)));
  }

  /** The files that there are, as a setup would name them; none where it cannot be read. */
  public List<String> names() {
    try (Stream<Path> files = Files.walk(folder, DEEPEST)) {
      return files
          .limit(MOST_NAMES)
          .filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .filter(name -> name.endsWith(".json") || name.endsWith(".jsonc"))
          .sorted()
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /** Values that two sheets give differently: neither is taken. */
  private static List<Problem> contradictions(SetupReading.Read setup, List<DataSheet> sheets) {
    Map<Pointer, DataSheet> first = new HashMap<>();
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < sheets.size(); i++) {
      DataSheet sheet = sheets.get(i);
      for (Pointer value : sheet.entered()) {
        DataSheet other = first.putIfAbsent(value, sheet);
        if (other != null && !says(other, value).equals(says(sheet, value))) {
          problems.add(
              at(
                      setup,
                      LIST.child(i),
                      Kind.SHEETS_DIFFER,
                      value.dotted() + " " + text(sheet, value))
                  .right("one of the two; " + other.file() + " gives " + text(other, value)));
        }
      }
    }
    return problems;
  }

  private static Object says(DataSheet sheet, Pointer value) {
    Object says = Change.entered(sheet.values(), value);
    return says == null ? "" : says;
  }

  private static String text(DataSheet sheet, Pointer value) {
    Node node = sheet.at(value).orElseThrow();
    return sheet.document().source().excerpt(node.span());
  }
}
