package deadband.judging;

import java.util.Comparator;
import java.util.List;

/**
 * The order of findings: class, causes before what another causes, size in the class's own unit,
 * certainty, name, subject.
 */
final class Ranking {

  static final Comparator<Finding> WORST_FIRST =
      Comparator.comparing(Finding::consequence)
          .thenComparing(finding -> finding.causedBy() != null)
          .thenComparing(finding -> -finding.detail().size())
          .thenComparing(finding -> !finding.isCertain())
          .thenComparing(finding -> finding.check().name())
          .thenComparing(Finding::subject);

  private Ranking() {}

  static List<Finding> ranked(List<Finding> findings) {
    return findings.stream().sorted(WORST_FIRST).toList();
  }
}
