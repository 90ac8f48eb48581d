package deadband.topics.records;

import deadband.facts.Answer;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.provenance.Derived;
import deadband.setup.Accepted;
import deadband.setup.Entered;
import deadband.setup.Setup;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/** Facts about the entries by which findings were accepted. */
public final class Acceptances {

  /**
   * One entry by which a finding was accepted.
   *
   * @param reasoned whether it says why, by whom and on which day
   * @param inForce whether the day of the judgement lies between its dates
   * @param matches whether there is anything for it to accept
   * @param hazard whether what it names is a hazard
   */
  public record AcceptedEntry(
      Evidence evidence, Answer reasoned, Answer inForce, Answer matches, Answer hazard)
      implements Case {}

  private Acceptances() {}

  /**
   * The facts of a setup's entries.
   *
   * @param asOf the date against which they are held
   * @param matches whether there is anything for an entry to accept
   * @param hazard whether what an entry names is a hazard
   * @param slip what is wrong with the name of its check, in words; empty where nothing is
   */
  public static Facts of(
      Setup setup,
      LocalDate asOf,
      Predicate<Accepted> matches,
      Predicate<Accepted> hazard,
      Function<Accepted, Optional<String>> slip) {
    Facts facts = new Facts();
    List<Accepted> entries = setup.accepted().optional().orElse(List.of());
    if (entries.isEmpty()) {
      facts.into(AcceptedEntry.class, setup.accepted().pointer()).none();
    }
    for (Accepted entry : entries) {
      facts
          .into(AcceptedEntry.class, entry.part().pointer())
          .makes(
              because ->
                  new AcceptedEntry(
                      because.explained(() -> detail(entry, slip.apply(entry))),
                      known(because, isSigned(entry)),
                      known(because, isInForce(entry, asOf)),
                      known(because, matches.test(entry)),
                      known(because, hazard.test(entry))));
    }
    return facts;
  }

  private static Answer known(Facts.Grounds because, boolean is) {
    return because.answer(Derived.constant(is));
  }

  private static Detail detail(Accepted entry, Optional<String> slip) {
    Detail.Builder detail = Detail.at(entry.part().pointer());
    slip.ifPresent(detail::basis);
    return detail.done();
  }

  /** Whether an entry says why, by whom and on which day. */
  public static boolean isSigned(Accepted entry) {
    return isSaid(entry.reason()) && isSaid(entry.by()) && entry.on().isEntered();
  }

  private static boolean isSaid(Entered<String> text) {
    return text.optional().filter(said -> !said.isBlank()).isPresent();
  }

  /** Whether a date lies between an entry's dates, where it has them. */
  public static boolean isInForce(Accepted entry, LocalDate asOf) {
    boolean begun = entry.on().optional().filter(asOf::isBefore).isEmpty();
    boolean lapsed = entry.until().optional().filter(asOf::isAfter).isPresent();
    return begun && !lapsed;
  }
}
