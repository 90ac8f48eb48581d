package deadband.facts;

import deadband.dayrun.TestDays;
import deadband.document.Pointer;
import deadband.provenance.Derived;
import deadband.provenance.Provenance;
import deadband.setup.Entered;
import deadband.setup.Reads;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Collects the facts of one setup: conditions, and cases whose values are known or open. Where a
 * case arises is the rule's to say.
 *
 * <pre>{@code
 * facts.add(new RelayCallsHeatPump(facts.answer(loop.drivesHeatPump())));
 * facts.into(RelayGap.class, relay.part().pointer())
 *     .given(width, draw)
 *     .makes(
 *         because ->
 *             new RelayGap(
 *                 because.explained(() -> ...), because.quantity(width), because.quantity(draw)));
 * }</pre>
 */
public final class Facts {

  private static final Derived<Boolean> ALWAYS = Derived.constant(true);

  private final List<Entry> entries = new ArrayList<>();
  private final List<Condition> conditions = new ArrayList<>();

  public Facts() {}

  /** These of some facts. */
  public void add(Facts others, Predicate<Entry> which) {
    for (Entry entry : others.entries) {
      if (which.test(entry)) {
        entries.add(entry);
      }
    }
  }

  /** All of several facts. */
  public static Facts together(List<Facts> several) {
    Facts all = new Facts();
    for (Facts some : several) {
      all.entries.addAll(some.entries);
      all.conditions.addAll(some.conditions);
    }
    return all;
  }

  /** A condition that rules may join. */
  public void add(Condition condition) {
    conditions.add(condition);
  }

  /** The answer of a condition. */
  public Answer answer(Derived<Boolean> truth) {
    return new Answer(truth, new Stance(false, false));
  }

  /** An assessment of one subject. */
  public Assessment into(Class<? extends Case> type, Pointer subject) {
    return new Assessment(type, subject);
  }

  /** What became of each case, put or not. */
  public List<Entry> entries() {
    return Collections.unmodifiableList(entries);
  }

  /** Whether any case, put or not, is of one of these types. */
  public boolean isAboutAny(Set<Class<? extends Case>> types) {
    for (Entry entry : entries) {
      if (types.contains(entry.type())) {
        return true;
      }
    }
    return false;
  }

  /** What rules join with a case. */
  public List<Condition> conditions() {
    return Collections.unmodifiableList(conditions);
  }

  /** Everything that rules look at: the conditions, and the cases that are put. */
  public List<Fact> all() {
    List<Fact> all = new ArrayList<>(conditions.size() + entries.size());
    all.addAll(conditions);
    for (Entry entry : entries) {
      if (entry.fact != null) {
        all.add(entry.fact);
      }
    }
    return all;
  }

  /**
   * What became of one assessment.
   *
   * @param standing whether there is a case at all
   * @param fact the case, null where there is none
   */
  public record Entry(
      Class<? extends Case> type,
      Pointer subject,
      Standing standing,
      Provenance provenance,
      @Nullable Case fact) {}

  /** Whether there is a case to judge. */
  public enum Standing {
    NOT_FITTED,
    NOT_KNOWN,
    PUT
  }

  /** What a case is made of: its matter once its explanation is given, and its values as read. */
  public record Grounds(Evidence.Draft draft, Stance stance, List<Provenance> behind) {

    public Evidence explained(Supplier<Detail> detail) {
      return draft.explained(detail);
    }

    public Quantity quantity(Derived<? extends Number> number) {
      behind.add(number.provenance());
      return new Quantity(number, stance);
    }

    public Answer answer(Derived<Boolean> truth) {
      behind.add(truth.provenance());
      return new Answer(truth, stance);
    }
  }

  /** The conditions of one case, asked for in order. */
  public final class Assessment {

    private final Class<? extends Case> type;
    private final Pointer subject;
    private Derived<Boolean> fitted = ALWAYS;
    private Provenance needed = Provenance.NONE;
    private boolean leftOut;
    private List<Pointer> openIfFound = List.of();
    private List<Pointer> openIfClear = List.of();

    private Assessment(Class<? extends Case> type, Pointer subject) {
      this.type = type;
      this.subject = subject;
    }

    /** There is no case, and nothing to check, unless all of these are fitted. */
    @SafeVarargs
    public final Assessment fitted(Derived<Boolean>... things) {
      fitted = Derived.all(things);
      return this;
    }

    /** The values the case is made of. */
    public Assessment given(Derived<?>... values) {
      for (Derived<?> value : values) {
        needed = needed.and(value.provenance());
      }
      return this;
    }

    /** The case rests on what these days came to. */
    public Assessment onDays(Derived<Optional<TestDays>> days) {
      leftOut = days.is(Optional::isEmpty);
      return given(days);
    }

    /** A case without violation proves nothing while these values are not entered. */
    public Assessment clearOnlyWith(List<Pointer> pointers) {
      openIfClear = Provenance.union(openIfClear, pointers);
      return this;
    }

    /** A violation proves nothing while these values are not entered. */
    public Assessment foundOnlyWith(List<Pointer> pointers) {
      openIfFound = Provenance.union(openIfFound, pointers);
      return this;
    }

    /** There is nothing for a case to be about. */
    public void none() {
      entries.add(new Entry(type, subject, Standing.NOT_FITTED, fitted.provenance(), null));
    }

    /** The case cannot be put while this is not entered. */
    public void waitsFor(Entered<?> value) {
      Provenance missing = fitted.provenance().and(Provenance.missing(value.pointer()));
      Standing standing = fitted.is(is -> !is) ? Standing.NOT_FITTED : Standing.NOT_KNOWN;
      entries.add(new Entry(type, subject, standing, missing, null));
    }

    /** Puts the case, its values known or open; the rule says where it arises. */
    public void makes(Function<Grounds, Case> make) {
      try {
        entries.add(entry(make));
      } catch (RuntimeException fault) {
        throw new CaseFault(type, fault);
      }
    }

    private Entry entry(Function<Grounds, Case> make) {
      if (fitted.is(is -> !is)) {
        return new Entry(type, subject, Standing.NOT_FITTED, fitted.provenance(), null);
      }
      boolean unproven =
          leftOut || !fitted.isKnown() || needed.isIncomplete() || !openIfFound.isEmpty();
      List<Provenance> behind = new ArrayList<>(8);
      behind.add(fitted.provenance());
      behind.add(needed);
      Reads.Reader reader = Reads.here();
      Evidence.Draft draft =
          detail ->
              new Evidence(
                  subject,
                  behind,
                  openIfFound,
                  openIfClear,
                  unproven,
                  reader == null ? detail : () -> reader.reading(detail));
      Stance stance = new Stance(unproven, !openIfClear.isEmpty());
      Case fact = make.apply(new Grounds(draft, stance, behind));
      return new Entry(type, subject, Standing.PUT, needed, fact);
    }
  }
}
