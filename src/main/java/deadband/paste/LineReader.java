package deadband.paste;

import deadband.document.Pointer;
import deadband.paste.Token.Amount;
import deadband.paste.Token.Kind;
import deadband.setup.FieldKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the values of one line: sentence by sentence, clause by clause. */
final class LineReader {

  private static final Set<String> NONE_OF =
      Set.of(
          "no", "without", "kein", "keine", "keinen", "ohne", "geen", "zonder", "sans", "pas",
          "aucun", "aucune");
  private static final Set<String> FOR = Set.of("for", "lang", "gedurende", "pendant", "wahrend");
  private static final Set<String> POWER = Set.of("power", "leistung", "vermogen", "puissance");
  private static final Set<String> AS_FOUND = Set.of("asfound");
  private static final int MOST_STRANGE = 5;
  private static final Pattern COUNT =
      Pattern.compile("\\d*[x×]\\d*|two|three|four|twin|dual|pair|zwei|drei|twee|drie|deux|trois");

  /** What words beside the number of a value say besides. */
  private static final Map<String, List<String>> ATTRIBUTES =
      Map.of(
          "/tank/volume_L", List.of("unvented", "vented"),
          "/solar/peak_kW", List.of("south", "southwest", "southeast"),
          "/heatPump/disinfection/target_C", List.of("weekly"));

  private final Resolver resolver = new Resolver();
  private final String text;
  private final List<Token> tokens;
  private final Map<Integer, Term> terms;
  private final boolean[] used;
  private final Context heading;
  private final List<Term> above;
  private final List<Found> taken = new ArrayList<>();
  private final List<Asked> asked = new ArrayList<>();
  private final List<String> left = new ArrayList<>();
  private final List<List<Integer>> bracketed = new ArrayList<>();
  private List<Pointer> nearby = List.of();
  private @Nullable Pointer last;

  /** A value and where it stands in the clean text. */
  record Found(Outcome.Taken outcome, int start, int end, boolean asFound) {}

  /** Words that can mean several things. */
  record Asked(String text, List<String> choices) {}

  LineReader(
      String text,
      List<Token> tokens,
      Map<Integer, Term> terms,
      Context heading,
      List<Term> above) {
    this.text = text;
    this.tokens = tokens;
    this.terms = terms;
    this.used = new boolean[tokens.size()];
    this.heading = heading;
    this.above = above;
  }

  List<Found> taken() {
    return taken;
  }

  List<Asked> asked() {
    return asked;
  }

  /** Clauses with a value that was not taken, where others of the line were. */
  List<String> left() {
    return left;
  }

  /** Whether the line holds a number or a term of the trade. */
  boolean saysSomething() {
    for (int at = 0; at < tokens.size(); at++) {
      Term term = terms.get(at);
      boolean trade = term != null && isTrade(term);
      if (trade || isValue(tokens.get(at)) || tokens.get(at).is(Kind.OPAQUE)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isTrade(Term term) {
    return term.terms().stream().anyMatch(Vocabulary.all()::isTrade);
  }

  void read() {
    int from = 0;
    for (int at = 0; at <= tokens.size(); at++) {
      if (at == tokens.size() || tokens.get(at).is(Kind.STOP) || tokens.get(at).is(Kind.QUESTION)) {
        boolean question =
            at < tokens.size() && tokens.get(at).is(Kind.QUESTION) && !isUnknownMark(at);
        boolean unknown = at < tokens.size() && tokens.get(at).is(Kind.QUESTION) && !question;
        sentence(from, unknown ? at + 1 : at, question);
        from = at + 1;
      }
    }
    if (!taken.isEmpty() || !asked.isEmpty()) {
      leftOver();
    }
  }

  /** "height: ?" says that it is not known. */
  private boolean isUnknownMark(int at) {
    return at > 0 && (tokens.get(at - 1).is(Kind.LINK) || tokens.get(at - 1).is(Kind.CELL));
  }

  /** Brackets hold a sentence of their own. */
  private void sentence(int from, int to, boolean question) {
    List<Integer> outside = new ArrayList<>();
    int open = -1;
    for (int at = from; at < to; at++) {
      if (tokens.get(at).is(Kind.OPEN) && open < 0) {
        open = at;
      } else if (tokens.get(at).is(Kind.CLOSE)) {
        bracket(outside, open < 0 ? at : open, at, question);
        open = -1;
      } else if (open < 0) {
        outside.add(at);
      }
    }
    if (open >= 0) {
      bracket(outside, open, to, question);
    }
    if (!question) {
      Sentence sentence = new Sentence(outside);
      sentence.earlier = from == 0 ? above : List.of();
      sentence.read();
      List<List<Integer>> inside = List.copyOf(bracketed);
      bracketed.clear();
      inside.forEach(this::bracketed);
    }
    bracketed.clear();
  }

  private boolean isStatement(List<Integer> inside) {
    List<Term> words = new ArrayList<>();
    inside.stream().map(at -> terms.get(at)).filter(Objects::nonNull).forEach(words::add);
    return !resolver.statement(Term.all(words), context()).isNone();
  }

  /** What stands in brackets is said of the words before them. */
  private void bracketed(List<Integer> inside) {
    Sentence sentence = new Sentence(inside);
    for (int at = inside.get(0) - 2;
        at >= 0 && !isBreak(tokens.get(at)) && !isValue(tokens.get(at));
        at--) {
      Term term = terms.get(at);
      if (term != null) {
        sentence.earlier.add(0, term);
      }
    }
    sentence.earlier = Term.label(sentence.earlier);
    sentence.read();
  }

  /** Known words in brackets explain the label; a value in brackets has a clause of its own. */
  private void bracket(List<Integer> outside, int open, int close, boolean question) {
    List<Integer> inside = new ArrayList<>();
    boolean value = false;
    boolean known = true;
    for (int at = open + 1; at < close; at++) {
      inside.add(at);
      value |= isValue(tokens.get(at));
      Term term = terms.get(at);
      known &= term == null || term.known();
    }
    boolean statement = known && !value && isStatement(inside);
    if ((value || statement) && !question) {
      bracketed.add(inside);
    } else if (known && !value) {
      outside.addAll(inside);
    }
  }

  private static boolean isValue(Token token) {
    return token.is(Kind.AMOUNT) || token.is(Kind.WINDOW) || token.is(Kind.PLACE);
  }

  private Context context() {
    return new Context(nearby, heading.heading(), heading.strange());
  }

  private boolean take(Outcome outcome, int first, int last, int from, int to, boolean found) {
    if (outcome instanceof Outcome.Ask ask) {
      asked.add(
          new Asked(text.substring(tokens.get(from).start(), tokens.get(to).end()), ask.choices()));
    } else if (outcome instanceof Outcome.Taken one) {
      taken.add(new Found(one, tokens.get(first).start(), tokens.get(last).end(), found));
      this.last = one.pointer();
      nearby = List.of(one.pointer().parent().orElseThrow());
    } else {
      return false;
    }
    for (int at = from; at <= to; at++) {
      int here = at;
      used[at] |= bracketed.stream().noneMatch(inside -> inside.contains(here));
    }
    return true;
  }

  /** What holds a value and was not used, clause by clause. */
  private void leftOver() {
    int from = 0;
    for (int at = 0; at <= tokens.size(); at++) {
      boolean end =
          at == tokens.size()
              || tokens.get(at).is(Kind.STOP)
              || tokens.get(at).is(Kind.COMMA)
              || tokens.get(at).is(Kind.QUESTION)
              || tokens.get(at).is(Kind.JOIN);
      if (end) {
        leftOver(from, at);
        from = at + 1;
      }
    }
  }

  private void leftOver(int from, int to) {
    boolean open = false;
    for (int at = from; at < to; at++) {
      Term term = terms.get(at);
      boolean says = term != null && isTrade(term);
      open |= !used[at] && isValue(tokens.get(at));
      open |= !used[at] && says && !usedWithin(from, to);
    }
    if (open) {
      left.add(text.substring(tokens.get(from).start(), tokens.get(to - 1).end()));
    }
  }

  private boolean usedWithin(int from, int to) {
    for (int at = from; at < to; at++) {
      if (used[at]) {
        return true;
      }
    }
    return false;
  }

  /** One sentence: its tokens, and the words read since the last value. */
  private final class Sentence {
    private final List<Integer> at;
    private List<Term> earlier = new ArrayList<>();
    private List<Term> label = new ArrayList<>();
    private int start = -1;
    private @Nullable UnitWord unit;
    private boolean asFound;

    Sentence(List<Integer> at) {
      this.at = at;
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

    private Token token(int i) {
      return tokens.get(at.get(i));
    }

    private @Nullable Term term(int i) {
      return terms.get(at.get(i));
    }

    private boolean danger() {
      for (int i = 0; i < at.size(); i++) {
        Term term = term(i);
        boolean word = term != null && term.danger() && !used[at.get(i)] && !isAnswer(i);
        boolean bound =
            "<>≤≥".contains(token(i).text()) && i + 1 < at.size() && token(i + 1).is(Kind.AMOUNT);
        if (word || bound) {
          return true;
        }
      }
      return false;
    }

    /** "not known" after a colon is an answer. */
    private boolean isAnswer(int i) {
      for (int before = i - 1; before >= 0 && before >= i - 2; before--) {
        if (token(before).is(Kind.LINK) || token(before).is(Kind.CELL)) {
          String rest = text.substring(token(before).end(), token(at.size() - 1).end());
          String plain = Vocabulary.plain(rest);
          return Resolver.UNKNOWN.contains(plain) || Resolver.NO.contains(plain);
        }
      }
      return false;
    }

    /** "no battery", "without a mixing valve". */
    private void absent() {
      for (int i = 0; i < at.size(); i++) {
        Term no = term(i);
        if (no == null || !NONE_OF.contains(no.text())) {
          continue;
        }
        int until = i + 1;
        List<Term> named = new ArrayList<>();
        while (until < at.size() && !isBreak(token(until))) {
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
          LineReader.this.take(
              none, at.get(i), at.get(until - 1), at.get(i), at.get(until - 1), false);
        } else if (known) {
          Set<String> whole = new LinkedHashSet<>(all);
          whole.add(no.text());
          Outcome outcome = resolver.statement(whole, context());
          if (!outcome.isNone()) {
            LineReader.this.take(
                outcome, at.get(i), at.get(until - 1), at.get(i), at.get(until - 1), false);
          }
        }
      }
      nearby = List.of();
    }

    private int next(int i) {
      Token token = token(i);
      if (used[at.get(i)]) {
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
          return amount(i);
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
      int skip = 1;
      while (i + skip < at.size() && at.get(i + skip) <= term.last()) {
        skip++;
      }
      return i + skip;
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

    private boolean statement(int end) {
      List<Term> said = label;
      if (!Term.isKnown(said) || !Term.says(said)) {
        said = Term.label(said);
      }
      if (!Term.isKnown(said) || said.isEmpty()) {
        return false;
      }
      Outcome outcome = resolver.statement(Term.all(said), context());
      return take(outcome, start, end - 1);
    }

    /** "unvented yes". */
    private boolean answer(int end) {
      Term yes = label.get(label.size() - 1);
      List<Term> before = Term.label(label.subList(0, label.size() - 1));
      boolean answers = Resolver.YES.contains(yes.text()) || Resolver.NO.contains(yes.text());
      if (!answers || before.isEmpty() || !Term.isKnown(before)) {
        return false;
      }
      return take(resolver.words(Term.all(before), yes.text(), false, context()), start, end - 1);
    }

    private boolean take(Outcome outcome, int from, int to) {
      return take(outcome, from, to, from, to);
    }

    private boolean take(Outcome outcome, int first, int last, int from, int to) {
      return LineReader.this.take(
          outcome, at.get(first), at.get(last), at.get(from), at.get(to), asFound);
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
        String value = text.substring(token(i + 1).start(), token(end - 1).end());
        Outcome outcome =
            resolver.words(Term.all(said), value, !holdsAmount(i + 1, end), context());
        if (!outcome.isNone() && take(outcome, i + 1, end - 1, start, end - 1)) {
          reset();
          return end;
        }
      }
      section(said);
      return i + 1;
    }

    /** Whether a number with a unit stands there: such words are no name. */
    private boolean holdsAmount(int from, int to) {
      for (int i = from; i < to; i++) {
        if (unit(i) != null) {
          return true;
        }
      }
      return false;
    }

    /** A label that is not known at all: its value is not another's. */
    private int strange(int i) {
      int next = i + 1;
      label.clear();
      while (next < at.size() && !isBreak(token(next)) && !token(next).is(Kind.WORD)) {
        next++;
      }
      return next;
    }

    /** "Relay: start 3 kW": the label names the section of what follows. */
    private void section(List<Term> said) {
      List<Pointer> sections = Vocabulary.all().sectionsNamed(Term.all(said));
      if (!sections.isEmpty()) {
        nearby = sections;
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
        take(resolver.windows(place, windows), i, end, start, end);
      } else if (Term.isKnown(said) && !said.isEmpty()) {
        take(resolver.windows(Term.all(said), windows, context()), i, end, start, end);
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
            amount.unit() != null
                ? amount.unit()
                : UnitWord.of(number.unit().printed()).orElse(null);
        take(resolver.number(entry, token(next), unitWord), next, next, i, next);
        reset();
        return next + 1;
      }
      if (next < at.size() && token(next).is(Kind.WINDOW)) {
        label = new ArrayList<>();
        start = i;
        return windows(next, found.pointer());
      }
      for (int end : next < at.size() ? ends(next) : List.<Integer>of()) {
        String value = text.substring(token(next).start(), token(end - 1).end());
        Outcome outcome = resolver.valueOf(entry, value);
        if (take(outcome, next, end - 1, i, end - 1)) {
          reset();
          return end;
        }
      }
      return i + 1;
    }

    private int amount(int i) {
      List<Term> pre = Term.label(label);
      int end = i + 1;
      List<Term> post = new ArrayList<>();
      List<Integer> ends = new ArrayList<>();
      while (end < at.size()
          && (token(end).is(Kind.WORD) || token(end).is(Kind.SLASH) || token(end).is(Kind.UNIT))) {
        Term term = term(end);
        if (term != null) {
          post.add(term);
          ends.add(Math.min(at.size(), after(end, term)));
          end = after(end, term);
        } else {
          end++;
        }
      }
      unit = unit == null && isPower() ? UnitWord.of("kW").orElse(null) : unit;
      boolean free = end >= at.size() || !token(end).is(Kind.AMOUNT);
      int first = start < 0 ? i : start;
      if (!Term.isKnown(pre)) {
        pre = List.of();
        if (!knownAfter(post)) {
          reset();
          return i + 1;
        }
      }
      int known = known(post);
      int strange = post.size() - known;
      if (free && strange > MOST_STRANGE) {
        known = 0;
      }
      boolean doubted = isModified(pre) || isFollowed(i) || isCounted(i);
      for (int with : order(pre, known, free)) {
        List<Term> all = Term.joined(pre, post.subList(0, with));
        Outcome outcome = resolve(i, all);
        if (doubted && outcome instanceof Outcome.Taken taken) {
          outcome = new Outcome.Ask(List.of(Resolver.shown(taken)));
        }
        if (outcome instanceof Outcome.Taken
            || (outcome instanceof Outcome.Ask && isLast(with, pre, known, free))) {
          int to = with == 0 ? i : ends.get(with - 1) - 1;
          taken(i, outcome, first, to, all);
          reset();
          return to + 1;
        }
      }
      reset();
      return i + 1;
    }

    /** "immersion power 3" is in kW: the number must then be usual in it. */
    private boolean isPower() {
      return label.stream().anyMatch(word -> POWER.contains(word.text()));
    }

    /** "pool heat pump", "header tank": an unknown word right before the label may change it. */
    private boolean isModified(List<Term> pre) {
      int before = label.size() - pre.size() - 1;
      return !pre.isEmpty() && before >= 0 && !label.get(before).known();
    }

    /** "2 x 3 kW": whether one or all of them are meant is not said. */
    private boolean isCounted(int i) {
      return (i > 0 && COUNT.matcher(token(i - 1).text()).matches())
          || (i + 1 < at.size() && COUNT.matcher(token(i + 1).text()).matches());
    }

    /** Two numbers with nothing but a mark between: the old and the new, or two columns. */
    private boolean isFollowed(int i) {
      int next = i + 1;
      while (next < at.size() && isMark(token(next))) {
        next++;
      }
      boolean amount = next > i + 1 && next < at.size() && token(next).is(Kind.AMOUNT);
      return amount && Objects.equals(unit(i), unit(next));
    }

    private @Nullable UnitWord unit(int i) {
      Amount amount = token(i).amount();
      return amount == null ? null : amount.unit();
    }

    private boolean knownAfter(List<Term> post) {
      return known(post) > 0 && Term.says(post.subList(0, known(post)));
    }

    private int after(int i, Term term) {
      int next = i + 1;
      while (next < at.size() && at.get(next) <= term.last()) {
        next++;
      }
      return next;
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
        return List.of(known);
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

    private boolean isLast(int with, List<Term> pre, int known, boolean free) {
      List<Integer> order = order(pre, known, free);
      return order.get(order.size() - 1) == with || (Term.says(pre) && with == 0);
    }

    private Outcome resolve(int i, List<Term> words) {
      Set<String> all = new LinkedHashSet<>(Term.all(words));
      Outcome outcome = resolve(i, all);
      Pointer before = last;
      boolean time =
          all.isEmpty()
              ? label.stream().anyMatch(word -> FOR.contains(word.text()))
              : all.equals(Set.of("delay"));
      if (before != null && time && before.last().matches("st(art|op)_kW")) {
        Set<String> delay = Set.of(before.last().substring(0, before.last().indexOf('_')), "delay");
        return resolve(i, delay);
      }
      if (!(outcome instanceof Outcome.Taken) && Term.isKnown(earlier) && !earlier.isEmpty()) {
        Set<String> more = new LinkedHashSet<>(Term.all(earlier));
        more.addAll(all);
        Outcome wider = resolve(i, more);
        if (wider instanceof Outcome.Taken && earlier != above) {
          earlier.forEach(term -> Arrays.fill(used, term.first(), term.last() + 1, true));
        }
        return wider instanceof Outcome.Taken ? wider : outcome;
      }
      return outcome;
    }

    private Outcome resolve(int i, Set<String> all) {
      Amount amount = Objects.requireNonNull(token(i).amount());
      if (amount.second() != null || amount.range() || all.contains("both")) {
        List<Outcome> pair = resolver.pair(all, token(i), unit, context());
        if (pair.size() == 2) {
          second = pair.get(1);
          return pair.get(0);
        }
      }
      return resolver.number(all, token(i), unit, context());
    }

    private @Nullable Outcome second;

    private void taken(int i, Outcome outcome, int from, int to, List<Term> words) {
      take(outcome, i, i, from, to);
      Outcome other = second;
      second = null;
      if (other != null) {
        take(other, i, i, from, to);
      }
      Set<String> all = Term.all(words);
      attributes(all, from, to);
    }

    /** "an unvented tank of 300 L" says two things. */
    private void attributes(Set<String> all, int from, int to) {
      if (last == null) {
        return;
      }
      for (String term : ATTRIBUTES.getOrDefault(last.toString(), List.of())) {
        if (all.contains(term)) {
          take(resolver.statement(Set.of(term), context()), from, to);
        }
      }
    }
  }

  private static boolean isMark(Token token) {
    return token.is(Kind.CELL)
        || token.is(Kind.LINK)
        || token.is(Kind.OTHER)
        || token.is(Kind.COMMA)
        || token.is(Kind.SLASH);
  }

  private static boolean isBreak(Token token) {
    return token.is(Kind.COMMA)
        || token.is(Kind.JOIN)
        || token.is(Kind.STOP)
        || token.is(Kind.CELL)
        || token.is(Kind.LINK)
        || token.is(Kind.OPEN);
  }
}
