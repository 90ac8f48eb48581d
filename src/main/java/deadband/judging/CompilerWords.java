package deadband.judging;

import deadband.document.NearestName;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import deadband.facts.Case;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the rule compiler says of a house rule, in plain words and with its place. */
final class CompilerWords {

  private static final String FORM =
      "a rule like those of the rule book: when, facts and a comparison; then,"
          + " found( kcontext, $case );";

  /** What the parser puts before its sentence. */
  private static final Pattern PARSER = Pattern.compile("^\\[ERR \\d+] (Line \\d+:-?\\d+ )?");

  private static final Pattern EXPRESSION =
      Pattern.compile("^Unable to Analyse Expression (.*?):\\n.*", Pattern.DOTALL);

  private static final Pattern MEMBER =
      Pattern.compile("deadband\\.[\\w.]+\\.(\\w+)\\.(\\w+)\\(\\)");
  private static final Pattern TYPE = Pattern.compile("^Unable to resolve ObjectType '(.*)'");
  private static final Pattern IMPORT = Pattern.compile("^Error importing : '(.*)'");

  /** The class into which the compiler puts a rule. */
  private static final Pattern OUR_OWN = Pattern.compile(" for the type Rule_\\S+");

  private final Map<String, Class<? extends Case>> cases = new TreeMap<>();

  private final Set<String> facts = new TreeSet<>();

  /** Words about rules that look at the facts of these checks. */
  CompilerWords(Collection<Check> checks) {
    for (Check check : checks) {
      cases.put(check.caseType().getSimpleName(), check.caseType());
      check.conditions().forEach(condition -> facts.add(condition.getSimpleName()));
    }
    facts.addAll(cases.keySet());
  }

  /**
   * A problem.
   *
   * @param line the line that the compiler names, 0 where it names none
   */
  Problem problem(Source source, String message, int line) {
    Matcher expression = EXPRESSION.matcher(message);
    if (expression.matches()) {
      return expression(source, message, expression.group(1), line);
    }
    Matcher type = TYPE.matcher(message);
    if (type.find()) {
      return at(line, type.group(1), unknownCase(source, type.group(1)));
    }
    Matcher imported = IMPORT.matcher(message);
    if (imported.find()) {
      String name = imported.group(1);
      return at(line, name, unknownCase(source, name.substring(name.lastIndexOf('.') + 1)));
    }
    return at(line, "", Problem.of(source, Kind.NOT_A_RULE, plain(message), FORM));
  }

  private Problem unknownCase(Source source, String name) {
    return Problem.of(source, Kind.NOT_A_RULE, name, "a fact, imported by its name")
        .near(NearestName.of(name, facts));
  }

  private Problem expression(Source source, String message, String expression, int line) {
    Matcher member = MEMBER.matcher(message);
    if (!member.find() || !cases.containsKey(member.group(1))) {
      return at(line, expression, Problem.of(source, Kind.NOT_A_RULE, expression, FORM));
    }
    List<String> parts = parts(cases.get(member.group(1)));
    String name = member.group(2);
    Problem problem =
        Problem.of(
                source,
                Kind.NOT_A_RULE,
                name,
                "what " + member.group(1) + " holds: " + String.join(", ", parts))
            .near(NearestName.of(name, parts));
    int start = source.text().indexOf(expression);
    int within = expression.indexOf(name);
    return start < 0 || within < 0
        ? at(line, expression, problem)
        : problem.at(new Span(start + within, start + within + name.length()));
  }

  private static List<String> parts(Class<? extends Case> type) {
    return Optional.ofNullable(type.getRecordComponents()).stream()
        .flatMap(Arrays::stream)
        .map(RecordComponent::getName)
        .filter(name -> !name.equals("evidence"))
        .toList();
  }

  /** At a word of that line or, where no line is named, of the file; else at the line. */
  private static Problem at(int line, String word, Problem problem) {
    Source source = problem.source();
    boolean known = line > 0 && line <= source.lines();
    int from = known ? source.lineSpan(line).start() : 0;
    int found = word.isEmpty() ? -1 : source.text().indexOf(word, from);
    if (found >= 0) {
      return problem.at(new Span(found, found + word.length()));
    }
    return known ? problem.at(ink(source, source.lineSpan(line))) : problem;
  }

  /** A line without the blanks before its first letter. */
  private static Span ink(Source source, Span line) {
    int start = line.start();
    while (start < line.end() && Character.isWhitespace(source.text().charAt(start))) {
      start++;
    }
    return new Span(start, line.end());
  }

  private static String plain(String message) {
    String said = PARSER.matcher(message).replaceFirst("").replace("Rule Compilation error ", "");
    return OUR_OWN.matcher(said).replaceAll("").strip().replaceAll("\\s+", " ");
  }
}
