package deadband.judging;

import java.util.Comparator;
import java.util.List;

/**
 * The order of findings: class, severity, certainty, name, subject. What another finding causes
 * keeps its own rank: the worst class comes first, whatever lies behind it.
 */
final class Ranking {

  static final Comparator<Finding> WORST_FIRST =
      Comparator.comparing(Finding::consequence)
          .thenComparing(finding -> -finding.size().severity())
          .thenComparing(finding -> !finding.isCertain())
          .thenComparing(finding -> finding.check().name())
          .thenComparing(Finding::subject);

  private Ranking() {}

  static List<Finding> ranked(List<Finding> findings) {
    return findings.stream().sorted(WORST_FIRST).toList();
  }
}
