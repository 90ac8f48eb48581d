package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.days.DayRuns;
import deadband.document.Pointer;
import deadband.limits.Limits;
import deadband.setup.Change;
import deadband.setup.Relay;
import deadband.setup.Setup;
import deadband.setup.Shape;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class JudgeTest {

  private static final Judge JUDGE = new Judge(RuleBook.builtIn(), DayRuns.remembered());
  private static final Setup NOTHING = (Setup) Shape.of(Setup.class).allOpen(Pointer.root());

  private static Setup with(Object... pointersAndValues) {
    Setup setup = NOTHING;
    for (int i = 0; i < pointersAndValues.length; i += 2) {
      Pointer pointer = Pointer.parse((String) pointersAndValues[i]);
      setup = new Change(pointer, null, pointersAndValues[i + 1]).applyTo(setup);
    }
    return setup;
  }

  private static Judgement judge(Setup setup) {
    return JUDGE.judge(setup, Limits.standard(), LocalDate.of(2026, 5, 31));
  }

  @Test
  void judgesNothingOfASetupOfNothing() {
    Judgement judgement = judge(NOTHING);

    assertThat(judgement.findings()).isEmpty();
    assertThat(judgement.clear()).isEmpty();
    assertThat(judgement.clearOnAssumption()).isEmpty();
    assertThat(judgement.isEmpty()).isTrue();
    assertThat(judgement.verdict()).isEqualTo(Verdict.ANSWERS_NEEDED);
  }

  @Test
  void findsARelayThatHuntsAndTheStopThatCuresIt() {
    Judgement judgement =
        judge(
            with(
                "/relay/drives", Relay.Drives.HEAT_PUMP,
                "/relay/counts", List.of(Relay.Counts.EXPORT, Relay.Counts.IMMERSION),
                "/relay/start_kW", 3.0,
                "/relay/stop_kW", 2.7,
                "/heatPump/hotWaterInput_kW", 2.8));

    assertThat(judgement.findings())
        .filteredOn(finding -> finding.check().name().equals("gap-below-heat-pump-draw"))
        .singleElement()
        .satisfies(
            finding ->
                assertThat(finding.changes())
                    .containsExactly(new Change(Pointer.parse("/relay/stop_kW"), 2.7, 0.1)));
  }

  @Test
  void whatTheRelayCallsIsAssumedWhereTheHeatPumpIsSetForACall() {
    Object[] thresholds = {
      "/relay/counts", List.of(Relay.Counts.EXPORT, Relay.Counts.IMMERSION),
      "/relay/start_kW", 3.0,
      "/relay/stop_kW", 2.7,
      "/heatPump/hotWaterInput_kW", 2.8
    };
    Object[] called = Arrays.copyOf(thresholds, thresholds.length + 2);
    called[thresholds.length] = "/heatPump/surplus/stop_C";
    called[thresholds.length + 1] = 55.0;

    assertThat(gap(judge(with(thresholds)))).isEmpty();
    assertThat(gap(judge(with(called))))
        .singleElement()
        .satisfies(
            finding ->
                assertThat(finding.provenance().assumed())
                    .extracting(assumption -> assumption.pointer().dotted())
                    .contains("relay.drives"));
  }

  private static List<Finding> gap(Judgement judgement) {
    return judgement.findings().stream()
        .filter(finding -> finding.check().name().equals("gap-below-heat-pump-draw"))
        .toList();
  }
}
