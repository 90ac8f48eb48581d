package deadband.report;

import deadband.remedy.BestSettings.Front;
import deadband.remedy.Option;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The front of a search for the best settings, as a table to read. */
public final class FrontText {

  private static final int CHANGES_AT = 45;

  private FrontText() {}

  /** The table, ending in a line end. */
  public static String of(Front front, Layout layout) {
    StringBuilder text = new StringBuilder();
    String looked =
        "best over a year of built-in days: "
            + front.looked()
            + " settings tried"
            + (front.stopped() ? ", stopped before the end" : "");
    text.append(layout.wrapped("", looked)).append('\n');
    text.append(
        String.format(
                Locale.ROOT,
                "%-12s%10s%10s%10s   %s",
                "",
                "heat from",
                "starts",
                "import",
                "changes")
            .stripTrailing());
    text.append(String.format(Locale.ROOT, "\n%-12s%10s%10s%10s\n", "", "PV, kWh", "", "kWh"));
    row(text, layout, "as it is", front.asItIs());
    List<Option> shown = front.rows();
    for (int place = 0; place < shown.size(); place++) {
      row(text, layout, "" + (place + 1), shown.get(place));
    }
    if (!front.barredBy().isEmpty()) {
      text.append(
          layout.wrapped(
              "",
              "no settings are proposed while a hazard cannot be judged: "
                  + String.join(", ", front.barredBy())));
    } else if (shown.isEmpty()) {
      text.append("no settings without a fault were found; correct the findings first\n");
    }
    return text.toString();
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
