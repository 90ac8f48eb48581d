package deadband.diagnosis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is seen of a heat pump's running: values with their errors, and how runs begin and end. */
public final class Observation {

  /**
   * A value.
   *
   * @param error a standard deviation on the feature's scale
   * @param events of which it is a share; 0 where it is none
   */
  record Seen(double value, double error, int events) {}

  private final Map<Feature, Seen> values = new EnumMap<>(Feature.class);
  private final Map<Trigger, Integer> triggers = new EnumMap<>(Trigger.class);
  private final Map<Ending, Integer> endings = new EnumMap<>(Ending.class);

  /** With one thing more; a value that is not finite is not seen. */
  Observation with(Feature feature, double value, double error) {
    if (Double.isFinite(value)) {
      values.put(feature, new Seen(value, error, 0));
    }
    return this;
  }

  /** With the share of so many events. */
  Observation withShare(Feature feature, double share, int events) {
    if (Double.isFinite(share)) {
      values.put(feature, new Seen(share, 0, events));
    }
    return this;
  }

  Observation with(Trigger trigger, int times) {
    triggers.merge(trigger, times, Integer::sum);
    return this;
  }

  Observation with(Ending ending, int times) {
    endings.merge(ending, times, Integer::sum);
    return this;
  }

  public Optional<Double> get(Feature feature) {
    return Optional.ofNullable(values.get(feature)).map(Seen::value);
  }

  /** What is seen, in the order of {@link Feature}. */
  public List<Feature> features() {
    return new ArrayList<>(values.keySet());
  }

  Map<Feature, Seen> values() {
    return values;
  }

  /** How often runs began so, of those that show it. */
  public Map<Trigger, Integer> triggers() {
    return triggers;
  }

  public Map<Ending, Integer> endings() {
    return endings;
  }

  public boolean isEmpty() {
    return values.isEmpty() && triggers.isEmpty() && endings.isEmpty();
  }

  /** What another has and this one has not is added. */
  Observation completedBy(Observation other) {
    other.values.forEach(values::putIfAbsent);
    if (triggers.isEmpty()) {
      triggers.putAll(other.triggers);
    }
    if (endings.isEmpty()) {
      endings.putAll(other.endings);
    }
    return this;
  }
}
