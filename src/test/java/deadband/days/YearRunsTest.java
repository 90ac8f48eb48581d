package deadband.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import deadband.dayrun.DayRun;
import deadband.dayrun.Result;
import deadband.dayrun.StepLength;
import deadband.judging.Setups;
import deadband.setup.Setup;
import java.nio.file.Path;
import java.time.Year;
import org.junit.jupiter.api.Test;

/** A year's effect is that of the year itself, and remembered. */
class YearRunsTest {

  private static final String FILE = "sample-configs/good/mill-cottage.json";

  private static Setup setup(String text) {
    return Setups.read("year", text).setup();
  }

  @Test
  void theEffectIsWhatTheYearOfDaysComesTo() {
    Setup setup = setup(Setups.text(Path.of(FILE)));
    DayModel model = DayModel.of(setup).get();
    DayRun run =
        DayRun.of(model.installation().with(model.cycle().firstDue(120)), StepLength.MINUTE);
    model.surroundings().year(Year.of(2026)).forEach(run::through);
    Result year = run.result();

    YearEffect effect = YearRuns.remembered().of(setup).orElseThrow();
    assertThat(effect.solarHeat_kWh()).isEqualTo(year.solarHeat_kWh());
    assertThat(effect.import_kWh()).isEqualTo(year.import_kWh());
    assertThat(effect.heatPumpStarts()).isEqualTo(year.cycles().orElseThrow().heatPumpStarts());
    // The element gives what it takes, so the rest of the PV's heat is the compressor's.
    assertThat(effect.solarHeatByHeatPump_kWh())
        .isBetween(0.0, effect.solarHeat_kWh())
        .isLessThanOrEqualTo(year.heatPumpHeat_kWh());
    assertThat(effect.solarHeat_kWh() - effect.solarHeatByHeatPump_kWh())
        .isLessThanOrEqualTo(year.immersion_kWh() + year.backup_kWh() + 1e-9);
    assertThat(effect.heatPumpShare())
        .isCloseTo(effect.solarHeatByHeatPump_kWh() / effect.solarHeat_kWh(), within(1e-12));
  }

  @Test
  void aSetupIsRunOnce() {
    YearRuns runs = YearRuns.remembered();
    String text = Setups.text(Path.of(FILE));
    assertThat(runs.of(setup(text)).orElseThrow()).isSameAs(runs.of(setup(text)).orElseThrow());
  }

  @Test
  void whatCannotBeRunHasNoYear() {
    assertThat(YearRuns.remembered().of(setup("{}"))).isEmpty();
  }
}
