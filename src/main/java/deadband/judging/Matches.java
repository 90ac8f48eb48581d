package deadband.judging;

import deadband.facts.Case;
import deadband.facts.Fact;
import deadband.facts.Facts;
import deadband.facts.Reading;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the rules matched in one reading of the facts, by check and case. */
final class Matches {

  private static final Matches NONE = new Matches(List.of());

  private final Map<String, Map<Case, Match>> byCheck = new HashMap<>();

  Matches(List<Match> matches) {
    matches.forEach(
        match ->
            byCheck
                .computeIfAbsent(match.check(), name -> new IdentityHashMap<>())
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

  /** The loosest reading is of all facts; a stricter one, only of those that matched before. */
  static Read of(RuleBook book, Facts facts) {
    List<Fact> all = new ArrayList<>(facts.conditions());
    facts.entries().forEach(entry -> Optional.ofNullable(entry.fact()).ifPresent(all::add));
    Matches withoutDefaults = read(book, facts, Reading.WITHOUT_DEFAULTS, all);
    Matches atBest = read(book, facts, Reading.AT_BEST, withoutDefaults.joined());
    Matches surely = read(book, facts, Reading.SURELY, atBest.joined());
    return new Read(withoutDefaults, atBest, surely);
  }

  private static Matches read(RuleBook book, Facts facts, Reading reading, List<Fact> of) {
    if (of.isEmpty()) {
      return NONE;
    }
    facts.readAs(reading);
    return book.matches(of);
  }

  private List<Fact> joined() {
    Set<Fact> joined = Collections.newSetFromMap(new IdentityHashMap<>());
    List<Fact> ordered = new ArrayList<>();
    for (Map<Case, Match> matches : byCheck.values()) {
      for (Match match : matches.values()) {
        match.joined().stream().filter(joined::add).forEach(ordered::add);
      }
    }
    return ordered;
  }

  /** The match of a check on a case. */
  Optional<Match> of(String check, Case on) {
    return Optional.ofNullable(byCheck.getOrDefault(check, Map.of()).get(on));
  }
}
