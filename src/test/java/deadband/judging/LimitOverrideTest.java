package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.days.DayRuns;
import deadband.document.Pointer;
import deadband.limits.Limit;
import deadband.limits.LimitOverride;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.report.JsonReport;
import deadband.report.Layout;
import deadband.report.Report;
import deadband.report.TextReport;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A site's own limit leaves a trace, and hides no hazard. */
class LimitOverrideTest {

  private static final Path GRANDMOTHER = Path.of("sample-configs/faulty/shower-set-too-hot.json");
  private static final String CHECK = "mixed-above-outlet-maximum";

  private static final List<Limit> GUARDS =
      Arrays.stream(Limit.values()).filter(l -> l.weaker() != Limit.Weaker.NOWHERE).toList();

  private static final Judge JUDGE = new Judge(RuleBook.builtIn(), DayRuns.none());

  private static LimitOverride override(Limit limit, double value) {
    return new LimitOverride(
        limit,
        value,
        "site.json",
        Optional.empty(),
        Optional.of("older people are helped"),
        Optional.of("site engineer"));
  }

  private static SetupReading.Read read(Path file) {
    return Setups.read(file.toString(), Setups.text(file));
  }

  private static Judgement judged(Path file, LimitOverride... overrides) {
    return JUDGE.judge(read(file).setup(), Limits.with(List.of(overrides)), Setups.AS_OF);
  }

  private static List<Finding> of(Judgement judgement, String check) {
    return judgement.findings().stream().filter(f -> f.check().name().equals(check)).toList();
  }

  @Test
  void aHazardThatALooserLimitWouldHideStaysAsAQueryThatNamesTheOverride() {
    assertThat(of(judged(GRANDMOTHER), CHECK))
        .extracting(Finding::consequence)
        .containsOnly(Consequence.HAZARD);

    Judgement looser = judged(GRANDMOTHER, override(Limit.OUTLET_VULNERABLE_BODY, 60));
    Finding finding = of(looser, CHECK).get(0);

    assertThat(finding.consequence()).isEqualTo(Consequence.QUERY);
    assertThat(finding.detail().basis())
        .contains("a hazard by the rule book")
        .contains("outletVulnerableBody_C 44 -> 60 °C, set in site.json by site engineer")
        .contains("older people are helped");
    assertThat(looser.verdict()).isNotEqualTo(Verdict.READY);
    assertThat(looser.clear()).extracting(Check::name).doesNotContain(CHECK);
  }

  /** Whether the heater has a circuit of its own is asked for above 15 L, and stays asked for. */
  @Test
  void aHazardThatCouldNotBeJudgedStaysOpenUnderALooserLimit() {
    Path good = Path.of("sample-configs/good/mill-cottage.json");
    String text = Setups.text(good).replace("\"ownCircuit\": true,", "");
    Setup without = Setups.read(good.toString(), text).setup();
    Limits looser = Limits.with(List.of(override(Limit.OWN_CIRCUIT_ABOVE, 1000)));

    for (Limits limits : List.of(Limits.standard(), looser)) {
      assertThat(JUDGE.glance(without, limits, Setups.AS_OF).notJudged())
          .extracting(open -> open.check().name())
          .contains("shared-circuit");
    }
  }

  @Test
  void aTighterLimitFindsMoreAndNothingBecomesAQuery() {
    Path good = Path.of("sample-configs/good/mill-cottage.json");
    Judgement tighter = judged(good, override(Limit.OUTLET_SHOWER, 38));

    assertThat(of(tighter, CHECK))
        .extracting(Finding::consequence)
        .containsOnly(Consequence.HAZARD);
  }

  @Test
  void everyOverrideStandsInTextAndJson() {
    SetupReading.Read read = read(GRANDMOTHER);
    LimitOverride looser = override(Limit.OUTLET_SHOWER, 60);
    LimitOverride other = override(Limit.CLOUD_COST, 0.3);
    Report report = new Report(read.document(), read.setup(), judged(GRANDMOTHER, looser, other));
    String text = TextReport.of(report, Layout.of(120, false)).replaceAll("\\s+", " ");
    String json = JsonReport.of(report, "test", false);

    assertThat(text)
        .contains(
            "limit outletShower_C 41 -> 60 °C, set in site.json by site engineer: older people are"
                + " helped (looser than the rule book)",
            "limit cloudCost_kWh 0.5 -> 0.3 kWh, set in site.json");
    assertThat(json)
        .contains(
            "\"overrides\":[{\"limit\":\"outletShower_C\",\"from\":41,\"to\":60,\"unit\":\"°C\","
                + "\"looser\":true,\"file\":\"site.json\",\"source\":null,"
                + "\"reason\":\"older people are helped\",\"by\":\"site engineer\"}");
  }

  /** What a page of a hazard names as a limit is guarded on one of its sides. */
  @Test
  void everyLimitThatDecidesAHazardSaysOnWhichSideItIsWeaker() {
    RuleBook book = RuleBook.builtIn();
    for (Path page : Setups.files("rules", ".md")) {
      String name = page.getFileName().toString().replace(".md", "");
      boolean hazard =
          book.find(name).filter(c -> c.consequence() == Consequence.HAZARD).isPresent();
      if (hazard) {
        String limits = RulePage.parse(Setups.text(page)).sections().get("Limits");
        Arrays.stream(limits.split("\n"))
            .map(row -> Limit.named(row.replaceAll("^\\| *([^ |]*).*", "$1")))
            .flatMap(Optional::stream)
            .forEach(
                limit ->
                    assertThat(limit.weaker())
                        .as(name + " rests on " + limit)
                        .isNotEqualTo(Limit.Weaker.NOWHERE));
      }
    }
  }

  /** By the direction each limit gives itself: on the strict side no hazard is ever silenced. */
  @Test
  void tighteningSilencesNoHazard() {
    for (Path file : Setups.files("sample-configs/faulty", ".json")) {
      Setup setup = read(file).setup();
      Set<Pointer> before = hazards(JUDGE.glance(setup, Limits.standard(), Setups.AS_OF));
      if (!before.isEmpty()) {
        for (Limit limit : GUARDS) {
          assertThat(hazards(JUDGE.glance(setup, tighter(limit), Setups.AS_OF)))
              .as(file + " with a tighter " + limit)
              .containsAll(before);
        }
      }
    }
  }

  private static Limits tighter(Limit limit) {
    double own = limit.entry().value();
    return switch (limit.weaker()) {
      case ABOVE -> Limits.with(List.of(override(limit, 0.9 * own)));
      case BELOW -> Limits.with(List.of(override(limit, Math.min(own < 1 ? 1 : 100, 1.1 * own))));
      case NOWHERE -> Limits.standard();
    };
  }

  private static Set<Pointer> hazards(Judgement judgement) {
    Set<Pointer> hazards = new HashSet<>();
    judgement.findings().stream()
        .filter(finding -> finding.check().consequence() == Consequence.HAZARD)
        .forEach(
            finding ->
                hazards.add(
                    Pointer.root().child(finding.check().name()).append(finding.subject())));
    return hazards;
  }

  @Test
  void aMisspeltAcceptanceIsToldTheNearestName() {
    Judgement judgement =
        Setups.judge(
            """
            { "gridSensor": { "at": "supply", "facing": "unchecked" },
              "accepted": [ { "check": "sensor-facing-uncheked", "reason": "seen to read import",
                "by": "site engineer", "on": "2026-05-01" } ] }
            """);

    assertThat(of(judgement, "accepted-nothing-found").get(0).detail().basis())
        .isEqualTo("there is no check sensor-facing-uncheked; nearest: sensor-facing-unchecked");
    assertThat(of(judgement, "sensor-facing-unchecked").get(0).isOpen()).isTrue();
  }

  @Test
  void anAcceptanceLacksNothingOrAcceptsNothing() {
    String whole = "\"reason\": \"seen\", \"by\": \"site engineer\", \"on\": \"2026-05-01\"";
    assertThat(isOpen(whole)).isFalse();
    for (String part : whole.split(", ", -1)) {
      assertThat(
              isOpen(
                  whole.replace(part, "").replaceAll("^, |, ,|, $", ",").replaceAll("^,|,$", "")))
          .as("without " + part)
          .isTrue();
    }
  }

  private static boolean isOpen(String entry) {
    Judgement judgement =
        Setups.judge(
            "{ \"gridSensor\": { \"at\": \"supply\", \"facing\": \"unchecked\" }, \"accepted\":"
                + " [ { \"check\": \"sensor-facing-unchecked\", "
                + entry
                + " } ] }");
    return of(judgement, "sensor-facing-unchecked").get(0).isOpen();
  }
}
