package deadband.report;

import deadband.document.Pointer;
import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.RulePage;
import deadband.judging.Verdict;
import deadband.loop.TankLimit;
import deadband.setup.ChangeKind;
import deadband.setup.Disinfection;
import deadband.setup.Entered;
import deadband.setup.Outlet;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.setup.TankSensor;
import deadband.trade.HeaterCircuit;
import deadband.trade.PlatinumSensor;
import deadband.trade.StoredHeat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The sheet that an installer takes to site: isolate and note what is found, enter each setting and
 * read it back, test against readings calculated from this setup, and how to put it back.
 */
public final class CommissioningSheet {

  private static final List<String> DEVICES =
      List.of(
          "diverter",
          "relay",
          "heatPump",
          "immersion",
          "buffer",
          "battery",
          "vehicleCharger",
          "tank",
          "group");

  private static final String INITIALS = "initials";
  private static final double W_PER_KW = 1000;
  private static final double[] TABLE_C = {20, 40, 60};

  private final Report report;
  private final Setup setup;
  private final String tool;

  private CommissioningSheet(Report report, String tool) {
    this.report = report;
    this.setup = report.setup();
    this.tool = tool;
  }

  public static String text(Report report, String tool, Layout layout) {
    return new CommissioningSheet(report, tool).note().text(layout);
  }

  public static String html(Report report, String tool) {
    return new CommissioningSheet(report, tool).note().html();
  }

  private Note note() {
    Judgement judgement = report.judgement();
    List<Note.Section> sections = new ArrayList<>();
    findings().ifPresent(sections::add);
    sections.add(safety());
    sections.add(asFound());
    questions().ifPresent(sections::add);
    DEVICES.forEach(device -> settings(device).ifPresent(sections::add));
    sections.add(tests());
    sections.add(putBack());
    sections.add(contacts());
    return new Note(
        report.reference().orElse(report.file()),
        "Commissioning sheet",
        judgement.verdict().words(),
        judgement.verdict().word(),
        List.of(
            new Note.Fact("file", report.file()),
            new Note.Fact(
                "as of",
                judgement.asOf()
                    + ", rule book edition "
                    + judgement.edition()
                    + ", Deadband "
                    + tool)),
        sections);
  }

  /** What the check found, where it forbids to enter the settings or asks for a second look. */
  private Optional<Note.Section> findings() {
    List<Note.Row> rows =
        report.judgement().findings().stream()
            .filter(Finding::isOpen)
            .map(
                each ->
                    Note.Row.of(
                        each.consequence().word() + " " + each.check().name(),
                        RulePage.of(each.check()).says()))
            .toList();
    String intro =
        report.judgement().verdict() == Verdict.NOT_READY
            ? "Not to be entered: the check of this file forbids sign-off. Call the author of the"
                + " settings before any of them is entered."
            : "They do not forbid sign-off by themselves.";
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Note.Section.of(
                "Findings of the check", intro, List.of("Class and check", "Finding"), rows));
  }

  private static Note.Section safety() {
    return Note.Section.of(
        "Isolate before opening any cover",
        "Electrical and unvented work is for licensed people. Local codes and the equipment's own"
            + " instructions take precedence over this sheet. Water above 50 °C scalds.",
        List.of("Step", "Initials"),
        List.of(
            Note.Row.step("Isolate the heat pump, lock off and prove dead", INITIALS),
            Note.Row.step(
                "Isolate the immersion heater and its diverter, lock off and prove dead", INITIALS),
            Note.Row.step(
                "Isolate any signal that arrives from another supply, and prove dead", INITIALS)));
  }

  private static Note.Section asFound() {
    return Note.Section.of(
        "As found",
        "Before anything is changed. Menus are read with the supplies on and every cover closed.",
        List.of("Step", "Initials"),
        List.of(
            Note.Row.step(
                "Photograph every menu and display, supplies on, covers closed", INITIALS),
            Note.Row.step("Photograph dials and wiring under the covers, isolated", INITIALS),
            Note.Row.step("Note each setting as found in the lists below", INITIALS),
            Note.Row.step(
                "Covers closed and supplies on again before settings are entered", INITIALS)));
  }

  /** What the check waits for: it can often be read where the sheet is used. */
  private Optional<Note.Section> questions() {
    List<Note.Row> rows =
        report.judgement().questions().stream()
            .map(
                open ->
                    Note.Row.of(
                        open.question().asks() + " (" + open.question().pointer().dotted() + ")",
                        open.question().where().words(),
                        "answer"))
            .toList();
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Note.Section.of(
                "To find out on site",
                "Not in the file; the check waits for it.",
                List.of("Question", "Where", "Answer"),
                rows));
  }

  /** The settings of a device in the order of its menus. */
  private Optional<Note.Section> settings(String device) {
    Map<Pointer, Object> found =
        setup.asFound().settings().optional().map(Shape::entered).orElse(new TreeMap<>());
    List<Note.Row> rows = new ArrayList<>();
    Shape.enteredInOrder(setup)
        .forEach(
            (pointer, value) -> {
              boolean of = pointer.tokens().get(0).equals(device);
              boolean dial = !pointer.last().equals("name");
              if (of && dial && ChangeKind.of(pointer) == ChangeKind.SETTING) {
                rows.add(setting(pointer, value, found.get(pointer)));
              }
            });
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Note.Section.of(
                "Settings: " + name(device),
                "",
                List.of("Setting", "Set to", "As found", "Read back"),
                rows));
  }

  private static Note.Row setting(Pointer pointer, Object value, @Nullable Object found) {
    String label = menu(pointer) + Words.named(pointer);
    String to = Words.shown(pointer, value);
    String before = found == null ? "" : Words.shown(pointer, found);
    return new Note.Row(
        label,
        to,
        List.of(to),
        List.of(new Note.Blank("as found", before), Note.Blank.of("read back")));
  }

  /** The menu of the device in which it stands, as far as the file has one. */
  private static String menu(Pointer pointer) {
    List<String> within = pointer.tokens().subList(1, pointer.tokens().size() - 1);
    return within.isEmpty()
        ? ""
        : within.stream().map(CommissioningSheet::step).collect(Collectors.joining(" ")) + ": ";
  }

  /** A step on the way there; places in a list are counted from one. */
  private static String step(String token) {
    return token.matches("\\d+") ? Integer.toString(Integer.parseInt(token) + 1) : name(token);
  }

  private static String name(String device) {
    return device.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  private Note.Section tests() {
    List<Note.Row> rows = new ArrayList<>();
    relay(rows);
    sensor(rows);
    direction(rows);
    limit(rows);
    disinfection(rows);
    outlets(rows);
    return Note.Section.of(
        "Tests",
        "Expected readings are calculated from the values in the file.",
        List.of("Test", "Expected", "Reading"),
        rows);
  }

  private void relay(List<Note.Row> rows) {
    setup
        .heatPump()
        .hotWaterInput_kW()
        .optional()
        .ifPresent(
            input ->
                row(
                    rows,
                    "Close the surplus call by hand while the tank is below its surplus start"
                        + celsius(setup.heatPump().surplus().start_C()),
                    "the heat pump starts"
                        + setup
                            .heatPump()
                            .startLag_min()
                            .optional()
                            .map(lag -> " within about " + Words.withUnit(lag, "min"))
                            .orElse("")
                        + " and takes up to "
                        + Words.withUnit(input, "kW")));
    setup
        .heatPump()
        .minimumRun_min()
        .optional()
        .ifPresent(
            run ->
                row(
                    rows,
                    "Open it again by hand, no other programme running",
                    "the heat pump stops, not before it has run " + Words.withUnit(run, "min")));
    setup
        .relay()
        .start_kW()
        .optional()
        .ifPresent(
            start ->
                row(
                    rows,
                    "Watch the relay while surplus rises above " + Words.withUnit(start, "kW"),
                    "closes" + after(setup.relay().startDelay_min())));
    setup
        .relay()
        .stop_kW()
        .optional()
        .ifPresent(
            stop ->
                row(
                    rows,
                    "Watch the relay while surplus falls below " + Words.withUnit(stop, "kW"),
                    "opens" + after(setup.relay().stopDelay_min())));
  }

  private static String after(Entered<Double> delay_min) {
    return delay_min
        .optional()
        .map(delay -> " after " + Words.withUnit(delay, "min") + ", not before")
        .orElse("");
  }

  private static String celsius(Entered<Double> value) {
    return value.optional().map(each -> " of " + Words.withUnit(each, "°C")).orElse("");
  }

  /** The resistance that a platinum sensor has at what its display shows, by IEC 60751. */
  private void sensor(List<Note.Row> rows) {
    TankSensor sensor = setup.diverter().sensor();
    double nominal_ohm =
        sensor.element().says(TankSensor.Element.PT1000)
            ? 1000
            : sensor.element().says(TankSensor.Element.PT100) ? 100 : 0;
    if (nominal_ohm == 0) {
      return;
    }
    double lead_ohm = sensor.lead_ohm().optional().orElse(0.0);
    for (double at_C : TABLE_C) {
      row(
          rows,
          "Sensor disconnected, display at " + Words.withUnit(at_C, "°C") + " just before",
          Words.number(
                  Math.rint(
                          10
                              * (PlatinumSensor.Curve.IEC_60751.resistance_ohm(nominal_ohm, at_C)
                                  + lead_ohm))
                      / 10)
              + " Ω at its ends");
    }
  }

  /** A known load moves what the controller shows for the grid by its power, and in which way. */
  private void direction(List<Note.Row> rows) {
    Optional<Double> rated = setup.immersion().power_kW().optional().filter(kW -> kW > 0);
    Optional<Double> supply = setup.supply().voltage_V().optional().filter(volts -> volts > 0);
    if (rated.isEmpty() || supply.isEmpty()) {
      return;
    }
    double ratedAt_V = setup.immersion().ratedAt_V().optional().orElse(supply.get());
    row(
        rows,
        "Immersion heater isolated and disconnected: resistance of its element",
        "about "
            + Words.tenths(ratedAt_V * ratedAt_V / (W_PER_KW * rated.get()))
            + " Ω, from its rating");
    double nominal_V = HeaterCircuit.nominal_V(supply.get());
    double power_kW = HeaterCircuit.power_kW(rated.get(), ratedAt_V, nominal_V);
    row(
        rows,
        "CT (current transformer) direction: switch the immersion heater fully on",
        "import shown rises, or export falls, by about "
            + Words.tenths(power_kW)
            + " kW ("
            + Words.tenths(HeaterCircuit.current_A(rated.get(), ratedAt_V, nominal_V))
            + " A); where import falls the CT is the wrong way round");
  }

  private void limit(List<Note.Row> rows) {
    TankLimit limit = new TankLimit(setup);
    if (limit.opening_C().isKnown()) {
      row(
          rows,
          "Tank limit of the diverter, at its display",
          "stops at "
              + Words.withUnit(limit.opening_C().get(), "°C")
              + (limit.closing_C().isKnown()
                  ? ", heats again at " + Words.withUnit(limit.closing_C().get(), "°C")
                  : ""));
    }
  }

  private void disinfection(List<Note.Row> rows) {
    var cycle = setup.heatPump().disinfection();
    if (cycle.enabled().says(false) || !cycle.target_C().isEntered()) {
      return;
    }
    row(
        rows,
        "Disinfection, started by hand",
        "holds "
            + Words.withUnit(cycle.target_C().optional().orElseThrow(), "°C")
            + cycle
                .hold_min()
                .optional()
                .map(hold -> " for " + Words.withUnit(hold, "min"))
                .orElse("")
            + heating(cycle.target_C().optional().orElseThrow()));
  }

  /** How long the immersion heater takes for the last ten kelvin, where it carries the cycle. */
  private String heating(double target_C) {
    boolean byElement =
        setup.heatPump().disinfection().heater().says(Disinfection.Heater.IMMERSION);
    Optional<Double> volume_L = setup.tank().volume_L().optional();
    Optional<Double> power_kW = setup.immersion().power_kW().optional().filter(kW -> kW > 0);
    if (!byElement || volume_L.isEmpty() || power_kW.isEmpty()) {
      return "";
    }
    double time_min =
        StoredHeat.heatingTime_min(volume_L.get(), target_C - 10, target_C, power_kW.get());
    return "; the last 10 K take about "
        + Words.withUnit(Math.rint(time_min), "min")
        + " at rated power, the whole store mixed, without draw-off";
  }

  private void outlets(List<Note.Row> rows) {
    for (Outlet outlet : setup.outlets().optional().orElse(List.of())) {
      String at = outlet.at().optional().map(Outlet.Kind::word).orElse("outlet");
      outlet
          .mixed_C()
          .optional()
          .ifPresent(
              mixed ->
                  row(
                      rows,
                      "Mixed water at the " + at + ", after a minute, tank at its hottest",
                      "at most " + Words.withUnit(mixed, "°C")));
      if (outlet.blended().says(false)) {
        row(
            rows,
            "Water at the " + at + ", no mixing valve: scald risk",
            "as hot as the tank; warn the occupants");
      }
    }
  }

  private Note.Section putBack() {
    List<Note.Row> rows = new ArrayList<>();
    for (Comparison.Difference each : Comparison.settings(setup.asItWasFound(), setup)) {
      each.from()
          .ifPresent(
              value ->
                  rows.add(
                      Note.Row.of(
                          menu(each.pointer()) + Words.named(each.pointer()),
                          Words.shown(each.pointer(), value),
                          "read back")));
    }
    return Note.Section.of(
        "How to put it back as found",
        rows.isEmpty()
            ? "No setting as found is entered in the file: enter the column \"as found\" again,"
                + " last device first."
            : "Where a test fails and cannot be corrected: enter these again, then the column \"as"
                + " found\", and report.",
        List.of("Setting", "As found", "Read back"),
        rows);
  }

  private static Note.Section contacts() {
    return Note.Section.of(
        "Who to call",
        "Enter before leaving for site.",
        List.of("For", "Name and number"),
        List.of(
            contact("Author of the settings"),
            contact("Reviewer"),
            contact("Technical line of the heat pump"),
            contact("Technical line of the controller"),
            contact("Electrician in charge"),
            contact("Hot water engineer for unvented stores")));
  }

  private static Note.Row contact(String who) {
    return Note.Row.step(who, "name and number");
  }

  private static void row(List<Note.Row> rows, String label, String expected) {
    rows.add(Note.Row.of(label, expected, "reading"));
  }
}
