package deadband.diagnosis;

import deadband.diagnosis.Signatures.Candidate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Causes in the order of their probability after an observation: what each was before, times the
 * likelihood of the observation, over the sum of all. A cause in several sizes is their sum.
 *
 * @param causes the likeliest first
 * @param fits whether the first explains the observation better than a cause that is not known
 *     here, under which anything is as likely as anything else
 */
record Ranking(List<Ranked> causes, boolean fits) {

  /** A cause that is not known here, before anything is seen. */
  private static final double UNKNOWN_BEFORE = 0.2;

  /** A prediction this far from another's tells them apart, in standard deviations. */
  private static final double APART = 1.5;

  private static final double SURE = 0.8;

  /** What one cause came to. */
  private record Score(Cause cause, double logProbability, Candidate best) {}

  static Ranking none() {
    return new Ranking(List.of(), false);
  }

  /** Probability that nothing is unusual. */
  double usual() {
    return causes.stream()
        .filter(ranked -> ranked.first() == Cause.NOTHING_UNUSUAL)
        .mapToDouble(Ranked::likelihood)
        .sum();
  }

  /** Whether the first cause is a fault that leaves little room for anything else. */
  boolean isSureOfFault() {
    Ranked first = causes.get(0);
    return fits && first.first() != Cause.NOTHING_UNUSUAL && first.likelihood() >= SURE;
  }

  static Ranking of(Observation seen, List<Candidate> candidates) {
    List<Score> scores = scores(seen, candidates);
    if (scores.isEmpty()) {
      return none();
    }
    double top = scores.get(0).logProbability;
    double all = scores.stream().mapToDouble(s -> Math.exp(s.logProbability - top)).sum();
    List<Ranked> causes = new ArrayList<>();
    for (int index = 0; index < scores.size(); index++) {
      Score score = scores.get(index);
      Score next = scores.get(index == 0 ? Math.min(1, scores.size() - 1) : 0);
      causes.add(
          new Ranked(
              List.of(score.cause),
              score.best.differs(),
              Math.exp(score.logProbability - top) / all,
              score.best.prediction(),
              telling(score, next, seen),
              apart(score, next, seen),
              "",
              0,
              0));
    }
    double unknown = Math.log(UNKNOWN_BEFORE) + new Prediction().logLikelihood(seen);
    return new Ranking(List.copyOf(causes), top > unknown);
  }

  private static List<Score> scores(Observation seen, List<Candidate> candidates) {
    Map<Cause, Score> scores = new EnumMap<>(Cause.class);
    for (Candidate candidate : candidates) {
      double log = Math.log(candidate.before()) + candidate.prediction().logLikelihood(seen);
      scores.merge(candidate.cause(), new Score(candidate.cause(), log, candidate), Ranking::sum);
    }
    List<Score> sorted = new ArrayList<>(scores.values());
    sorted.sort(
        Comparator.comparingDouble(Score::logProbability).reversed().thenComparing(Score::cause));
    return sorted;
  }

  private static Score sum(Score one, Score other) {
    double high = Math.max(one.logProbability, other.logProbability);
    double sum = Math.exp(one.logProbability - high) + Math.exp(other.logProbability - high);
    Candidate best = one.logProbability >= other.logProbability ? one.best : other.best;
    return new Score(one.cause, high + Math.log(sum), best);
  }

  /** What is observed, by how much more likely one makes it than the other, or less. */
  private static List<Feature> telling(Score score, Score other, Observation seen) {
    Prediction mine = score.best.prediction();
    Prediction theirs = other.best.prediction();
    return seen.features().stream()
        .filter(feature -> mine.get(feature).isPresent())
        .sorted(
            Comparator.comparingDouble(
                feature ->
                    -Math.abs(
                        mine.logLikelihood(feature, seen) - theirs.logLikelihood(feature, seen))))
        .toList();
  }

  /** What to do to tell one from another: its reading, and what differs in what is not seen yet. */
  private static String apart(Score score, Score other, Observation seen) {
    String reading = score.cause.reading();
    String difference = "";
    double most = APART;
    Prediction mine = score.best.prediction();
    Prediction theirs = other.best.prediction();
    for (Feature feature : mine.features()) {
      double apart = mine.apart(feature, theirs);
      if (seen.get(feature).isEmpty() && apart > most) {
        most = apart;
        difference =
            "; or measure "
                + feature.says()
                + ": "
                + Values.says(feature, mine.get(feature).orElse(0.0))
                + ", against "
                + Values.says(feature, theirs.get(feature).orElse(0.0))
                + " if it is "
                + other.cause.word();
      }
    }
    return reading + difference;
  }
}
