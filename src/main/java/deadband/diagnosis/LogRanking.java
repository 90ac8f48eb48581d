package deadband.diagnosis;

import deadband.diagnosis.Hypotheses.Hypothesis;
import deadband.diagnosis.RunLikelihood.Errors;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Ranks the causes by the likelihood of the runs of a log: what each was before, times the
 * likelihood of the runs with it, over the sum of all. A cause in several sizes is their sum.
 */
final class LogRanking {

  /** A cause that is not known here, before anything is seen. */
  private static final double UNKNOWN_BEFORE = 0.2;

  /** Runs are not quite independent of each other: their evidence counts for so much. */
  private static final double INDEPENDENT = 0.7;

  /** A cause this far behind is not looked at again; more where there are many runs. */
  private static final double FAR = 30;

  private static final double FAR_EACH = 0.5;

  /** A run this long is none of short-cycling. */
  private static final double LONG_MIN = 15;

  /** Predictions this far from each other tell two causes apart, in standard deviations. */
  private static final double APART = 1;

  /** So many of the best are tried together with each other. */
  private static final int TOGETHER = 4;

  /** Spread of the share that a battery supplies, and how far a measured one may count. */
  private static final double FED_SPREAD = 0.13;

  private static final double MEASURED = -12;

  /** Spread of the rise of the tank, of its logarithm. */
  private static final double RISE_SPREAD = 0.35;

  private final RunLikelihood runs;
  private final Observation seen;
  private final Map<Hypothesis, Double> logs = new LinkedHashMap<>();
  private final Map<List<Cause>, Hypothesis> best = new LinkedHashMap<>();
  private final Map<List<Cause>, Errors> errors = new HashMap<>();

  private LogRanking(RunLikelihood runs, Observation seen) {
    this.runs = runs;
    this.seen = seen;
  }

  /**
   * The causes ranked.
   *
   * @param seen what is known besides the times of the runs: supply, standby, words
   */
  static Ranking of(Watched log, Observation seen, List<Hypothesis> all) {
    LogRanking ranking = new LogRanking(new RunLikelihood(log), seen);
    ranking.roughly(all);
    ranking.closely(all);
    ranking.together();
    return ranking.ranked(log);
  }

  private void put(Hypothesis hypothesis, Errors under) {
    double log = runs.log(hypothesis.acts(), under);
    logs.merge(hypothesis, log, Math::max);
    Hypothesis before = best.get(hypothesis.causes());
    if (before == null || log >= logs.getOrDefault(before, log)) {
      best.put(hypothesis.causes(), hypothesis);
      errors.put(hypothesis.causes(), under);
    }
  }

  /** All, under the errors of the meters by which the usual home explains the runs best. */
  private void roughly(List<Hypothesis> all) {
    Errors usual = runs.errors(all.get(0).acts());
    all.forEach(hypothesis -> put(hypothesis, usual));
  }

  /** Each cause that is not far behind, under the errors that suit it best. */
  private void closely(List<Hypothesis> all) {
    double top = logs.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    double least = top - FAR - FAR_EACH * runs.size();
    for (Hypothesis nearest : List.copyOf(best.values())) {
      if (logs.getOrDefault(nearest, top) >= least) {
        Errors own = runs.errors(nearest.acts());
        all.stream().filter(h -> h.first() == nearest.first()).forEach(h -> put(h, own));
      }
    }
  }

  private void together() {
    List<Hypothesis> leading =
        best.values().stream()
            .filter(h -> h.first() != Cause.NOTHING_UNUSUAL)
            .sorted(Comparator.comparingDouble(this::probability).reversed())
            .limit(TOGETHER)
            .toList();
    for (int one = 0; one < leading.size(); one++) {
      for (int other = one + 1; other < leading.size(); other++) {
        Hypothesis both = leading.get(one).and(leading.get(other));
        put(both, errors.getOrDefault(leading.get(one).causes(), Errors.NONE));
      }
    }
  }

  /** Log of the probability, up to a common term. */
  private double probability(Hypothesis hypothesis) {
    return Math.log(hypothesis.before())
        + INDEPENDENT * logs.getOrDefault(hypothesis, 0.0)
        + evidence(hypothesis.acts());
  }

  /**
   * What the times of the runs do not show: who supplies the heat pump, and whether anything does.
   */
  private double evidence(Behaviour b) {
    double standby =
        new Prediction()
            .with(Feature.STANDBY_LOST, b.supplyCut ? 0.5 : 0, b.supplyCut ? 0.25 : 0.02)
            .logLikelihood(Feature.STANDBY_LOST, seen);
    return standby
        + seen.get(Feature.BATTERY)
            .map(
                share ->
                    Math.max(MEASURED, -0.5 * Math.pow((share - b.batteryShare) / FED_SPREAD, 2)))
            .orElse(0.0);
  }

  private Ranking ranked(Watched log) {
    Map<List<Cause>, Double> sums = new LinkedHashMap<>();
    logs.keySet().forEach(h -> sums.merge(h.causes(), probability(h), LogRanking::logOfSum));
    List<List<Cause>> order = new ArrayList<>(sums.keySet());
    order.sort(Comparator.comparingDouble((List<Cause> c) -> sums.getOrDefault(c, 0.0)).reversed());
    double top = sums.getOrDefault(order.get(0), 0.0);
    double all = sums.values().stream().mapToDouble(sum -> Math.exp(sum - top)).sum();
    List<Ranked> ranked = new ArrayList<>();
    for (int place = 0; place < order.size(); place++) {
      Hypothesis one = best.getOrDefault(order.get(place), best.values().iterator().next());
      double likelihood = Math.exp(sums.getOrDefault(order.get(place), top) - top) / all;
      Hypothesis next = best.getOrDefault(order.get(place == 0 ? 1 : 0), one);
      Prediction mine = predicted(log, one.acts());
      Prediction theirs = predicted(log, next.acts());
      ranked.add(
          new Ranked(
              one.causes(),
              one.differs(),
              likelihood,
              mine,
              telling(mine, theirs),
              apart(one, mine, next, theirs),
              evidence(one),
              explained(one),
              runs.size()));
    }
    double unknown = Math.log(UNKNOWN_BEFORE) + INDEPENDENT * runs.logOfOwn();
    boolean fits = top - evidenceOf(order.get(0)) > unknown || isSpaceHeating(order.get(0));
    return new Ranking(List.copyOf(ranked), fits);
  }

  /**
   * One thing to do; beside a cause that may be it too, what to do for that; and what would differ
   * most between the two of what the log does not show.
   */
  private String apart(Hypothesis one, Prediction mine, Hypothesis next, Prediction theirs) {
    String other = next.causes().stream().map(Cause::word).collect(Collectors.joining(" + "));
    return one.first().reading()
        + mine.features().stream()
            .filter(feature -> seen.get(feature).isEmpty() && mine.apart(feature, theirs) > APART)
            .max(Comparator.comparingDouble(feature -> mine.apart(feature, theirs)))
            .map(
                feature ->
                    String.format(
                        Locale.ROOT,
                        "; or log %s: %s with this, %s with %s",
                        feature.says(),
                        Values.says(feature, mine.get(feature).orElse(0.0)),
                        Values.says(feature, theirs.get(feature).orElse(0.0)),
                        other))
            .orElse("");
  }

  /** What a cause predicts of all that is observed. */
  private Prediction predicted(Watched log, Behaviour b) {
    Prediction predicted = FreeRun.predicted(log, b);
    if (seen.get(Feature.BATTERY).isPresent()) {
      predicted.with(Feature.BATTERY, b.batteryShare, FED_SPREAD);
    }
    if (seen.get(Feature.STANDBY_LOST).isPresent()) {
      predicted.with(Feature.STANDBY_LOST, b.supplyCut ? 0.5 : 0, b.supplyCut ? 0.25 : 0.02);
    }
    return predicted.with(
        Feature.RISE, b.tankStaysCold ? 0 : Math.max(0, b.rise_K_per_h), RISE_SPREAD);
  }

  /** What is observed, that which speaks most for one against another first. */
  private List<Feature> telling(Prediction mine, Prediction theirs) {
    return mine.features().stream()
        .filter(feature -> seen.get(feature).isPresent())
        .sorted(
            Comparator.comparingDouble(
                feature -> theirs.logLikelihood(feature, seen) - mine.logLikelihood(feature, seen)))
        .toList();
  }

  /** Long runs without a reason of the hot water are space heating, which is usual. */
  private boolean isSpaceHeating(List<Cause> first) {
    return first.get(0) == Cause.NOTHING_UNUSUAL && seen.get(Feature.RUN).orElse(0.0) >= LONG_MIN;
  }

  private double evidenceOf(List<Cause> causes) {
    Hypothesis one = best.get(causes);
    return one == null ? 0 : evidence(one.acts());
  }

  private int explained(Hypothesis one) {
    return runs.explained(one.acts(), under(one));
  }

  /** The run or pause of the log that tells a cause best from the usual home. */
  private String evidence(Hypothesis one) {
    Hypothesis usual = best.get(List.of(Cause.NOTHING_UNUSUAL));
    if (usual == null || usual.equals(one)) {
      return "";
    }
    return runs.evidence(one.acts(), under(one), usual.acts(), under(usual));
  }

  private Errors under(Hypothesis one) {
    return errors.getOrDefault(one.causes(), Errors.NONE);
  }

  private static double logOfSum(double one, double other) {
    double high = Math.max(one, other);
    return high + Math.log(Math.exp(one - high) + Math.exp(other - high));
  }
}
