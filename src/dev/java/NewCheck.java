import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes the files of a new check from the templates in {@code src/dev/new-check}, every gap marked
 * TODO. Run it in the project's folder: {@code java src/dev/java/NewCheck.java TOPIC NAME}.
 */
final class NewCheck {

  private static final Path TEMPLATES = Path.of("src", "dev", "new-check");
  private static final Path TOPICS = Path.of("src/main/java/deadband/topics/Topics.java");
  private static final Path GOOD_HOME = Path.of("sample-configs/good/mill-cottage.json");

  private final String topic;
  private final String name;
  private final String fact;

  private NewCheck(String topic, String name) {
    this.topic = topic;
    this.name = name;
    this.fact =
        Arrays.stream(name.split("-"))
            .map(word -> Character.toUpperCase(word.charAt(0)) + word.substring(1))
            .collect(Collectors.joining());
  }

  public static void main(String[] words) {
    if (words.length != 2 || !words[1].matches("[a-z][a-z0-9]*(-[a-z0-9]+)+")) {
      System.err.println(
          "java src/dev/java/NewCheck.java TOPIC NAME, as in: grid pump-on-no-phase");
      System.exit(2);
    }
    try {
      new NewCheck(words[0], words[1]).make();
    } catch (IOException e) {
      System.err.println(e.getMessage());
      System.exit(1);
    }
  }

  private void make() throws IOException {
    Path rules = Path.of("rules", topic, topic + ".drl");
    if (!Files.exists(rules)) {
      throw new IOException("no topic " + topic + ": " + rules + " is not there");
    }
    Path samples = Path.of("sample-configs", "faulty");
    Map<Path, String> files = new LinkedHashMap<>();
    files.put(Path.of("rules", topic, name + ".md"), filled("page.md"));
    files.put(TOPICS.resolveSibling(topic).resolve(fact + ".java"), filled("Fact.java"));
    files.put(
        samples.resolve(name + ".json"),
        "// TODO what is wrong here, and a name of its own.\n" + Files.readString(GOOD_HOME));
    files.put(samples.resolve(name + ".expected"), filled("sample.expected"));
    refuseWhatIsThere(files.keySet());
    for (Map.Entry<Path, String> file : files.entrySet()) {
      System.out.println(Files.writeString(file.getKey(), file.getValue()));
    }
    System.out.println(insert(rules, "^import .*;\n", "import deadband.topics.%s.%s;\n"));
    Files.writeString(rules, Files.readString(rules) + "\n" + filled("rule.drl"));
    insert(TOPICS, "^import deadband\\.topics.*;\n", "import deadband.topics.%s.%s;\n");
    System.out.println(insert(TOPICS, "^ +DAYS,\n", "          Derivation.held(%2$s::derive),\n"));
    System.out.println(
        "Fill every TODO, then: mvn spotless:apply; mvn -P bless test; mvn -B verify");
  }

  /** Before anything is made: a check of that name in any topic, or one of the files. */
  private void refuseWhatIsThere(Set<Path> files) throws IOException {
    List<Path> there = new ArrayList<>();
    try (Stream<Path> pages = Files.walk(Path.of("rules"))) {
      pages.filter(page -> page.endsWith(name + ".md")).forEach(there::add);
    }
    files.stream().filter(Files::exists).filter(file -> !there.contains(file)).forEach(there::add);
    if (!there.isEmpty()) {
      throw new IOException("nothing was made: " + there.get(0) + " is there already");
    }
  }

  private String filled(String template) throws IOException {
    return Files.readString(TEMPLATES.resolve(template))
        .replace("@topic@", topic)
        .replace("@name@", name)
        .replace("@fact@", fact);
  }

  /** Puts a line before the first that matches. */
  private Path insert(Path file, String before, String line) throws IOException {
    String text = Files.readString(file);
    Matcher place = Pattern.compile(before, Pattern.MULTILINE).matcher(text);
    if (!place.find()) {
      throw new IOException(file + " has no line like " + before);
    }
    String inserted = line.formatted(topic, fact);
    return Files.writeString(
        file, text.substring(0, place.start()) + inserted + text.substring(place.start()));
  }
}
