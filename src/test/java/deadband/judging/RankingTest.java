package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.facts.Size;
import java.util.List;
import org.junit.jupiter.api.Test;

class RankingTest {

  private static List<String> names(Judgement judgement) {
    return judgement.findings().stream().map(finding -> finding.check().name()).toList();
  }

  private static Judgement relay(double start_kW, double stop_kW) {
    return Setups.judge(
        """
        { "relay": { "drives": "heat pump", "counts": ["export", "immersion"], "start_kW": %s,
                     "stop_kW": %s, "startDelay_min": 1, "stopDelay_min": 1 },
          "heatPump": { "minimumInput_kW": 2.0, "hotWaterInput_kW": 2.0, "minimumRun_min": 10,
                        "minimumOff_min": 10 },
          "supply": { "phases": 1 }, "gridSensor": { "at": "supply", "phases": 1 } }"""
            .formatted(start_kW, stop_kW));
  }

  /**
   * Both are waste: 1.4 kW bought on starting comes before 0.6 kW while held, and the other way.
   */
  @Test
  void oneClassIsRankedBySize() {
    assertThat(names(relay(0.6, -1.9)))
        .containsSubsequence("stop-lets-grid-in", "start-below-heat-pump-draw");
    assertThat(names(relay(0.2, -1.5)))
        .containsSubsequence("start-below-heat-pump-draw", "stop-lets-grid-in");
  }

  @Test
  void aGraverClassComesFirstWhateverTheSize() {
    Judgement judgement =
        Setups.judge(
            """
            { "diverter": { "hotSurfaceBelow": true },
              "gridSensor": { "at": "supply", "facing": "unchecked" },
              "asFound": { "photographed": false } }""");

    assertThat(names(judgement))
        .containsExactly("hot-surface-below", "sensor-facing-unchecked", "as-found-not-recorded");
  }

  /** Every hazard has a size; one of shock and fire is the share by which a rating is exceeded. */
  @Test
  void everyHazardHasASize() {
    Judgement judgement =
        Setups.judge(
            """
            { "site": { "country": "GB" }, "tank": { "volume_L": 200 },
              "immersion": { "circuit": { "breaker_A": 16, "cable_mm2": 2.5, "method": "103",
                                          "ownCircuit": false, "secondSwitch": true } },
              "diverter": { "fitted": true } }""");

    assertThat(judgement.findings())
        .filteredOn(finding -> finding.consequence() == Consequence.HAZARD)
        .isNotEmpty()
        .allMatch(finding -> finding.size().value() > 0);
    assertThat(judgement.findings())
        .filteredOn(finding -> finding.check().name().equals("breaker-above-cable"))
        .allMatch(finding -> finding.size().unit() == Size.Unit.OVERLOAD)
        .allMatch(finding -> Math.abs(finding.size().value() - (16 / 13.5 - 1)) < 1e-9);
  }
}
