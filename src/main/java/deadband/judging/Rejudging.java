package deadband.judging;

import deadband.days.DayRuns;
import deadband.facts.Case;
import deadband.facts.Condition;
import deadband.facts.Facts;
import deadband.limits.Limits;
import deadband.setup.Reads;
import deadband.setup.Setup;
import deadband.topics.Topics;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Judges a setup so that changes of it cost little: the topics whose facts read nothing that
 * changed are not derived again, and the checks that look at none of the new facts stand as they
 * are. What comes of it is what judging the changed setup afresh comes to. For any number of
 * threads.
 */
final class Rejudging {

  private final RuleBook book;
  private final List<Check> checks;
  private final Setup setup;
  private final Limits limits;
  private final DayRuns runs;
  private final Reads reads = new Reads();
  private final List<Facts> byTopic = new ArrayList<>(Topics.COUNT);

  private final Outcomes before;

  /** Judges the setup itself, and notes what is read for it. */
  Rejudging(RuleBook book, List<Check> checks, Setup setup, Limits limits, DayRuns runs) {
    this.book = book;
    this.checks = checks;
    this.setup = setup;
    this.limits = limits;
    this.runs = runs;
    Facts all = new Facts();
    for (int topic = 0; topic < Topics.COUNT; topic++) {
      int number = topic;
      Facts facts = reads.by(topic).reading(() -> Topics.of(number, setup, limits, runs));
      byTopic.add(facts);
      all.add(facts);
    }
    before = Outcomes.of(Matches.of(book, all), checks, all);
  }

  /** What the setup came to. */
  Outcomes before() {
    return before;
  }

  /** What another setup comes to. */
  Outcomes of(Setup changed, DayRuns runs) {
    long touched = reads.touched(setup, changed);
    if (runs != this.runs) {
      touched |= 1L << Topics.OF_DAYS;
    }
    return touched == 0 ? before : new Changed(changed, runs).outcomes(touched);
  }

  /** Another setup. */
  private final class Changed {

    private final Setup changed;
    private final DayRuns runs;
    private final Map<Integer, Facts> anew = new HashMap<>();
    private final Set<Class<?>> types = new HashSet<>();
    private final Set<Class<?>> conditions = new HashSet<>();

    Changed(Setup changed, DayRuns runs) {
      this.changed = changed;
      this.runs = runs;
    }

    Outcomes outcomes(long touched) {
      long more = touched;
      List<Check> concerned = List.of();
      while (more != 0) {
        derive(more);
        concerned = checks.stream().filter(this::isConcerned).toList();
        more = wanted(concerned);
      }
      Facts facts = facts(concerned);
      return before.with(Outcomes.of(Matches.of(book, facts), concerned, facts));
    }

    private void derive(long topics) {
      for (int topic = 0; topic < Topics.COUNT; topic++) {
        if ((topics & 1L << topic) != 0) {
          Facts facts = Topics.of(topic, changed, limits, runs);
          anew.put(topic, facts);
          byTopic.get(topic).entries().forEach(entry -> types.add(entry.type()));
          facts.entries().forEach(entry -> types.add(entry.type()));
          compare(byTopic.get(topic).conditions(), facts.conditions());
        }
      }
    }

    /** Notes the conditions that are not as they were. */
    private void compare(List<Condition> were, List<Condition> are) {
      for (int i = 0; i < Math.max(were.size(), are.size()); i++) {
        if (were.size() != are.size() || !isSame(were.get(i), are.get(i))) {
          were.stream().skip(i).limit(1).forEach(was -> conditions.add(was.getClass()));
          are.stream().skip(i).limit(1).forEach(is -> conditions.add(is.getClass()));
        }
      }
    }

    private static boolean isSame(Condition was, Condition is) {
      return was.getClass() == is.getClass() && was.answer().isLike(is.answer());
    }

    private boolean isConcerned(Check check) {
      return types.contains(check.caseType())
          || check.conditions().stream().anyMatch(conditions::contains);
    }

    /** The topics whose facts these checks look at, and that were not derived yet. */
    private long wanted(List<Check> concerned) {
      Set<Class<? extends Case>> looked = new HashSet<>();
      concerned.forEach(check -> looked.add(check.caseType()));
      long wanted = 0;
      for (int topic = 0; topic < Topics.COUNT; topic++) {
        if (!anew.containsKey(topic) && byTopic.get(topic).isAboutAny(looked)) {
          wanted |= 1L << topic;
        }
      }
      return wanted;
    }

    /** What these checks look at, in the order of the topics. */
    private Facts facts(List<Check> concerned) {
      Set<Class<?>> looked = new HashSet<>();
      for (Check check : concerned) {
        looked.add(check.caseType());
        looked.addAll(check.conditions());
      }
      Facts facts = new Facts();
      for (int topic = 0; topic < Topics.COUNT; topic++) {
        Facts now = anew.getOrDefault(topic, byTopic.get(topic));
        if (anew.containsKey(topic)) {
          facts.add(now, entry -> looked.contains(entry.type()));
        }
        for (Condition condition : now.conditions()) {
          if (looked.contains(condition.getClass())) {
            facts.add(condition);
          }
        }
      }
      return facts;
    }
  }
}
