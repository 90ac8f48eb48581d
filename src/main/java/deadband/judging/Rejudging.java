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
  private final Limits limits;
  private final DayRuns runs;
  private final Setup setup;
  private final Reads reads;
  private final List<Facts> byTopic;

  private final Outcomes before;

  private Rejudging(
      RuleBook book,
      List<Check> checks,
      Limits limits,
      DayRuns runs,
      Noted noted,
      Outcomes before) {
    this.book = book;
    this.checks = checks;
    this.limits = limits;
    this.runs = runs;
    this.setup = noted.setup;
    this.reads = noted.reads;
    this.byTopic = noted.byTopic;
    this.before = before;
  }

  /** The facts of a setup topic by topic, and what was read of it for each. */
  private record Noted(Setup setup, Reads reads, List<Facts> byTopic) {

    static Noted of(Setup setup) {
      return new Noted(setup, new Reads(), new ArrayList<>(Topics.COUNT));
    }

    void derive(int topic, Limits limits, DayRuns runs) {
      byTopic.add(reads.by(topic).reading(() -> Topics.of(topic, setup, limits, runs)));
    }
  }

  /**
   * Judges setups and notes what is read for each, topic by topic: the code of all topics is more
   * than a processor keeps at hand, so that one setup after the other takes longer.
   */
  static List<Rejudging> of(
      RuleBook book, List<Check> checks, List<Setup> setups, Limits limits, DayRuns runs) {
    List<Noted> noted = setups.stream().map(Noted::of).toList();
    for (int topic = 0; topic < Topics.COUNT; topic++) {
      for (Noted each : noted) {
        each.derive(topic, limits, runs);
      }
    }
    List<Facts> facts = noted.stream().map(each -> Facts.together(each.byTopic)).toList();
    List<Matches.Read> matches = facts.stream().map(all -> Matches.of(book, all)).toList();
    List<Rejudging> judged = new ArrayList<>(setups.size());
    for (int i = 0; i < setups.size(); i++) {
      Outcomes before = Outcomes.of(matches.get(i), checks, facts.get(i));
      judged.add(new Rejudging(book, checks, limits, runs, noted.get(i), before));
    }
    return judged;
  }

  Setup setup() {
    return setup;
  }

  /** What the setup came to. */
  Outcomes before() {
    return before;
  }

  /** What another setup comes to. */
  Outcomes of(Setup changed) {
    long touched = reads.touched(setup, changed);
    if (touched == 0) {
      return before;
    }
    Changed anew = new Changed(changed, runs, checks);
    Facts facts = anew.derived(touched);
    return before.with(Outcomes.of(Matches.of(book, facts), anew.concerned, facts));
  }

  /**
   * What some checks find in another setup for which no day is run; what they find here as well may
   * be left out.
   */
  List<Finding> findings(Setup other, List<Check> some) {
    Changed anew = new Changed(other, DayRuns.none(), some);
    long days = runs == DayRuns.none() ? 0 : 1L << Topics.OF_DAYS;
    Facts facts = anew.derived(reads.touched(setup, other) | days);
    return Outcomes.of(Matches.surely(book, facts), anew.concerned, facts).findings();
  }

  /** Another setup. */
  private final class Changed {

    private final Setup changed;
    private final DayRuns runs;
    private final Map<Integer, Facts> anew = new HashMap<>();
    private final Set<Class<?>> types = new HashSet<>();
    private final Set<Class<?>> conditions = new HashSet<>();
    private final List<Check> checks;
    private List<Check> concerned = List.of();

    Changed(Setup changed, DayRuns runs, List<Check> checks) {
      this.changed = changed;
      this.runs = runs;
      this.checks = checks;
    }

    /** What the checks that are concerned look at. */
    Facts derived(long touched) {
      long more = touched;
      while (more != 0) {
        derive(more);
        concerned = checks.stream().filter(this::isConcerned).toList();
        more = wanted();
      }
      return facts();
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
    private long wanted() {
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
    private Facts facts() {
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
