package deadband.cases;

import deadband.setup.Accepted;
import deadband.setup.Setup;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;

/** Cases about the entries by which findings were accepted. */
public final class Acceptances {

  private Acceptances() {}

  /**
   * The cases of a setup's entries.
   *
   * @param asOf the date against which they are held
   * @param matches whether there is anything for an entry to accept
   * @param hazard whether what an entry names is a hazard
   */
  public static List<Cases.Entry> of(
      Setup setup, LocalDate asOf, Predicate<Accepted> matches, Predicate<Accepted> hazard) {
    Cases cases = new Cases();
    List<Accepted> entries = setup.accepted().optional().orElse(List.of());
    if (entries.isEmpty()) {
      cases.into(AcceptedEntry.class, setup.accepted().pointer()).none();
    }
    for (Accepted entry : entries) {
      cases
          .into(AcceptedEntry.class, entry.part().pointer())
          .makes(
              because ->
                  new AcceptedEntry(
                      because.explained(() -> Detail.at(entry.part().pointer()).size(1).done()),
                      isReasoned(entry),
                      isInForce(entry, asOf),
                      matches.test(entry),
                      hazard.test(entry)));
    }
    return cases.entries();
  }

  /** Whether an entry gives a reason. */
  public static boolean isReasoned(Accepted entry) {
    return entry.reason().optional().filter(reason -> !reason.isBlank()).isPresent();
  }

  /** Whether a date lies between an entry's dates, where it has them. */
  public static boolean isInForce(Accepted entry, LocalDate asOf) {
    boolean begun = entry.on().optional().filter(asOf::isBefore).isEmpty();
    boolean lapsed = entry.until().optional().filter(asOf::isAfter).isPresent();
    return begun && !lapsed;
  }
}
