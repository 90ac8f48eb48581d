package deadband.report;

import static deadband.report.JsonForm.TEXT;

import deadband.judging.Check;
import deadband.judging.RulePage;
import java.util.Comparator;
import java.util.List;

/**
 * The list of checks.
 *
 * @param checks by name
 */
public record CheckList(List<Check> checks) {

  private static final JsonForm<List<Check>> FORM =
      new JsonForm.Members<Check>()
          .and("check", TEXT, Check::name)
          .and("topic", TEXT, Check::topic)
          .and("class", TEXT, check -> check.consequence().word())
          .and("essential", JsonForm.FLAG, Check::essential)
          .and("headline", TEXT, check -> RulePage.of(check).says())
          .form()
          .list();

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
      text.append(layout.wrapped(" ".repeat(Layout.HEADLINE), RulePage.of(check).says()));
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
        + RulePage.of(check).says()
        + " |\n";
  }

  /** As a JSON array, by name. */
  public String json() {
    return FORM.written(checks, true);
  }
}
