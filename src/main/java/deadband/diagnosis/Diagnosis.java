package deadband.diagnosis;

import deadband.document.Pointer;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.trade.CompressorTimes;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a log and a description show of a heat pump, and the causes that would lead to it, the
 * likeliest first.
 *
 * <pre>{@code
 * Diagnosis diagnosis = Diagnosis.of(Optional.of(setup), Optional.of(log), words);
 * diagnosis.causes().get(0).word();
 * }</pre>
 *
 * @param log what was read, as a whole; empty where there is none
 * @param cycles the runs in it
 * @param triggers what started each
 * @param endings what ended each
 * @param observed what is compared: of a long log the days around its worst hour
 * @param words what was said
 * @param compared first and last day compared, in words; empty without a log
 * @param causes ranked; empty where nothing could be compared
 * @param fits whether the first of them explains what is observed
 * @param healthy whether nothing unusual is seen; empty where that cannot be said
 * @param cannotSee what the log cannot show, in words
 * @param notes what was found besides, in words
 */
public record Diagnosis(
    Optional<MeterLog> log,
    Cycles cycles,
    List<Trigger> triggers,
    List<Ending> endings,
    Observation observed,
    ObservedWords words,
    String compared,
    List<Ranked> causes,
    boolean fits,
    Optional<Boolean> healthy,
    List<String> cannotSee,
    List<String> notes) {

  /** Days that are compared around the worst hour. */
  private static final int DAYS = 7;

  /** A run shorter than this is short: Wüllhorst et al. 2021, minimum run time [min]. */
  private static final double SHORT_RUN_MIN = 10;

  /** A fault is said to be likely in a log if nothing unusual has this probability at most. */
  private static final double UNLIKELY = 0.1;

  /** Where a person reports it, a fault need only be the likeliest. */
  private static final double LIKELY = 0.5;

  /** Readings this fine show the power of a run [s]. */
  private static final int FINE_S = 120;

  /** A setup of which nothing is entered. */
  private static final Setup OPEN = (Setup) Shape.of(Setup.class).allOpen(Pointer.root());

  /** Diagnoses a setup by a log, by words, or both; any may be missing. */
  public static Diagnosis of(Optional<Setup> proposed, Optional<MeterLog> log, ObservedWords said) {
    Optional<Setup> setup = proposed.map(Setup::asItWasFound);
    ObservedWords words =
        setup.map(s -> said.completedBy(ObservedWords.of(s.observed()))).orElse(said);
    double entered_kW = AsSet.of(setup.orElse(OPEN), Double.NaN).input_kW();
    OptionalDouble input_kW =
        Double.isNaN(entered_kW) ? OptionalDouble.empty() : OptionalDouble.of(entered_kW);
    return log.map(l -> new Logged(setup, l, input_kW).diagnosed(words))
        .orElseGet(() -> described(setup, words));
  }

  /** By words alone. */
  private static Diagnosis described(Optional<Setup> setup, ObservedWords words) {
    AsSet set = AsSet.of(setup.orElse(OPEN), Double.NaN);
    Observation seen = words.observation();
    Ranking ranking =
        setup.isEmpty() || seen.isEmpty()
            ? Ranking.none()
            : Ranking.of(seen, Signatures.of(setup.get(), set, true));
    return new Diagnosis(
        Optional.empty(),
        Cycles.none("no log is given"),
        List.of(),
        List.of(),
        seen,
        words,
        "",
        ranking.causes(),
        ranking.fits(),
        healthy(seen, setup, ranking, false),
        List.of(),
        setup.map(Diagnosis::taken).orElse(List.of()));
  }

  /** What is taken as given though it is not entered. */
  private static List<String> taken(Setup setup) {
    return setup.relay().counts().isEntered()
        ? List.of()
        : List.of("relay.counts is not entered: taken as export and immersion heater");
  }

  /** By a log, and by words beside it. */
  private record Logged(Optional<Setup> setup, MeterLog log, OptionalDouble input_kW) {

    Diagnosis diagnosed(ObservedWords words) {
      Cycles cycles = CycleFinder.find(log, input_kW);
      Part part = Part.of(log, cycles, input_kW);
      AsSet set = AsSet.of(setup.orElse(OPEN), measured_kW(part));
      CannotSee hidden = CannotSee.of(log, cycles, setup, set);
      RunReader whole = new RunReader(log, cycles, set, !hidden.hidesSurplus());
      RunReader reader =
          part.log() == log
              ? whole
              : new RunReader(part.log(), part.cycles(), set, !hidden.hidesSurplus());
      ObservedRuns observed = new ObservedRuns(part.log(), part.cycles(), set, reader);
      Observation seen =
          (hidden.hidesCycles() ? observed.coarseObservation() : observed.observation())
              .completedBy(words.observation());
      Ranking ranking =
          setup.isEmpty() || (cycles.count() == 0 && words.observation().isEmpty())
              ? Ranking.none()
              : hidden.hidesCycles() || part.cycles().count() == 0
                  ? Ranking.of(
                      seen, Signatures.of(setup.get(), set, !words.observation().isEmpty()))
                  : LogRanking.of(
                      Watched.of(part.log(), part.cycles()), seen, Hypotheses.of(setup.get(), set));
      if (hidden.hidesCycles()
          && words.observation().isEmpty()
          && !ranking.causes().isEmpty()
          && !ranking.isSureOfFault()) {
        ranking = Ranking.none();
      }
      return new Diagnosis(
          Optional.of(log),
          cycles,
          whole.triggers(),
          whole.endings(),
          seen,
          words,
          part.says(),
          ranking.causes(),
          ranking.fits(),
          healthy(seen, setup, ranking, words.observation().isEmpty()),
          hidden.says(),
          setup.map(s -> notes(s, cycles, whole)).orElse(List.of()));
    }

    private List<String> notes(Setup home, Cycles cycles, RunReader read) {
      List<String> notes = new ArrayList<>(taken(home));
      notes.addAll(InForce.of(home, log, cycles, read));
      return List.copyOf(notes);
    }

    /** The power input that was measured by itself, finely enough to be that of a run. */
    private double measured_kW(Part part) {
      boolean own = part.log().has(Meaning.HEAT_PUMP) && part.cycles().running_kW() > 0;
      return own && part.log().interval_s() <= FINE_S ? part.cycles().running_kW() : Double.NaN;
    }
  }

  /**
   * Whether nothing unusual is seen. By the causes where they are ranked; by the number of starts
   * alone only that something is unusual can be said.
   */
  private static Optional<Boolean> healthy(
      Observation seen, Optional<Setup> setup, Ranking ranking, boolean logged) {
    if (!ranking.causes().isEmpty()) {
      boolean usual = ranking.causes().get(0).first() == Cause.NOTHING_UNUSUAL;
      double most = logged ? UNLIKELY : LIKELY;
      // where no cause that is known fits, neither can be said
      boolean likely = usual ? ranking.usual() >= LIKELY : ranking.usual() <= most;
      boolean clear = ranking.fits() && likely;
      return clear ? Optional.of(usual) : Optional.empty();
    }
    double permitted =
        setup
            .flatMap(s -> s.heatPump().startsPerHour().optional())
            .orElse(CompressorTimes.STARTS_PER_HOUR.value());
    boolean many = seen.get(Feature.STARTS).orElse(0.0) > permitted;
    boolean brief =
        seen.get(Feature.RUN).orElse(SHORT_RUN_MIN) < SHORT_RUN_MIN
            && seen.get(Feature.STARTS_DAY).orElse(0.0) > 6;
    return many || brief ? Optional.of(false) : Optional.empty();
  }

  /** The days of a log that are compared. */
  private record Part(MeterLog log, Cycles cycles, String says) {

    static Part of(MeterLog log, Cycles cycles, OptionalDouble input_kW) {
      List<Cycle> worst = cycles.worstHour();
      LocalDate last = log.clock(log.rows() - 1).toLocalDate();
      LocalDate first = log.clock(0).toLocalDate();
      if (worst.isEmpty() || !first.plusDays(DAYS).isBefore(last)) {
        return new Part(log, cycles, says(log));
      }
      LocalDate begin = log.clock(worst.get(0).first()).toLocalDate().minusDays(DAYS / 2);
      LocalDate latest = last.plusDays(1).minusDays(DAYS);
      LocalDate from = begin.isAfter(latest) ? latest : begin.isBefore(first) ? first : begin;
      MeterLog part = log.part(row(log, from), row(log, from.plusDays(DAYS)));
      return new Part(part, CycleFinder.find(part, input_kW), says(part));
    }

    /** The first row of a day; the number of rows where the log ends before it. */
    private static int row(MeterLog log, LocalDate date) {
      int row = 0;
      while (row < log.rows() && log.clock(row).toLocalDate().isBefore(date)) {
        row++;
      }
      return row;
    }

    private static String says(MeterLog log) {
      LocalDate from = log.clock(0).toLocalDate();
      LocalDate to = log.clock(log.rows() - 1).toLocalDate();
      return from.equals(to) ? from.toString() : from + " to " + to;
    }
  }
}
