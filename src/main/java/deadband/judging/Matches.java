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

  private final Map<String, Map<Case, Match>> byCheck = new HashMap<>();

  Matches(Collection<Match> matches) {
    matches.forEach(
        match ->
            byCheck
                .computeIfAbsent(match.check(), name -> new IdentityHashMap<>(2))
                .put(match.found(), match));
  }

  /**
   * The matches of one setup: what may be found or not judged, and what of it stands.
   *
   * @param withoutDefaults holds whatever could be, were the defaults not there
   * @param atBest of those, the ones that could be
   * @param surely of those, the ones that are
   */
  record Read(Matches withoutDefaults, Matches atBest, Matches surely) {}

  /** The loosest reading is of all facts; a stricter one, only of the matches it may undo. */
  static Read of(RuleBook book, Facts facts) {
    List<Fact> all = new ArrayList<>(facts.conditions());
    facts.entries().forEach(entry -> Optional.ofNullable(entry.fact()).ifPresent(all::add));
    Reading.set(Reading.WITHOUT_DEFAULTS);
    List<Match> withoutDefaults = all.isEmpty() ? List.of() : book.matches(all);
    List<Match> atBest = stricter(book, Reading.AT_BEST, withoutDefaults, Match::restsOnDefaults);
    List<Match> surely = stricter(book, Reading.SURELY, atBest, Match::isOpen);
    return new Read(new Matches(withoutDefaults), new Matches(atBest), new Matches(surely));
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
    if (!again.isEmpty()) {
      Reading.set(reading);
      matches.addAll(book.matches(again));
    }
    return matches;
  }

  /** The match of a check on a case. */
  Optional<Match> of(String check, Case on) {
    return Optional.ofNullable(byCheck.getOrDefault(check, Map.of()).get(on));
  }
}
