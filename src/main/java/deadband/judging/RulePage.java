package deadband.judging;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The page of a check in the rule book: the one place where its words stand.
 *
 * @param text the whole page, Markdown
 * @param says the headline of its findings
 * @param sections text under each second-level heading, in order
 */
public record RulePage(String text, String says, Map<String, String> sections) {

  /** Heading of the section whose first sentence goes with every finding. */
  public static final String WHY = "Why it matters";

  /** Heading of the section that says what to do about a finding. */
  private static final String CURE = "Cure";

  /** Heading of the section that holds the sentence into which the numbers of a finding go. */
  public static final String IN_NUMBERS = "In numbers";

  /** Heading of the section that holds the sentence about what a day run shows. */
  public static final String EXAMPLE_DAYS = "Example days";

  /** Headings of the sections whose cases test the check. */
  private static final Set<String> TESTS =
      Set.of("Fires", "Stays silent", "Does not apply", "At the edge", "Not judged");

  private static final Pattern QUANTITY = Pattern.compile("\\{([^}]+)}");

  /** The pages that are built in, as they were asked for: each finding quotes its own. */
  private static final Map<String, Optional<RulePage>> BUILT_IN = new ConcurrentHashMap<>();

  /**
   * The page of a check.
   *
   * @throws IllegalStateException where the check has none; a test keeps that from happening
   */
  public static RulePage of(Check check) {
    return find(check)
        .orElseThrow(() -> new IllegalStateException("no page for the check " + check.name()));
  }

  /** The page of a check; empty where it has none. */
  public static Optional<RulePage> find(Check check) {
    RulePage house = check.housePage();
    return house == null
        ? BUILT_IN.computeIfAbsent(
            "rules/" + check.topic() + "/" + check.name() + ".md", RulePage::builtIn)
        : Optional.of(house);
  }

  /** The headline of the findings of a check, read with its page only where no table holds it. */
  public static String headline(Check check) {
    CheckIndex.Entry entry = check.isHouse() ? null : CheckIndex.entries().get(check.name());
    return entry == null ? of(check).says() : entry.headline();
  }

  private static Optional<RulePage> builtIn(String resource) {
    try (InputStream page = RulePage.class.getResourceAsStream(resource)) {
      return page == null
          ? Optional.empty()
          : Optional.of(parse(new String(page.readAllBytes(), StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException("the page " + resource + " cannot be read", e);
    }
  }

  /** The page of a house rule, made of what its rule says of itself. */
  static RulePage ofHouse(String name, String title, String why) {
    return parse("# " + name + "\n\n" + title + "\n\n## " + WHY + "\n\n" + why + "\n");
  }

  /** Takes a page apart by its headings; headings inside fenced blocks are not headings. */
  public static RulePage parse(String text) {
    Map<String, String> sections = new LinkedHashMap<>();
    StringBuilder section = new StringBuilder();
    String heading = "";
    boolean fenced = false;
    for (String line : text.lines().toList()) {
      fenced ^= line.startsWith("```");
      if (!fenced && line.startsWith("## ")) {
        sections.put(heading, section.toString().strip());
        heading = line.substring(3).strip();
        section.setLength(0);
      } else if (fenced || !line.startsWith("# ")) {
        section.append(line).append('\n');
      }
    }
    sections.put(heading, section.toString().strip());
    String says = headline(sections.getOrDefault("", ""));
    return new RulePage(text, says, Collections.unmodifiableMap(sections));
  }

  private static String headline(String paragraph) {
    String sentence = unwrapped(paragraph);
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }

  /** The sections that explain the check, by heading and in order. */
  public Map<String, String> explanation() {
    Map<String, String> explanation = new LinkedHashMap<>(sections);
    explanation.keySet().removeAll(TESTS);
    explanation.remove("");
    return explanation;
  }

  /** One plain sentence on why it matters; empty where the page does not say. */
  public String why() {
    return firstSentence(WHY);
  }

  /** One plain sentence on what to do; empty where the page does not say. */
  public String cure() {
    return firstSentence(CURE);
  }

  private String firstSentence(String section) {
    String all = unwrapped(sections.getOrDefault(section, ""));
    int end = all.indexOf(". ");
    return end < 0 ? all : all.substring(0, end + 1);
  }

  /** The sentence into which the numbers of a finding go; empty where the page has none. */
  public String inNumbers() {
    return unwrapped(sections.getOrDefault(IN_NUMBERS, ""));
  }

  /** The sentence about what a day run shows; empty where the page has none. */
  public String aDay() {
    return unwrapped(sections.getOrDefault(EXAMPLE_DAYS, ""));
  }

  /** The quantities of the day runs that the page quotes. */
  Set<String> quotedOfDays() {
    return QUANTITY
        .matcher(aDay())
        .results()
        .map(result -> result.group(1))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static String unwrapped(String paragraphs) {
    String first = paragraphs.split("\n\n", 2)[0];
    return String.join(" ", first.lines().map(String::strip).toList());
  }
}
