package deadband.cli;

import static java.util.regex.Pattern.CASE_INSENSITIVE;
import static java.util.regex.Pattern.MULTILINE;
import static org.assertj.core.api.Assertions.assertThat;

import deadband.judging.Setups;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever is printed is plain trade English: words that the trade does not use, figures of speech
 * and machines that act like people stay out of pages, reports, messages, help and schemas.
 */
class WordsTest {

  /**
   * A word that is not printed.
   *
   * @param found what finds it; words joined by a hyphen are names of checks and are let through
   * @param instead what to write
   * @param example text in which it must be found
   * @param allowed exact uses that mean something else, each with its reason
   */
  private record Word(String found, String instead, String example, List<Use> allowed) {

    private static Word of(String found, String instead, String example, Use... allowed) {
      return new Word(found, instead, example, List.of(allowed));
    }

    List<String> in(String text) {
      String rest = text;
      for (Use use : allowed) {
        rest =
            Pattern.compile(use.exact(), Pattern.LITERAL | CASE_INSENSITIVE)
                .matcher(rest)
                .replaceAll("~");
      }
      List<String> lines = new ArrayList<>();
      Matcher matcher =
          Pattern.compile("(?<![-\\w])(?:" + found + ")(?![-\\w])", CASE_INSENSITIVE | MULTILINE)
              .matcher(rest);
      while (matcher.find()) {
        int start = Math.max(0, matcher.start() - 40);
        int end = Math.min(rest.length(), matcher.end() + 40);
        lines.add(
            "\"" + rest.substring(start, end).replaceAll("\\s+", " ") + "\": write " + instead);
      }
      return lines;
    }
  }

  /**
   * A use that stays.
   *
   * @param exact the words
   * @param why what they mean there
   */
  private record Use(String exact, String why) {}

  private static final List<Word> WORDS =
      List.of(
          Word.of("(un)?told|tells?", "entered, reported, says", "a stop that is not told"),
          Word.of("ask why", "check", "ask why"),
          Word.of("asks?|asked|asking", "requires, requests, check", "the cycle asks for 60 °C"),
          Word.of("hears?|heard|unheard|believes?", "detects, takes as", "the call goes unheard"),
          Word.of(
              "suns?",
              "PV energy, surplus",
              "the sun cannot reach it",
              new Use("position of the sun", "the sun in the sky"),
              new Use("sun's angle", "the sun in the sky")),
          Word.of("(?:kWh|}) kept|throws? away", "self-consumed, into the tank", "3 kWh kept"),
          Word.of("lets? go|let go|sags?", "drops out, opens", "the relay lets go"),
          Word.of("calls \\{[^}]*}|[0-9]+ calls", "relay closures", "clear: 12 calls"),
          Word.of(
              "hunts?|hunted|hunting",
              "short-cycles",
              "it hunts at any surplus",
              new Use("hunting between start and stop", "the cause, said once")),
          Word.of(
              "draws?|drawn|drew",
              "power input; draw-off for water",
              "the heat pump's draw",
              new Use("drawn off", "water taken at an outlet"),
              new Use("draws the day", "makes a picture")),
          Word.of("reckon\\w*", "calculated", "cautiously reckoned"),
          Word.of("gaps filled", "use --fill-gaps", "can be run, have gaps filled"),
          Word.of("swings?", "differential", "widen the swing"),
          Word.of(
              "tops?",
              "maximum tank temperature",
              "the top the sun may reach",
              new Use("at the top", "a place in the tank"),
              new Use("tank top", "a place in the tank"),
              new Use("top of the tank", "a place in the tank"),
              new Use("top of a tank", "a place in the tank"),
              new Use("on top", "in addition")),
          Word.of("least", "minimum", "the least draw", new Use("at least", "not less than")),
          Word.of(
              "most",
              "maximum",
              "the most it may draw",
              new Use("at most", "not more than"),
              new Use("most of", "the larger part"),
              new Use("in most", "the larger part"),
              new Use("most days", "the larger part"),
              new Use("most sunny", "the larger part"),
              new Use("most compressor runs", "the larger part"),
              new Use("most likely", "superlative of likely"),
              new Use("diverts most", "superlative of much"),
              new Use("most heat", "superlative of much")),
          Word.of(
              "wrong way (?!round)|faces", "the wrong way round", "a CT that faces the wrong way"),
          Word.of("house side|behind|ahead of", "upstream, downstream", "on the house side of it"),
          Word.of("bare contacts?", "volt-free contact", "a bare contact"),
          Word.of("hands|meets?", "second source of supply", "hands in the box can meet mains"),
          Word.of(
              "tames?|bakes?|breakfast|chases?|whisker|vain|nobody|somebody|whoever",
              "what happens",
              "water it cannot tame"),
          Word.of("infect(s|ed)?", "Legionella risk", "whoever showers can be infected"),
          Word.of("oil film|inrush", "wears the compressor", "every start costs oil film"),
          Word.of("mend(s|ed|ing)?", "correct, fix", "mend these first"),
          Word.of("how the house|house is built", "project structure", "how the house is built"),
          Word.of("take care", "safety", "take care   Hot water scalds"),
          Word.of(
              "^ {3}(so|set|a day|basis|with it)(?= {2})",
              "effect, settings, example days, method, also cleared by this change",
              "   so       it short-cycles"),
          Word.of(
              "(?<![\\d.,])1 (calls|closures|days|starts|runs|checks|findings|hours|files|values)",
              "the singular",
              "1 calls"));

  /** Files whose owners have not reworded them yet; they are taken off as they are. */
  private static final Set<String> NOT_YET =
      Set.of(
          "src/main/java/deadband/document/Problem.java",
          "src/main/java/deadband/reading/DayHeader.java",
          "src/main/java/deadband/reading/Problems.java",
          "src/main/java/deadband/reading/ProfileReader.java",
          "src/main/java/deadband/reading/SectionReader.java",
          "src/main/java/deadband/reading/Timeline.java");

  static Stream<Word> words() {
    return WORDS.stream();
  }

  @ParameterizedTest
  @MethodSource("words")
  void aWordIsFoundWhereItIsPutIn(Word word) {
    assertThat(word.in(word.example())).isNotEmpty();
    assertThat(word.in("A sentence.\n" + word.example() + ", and more.")).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("words")
  void anAllowedUseIsLetThrough(Word word) {
    word.allowed()
        .forEach(use -> assertThat(word.in("a sentence with " + use.exact() + ".")).isEmpty());
    assertThat(word.in("disinfection-needs-sun, gap-below-heat-pump-draw, draw-off, top-up"))
        .isEmpty();
  }

  @Test
  void pagesAreInWordsOfTheTrade() {
    List<String> found = new ArrayList<>();
    Setups.files("rules", ".md").forEach(page -> found.addAll(in(page, prose(Setups.text(page)))));
    assertThat(found).isEmpty();
  }

  @Test
  void guidesAreInWordsOfTheTrade() {
    List<String> found = new ArrayList<>();
    for (String guide : List.of("README.md", "DEVELOPERS.md")) {
      found.addAll(in(Path.of(guide), withoutCode(Setups.text(Path.of(guide)))));
    }
    assertThat(found).isEmpty();
  }

  /** Quantities, methods, messages, descriptions and labels are literals of the sources. */
  @Test
  void literalsAreInWordsOfTheTrade() {
    List<String> found = new ArrayList<>();
    Setups.files("src/main/java", ".java")
        .forEach(file -> found.addAll(in(file, literals(Setups.text(file)))));
    assertThat(found).isEmpty();
  }

  @Test
  void reportsAreInWordsOfTheTrade() {
    List<String> found = new ArrayList<>();
    for (String ending : List.of(".text", ".json", ".jsonl")) {
      Setups.files("src/test/resources/deadband/cli", ending)
          .forEach(file -> found.addAll(in(file, Setups.text(file))));
    }
    Setups.files("sample-configs", ".json")
        .forEach(file -> found.addAll(in(file, comments(Setups.text(file)))));
    assertThat(found).isEmpty();
  }

  @Test
  void helpAndSchemasAreInWordsOfTheTrade() {
    List<String> found = new ArrayList<>();
    for (String command :
        List.of(
            "new",
            "check",
            "propose",
            "simulate",
            "explain",
            "checks",
            "schema",
            "completion",
            "help")) {
      found.addAll(in(Path.of("help of " + command), CommandLineRun.of(command, "--help").out()));
    }
    found.addAll(in(Path.of("help"), CommandLineRun.of("--help").out()));
    found.addAll(in(Path.of("checks"), CommandLineRun.of("checks").out()));
    found.addAll(in(Path.of("schema"), descriptions(CommandLineRun.of("schema").out())));
    assertThat(found).isEmpty();
  }

  private static List<String> in(Path file, String text) {
    String name = file.toString().replace('\\', '/');
    if (NOT_YET.contains(name)) {
      return List.of();
    }
    return WORDS.stream()
        .flatMap(word -> word.in(text).stream())
        .map(found -> name + ": " + found)
        .toList();
  }

  /** What explain shows: a page without its own examples and without names of the setup file. */
  private static String prose(String page) {
    int examples = page.indexOf("\n## Fires");
    return withoutCode(examples < 0 ? page : page.substring(0, examples));
  }

  private static String withoutCode(String text) {
    return text.replaceAll("(?s)```.*?```", "").replaceAll("`[^`\n]*`", "~");
  }

  private static String literals(String source) {
    String code =
        source
            .replaceAll("(?s)/\\*.*?\\*/", "")
            .replaceAll("(?m)^\\s*//.*$", "")
            .replaceAll("\"\\s*\\+\\s*\"", "");
    StringBuilder text = new StringBuilder();
    Matcher literal = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"").matcher(code);
    while (literal.find()) {
      text.append(literal.group(1)).append('\n');
    }
    return text.toString();
  }

  private static String comments(String setup) {
    StringBuilder text = new StringBuilder();
    setup
        .lines()
        .filter(line -> line.contains("//"))
        .forEach(line -> text.append(line).append('\n'));
    return text.toString();
  }

  private static String descriptions(String schema) {
    StringBuilder text = new StringBuilder();
    schema
        .lines()
        .filter(line -> line.contains("\"description\""))
        .forEach(line -> text.append(line).append('\n'));
    return text.toString();
  }
}
