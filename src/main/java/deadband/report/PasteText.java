package deadband.report;

import deadband.paste.PasteReader;
import deadband.paste.Pasted;
import deadband.paste.Pasted.Ambiguous;
import deadband.paste.Pasted.Understood;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How a pasted text was understood, line by line: first what was taken, then what was not
 * understood, then what can mean several things, with the choices.
 */
public final class PasteText {

  private final Layout layout;
  private final StringBuilder out = new StringBuilder();

  private PasteText(Layout layout) {
    this.layout = layout;
  }

  /**
   * The lines of text, ending in a line end.
   *
   * @param file the name of the text
   */
  public static String of(String file, Pasted pasted, Layout layout) {
    PasteText text = new PasteText(layout);
    text.out.append(brief(file, pasted, layout));
    text.entries("understood", understood(pasted.understood()));
    List<String> not = new ArrayList<>();
    pasted.notUnderstood().forEach(one -> not.add("line " + one.line() + ": " + one.text()));
    if (pasted.otherLines() > 0) {
      not.add(Words.count(pasted.otherLines(), "other line") + " without values");
    }
    text.entries("not understood", not);
    text.entries("ambiguous", ambiguous(pasted.ambiguous()));
    return text.out.toString();
  }

  /** How much of it was understood, in one line. */
  public static String brief(String file, Pasted pasted, Layout layout) {
    return layout.wrapped("", file + ": " + counts(pasted));
  }

  private static String counts(Pasted pasted) {
    String values = Words.count(pasted.understood().size(), "value") + " understood";
    String read =
        !pasted.json()
            ? values
            : "settings found as JSON in the text"
                + (pasted.understood().isEmpty() ? "" : ", " + values + " beside it");
    return read
        + ", "
        + Words.count(pasted.notUnderstood().size(), "line")
        + " not understood, "
        + pasted.ambiguous().size()
        + " ambiguous";
  }

  private void entries(String label, List<String> entries) {
    for (int i = 0; i < entries.size(); i++) {
      out.append(layout.entry(i == 0 ? label : "", entries.get(i)));
    }
  }

  /** The values of a line together. */
  private static List<String> understood(List<Understood> all) {
    Map<Integer, String> byLine = new LinkedHashMap<>();
    for (Understood one : all) {
      byLine.merge(
          one.line(),
          "line " + one.line() + ": " + one.text() + " = " + value(one),
          (before, now) -> before + ", " + value(one));
    }
    return List.copyOf(byLine.values());
  }

  private static String value(Understood one) {
    String value = PasteReader.shown(one.value()).orElse("not known, left open");
    return one.pointer().dotted() + " " + (value + " " + one.unit()).strip();
  }

  /** Lines that contradict one another once, with all their places. */
  private static List<String> ambiguous(List<Ambiguous> all) {
    Map<List<String>, List<Ambiguous>> byChoices = new LinkedHashMap<>();
    all.forEach(one -> byChoices.computeIfAbsent(one.choices(), key -> new ArrayList<>()).add(one));
    List<String> entries = new ArrayList<>();
    byChoices.forEach((choices, lines) -> entries.add(ambiguous(choices, lines)));
    return entries;
  }

  private static String ambiguous(List<String> choices, List<Ambiguous> lines) {
    List<Integer> numbers = lines.stream().map(Ambiguous::line).distinct().toList();
    String where =
        numbers.size() == 1
            ? "line " + numbers.get(0) + ": " + lines.get(0).text()
            : "lines " + String.join(", ", numbers.stream().map(String::valueOf).toList());
    return where
        + ": "
        + (choices.size() == 1 ? "is it " : "is it one of ")
        + String.join(" | ", choices)
        + "?";
  }
}
