package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.days.DayRuns;
import deadband.document.Document;
import deadband.document.Edit;
import deadband.document.Literal;
import deadband.document.Pointer;
import deadband.limits.Limits;
import deadband.setup.FieldKind;
import deadband.setup.Setup;
import deadband.setup.Shape;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A part that is entered as not fitted is asked for nothing, and takes no hazard away. */
class PartsTest {

  private static final Judge JUDGE = new Judge(Setups.JUDGE.book(), DayRuns.none());
  private static final Literal ABSENT = literal("{ \"fitted\": false }");
  private static final List<Pointer> PARTS = parts(Shape.of(Setup.class), Pointer.root());

  /** Hazards of a part itself: without it there is nothing left that could do the harm. */
  private static final Map<String, Set<String>> ITS_OWN =
      Map.of(
          // no coil, so no heat through one
          "/tank/coil",
          Set.of("source-without-cut-out"),
          // no relay, so no cable to its contact
          "/relay",
          Set.of("extra-low-voltage-beside-mains"),
          // no signal enters; that nobody answers the heat pump is found instead
          "/diverter/demandInput",
          Set.of(
              "demand-signal-mismatched",
              "demand-signal-on-other-phase",
              "mains-demand-not-proved-dead",
              "disinfection-needs-sun"),
          // no limit that ends a heating, no second supply; the heat pump feeds the heater itself
          "/diverter",
          Set.of(
              "limit-below-disinfection",
              "disinfection-cut-short-by-limit",
              "disinfection-needs-sun",
              "demand-not-answered",
              "demand-signal-mismatched",
              "demand-signal-on-other-phase",
              "mains-demand-not-proved-dead",
              "second-switch-bypasses-diverter"));

  static Stream<Path> good() {
    return Setups.good().stream();
  }

  static Stream<Path> faulty() {
    return Setups.files("sample-configs/faulty", ".json").stream();
  }

  private static Literal literal(String json) {
    return Literal.of(Fragment.parse(json));
  }

  /** Every section that may say that it is not fitted, lists left out. */
  private static List<Pointer> parts(Shape shape, Pointer at) {
    List<Pointer> parts = new ArrayList<>();
    if (shape.isEquipment()) {
      parts.add(at);
    }
    shape.fields().stream()
        .filter(field -> field.kind() instanceof FieldKind.Section && !field.optional())
        .forEach(
            field ->
                parts.addAll(
                    parts(((FieldKind.Section) field.kind()).shape(), at.child(field.name()))));
    return parts;
  }

  private static Document read(String text) {
    return Setups.read("parts", text).document();
  }

  private static String without(Document home, Pointer part) {
    return Edit.set(home, part, ABSENT).apply(home);
  }

  private static Judgement glance(String text) {
    return JUDGE.glance(Setups.read("parts", text).setup(), Limits.standard(), Setups.AS_OF);
  }

  /** What is asked for although it would stand in a part that is not there. */
  private static List<String> asked(Judgement judgement, Pointer... absent) {
    List<String> asked = new ArrayList<>();
    for (NotJudged open : judgement.notJudged()) {
      open.missing().stream()
          .filter(missing -> Stream.of(absent).anyMatch(missing::startsWith))
          .forEach(
              missing ->
                  asked.add(open.check().name() + " " + missing + " without " + List.of(absent)));
    }
    return asked;
  }

  private static List<String> askedOfPairs(Document home) {
    List<String> asked = new ArrayList<>();
    for (Pointer one : PARTS) {
      String text = without(home, one);
      asked.addAll(asked(glance(text), one));
      Document first = read(text);
      PARTS.stream()
          .filter(other -> other.compareTo(one) > 0 && !other.startsWith(one))
          .forEach(other -> asked.addAll(asked(glance(without(first, other)), one, other)));
    }
    return asked;
  }

  @Test
  void partsAreFound() {
    assertThat(PARTS)
        .hasSizeGreaterThan(14)
        .contains(Pointer.ofDotted("heatPump.surplusInput"), Pointer.ofDotted("diverter.sensor"));
  }

  @ParameterizedTest
  @MethodSource("good")
  void whatIsNotThereIsNotAskedFor(Path home) {
    assertThat(askedOfPairs(read(Setups.text(home)))).isEmpty();
  }

  /** A home of which every part is described, on one phase and on three. */
  @Test
  void nothingIsAskedOfAHomeWithEveryPart() {
    Document home = read(Setups.text(Path.of("sample-configs/good/mill-cottage.json")));
    home = with(home, "battery", "{ \"capacity_kWh\": 9, \"power_kW\": 3 }");
    home =
        with(
            home,
            "vehicleCharger",
            "{ \"followsSurplus\": true, \"minimum_kW\": 1.4, \"maximum_kW\": 7 }");
    assertThat(askedOfPairs(home)).isEmpty();

    home = with(home, "supply.phases", "3");
    home = with(home, "heatPump.phases", "3");
    home = with(home, "site.country", "\"FR\"");
    assertThat(askedOfPairs(home)).isEmpty();
  }

  private static Document with(Document home, String place, String json) {
    return read(home.with(Pointer.ofDotted(place), literal(json)));
  }

  /**
   * A hazard may only go with its part, or where the entry itself is in question because another
   * part relies on what is said not to be there.
   */
  @ParameterizedTest
  @MethodSource("faulty")
  void whatIsNotThereTakesNoHazardAway(Path file) {
    Document home = read(Setups.text(file));
    List<Check> hazards =
        glance(Setups.text(file)).findings().stream()
            .filter(finding -> finding.consequence() == Consequence.HAZARD)
            .map(Finding::check)
            .distinct()
            .toList();
    List<String> wrong = new ArrayList<>();
    for (Pointer part : PARTS) {
      if (home.find(part).isPresent()) {
        Judgement after = glance(without(home, part));
        wrong.addAll(asked(after, part));
        hazards.stream()
            .filter(check -> isSilent(after, check))
            .filter(check -> !isInQuestion(after, part))
            .map(Check::name)
            .filter(check -> !ITS_OWN.getOrDefault(part.toString(), Set.of()).contains(check))
            .forEach(check -> wrong.add(check + " is gone without " + part));
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static boolean isSilent(Judgement judgement, Check check) {
    return finding(judgement, check.name()).isEmpty()
        && judgement.notJudged().stream().noneMatch(open -> open.check().equals(check));
  }

  private static Optional<Finding> finding(Judgement judgement, String check) {
    return judgement.findings().stream().filter(f -> f.check().name().equals(check)).findFirst();
  }

  private static boolean isInQuestion(Judgement judgement, Pointer part) {
    return judgement.findings().stream()
        .filter(finding -> finding.check().name().equals("absent-part-described"))
        .anyMatch(finding -> finding.subject().equals(part.child(Shape.FITTED)));
  }

  /** What the heat pump's programme no longer disinfects, the heater must. */
  @Test
  void aStoreWithoutAHeatPumpMustBecomeHotAllTheSame() {
    Document home = read(Setups.text(Path.of("sample-configs/good/mill-cottage.json")));
    Pointer heatPump = Pointer.ofDotted("heatPump");
    String cool = without(with(home, "diverter.limit_C", "55"), heatPump);
    String cold = without(with(home, "diverter.limit_C", "40"), heatPump);

    assertThat(finding(glance(cool), "no-disinfection")).isPresent();
    assertThat(finding(glance(cold), "store-in-growth-band"))
        .hasValueSatisfying(found -> assertThat(found.consequence()).isEqualTo(Consequence.HAZARD));
    assertThat(finding(glance(without(home, heatPump)), "no-disinfection")).isEmpty();
  }
}
