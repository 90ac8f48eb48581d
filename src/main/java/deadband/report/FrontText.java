package deadband.report;

import deadband.remedy.BestSettings.Front;
import deadband.remedy.Option;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The front of a search for the best settings, as a table to read. */
public final class FrontText {

  private static final int MOST_ROWS = 8;
  private static final int CHANGES_AT = 45;

  private FrontText() {}

  /**
   * The table, ending in a line end.
   *
   * @param start what the settings are called from which the search began
   */
  public static String of(Front front, String start, Layout layout) {
    StringBuilder text = new StringBuilder();
    String looked =
        "best over a year of built-in days, "
            + front.looked()
            + " sets of settings looked at"
            + (front.stopped() ? ", stopped before the end" : "");
    text.append(layout.wrapped("", looked)).append('\n');
    text.append(
        String.format(
                Locale.ROOT,
                "%-12s%10s%10s%10s   %s",
                "",
                "sun, kWh",
                "starts",
                "bought",
                "changes")
            .stripTrailing());
    text.append(String.format(Locale.ROOT, "\n%-12s%10s%10s%10s\n", "", "of heat", "", "kWh"));
    row(text, layout, start, front.asItIs());
    List<Option> shown = thinned(front.front());
    for (int place = 0; place < shown.size(); place++) {
      row(text, layout, "" + (place + 1), shown.get(place));
    }
    if (shown.isEmpty()) {
      text.append("no settings without a finding were met; deadband propose FILE first\n");
    }
    return text.toString();
  }

  /** Both ends and an even choice between. */
  private static List<Option> thinned(List<Option> front) {
    if (front.size() <= MOST_ROWS) {
      return front;
    }
    List<Option> thinned = new ArrayList<>();
    for (int row = 0; row < MOST_ROWS; row++) {
      thinned.add(front.get(row * (front.size() - 1) / (MOST_ROWS - 1)));
    }
    return thinned;
  }

  private static void row(StringBuilder text, Layout layout, String label, Option option) {
    String numbers =
        String.format(
            Locale.ROOT,
            "%-12s%10.0f%10d%10.0f",
            label,
            option.solarHeat_kWh(),
            option.starts(),
            option.import_kWh());
    String changes =
        option.changes().stream()
            .map(change -> change.pointer().dotted() + " " + Words.value(change.to()))
            .collect(Collectors.joining(", "));
    text.append(
        changes.isEmpty()
            ? numbers + "\n"
            : layout.wrapped(Layout.pad(numbers, CHANGES_AT), changes));
  }
}
