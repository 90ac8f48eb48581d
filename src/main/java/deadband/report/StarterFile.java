package deadband.report;

import deadband.document.Pointer;
import deadband.setup.FieldKind;
import deadband.setup.Question;
import deadband.setup.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A setup file to be filled in: the values on which most depends, in the order in which a site is
 * walked, each with its question, unit, range and place to look. No value is filled in.
 */
public final class StarterFile {

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

  private StarterFile() {}

  /** The file, ending in a line end. */
  public static String text() {
    List<String> sections = new ArrayList<>();
    SECTIONS.forEach((name, values) -> sections.add(section(name, values)));
    return "// Setup file. Enter each value in place of null; leave null what is not known.\n"
        + "// What is not there: { \"fitted\": false } in place of its values.\n"
        + "{\n  \"deadband\": 1,\n"
        + String.join("", sections)
        + "}\n";
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
    String usual = question.usual().isEmpty() ? "" : "; usual: " + question.usual();
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
        + form(question)
        + usual
        + "\n";
  }

  private static String form(Question question) {
    FieldKind kind = question.field().kind();
    if (kind instanceof FieldKind.Num number) {
      String unit = number.unit() == Unit.NONE ? "" : " " + number.unit().printed();
      return Words.number(number.least()) + " to " + Words.number(number.most()) + unit;
    }
    if (kind instanceof FieldKind.Word word) {
      return String.join(" | ", word.words());
    }
    if (kind instanceof FieldKind.Many many) {
      return many.of() instanceof FieldKind.Word word
          ? "[ ] of: " + String.join(", ", word.words())
          : "[ { \"at\": \"bath\", \"blended\": true, \"mixed_C\": 41 }, ... ]";
    }
    if (kind instanceof FieldKind.Section) {
      return "{ \"fitted\": false } where there is none, else its values";
    }
    return kind instanceof FieldKind.Text text ? text.form() : "true | false";
  }
}
