package deadband.report;

import java.util.List;
import java.util.Locale;

/**
 * The record of a job as Markdown, for mail and issue trackers: the same parts, without pictures.
 */
public final class RecordMarkdown {

  private final StringBuilder text = new StringBuilder();

  private RecordMarkdown() {}

  /** The text, ending in a line end. */
  public static String of(JobRecord job) {
    RecordMarkdown writer = new RecordMarkdown();
    writer.write(RecordParts.of(job));
    return writer.text.toString();
  }

  private void write(RecordModel model) {
    text.append("# ").append(MarkdownText.of(model.title())).append("\n\n");
    text.append("**").append(model.verdict().toUpperCase(Locale.ROOT)).append("**\n\n");
    item("File", model.file());
    item("Checks", model.counts());
    if (model.hasChanges()) {
      item("With the settings proposed", model.after());
    }
    if (model.hasSafety()) {
      section("Safety", model.safety());
    }
    findings(model);
    changes(model);
    heading("Work on site, apart from settings");
    model.work().forEach(work -> item(work.rank() + "", work.headline() + ": " + work.what()));
    none(model.work());
    heading("Open questions");
    model.questions().forEach(question -> item(question.line(), question.checks()));
    none(model.questions());
    temperatures(model);
    if (model.hasDays()) {
      section("Example days", model.dayLines());
      model.days().stream()
          .filter(day -> !day.difference().isEmpty())
          .forEach(day -> item(day.title() + " with the settings proposed", day.difference()));
    }
    basis(model);
    signOff(model);
  }

  private void heading(String heading) {
    text.append("\n## ").append(heading).append("\n\n");
  }

  private void section(String heading, List<String> items) {
    heading(heading);
    items.forEach(item -> text.append("- ").append(MarkdownText.of(item)).append('\n'));
  }

  private void item(String label, String content) {
    text.append("- **").append(MarkdownText.of(label)).append("**: ");
    text.append(MarkdownText.of(content)).append('\n');
  }

  private void none(List<?> items) {
    if (items.isEmpty()) {
      text.append("None.\n");
    }
  }

  private void row(String... cells) {
    text.append('|');
    for (String cell : cells) {
      text.append(' ').append(MarkdownText.of(cell)).append(" |");
    }
    text.append('\n');
  }

  private void header(String... cells) {
    row(cells);
    text.append("|").append("---|".repeat(cells.length)).append('\n');
  }

  private void findings(RecordModel model) {
    heading("Findings");
    none(model.findings());
    for (RecordModel.Found found : model.findings()) {
      text.append("\n### ").append(found.rank()).append(' ').append(found.kind()).append(": ");
      text.append(MarkdownText.of(found.headline())).append("\n\n");
      text.append('`').append(found.check()).append("`\n\n");
      found.lines().forEach(line -> item(line.label(), line.content()));
      effect(found.effect());
    }
  }

  private void effect(List<Quantity> effect) {
    if (!effect.isEmpty()) {
      text.append('\n');
      header("simulated", "as entered", "with the change");
      effect.forEach(each -> row(each.label(), each.before(), each.after()));
    }
  }

  private void changes(RecordModel model) {
    heading("Settings proposed");
    if (!model.hasChanges()) {
      text.append(model.noChange()).append('\n');
      return;
    }
    header("setting", "name in the file", "line", "entered", "proposed");
    model
        .changes()
        .forEach(each -> row(each.means(), each.setting(), each.line(), each.from(), each.to()));
    text.append("\nTried together: ").append(MarkdownText.of(model.tried())).append(".\n");
    effect(model.effect());
  }

  private void temperatures(RecordModel model) {
    heading("Tank temperatures");
    header("device or limit", "temperature", "kind", "value in the file, or source");
    model
        .rungs()
        .forEach(rung -> row(rung.device(), rung.temperature(), rung.kind(), rung.source()));
  }

  private void basis(RecordModel model) {
    if (model.hasNotes()) {
      section("Notes", model.notes());
    }
    heading("Assumed");
    none(model.assumed());
    model.assumed().forEach(each -> item(each.setting(), each.value() + ", " + each.reason()));
    if (model.hasOverrides()) {
      section("Limits set by the site", model.overrides());
    }
    heading("Limits used");
    header("limit", "value", "source", "how known", "name");
    model
        .limits()
        .forEach(each -> row(each.what(), each.value(), each.source(), each.known(), each.name()));
  }

  private void signOff(RecordModel model) {
    heading("Sign-off");
    for (RecordModel.Accepted each : model.accepted()) {
      item(
          "accepted: " + each.check(),
          each.reason() + ", by " + each.by() + ", on " + each.on() + ", until " + each.until());
    }
    header("", "name", "signature", "date");
    row("Prepared by", "", "", "");
    row("Reviewed by", "", "", "");
    RecordModel.Made made = model.made();
    text.append("\nAs of ").append(made.asOf()).append(", rule book edition ");
    text.append(made.edition()).append(", Deadband ").append(made.tool());
    text.append(". SHA-256 of the file: ").append(made.sha256()).append('\n');
  }
}
