package deadband.report;

import deadband.document.Pointer;
import deadband.setup.Question;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A setup file to be filled in: the values on which most depends, in the order in which a site is
 * walked, each with its question, unit, range and place to look. No value is filled in.
 */
public final class StarterFile {

  private static final String BATTERY_VALUES =
      "capacity_kWh power_kW chargesBefore mayDischargeInto";

  /** What matters where there is more than one phase. */
  private static final Map<String, String> PHASES =
      Map.of(
          "solar", "phases phase",
          "gridSensor", "phase",
          "diverter", "phase",
          "heatPump", "phases phase");

  private static final Map<String, String> SECTIONS = new LinkedHashMap<>();

  static {
    SECTIONS.put("site", "reference country vulnerableOccupants");
    SECTIONS.put("supply", "phases billing");
    SECTIONS.put("solar", "peak_kW inverter_kW exportLimit_kW");
    SECTIONS.put("house", "baseLoad_kW occupants");
    SECTIONS.put("gridSensor", "at phases heatPumpBehind");
    SECTIONS.put("tank", "volume_L height_mm unvented relief_C");
    SECTIONS.put("immersion", "power_kW ratedAt_V height_mm thermostat_C cutOut_C");
    SECTIONS.put(
        "diverter",
        "limit_C hysteresis_K clearanceAbove_mm clearanceBelow_mm"
            + " clearanceNeeded_mm ambient_C ambientMax_C");
    SECTIONS.put("relay", "drives counts start_kW stop_kW startDelay_min stopDelay_min");
    SECTIONS.put(
        "heatPump",
        "minimumInput_kW hotWaterInput_kW hotWaterOutput_kW maximumFlow_C"
            + " backupHeater everyday/start_C everyday/stop_C surplus/start_C surplus/stop_C"
            + " disinfection/enabled disinfection/target_C disinfection/hold_min"
            + " disinfection/every_days disinfection/heater");
    SECTIONS.put("blending", "valve hotSupplyMax_C");
    SECTIONS.put("outlets", "");
    SECTIONS.put("battery", "");
    SECTIONS.put("vehicleCharger", "");
  }

  /** A kind of home: what is not there, and which values are needed beside the usual ones. */
  public enum Home {
    IMMERSION_ONLY("heatPump relay battery"),
    HEAT_PUMP("battery"),
    THREE_PHASE("battery"),
    BATTERY("");

    private final String absent;

    Home(String absent) {
      this.absent = absent;
    }

    private boolean lacks(String section) {
      return Arrays.asList(absent.split(" ", -1)).contains(section);
    }

    private String more(String section) {
      if (this == BATTERY) {
        return section.equals("battery") ? BATTERY_VALUES : "";
      }
      return this == THREE_PHASE ? PHASES.getOrDefault(section, "") : "";
    }
  }

  private StarterFile() {}

  /** The file for any home, ending in a line end. */
  public static String text() {
    return text(null);
  }

  /**
   * The file, ending in a line end.
   *
   * @param home what the home has; null where that is not known
   */
  public static String text(@Nullable Home home) {
    List<String> sections = new ArrayList<>();
    SECTIONS.forEach((name, values) -> sections.add(section(home, name, values)));
    return "// Setup file. Enter each value in place of null; leave null what is not known.\n"
        + "// What is not there: { \"fitted\": false } in place of its values.\n"
        + "{\n  \"deadband\": 1,\n"
        + "  // Data sheets of the firm, files in the folder called equipment\n"
        + "  \"equipment\": [],   // such as \"heat-pumps/ground-12kW.json\"\n"
        + String.join("", sections)
        + "}\n";
  }

  private static String section(@Nullable Home home, String name, String values) {
    if (home != null && home.lacks(name)) {
      return "\n  \"" + name + "\": { \"fitted\": false },   // as the kind of home says\n";
    }
    String more = home == null ? "" : home.more(name);
    return section(name, more.isEmpty() || values.isEmpty() ? values + more : more + " " + values);
  }

  private static String section(String name, String values) {
    Pointer at = Pointer.root().child(name);
    if (values.isEmpty()) {
      return line("  ", at);
    }
    StringBuilder text = new StringBuilder("\n  \"" + name + "\": {\n");
    String open = "";
    for (String value : values.split(" ", -1)) {
      int slash = value.indexOf('/');
      String inner = slash < 0 ? "" : value.substring(0, slash);
      if (!inner.equals(open)) {
        text.append(open.isEmpty() ? "" : "    },\n");
        text.append(inner.isEmpty() ? "" : "    \"" + inner + "\": {\n");
        open = inner;
      }
      text.append(
          line(inner.isEmpty() ? "    " : "      ", Pointer.parse("/" + name + "/" + value)));
    }
    return text.append(open.isEmpty() ? "" : "    },\n").append("  },\n").toString();
  }

  private static String line(String indent, Pointer at) {
    Question question = Question.about(at).orElseThrow();
    return indent
        + "// "
        + question.asks()
        + " ("
        + question.where().words()
        + ")\n"
        + indent
        + '"'
        + at.last()
        + "\": null,   // "
        + AnswerForm.inFile(question)
        + "\n";
  }
}
