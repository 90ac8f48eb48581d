package deadband.days;

import deadband.dayrun.Day;
import deadband.dayrun.DayRun;
import deadband.dayrun.Installation;
import deadband.dayrun.Kept;
import deadband.dayrun.Result;
import deadband.dayrun.StepLength;
import deadband.dayrun.Surroundings;
import deadband.setup.Setup;
import java.time.Year;
import java.util.List;
import java.util.Optional;

/**
 * A year's effect of settings, quickly: {@code YearRuns.remembered().of(setup)}. One object serves
 * one job and any number of threads; keep it as long as variants of the same home are compared. The
 * days of a year are made once for each home (sun, household, source), each variant is run once and
 * remembered by its {@link DayModel}: changes that leave the model alone cost nothing. The result
 * is empty where the days of a setup cannot be run: a size or setting is missing, or the relay
 * calls something other than a heat pump. A first year costs about 0.2 s warm, each further variant
 * less than 0.1 s on one free core.
 */
public final class YearRuns {

  private static final Year YEAR = Year.of(2026);

  /** Disinfection cycles of a year begin at two in the morning, by our own choice [min]. */
  public static final double CYCLES_BEGIN_MIN = 120;

  private static final int MOST_RESULTS = 4096;

  /** A year of days takes 13 MB. */
  private static final int MOST_HOMES = 2;

  private final Kept<DayModel, YearEffect> effects = new Kept<>(MOST_RESULTS);
  private final Kept<Surroundings, List<Day>> days = new Kept<>(MOST_HOMES);

  private YearRuns() {}

  /** Runs each model's year once and remembers what it came to. For any number of threads. */
  public static YearRuns remembered() {
    return new YearRuns();
  }

  /** A year of a setup; empty where its days cannot be run. */
  public Optional<YearEffect> of(Setup setup) {
    return DayEvidence.model(setup).map(this::of);
  }

  private YearEffect of(DayModel model) {
    return effects.of(model, this::run);
  }

  private YearEffect run(DayModel model) {
    List<Day> year =
        days.of(model.surroundings(), surroundings -> surroundings.year(YEAR).toList());
    Installation installation = model.installation().with(model.cycle().firstDue(CYCLES_BEGIN_MIN));
    DayRun run = DayRun.of(installation, StepLength.MINUTE);
    year.forEach(run::through);
    return effect(run.result());
  }

  private static YearEffect effect(Result year) {
    Result.Cycles cycles = year.cycles().orElseThrow();
    return new YearEffect(
        year.solarHeat_kWh(),
        year.solarHeatByHeatPump_kWh(),
        year.import_kWh(),
        year.export_kWh(),
        year.curtailed_kWh(),
        cycles.relayClosings(),
        cycles.heatPumpStarts(),
        year.heatPumpOnSurplus_kWh());
  }
}
