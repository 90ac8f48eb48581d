package deadband.report;

import static deadband.report.JsonForm.TEXT;

import deadband.facts.Condition;
import deadband.facts.Says;
import deadband.judging.Check;
import deadband.judging.RulePage;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The list of checks.
 *
 * @param checks by name
 */
public record CheckList(List<Check> checks) {

  /** Topic by topic, the gravest class first. */
  public String text(Layout layout) {
    StringBuilder text = new StringBuilder();
    String topic = "";
    for (Check check : byTopic()) {
      if (!check.topic().equals(topic)) {
        topic = check.topic();
        text.append(text.isEmpty() ? "" : "\n").append(topic).append('\n');
      }
      text.append(
          layout.wrapped(
              Layout.pad("  " + check.consequence().word(), Layout.HEADLINE), check.name()));
      text.append(layout.wrapped(" ".repeat(Layout.HEADLINE), RulePage.headline(check)));
    }
    return text.toString();
  }

  private List<Check> byTopic() {
    return checks.stream()
        .sorted(
            Comparator.comparing(Check::topic)
                .thenComparing(Check::consequence)
                .thenComparing(Check::name))
        .toList();
  }

  /** As a page of Markdown, a table a topic, with links to the pages of the checks. */
  public String markdown(String edition) {
    StringBuilder text = new StringBuilder();
    text.append("# The rule book\n\n")
        .append("Edition ")
        .append(edition)
        .append(", ")
        .append(Words.count(checks.size(), "check"))
        .append(". Written by `deadband checks --format markdown`.\n\n")
        .append(
            "What all pages share is said once: [conventions](CONVENTIONS.md) on rounding, on\n")
        .append("missing values and defaults, and on which of two values governs.\n");
    String topic = "";
    for (Check check : byTopic()) {
      if (!check.topic().equals(topic)) {
        topic = check.topic();
        text.append("\n## ")
            .append(topic)
            .append("\n\n| class | check | what it finds |\n|---|---|---|\n");
      }
      text.append(row(check));
    }
    return text.append(facts()).toString();
  }

  /** The conditions that rules join, for whoever writes one. */
  private String facts() {
    Map<Class<? extends Condition>, Long> joined =
        checks.stream()
            .flatMap(check -> check.conditions().stream())
            .collect(
                Collectors.groupingBy(
                    fact -> fact,
                    () -> new TreeMap<>(Comparator.comparing(Class::getSimpleName)),
                    Collectors.counting()));
    StringBuilder text = new StringBuilder();
    text.append("\n## Facts that rules join\n\n")
        .append(
            "A rule says `yes` or `no` of each; what is open is neither surely, and both at"
                + " best.\n\n")
        .append("| fact | what it says | checks | import |\n|---|---|---|---|\n");
    joined.forEach(
        (fact, count) ->
            text.append("| ")
                .append(fact.getSimpleName())
                .append(" | ")
                .append(fact.getAnnotation(Says.class).value())
                .append(" | ")
                .append(count)
                .append(" | `")
                .append(fact.getEnclosingClass().getName())
                .append(".*` |\n"));
    return text.toString();
  }

  private static String row(Check check) {
    String former =
        check.formerNames().isEmpty()
            ? ""
            : " (formerly " + String.join(", ", check.formerNames()) + ")";
    return "| "
        + check.consequence().word()
        + " | ["
        + check.name()
        + "]("
        + check.topic()
        + "/"
        + check.name()
        + ".md)"
        + former
        + " | "
        + RulePage.headline(check)
        + " |\n";
  }

  /** As a JSON array, by name. */
  public String json() {
    return new JsonForm.Members<Check>()
        .and("check", TEXT, Check::name)
        .and("topic", TEXT, Check::topic)
        .and("class", TEXT, check -> check.consequence().word())
        .and("essential", JsonForm.FLAG, Check::essential)
        .and("headline", TEXT, RulePage::headline)
        .form()
        .list()
        .written(checks, true);
  }
}
