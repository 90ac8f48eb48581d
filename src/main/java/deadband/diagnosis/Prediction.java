package deadband.diagnosis;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a cause would lead to, and how likely an observation is if it is so.
 *
 * <p>Noise, as stated: a value predicted is normally distributed about the prediction on the
 * feature's scale, with the standard deviation that stands beside each prediction, widened by the
 * error of the observation; a share of events is a count, beta-binomial about the prediction; in
 * one case of a hundred anything in the feature's range happens instead. Events of one log are not
 * independent: more than twelve count as twelve.
 */
public final class Prediction {

  private static final double ANYTHING = 0.01;
  private static final int INDEPENDENT = 12;
  private static final double RARE = 0.01;

  /** A predicted value, and its spread: a standard deviation on the feature's scale. */
  record Expected(double value, double spread) {}

  private final Map<Feature, Expected> values = new EnumMap<>(Feature.class);

  /** With a value predicted; one that cannot be worked out is not predicted. */
  Prediction with(Feature feature, double value, double spread) {
    if (Double.isFinite(value)) {
      values.put(feature, new Expected(value, spread));
    } else {
      values.remove(feature);
    }
    return this;
  }

  Prediction without(Feature feature) {
    values.remove(feature);
    return this;
  }

  public Optional<Double> get(Feature feature) {
    return Optional.ofNullable(values.get(feature)).map(Expected::value);
  }

  /** Log likelihood of an observation. */
  double logLikelihood(Observation seen) {
    double sum = 0;
    for (Map.Entry<Feature, Observation.Seen> one : seen.values().entrySet()) {
      sum += logLikelihood(one.getKey(), one.getValue());
    }
    return sum;
  }

  /** Log likelihood of one thing that was observed. */
  double logLikelihood(Feature feature, Observation seen) {
    Observation.Seen one = seen.values().get(feature);
    return one == null ? 0 : logLikelihood(feature, one);
  }

  /** Log of the probability density of one value. */
  private double logLikelihood(Feature feature, Observation.Seen seen) {
    Expected expected = values.get(feature);
    if (seen.events() > 0) {
      return logLikelihood(expected, seen.value(), seen.events());
    }
    double anything = 1 / feature.range();
    if (expected == null) {
      return Math.log(anything);
    }
    double spread = Math.hypot(expected.spread, seen.error());
    double apart = apart(feature, seen.value(), expected.value) / spread;
    double normal = Math.exp(-0.5 * apart * apart) / (spread * Math.sqrt(2 * Math.PI));
    return Math.log((1 - ANYTHING) * normal + ANYTHING * anything);
  }

  /** Of a count among events: beta-binomial, which is uniform where nothing is predicted. */
  private static double logLikelihood(@Nullable Expected expected, double share, int events) {
    int of = Math.min(events, INDEPENDENT);
    int count = (int) Math.round(share * of);
    double anything = ofCount(1, 1, count, of);
    if (expected == null) {
      return Math.log(anything);
    }
    double mean = Math.max(RARE, Math.min(1 - RARE, expected.value));
    double variance = Math.min(expected.spread * expected.spread, 0.8 * mean * (1 - mean));
    double sure = mean * (1 - mean) / variance - 1;
    double predicted = ofCount(mean * sure, (1 - mean) * sure, count, of);
    return Math.log((1 - ANYTHING) * predicted + ANYTHING * anything);
  }

  /** Probability of one order of so many hits among so many events, by a beta distribution. */
  private static double ofCount(double hits, double misses, int count, int of) {
    double probability = 1;
    for (int event = 0; event < of; event++) {
      double weight = event < count ? hits + event : misses + event - count;
      probability *= weight / (hits + misses + event);
    }
    return probability;
  }

  private static double apart(Feature feature, double one, double other) {
    return feature.scaled(one) - feature.scaled(other);
  }

  /** How far a prediction is from that of another cause, in standard deviations. */
  double apart(Feature feature, Prediction other) {
    Expected mine = values.get(feature);
    Expected theirs = other.values.get(feature);
    return mine == null || theirs == null
        ? 0
        : Math.abs(apart(feature, mine.value, theirs.value))
            / Math.hypot(mine.spread, theirs.spread);
  }

  /** The features predicted, in their order. */
  public List<Feature> features() {
    return List.copyOf(values.keySet());
  }
}
