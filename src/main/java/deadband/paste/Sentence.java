package deadband.paste;

import deadband.document.Pointer;
import deadband.paste.Token.Amount;
import deadband.paste.Token.Kind;
import deadband.setup.FieldKind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One sentence: its tokens, and the words read since the last value. */
final class Sentence {
  private static final Set<String> NONE_OF =
      Set.of(
          "no", "without", "kein", "keine", "keinen", "ohne", "geen", "zonder", "sans", "pas",
          "aucun", "aucune");
  private static final Set<String> AS_FOUND = Set.of("asfound");
  private static final Set<String> COUNTS = Set.of("counts");
  private static final Set<String> ONLY = Set.of("only", "alone", "just");

  private final Line line;
  private final List<Integer> at;
  private List<Term> earlier;
  private List<Term> label = new ArrayList<>();
  private int start = -1;
  private @Nullable UnitWord unit;
  private boolean asFound;

  /**
   * A sentence.
   *
   * @param at its tokens, by their places in the line
   * @param earlier words of the trade before it that may belong to its first value
   */
  Sentence(Line line, List<Integer> at, List<Term> earlier) {
    this.line = line;
    this.at = at;
    this.earlier = earlier;
  }

  void read() {
    absent();
    if (danger()) {
      return;
    }
    for (int i = 0; i < at.size(); ) {
      i = next(i);
    }
    clause(at.size());
  }

  Token token(int i) {
    return line.token(at.get(i));
  }

  @Nullable Term term(int i) {
    return line.term(at.get(i));
  }

  private boolean danger() {
    for (int i = 0; i < at.size(); i++) {
      Term term = term(i);
      boolean word = term != null && term.danger() && !line.isUsed(at.get(i)) && !isAnswer(i);
      boolean bound =
          "<>≤≥".contains(token(i).text())
              && i + 1 < at.size()
              && token(i + 1).is(Kind.AMOUNT)
              && !isOfTerm(i);
      if (word || bound) {
        return true;
      }
    }
    return false;
  }

  /** "on >3 kW": the mark is read with the word before it. */
  private boolean isOfTerm(int i) {
    Term before = i > 0 ? term(i - 1) : null;
    return before != null && before.last() == at.get(i);
  }

  /** "not known" after a colon is an answer. */
  private boolean isAnswer(int i) {
    for (int before = i - 1; before >= 0 && before >= i - 2; before--) {
      if (token(before).is(Kind.LINK) || token(before).is(Kind.CELL)) {
        String rest = line.between(token(before).end(), token(at.size() - 1).end());
        String plain = Vocabulary.plain(rest);
        return Resolver.UNKNOWN.contains(plain) || Resolver.NO.contains(plain);
      }
    }
    return false;
  }

  /** "no battery", "without a mixing valve". */
  private void absent() {
    for (int i = 0; i < at.size(); i++) {
      if (!isNo(i)) {
        continue;
      }
      Term no = Objects.requireNonNull(term(i));
      int until = i + 1;
      List<Term> named = new ArrayList<>();
      while (until < at.size() && !Line.isBreak(token(until)) && !(until > i + 1 && isNo(until))) {
        Term term = term(until);
        if (term != null) {
          named.add(term);
        }
        until++;
      }
      Set<String> all = Term.all(named);
      boolean known = Term.isKnown(named) && !all.isEmpty();
      if (known && Vocabulary.all().equipment(all).isPresent()) {
        Pointer section = Vocabulary.all().equipment(all).get();
        Outcome none = new Outcome.Taken(section.child("fitted"), Optional.of(false), "");
        line.take(none, at.get(i), at.get(until - 1), at.get(i), at.get(until - 1), false);
      } else if (known) {
        Set<String> whole = new LinkedHashSet<>(all);
        whole.add(no.text());
        Outcome outcome = line.resolver().statement(whole, line.context());
        if (!outcome.isNone()) {
          line.take(outcome, at.get(i), at.get(until - 1), at.get(i), at.get(until - 1), false);
        }
      }
    }
    line.near(List.of());
  }

  private boolean isNo(int i) {
    Term term = term(i);
    return term != null && NONE_OF.contains(term.text());
  }

  private int next(int i) {
    Token token = token(i);
    if (line.isUsed(at.get(i))) {
      return i + 1;
    }
    switch (token.kind()) {
      case WORD, SLASH, JOIN -> {
        return word(i);
      }
      case UNIT -> unit = UnitWord.of(token.text()).orElse(unit);
      case LINK, CELL -> {
        return linked(i);
      }
      case COMMA -> clause(i);
      case AMOUNT -> {
        int next = new NumberClause(this, i).read();
        reset();
        return next;
      }
      case WINDOW -> {
        return windows(i, null);
      }
      case PLACE -> {
        return place(i);
      }
      default -> {}
    }
    return i + 1;
  }

  private int word(int i) {
    Term term = term(i);
    if (term == null) {
      if (token(i).is(Kind.JOIN)) {
        clause(i);
      }
      return i + 1;
    }
    if (start < 0) {
      start = i;
    }
    if (term.terms().equals(AS_FOUND)) {
      asFound = true;
    } else {
      label.add(term);
    }
    int next = after(i, term);
    return term.terms().equals(COUNTS) ? counted(next) : next;
  }

  /** "counts export and immersion": the words after it are a list, and all of it is read. */
  private int counted(int from) {
    for (int end : ends(from)) {
      Outcome outcome =
          line.resolver().words(Term.all(label), words(from, end - 1), false, line.context());
      if (outcome instanceof Outcome.Taken
          && isWhole(outcome, from, end)
          && take(outcome, from, end - 1, start, end - 1)) {
        reset();
        return end;
      }
    }
    return from;
  }

  /** Whether a list ends here: "export and what goes into the battery" is not export alone. */
  private boolean isWhole(Outcome outcome, int from, int end) {
    boolean next = end < at.size() && (token(end).is(Kind.COMMA) || token(end).is(Kind.JOIN));
    if (!isList(outcome) || !next) {
      return true;
    }
    boolean only = ONLY.contains(token(end - 1).text()) || ONLY.contains(token(from).text());
    int after = end + 1;
    while (after < at.size() && !Line.isBreak(token(after)) && !Line.isValue(token(after))) {
      after++;
    }
    return only || (after < at.size() && Line.isValue(token(after)));
  }

  private static boolean isList(Outcome outcome) {
    return outcome instanceof Outcome.Taken taken
        && taken.value().filter(List.class::isInstance).isPresent();
  }

  /** The end of a clause without a value: a statement, or words for what follows. */
  private void clause(int end) {
    boolean open = start >= 0 && !label.isEmpty();
    if (open && !statement(end) && !answer(end)) {
      earlier = Term.label(label);
    }
    label = new ArrayList<>();
    start = -1;
    unit = null;
  }

  boolean statement(int end) {
    List<Term> said = label;
    if (!Term.isKnown(said) || !Term.says(said)) {
      said = Term.label(said);
    }
    if (!Term.isKnown(said) || said.isEmpty()) {
      return false;
    }
    Outcome outcome = line.resolver().statement(Term.all(said), line.context());
    for (Set<String> name : outcome.isNone() ? namesNearby() : Set.<Set<String>>of()) {
      Set<String> more = new LinkedHashSet<>(name);
      more.addAll(Term.all(said));
      outcome = outcome.isNone() ? line.resolver().statement(more, line.context()) : outcome;
    }
    return !goesOn(outcome, end) && take(outcome, start, end - 1);
  }

  /** What the section of the value before may be called: "legionella 60 °C, by immersion". */
  private Set<Set<String>> namesNearby() {
    Set<Set<String>> names = new LinkedHashSet<>();
    line.context()
        .nearby()
        .forEach(
            section -> names.addAll(Vocabulary.all().sections().getOrDefault(section, Set.of())));
    return names;
  }

  /** "counts export and …": what follows may be of the list, too. */
  private boolean goesOn(Outcome outcome, int end) {
    return isList(outcome)
        && end < at.size()
        && label.stream().noneMatch(word -> ONLY.contains(word.text()));
  }

  /** "unvented yes". */
  private boolean answer(int end) {
    Term yes = label.get(label.size() - 1);
    List<Term> before = Term.label(label.subList(0, label.size() - 1));
    boolean answers = Resolver.YES.contains(yes.text()) || Resolver.NO.contains(yes.text());
    if (!answers || before.isEmpty() || !Term.isKnown(before)) {
      return false;
    }
    return take(
        line.resolver().words(Term.all(before), yes.text(), false, line.context()), start, end - 1);
  }

  boolean take(Outcome outcome, int from, int to) {
    return take(outcome, from, to, from, to);
  }

  boolean take(Outcome outcome, int first, int last, int from, int to) {
    return line.take(outcome, at.get(first), at.get(last), at.get(from), at.get(to), asFound);
  }

  /** After a colon, or in the next cell, words can be the value. */
  private int linked(int i) {
    List<Term> said = Term.label(label);
    if (said.isEmpty() || !Term.isKnown(said)) {
      if (!label.isEmpty() && said.isEmpty() && !Term.isKnown(label)) {
        return strange(i);
      }
      return i + 1;
    }
    for (int end : ends(i + 1)) {
      String value = words(i + 1, end - 1);
      Outcome outcome =
          line.resolver().words(Term.all(said), value, !holdsAmount(i + 1, end), line.context());
      if (!outcome.isNone()
          && isWhole(outcome, i + 1, end)
          && take(outcome, i + 1, end - 1, start, end - 1)) {
        reset();
        earlier = isTrue(outcome) ? said : earlier;
        return end;
      }
    }
    section(said);
    return i + 1;
  }

  /** "mixing valve: yes, set to 44 °C": the number is of what is there. */
  private static boolean isTrue(Outcome outcome) {
    return outcome instanceof Outcome.Taken taken
        && taken.value().filter(Boolean.TRUE::equals).isPresent();
  }

  /** Whether a number with a unit stands there: such words are no name. */
  private boolean holdsAmount(int from, int to) {
    for (int i = from; i < to; i++) {
      if (token(i).unit() != null) {
        return true;
      }
    }
    return false;
  }

  /** A label that is not known at all: its value is not another's. */
  private int strange(int i) {
    int next = i + 1;
    label.clear();
    while (next < at.size() && !Line.isBreak(token(next)) && !token(next).is(Kind.WORD)) {
      next++;
    }
    return next;
  }

  /** "Relay: start 3 kW": the label names the section of what follows. */
  private void section(List<Term> said) {
    List<Pointer> sections = Vocabulary.all().sectionsNamed(Term.all(said));
    if (!sections.isEmpty()) {
      line.near(sections);
    }
  }

  /** Where a value in words may end, the farthest first. */
  private List<Integer> ends(int from) {
    List<Integer> ends = new ArrayList<>();
    for (int i = from; i < at.size(); i++) {
      boolean between =
          token(i).is(Kind.COMMA)
              || token(i).is(Kind.JOIN)
              || token(i).is(Kind.CELL)
              || token(i).is(Kind.OPEN);
      if (i > from && between) {
        ends.add(0, i);
      }
      if (i > from && (token(i).is(Kind.CELL) || token(i).is(Kind.LINK))) {
        return ends;
      }
    }
    if (at.size() > from) {
      ends.add(0, at.size());
    }
    return ends;
  }

  private void reset() {
    label = new ArrayList<>();
    earlier = new ArrayList<>();
    start = -1;
    unit = null;
  }

  /**
   * Times of day, one after the other.
   *
   * @param place the value they are of, where it is named; null where the label says
   */
  private int windows(int i, @Nullable Pointer place) {
    List<String> windows = new ArrayList<>();
    int next = i;
    int end = i;
    while (next < at.size()
        && (token(next).is(Kind.WINDOW)
            || token(next).is(Kind.COMMA)
            || token(next).is(Kind.JOIN))) {
      if (token(next).is(Kind.WINDOW)) {
        windows.add(token(next).text());
        end = next;
      }
      next++;
    }
    List<Term> said = Term.label(label);
    if (place != null) {
      take(line.resolver().windows(place, windows), i, end, start, end);
    } else if (Term.isKnown(said) && !said.isEmpty()) {
      take(line.resolver().windows(Term.all(said), windows, line.context()), i, end, start, end);
    }
    reset();
    return end + 1;
  }

  /** A name of the file with its sections. */
  private int place(int i) {
    int next = i + 1;
    while (next < at.size()
        && (token(next).is(Kind.LINK)
            || token(next).is(Kind.CELL)
            || token(next).is(Kind.OTHER)
            || token(next).is(Kind.UNIT))) {
      next++;
    }
    Places.Found found = Places.find(token(i).text()).orElseThrow();
    Vocabulary.Entry entry =
        Vocabulary.all()
            .entry(found.pointer())
            .orElseGet(() -> Vocabulary.plainEntry(found.pointer(), found.kind()));
    if (next < at.size()
        && token(next).is(Kind.AMOUNT)
        && found.kind() instanceof FieldKind.Num number) {
      Amount amount = Objects.requireNonNull(token(next).amount());
      UnitWord unitWord =
          amount.unit() != null ? amount.unit() : UnitWord.of(number.unit().printed()).orElse(null);
      take(line.resolver().number(entry, token(next), unitWord), next, next, i, next);
      reset();
      return next + 1;
    }
    if (next < at.size() && token(next).is(Kind.WINDOW)) {
      label = new ArrayList<>();
      start = i;
      return windows(next, found.pointer());
    }
    for (int end : next < at.size() ? ends(next) : List.<Integer>of()) {
      String value = words(next, end - 1);
      Outcome outcome = line.resolver().valueOf(entry, value);
      if (take(outcome, next, end - 1, i, end - 1)) {
        reset();
        return end;
      }
    }
    return i + 1;
  }

  private String words(int from, int to) {
    return line.between(token(from).start(), token(to).end());
  }

  int size() {
    return at.size();
  }

  /** The place after a term of several tokens. */
  int after(int i, Term term) {
    int next = i + 1;
    while (next < at.size() && at.get(next) <= term.last()) {
      next++;
    }
    return next;
  }

  Line line() {
    return line;
  }

  /** The words since the last value of this clause. */
  List<Term> label() {
    return label;
  }

  /** The words of the clauses before that have no value. */
  List<Term> earlier() {
    return earlier;
  }

  /** Where the clause begins; -1 where it has no word yet. */
  int start() {
    return start;
  }

  /** A unit before the number, as in the head of a table. */
  @Nullable UnitWord unit() {
    return unit;
  }
}
