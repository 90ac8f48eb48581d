package deadband.paste;

import deadband.document.Pointer;
import deadband.paste.Token.Amount;
import deadband.paste.Token.Kind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A number with the words before and after it. */
final class NumberClause {

  private static final Set<String> FOR = Set.of("for", "lang", "gedurende", "pendant", "wahrend");
  private static final Set<String> POWER = Set.of("power", "leistung", "vermogen", "puissance");
  private static final Set<String> EVERY =
      Set.of("every", "repeats every", "once every", "alle", "elke", "iedere", "tous les");
  private static final Set<String> SURPLUS = Set.of("surplus");
  private static final String DISINFECTION = "/heatPump/disinfection/target_C";
  private static final int MOST_STRANGE = 5;
  private static final Pattern COUNT =
      Pattern.compile("\\d*[x×]\\d*|two|three|four|twin|dual|pair|zwei|drei|twee|drie|deux|trois");

  /** What words beside the number of a value say besides. */
  private static final Map<String, List<String>> ATTRIBUTES =
      Map.of(
          "/tank/volume_L", List.of("unvented", "vented"),
          "/solar/peak_kW", List.of("south", "southwest", "southeast"),
          "/heatPump/disinfection/target_C", List.of("weekly"));

  private final Sentence sentence;
  private final Line line;
  private final int i;
  private @Nullable UnitWord unit;
  private @Nullable Outcome second;

  /**
   * A number.
   *
   * @param i where in the sentence it stands
   */
  NumberClause(Sentence sentence, int i) {
    this.sentence = sentence;
    this.line = sentence.line();
    this.i = i;
    this.unit = sentence.unit();
  }

  /** Takes what it says; where the sentence goes on. */
  int read() {
    List<Term> pre = Term.label(sentence.label());
    int end = i + 1;
    List<Term> post = new ArrayList<>();
    List<Integer> ends = new ArrayList<>();
    while (end < sentence.size()
        && (sentence.token(end).is(Kind.WORD)
            || (sentence.token(end).is(Kind.SLASH) && post.isEmpty())
            || sentence.token(end).is(Kind.UNIT))
        && !isEvery(end)) {
      Term term = sentence.term(end);
      if (term != null) {
        post.add(term);
        ends.add(Math.min(sentence.size(), sentence.after(end, term)));
        end = sentence.after(end, term);
      } else {
        end++;
      }
    }
    unit = unit == null && isPower() ? UnitWord.of("kW").orElse(null) : unit;
    boolean free =
        end >= sentence.size()
            || !(sentence.token(end).is(Kind.AMOUNT) || isLabel(end, post) || isEvery(end));
    int first = sentence.start() < 0 ? i : sentence.start();
    if (!Term.isKnown(pre)) {
      pre = List.of();
      if (!knownAfter(post)) {
        return i + 1;
      }
    }
    int known = known(post);
    int strange = post.size() - known;
    if (free && strange > MOST_STRANGE) {
      known = 0;
    }
    boolean doubted = isModified(pre) || isFollowed() || isCounted();
    for (int with : order(pre, known, free)) {
      List<Term> all = Term.joined(pre, post.subList(0, with));
      Outcome outcome = resolve(all);
      if (doubted && outcome instanceof Outcome.Taken taken) {
        outcome = new Outcome.Ask(List.of(Resolver.shown(taken)));
      }
      if (outcome instanceof Outcome.Taken
          || (outcome instanceof Outcome.Ask && isLast(with, pre, known, free))) {
        int to = with == 0 ? i : ends.get(with - 1) - 1;
        taken(outcome, first, to, all);
        return to + 1;
      }
    }
    if (!doubted && sentence.start() >= 0 && !sentence.label().isEmpty()) {
      afterStatement();
    }
    return i + 1;
  }

  /** "60 °C weekly 1 h": the words before a number may state something of their own. */
  private void afterStatement() {
    Outcome outcome = sentence.statement(i) ? resolve(List.of()) : new Outcome.None();
    if (outcome instanceof Outcome.Taken) {
      taken(outcome, i, i, List.of());
    }
  }

  /** "at 60 every seven days": the word belongs to what follows. */
  private boolean isEvery(int end) {
    Term term = sentence.term(end);
    return term != null && EVERY.contains(term.text());
  }

  /** "hp_in=2 kW hp_out=6 kW": the words before a mark are the label of the next number. */
  private boolean isLabel(int end, List<Term> post) {
    return sentence.token(end).is(Kind.LINK)
        && !post.isEmpty()
        && end + 1 < sentence.size()
        && sentence.token(end + 1).is(Kind.AMOUNT);
  }

  /** "immersion power 3" is in kW: the number must then be usual in it. */
  private boolean isPower() {
    return sentence.label().stream().anyMatch(word -> POWER.contains(word.text()));
  }

  /** "pool heat pump", "header tank": an unknown word right before the label may change it. */
  private boolean isModified(List<Term> pre) {
    int before = sentence.label().size() - pre.size() - 1;
    return !pre.isEmpty() && before >= 0 && !sentence.label().get(before).known();
  }

  /** "2 x 3 kW": whether one or all of them are meant is not said. */
  private boolean isCounted() {
    return (i > 0 && COUNT.matcher(sentence.token(i - 1).text()).matches())
        || (i + 1 < sentence.size() && COUNT.matcher(sentence.token(i + 1).text()).matches());
  }

  /** Two numbers with nothing but a mark between: the old and the new, or two columns. */
  private boolean isFollowed() {
    int next = i + 1;
    while (next < sentence.size() && Line.isMark(sentence.token(next))) {
      next++;
    }
    boolean amount = next > i + 1 && next < sentence.size() && sentence.token(next).is(Kind.AMOUNT);
    return amount && Objects.equals(sentence.token(i).unit(), sentence.token(next).unit());
  }

  private boolean knownAfter(List<Term> post) {
    return known(post) > 0 && Term.says(post.subList(0, known(post)));
  }

  private int known(List<Term> post) {
    int known = 0;
    while (known < post.size() && post.get(known).known()) {
      known++;
    }
    return known;
  }

  /** How many of the words after the number are tried with the label, in this order. */
  private List<Integer> order(List<Term> pre, int known, boolean free) {
    List<Integer> order = new ArrayList<>();
    if (free) {
      return known > 0 && isFor() ? List.of(known, 0) : List.of(known);
    }
    if (Term.says(pre)) {
      order.add(0);
    }
    for (int with = known; with > 0; with--) {
      order.add(with);
    }
    if (!Term.says(pre)) {
      order.add(0);
    }
    return order;
  }

  private boolean isFor() {
    return sentence.label().stream().anyMatch(word -> FOR.contains(word.text()));
  }

  private boolean isLast(int with, List<Term> pre, int known, boolean free) {
    List<Integer> order = order(pre, known, free);
    return order.get(order.size() - 1) == with || (Term.says(pre) && with == 0);
  }

  private Outcome resolve(List<Term> words) {
    Set<String> all = new LinkedHashSet<>(Term.all(words));
    Outcome outcome = resolve(all);
    Pointer before = line.last();
    boolean time = (all.isEmpty() || all.equals(SURPLUS)) ? isFor() : all.equals(Set.of("delay"));
    if (before != null && time && before.last().matches("st(art|op)_kW")) {
      Set<String> delay = Set.of(before.last().substring(0, before.last().indexOf('_')), "delay");
      return resolve(delay);
    }
    if (before != null && time && before.toString().equals(DISINFECTION)) {
      return resolve(Set.of("hold"));
    }
    if (!(outcome instanceof Outcome.Taken)
        && Term.isKnown(sentence.earlier())
        && !sentence.earlier().isEmpty()) {
      Set<String> more = new LinkedHashSet<>(Term.all(sentence.earlier()));
      more.addAll(all);
      Outcome wider = resolve(more);
      if (wider instanceof Outcome.Taken && sentence.earlier() != line.above()) {
        sentence.earlier().forEach(line::use);
      }
      return wider instanceof Outcome.Taken ? wider : outcome;
    }
    return outcome;
  }

  private Outcome resolve(Set<String> all) {
    Amount amount = Objects.requireNonNull(sentence.token(i).amount());
    if (amount.second() != null || amount.range() || all.contains("both")) {
      List<Outcome> pair = line.resolver().pair(all, sentence.token(i), unit, line.context());
      if (pair.size() == 2) {
        second = pair.get(1);
        return pair.get(0);
      }
    }
    return line.resolver().number(all, sentence.token(i), unit, line.context());
  }

  private void taken(Outcome outcome, int from, int to, List<Term> words) {
    sentence.take(outcome, i, i, from, to);
    Outcome other = second;
    second = null;
    if (other != null) {
      sentence.take(other, i, i, from, to);
    }
    attributes(Term.all(words), from, to);
  }

  /** "an unvented tank of 300 L" says two things. */
  private void attributes(Set<String> all, int from, int to) {
    Pointer last = line.last();
    if (last == null) {
      return;
    }
    for (String term : ATTRIBUTES.getOrDefault(last.toString(), List.of())) {
      if (all.contains(term)) {
        sentence.take(line.resolver().statement(Set.of(term), line.context()), from, to);
      }
    }
  }
}
