import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

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
    List<Path> made = new ArrayList<>();
    made.add(create(Path.of("rules", topic, name + ".md"), filled("page.md")));
    made.add(create(TOPICS.resolveSibling(topic).resolve(fact + ".java"), filled("Fact.java")));
    Path samples = Path.of("sample-configs", "faulty");
    String home =
        "// TODO what is wrong here, and a name of its own.\n" + Files.readString(GOOD_HOME);
    made.add(create(samples.resolve(name + ".json"), home));
    made.add(create(samples.resolve(name + ".expected"), filled("sample.expected")));
    made.add(insert(rules, "^import .*;\n", "import deadband.topics.%s.%s;\n"));
    Files.writeString(rules, Files.readString(rules) + "\n" + filled("rule.drl"));
    insert(TOPICS, "^import .*;\n", "import deadband.topics.%s.%s;\n");
    made.add(insert(TOPICS, "^ +return facts;\n", "    %2$s.derive(setup, limits, facts);\n"));
    made.forEach(System.out::println);
    System.out.println("Fill every TODO, then: mvn -P bless test; mvn verify");
  }

  private String filled(String template) throws IOException {
    return Files.readString(TEMPLATES.resolve(template))
        .replace("@topic@", topic)
        .replace("@name@", name)
        .replace("@fact@", fact);
  }

  private static Path create(Path file, String text) throws IOException {
    if (Files.exists(file)) {
      throw new IOException(file + " is there already");
    }
    return Files.writeString(file, text);
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
