package deadband.judging;

import deadband.document.NearestName;
import deadband.document.Pointer;
import deadband.facts.Facts;
import deadband.setup.Accepted;
import deadband.setup.Setup;
import deadband.topics.records.Acceptances;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The entries by which a senior engineer accepts findings. An accepted finding stays in the report
 * but no longer decides the verdict; what a hazard check says cannot be accepted away.
 *
 * @param entries in the order of the file
 * @param asOf the date against which they are held
 */
record Acceptance(Setup setup, List<Accepted> entries, LocalDate asOf) {

  static Acceptance of(Setup setup, LocalDate asOf) {
    return new Acceptance(setup, setup.accepted().optional().orElse(List.of()), asOf);
  }

  /** Whether a check is about these entries themselves. */
  static boolean isAbout(Check check) {
    return check.caseType() == Acceptances.AcceptedEntry.class;
  }

  /** The finding, accepted where an entry in force covers it. */
  Finding applied(Finding finding) {
    return inForce(entry -> covers(entry, finding)).map(finding::accepted).orElse(finding);
  }

  /** The check not judged, accepted where an entry in force covers all that it misses. */
  NotJudged applied(NotJudged open) {
    return inForce(entry -> covers(entry, open))
        .map(entry -> new NotJudged(open.check(), open.missing(), entry))
        .orElse(open);
  }

  /** What is wrong with the entries, seen against what they are to accept. */
  Facts cases(RuleBook book, List<Finding> findings, List<NotJudged> open) {
    return Acceptances.of(
        setup,
        asOf,
        entry ->
            findings.stream().anyMatch(finding -> names(entry, finding))
                || open.stream().anyMatch(other -> names(entry, other)),
        entry -> book.find(checkOf(entry)).filter(Acceptance::isHazard).isPresent(),
        entry -> slip(checkOf(entry), book));
  }

  /** What is wrong with the name of a check; empty where there is one of that name. */
  private static Optional<String> slip(String name, RuleBook book) {
    if (book.find(name).isPresent()) {
      return Optional.empty();
    }
    List<String> names = book.checks().stream().map(Check::name).toList();
    return Optional.of(
        (name.isEmpty() ? "no check is named" : "there is no check " + name)
            + NearestName.of(name, names).map(near -> "; nearest: " + near).orElse(""));
  }

  private Optional<Accepted> inForce(Predicate<Accepted> covers) {
    return entries.stream()
        .filter(Acceptances::isSigned)
        .filter(entry -> Acceptances.isInForce(entry, asOf))
        .filter(covers)
        .findFirst();
  }

  private static boolean covers(Accepted entry, Finding finding) {
    return !isHazard(finding.check()) && names(entry, finding);
  }

  private static boolean covers(Accepted entry, NotJudged open) {
    return !isHazard(open.check())
        && names(entry, open)
        && entry.pointer().optional().filter(open.missing()::contains).isPresent()
        && open.missing().size() == 1;
  }

  private static boolean names(Accepted entry, Finding finding) {
    Optional<Pointer> place = entry.pointer().optional();
    return finding.check().isNamed(checkOf(entry))
        && (place.isEmpty() || finding.detail().at().contains(place.get()));
  }

  private static boolean names(Accepted entry, NotJudged open) {
    return open.check().isNamed(checkOf(entry))
        && entry.pointer().optional().filter(open.missing()::contains).isPresent();
  }

  private static String checkOf(Accepted entry) {
    return entry.check().optional().orElse("");
  }

  private static boolean isHazard(Check check) {
    return check.consequence() == Consequence.HAZARD;
  }
}
