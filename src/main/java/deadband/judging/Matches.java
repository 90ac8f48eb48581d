package deadband.judging;

import deadband.facts.Case;
import deadband.facts.Fact;
import deadband.facts.Facts;
import deadband.facts.Reading;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** What the rules matched in one reading of the facts, by check and case. */
final class Matches {

  /** Most checks have none, and few more than one. */
  private final Map<String, List<Match>> byCheck = new HashMap<>();

  Matches(Collection<Match> matches) {
    for (Match match : matches) {
      byCheck.computeIfAbsent(match.check(), check -> new ArrayList<>(2)).add(match);
    }
  }

  /**
   * The matches of one setup: what may be found or not judged, and what of it stands.
   *
   * @param withoutDefaults holds whatever could be, were the defaults not there
   * @param atBest of those, the ones that could be
   * @param surely of those, the ones that are
   */
  record Read(Matches withoutDefaults, Matches atBest, Matches surely) {}

  /**
   * The loosest reading is of all facts; a stricter one, only of the matches it may undo. Where
   * nothing is open, what holds at best is what holds surely.
   */
  static Read of(RuleBook book, Facts facts) {
    List<Match> loosely = in(Reading.WITHOUT_DEFAULTS, book, facts.all());
    List<Match> surely =
        stricter(book, Reading.SURELY, loosely, match -> match.restsOnDefaults() || match.isOpen());
    List<Match> open = new ArrayList<>(loosely);
    open.removeIf(match -> match.restsOnDefaults() && !match.isOpen());
    List<Match> atBest = stricter(book, Reading.AT_BEST, open, Match::restsOnDefaults);
    atBest.addAll(surely);
    return new Read(new Matches(loosely), new Matches(atBest), new Matches(surely));
  }

  /** What is found for sure, and nothing of what may be: for those who look for findings alone. */
  static Read surely(RuleBook book, Facts facts) {
    Matches surely = new Matches(in(Reading.SURELY, book, facts.all()));
    return new Read(surely, surely, surely);
  }

  private static List<Match> in(Reading reading, RuleBook book, Collection<Fact> facts) {
    if (facts.isEmpty()) {
      return List.of();
    }
    Reading.set(reading);
    return book.matches(facts);
  }

  /**
   * What is left of some matches in a stricter reading: those it cannot undo, and those made again.
   *
   * @param mayUndo whether the reading takes anything that a match looked at in another way
   */
  private static List<Match> stricter(
      RuleBook book, Reading reading, List<Match> looser, Predicate<Match> mayUndo) {
    List<Match> matches = new ArrayList<>();
    Set<Fact> again = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Match match : looser) {
      if (mayUndo.test(match)) {
        again.addAll(match.joined());
      } else {
        matches.add(match);
      }
    }
    matches.addAll(in(reading, book, again));
    return matches;
  }

  /** The last match of a check on a case. */
  @SuppressWarnings("ReferenceEquality") // cases that are alike are still two
  Optional<Match> of(String check, Case on) {
    Match last = null;
    for (Match match : byCheck.getOrDefault(check, List.of())) {
      last = match.found() == on ? match : last;
    }
    return Optional.ofNullable(last);
  }
}
