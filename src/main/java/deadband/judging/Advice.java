package deadband.judging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The order in which remedies of one finding are worth taking: what is given up first, then what
 * else they clear and the whole effect, and the fewest changes only among near equals. Against a
 * hazard they stay in the order they came in: its margin goes before the energy.
 */
final class Advice {

  /** Effects within this share of the better one count as equal: our own choice. */
  private static final double NEAR = 0.02;

  private Advice() {}

  /** The remedies, the one to take first; equals stay in the order they came in. */
  static List<Remedy> ordered(List<Remedy> remedies, Consequence of) {
    List<Remedy> left = new ArrayList<>(remedies);
    List<Remedy> ordered = new ArrayList<>();
    while (!left.isEmpty()) {
      Remedy next = of == Consequence.HAZARD ? soundest(left).get(0) : best(left);
      left.remove(next);
      ordered.add(next);
    }
    return List.copyOf(ordered);
  }

  /** Settings before work on site, and those that make the least worse. */
  private static List<Remedy> soundest(List<Remedy> remedies) {
    List<Remedy> best = least(remedies, remedy -> remedy.isSetting() ? 0 : 1);
    best = least(best, remedy -> remedy.proof().raises().size());
    return least(best, remedy -> remedy.proof().enlarges().size());
  }

  private static Remedy best(List<Remedy> remedies) {
    List<Remedy> best = mostTrusted(soundest(remedies));
    best = least(best, remedy -> -remedy.proof().clears().size());
    best = near(best, remedy -> -remedy.proof().effect().heatByPump_kWh());
    best = near(best, remedy -> remedy.proof().effect().starts());
    best = near(best, remedy -> remedy.proof().effect().import_kWh());
    boolean compared = best.get(0).proof().effect().isComparable();
    return (compared ? least(best, remedy -> remedy.changes().size()) : best).get(0);
  }

  private static List<Remedy> mostTrusted(List<Remedy> of) {
    Trust best = of.stream().map(Remedy::trust).min(Comparator.naturalOrder()).orElseThrow();
    return of.stream().filter(remedy -> remedy.trust() == best).toList();
  }

  private static List<Remedy> least(List<Remedy> of, ToDoubleFunction<Remedy> quantity) {
    double least = of.stream().mapToDouble(quantity).min().orElseThrow();
    return of.stream().filter(remedy -> quantity.applyAsDouble(remedy) <= least).toList();
  }

  private static List<Remedy> near(List<Remedy> of, ToDoubleFunction<Remedy> quantity) {
    double least = of.stream().mapToDouble(quantity).min().orElseThrow();
    double most = least + NEAR * Math.abs(least);
    return of.stream().filter(remedy -> quantity.applyAsDouble(remedy) <= most).toList();
  }
}
