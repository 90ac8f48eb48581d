package deadband.remedy;

import deadband.judging.Consequence;
import deadband.judging.Finding;
import deadband.judging.Judgement;
import deadband.judging.NotJudged;
import deadband.judging.Verdict;
import java.util.ArrayList;
import java.util.List;

/**
 * How far a setup is from sign-off: the verdict first, then the open findings class by class from
 * the gravest, then the checks that sign-off waits for. Less is nearer.
 *
 * @param verdict what the setup comes to
 * @param open numbers of open findings, by class from the gravest, and of checks waited for
 */
record Distance(Verdict verdict, List<Integer> open) implements Comparable<Distance> {

  static Distance of(Judgement judgement) {
    List<Integer> open = new ArrayList<>();
    for (Consequence consequence : Consequence.values()) {
      open.add(count(judgement, consequence));
    }
    open.add((int) judgement.notJudged().stream().filter(NotJudged::holdsUpSignOff).count());
    return new Distance(judgement.verdict(), List.copyOf(open));
  }

  private static int count(Judgement judgement, Consequence consequence) {
    return (int)
        judgement.findings().stream()
            .filter(Finding::isOpen)
            .filter(finding -> finding.consequence() == consequence)
            .count();
  }

  boolean isNearerThan(Distance other) {
    return compareTo(other) < 0;
  }

  @Override
  public int compareTo(Distance other) {
    int order = verdict.compareTo(other.verdict);
    for (int i = 0; order == 0 && i < open.size(); i++) {
      order = Integer.compare(open.get(i), other.open.get(i));
    }
    return order;
  }
}
