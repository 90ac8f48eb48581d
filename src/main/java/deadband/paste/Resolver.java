package deadband.paste;

import deadband.document.Pointer;
import deadband.paste.Token.Amount;
import deadband.paste.Vocabulary.Entry;
import deadband.paste.Vocabulary.Meaning;
import deadband.paste.Vocabulary.Statement;
import deadband.setup.Choice;
import deadband.setup.ClockWindow;
import deadband.setup.CountryCode;
import deadband.setup.FieldKind;
import deadband.setup.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Finds the value of the setup file that a label and what is written beside it mean. */
final class Resolver {

  private static final int MOST_CHOICES = 6;
  private static final Pointer HEAT_PUMP = Pointer.parse("/heatPump");
  private static final Pointer OBSERVED = Pointer.parse("/observed");

  static final Set<String> YES =
      Set.of(
          "yes",
          "y",
          "true",
          "ja",
          "j",
          "oui",
          "vrai",
          "✓",
          "✔",
          "x",
          "aktiv",
          "active",
          "activated",
          "enabled",
          "on",
          "ein",
          "an",
          "aan",
          "waar",
          "actief",
          "ingeschakeld",
          "wahr",
          "present",
          "vorhanden",
          "aanwezig",
          "yep",
          "actif",
          "active le",
          "yes please",
          "yeah");
  static final Set<String> NO =
      Set.of(
          "no",
          "n",
          "false",
          "nein",
          "nee",
          "non",
          "faux",
          "✗",
          "✘",
          "inaktiv",
          "inactive",
          "disabled",
          "off",
          "aus",
          "uit",
          "onwaar",
          "uitgeschakeld",
          "falsch",
          "none",
          "keine",
          "kein",
          "geen",
          "aucun",
          "aucune",
          "not fitted",
          "not installed",
          "not present",
          "nicht vorhanden",
          "nope",
          "niet aanwezig",
          "deaktiviert",
          "absent",
          "desactive",
          "inactif");
  static final Set<String> UNKNOWN =
      Set.of(
          "tbc",
          "tbd",
          "unknown",
          "not known",
          "to be confirmed",
          "dont know",
          "don t know",
          "unbekannt",
          "onbekend",
          "inconnu",
          "not sure",
          "no idea",
          "don't know",
          "weet ik niet",
          "weiss nicht",
          "keine ahnung",
          "geen idee",
          "je ne sais pas",
          "unsure");

  private final Vocabulary vocabulary = Vocabulary.all();

  /** A number beside a label. */
  Outcome number(Set<String> terms, Token token, @Nullable UnitWord labelUnit, Context context) {
    Amount amount = Objects.requireNonNull(token.amount());
    UnitWord unit = amount.unit() != null ? amount.unit() : labelUnit;
    Set<String> label = terms;
    if (unit != null && unit.isPeakPower()) {
      label = new LinkedHashSet<>(terms);
      label.add("peak");
    }
    List<Meaning> meanings = new ArrayList<>();
    for (Meaning meaning : vocabulary.meanings(label, context.sections())) {
      boolean bare = unit == null && isBare(meaning.entry(), label);
      if (!bare
          && meaning.entry().kind() instanceof FieldKind.Num
          && !possible(meaning.entry(), amount, unit).isEmpty()) {
        meanings.add(meaning);
      }
    }
    // a heating element under the heading of the heat pump may be its back-up heater
    boolean either = label.contains("rod") && Context.within(HEAT_PUMP, context.heading());
    List<Meaning> narrowed =
        either || isSetOrObserved(meanings, context) ? List.of() : narrowed(meanings, context);
    if (narrowed.isEmpty()) {
      return meanings.isEmpty() ? ofSection(label, token, unit) : ask(meanings, token, unit);
    }
    List<Meaning> usual = usual(narrowed, amount, unit);
    return usual.size() > 1 ? ask(usual, token, unit) : number(usual.get(0).entry(), token, unit);
  }

  /** Beside a heat pump on a line, a number may be what it permits or what was observed of it. */
  private static boolean isSetOrObserved(List<Meaning> meanings, Context context) {
    long observed =
        meanings.stream()
            .filter(m -> m.entry().pointer().parent().equals(Optional.of(OBSERVED)))
            .count();
    return observed > 0
        && observed < meanings.size()
        && Context.within(HEAT_PUMP, context.nearby());
  }

  /** Those of which the number is usual as it is written; all where it is usual of none. */
  private static List<Meaning> usual(
      List<Meaning> meanings, Amount amount, @Nullable UnitWord unit) {
    List<Meaning> usual =
        meanings.stream()
            .filter(
                meaning ->
                    unit == null
                        ? meaning.entry().usual().holds(own(meaning.entry(), amount))
                        : possible(meaning.entry(), amount, unit).stream()
                            .anyMatch(meaning.entry().usual()::holds))
            .toList();
    return ifAny(meanings, usual);
  }

  private boolean isBare(Entry entry, Set<String> label) {
    return label.isEmpty()
        || label.contains("panels")
        || (entry.phrases().contains(Set.<String>of())
            && vocabulary.sectionsNamed(label).contains(entry.pointer().parent().orElseThrow()));
  }

  /** A number whose value is known. */
  Outcome number(Entry entry, Token token, @Nullable UnitWord unit) {
    Amount amount = Objects.requireNonNull(token.amount());
    List<Double> possible = possible(entry, amount, unit);
    List<Double> usual =
        possible.stream().filter(value -> entry.usual().holds(value)).distinct().toList();
    boolean own = usual.size() == 1 && (unit != null || usual.get(0) == own(entry, amount));
    boolean pointed = amount.readings().size() > 1 && token.text().matches("[^,]*\\.\\d{3}\\b.*");
    boolean clear =
        pointed
            ? usual.equals(List.of(converted(entry, amount.readings().get(0), unit)))
            : amount.isClear();
    if (own && clear && !amount.range() && amount.second() == null) {
      return new Outcome.Taken(entry.pointer(), Optional.of(usual.get(0)), entry.unit().printed());
    }
    return possible.isEmpty() ? new Outcome.None() : new Outcome.Ask(choices(entry, possible));
  }

  private static double own(Entry entry, Amount amount) {
    return round(entry, amount.readings().get(0).doubleValue());
  }

  private static double converted(Entry entry, BigDecimal number, @Nullable UnitWord unit) {
    double value =
        unit == null
            ? number.doubleValue()
            : unit.to(entry.unit()).map(way -> way.of(number).doubleValue()).orElse(Double.NaN);
    return round(entry, value);
  }

  private static double round(Entry entry, double value) {
    return entry.unit() == Unit.NONE ? value : entry.unit().round(value);
  }

  private static List<String> choices(Entry entry, List<Double> values) {
    return values.stream().distinct().map(value -> choice(entry, value)).toList();
  }

  private static String choice(Entry entry, double value) {
    return (PasteReader.shown(entry.pointer()) + " " + plain(value) + " " + entry.unit().printed())
        .strip();
  }

  static String plain(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  /** Every value that may be meant and that can physically be. */
  private static List<Double> possible(Entry entry, Amount amount, @Nullable UnitWord unit) {
    FieldKind.Num kind = (FieldKind.Num) entry.kind();
    List<Double> values = new ArrayList<>();
    for (BigDecimal reading : amount.readings()) {
      if (unit != null) {
        unit.to(kind.unit())
            .ifPresent(way -> values.add(round(entry, way.of(reading).doubleValue())));
        continue;
      }
      values.add(round(entry, reading.doubleValue()));
      for (UnitWord meant : UnitWord.meantFor(kind.unit())) {
        double value = round(entry, meant.to(kind.unit()).orElseThrow().of(reading).doubleValue());
        boolean lost = value == 0 && reading.signum() != 0;
        if (entry.usual().holds(value) && !lost) {
          values.add(value);
        }
      }
    }
    return values.stream().filter(kind::admits).distinct().toList();
  }

  /** Those that the text around them leaves. */
  private List<Meaning> narrowed(List<Meaning> meanings, Context context) {
    List<Meaning> left = meanings;
    left =
        ifAny(
            left,
            left.stream()
                .filter(m -> Context.within(m.entry().pointer(), context.nearby()))
                .toList());
    left =
        ifAny(
            left,
            left.stream()
                .filter(m -> Context.within(m.entry().pointer(), context.heading()))
                .toList());
    left = left.stream().filter(meaning -> !isInner(meaning, meanings)).toList();
    return left.stream().filter(meaning -> mayBe(meaning, context)).toList();
  }

  /** "diverter phase" is the diverter's own, not that of an input within it. */
  private static boolean isInner(Meaning meaning, List<Meaning> all) {
    return !meaning.own()
        && all.stream()
            .filter(Meaning::own)
            .map(other -> other.entry().pointer().parent().orElseThrow())
            .anyMatch(meaning.entry().pointer()::startsWith);
  }

  private static boolean mayBe(Meaning meaning, Context context) {
    Pointer pointer = meaning.entry().pointer();
    boolean placed =
        meaning.entry().needsSection()
            ? context.sections().contains(pointer.parent().orElseThrow())
            : context.holds(pointer);
    return meaning.explicit()
        || placed
        || (!context.hasHeading() && !meaning.entry().needsSection());
  }

  private static <T> List<T> ifAny(List<T> all, List<T> some) {
    return some.isEmpty() ? all : some;
  }

  private Outcome ask(List<Meaning> meanings, Token token, @Nullable UnitWord unit) {
    Amount amount = Objects.requireNonNull(token.amount());
    List<String> choices =
        meanings.stream()
            .flatMap(
                meaning ->
                    choices(meaning.entry(), possible(meaning.entry(), amount, unit)).stream())
            .distinct()
            .toList();
    List<String> usual =
        meanings.stream()
            .flatMap(
                meaning ->
                    choices(
                        meaning.entry(),
                        possible(meaning.entry(), amount, unit).stream()
                            .filter(meaning.entry().usual()::holds)
                            .toList())
                        .stream())
            .distinct()
            .toList();
    return new Outcome.Ask(ifAny(choices, usual));
  }

  /** "heat pump 12 kW": the section is clear, the value in it is not. */
  private Outcome ofSection(Set<String> terms, Token token, @Nullable UnitWord unit) {
    Amount amount = Objects.requireNonNull(token.amount());
    if (unit == null) {
      return new Outcome.None();
    }
    List<Pointer> sections = vocabulary.sectionsNamed(terms);
    List<Meaning> meanings =
        vocabulary.entries().stream()
            .filter(entry -> sections.contains(entry.pointer().parent().orElseThrow()))
            .filter(entry -> entry.kind() instanceof FieldKind.Num)
            .filter(entry -> possible(entry, amount, unit).stream().anyMatch(entry.usual()::holds))
            .map(entry -> new Meaning(entry, true, true))
            .toList();
    return meanings.size() < 2 || meanings.size() > MOST_CHOICES
        ? new Outcome.None()
        : ask(meanings, token, unit);
  }

  /** Two numbers of one label: on/off 3.2/0.3 kW. */
  List<Outcome> pair(
      Set<String> terms, Token token, @Nullable UnitWord labelUnit, Context context) {
    Amount amount = Objects.requireNonNull(token.amount());
    BigDecimal second = amount.second();
    if (terms.containsAll(Set.of("both", "delay"))) {
      Set<String> delay = without(terms, "both");
      return both(
          number(with(delay, "start"), token, labelUnit, context),
          number(with(delay, "stop"), token, labelUnit, context));
    }
    if (amount.range() && amount.readings().size() == 2) {
      return swing(terms, amount.readings(), token, labelUnit, context);
    }
    boolean programme = terms.contains("surplus") || terms.contains("everyday");
    if (second != null && amount.isClear() && programme && !isNamed(terms)) {
      List<BigDecimal> ends = List.of(amount.readings().get(0), second);
      return swing(terms, ends, token, labelUnit, context);
    }
    if (second == null || !terms.containsAll(Set.of("start", "stop")) || !amount.isClear()) {
      return List.of();
    }
    Outcome start =
        number(without(terms, "stop"), with(token, amount.readings().get(0)), labelUnit, context);
    Outcome stop = number(without(terms, "start"), with(token, second), labelUnit, context);
    return both(start, stop);
  }

  private static boolean isNamed(Set<String> terms) {
    return terms.contains("start") || terms.contains("stop");
  }

  /** "everyday 45 to 50 °C": a programme of the heat pump starts at the lower of two. */
  private List<Outcome> swing(
      Set<String> terms,
      List<BigDecimal> ends,
      Token token,
      @Nullable UnitWord unit,
      Context context) {
    boolean programme = terms.contains("everyday") || terms.contains("surplus");
    boolean hotWater = terms.contains("hotwater");
    if (!(programme || hotWater) || isNamed(terms)) {
      return List.of();
    }
    Outcome start = number(with(terms, "start"), with(token, ends.get(0)), unit, context);
    Outcome stop = number(with(terms, "stop"), with(token, ends.get(1)), unit, context);
    boolean rises = ends.get(0).compareTo(ends.get(1)) < 0;
    if (!rises
        || !(start instanceof Outcome.Taken from && from.pointer().last().equals("start_C"))
        || !(stop instanceof Outcome.Taken to)) {
      return List.of();
    }
    // hot water "from 45 to 50" may be what comes out of the taps
    boolean sure = programme || terms.contains("heatpump") || context.holds(HEAT_PUMP);
    Outcome ask = new Outcome.Ask(List.of(shown(from) + " with " + shown(to)));
    return sure ? both(start, stop) : List.of(ask, new Outcome.None());
  }

  private static List<Outcome> both(Outcome one, Outcome other) {
    boolean both = one instanceof Outcome.Taken && other instanceof Outcome.Taken;
    return both ? List.of(one, other) : List.of();
  }

  private static Set<String> with(Set<String> terms, String term) {
    Set<String> all = new LinkedHashSet<>(terms);
    all.add(term);
    return all;
  }

  private static Set<String> without(Set<String> terms, String term) {
    return terms.stream().filter(other -> !other.equals(term)).collect(Collectors.toSet());
  }

  private static Token with(Token token, BigDecimal number) {
    Amount amount = Objects.requireNonNull(token.amount());
    Amount one = new Amount(List.of(number), amount.unit(), false, null);
    return new Token(token.kind(), token.text(), token.start(), token.end(), one);
  }

  /** Times of day beside a label. */
  Outcome windows(Set<String> terms, List<String> windows, Context context) {
    List<Meaning> meanings =
        vocabulary.meanings(terms, context.sections()).stream()
            .filter(meaning -> isWindows(meaning.entry().kind()))
            .toList();
    List<Meaning> narrowed = narrowed(meanings, context);
    return narrowed.size() == 1
        ? windows(narrowed.get(0).entry().pointer(), windows)
        : askPlaces(narrowed.isEmpty() ? meanings : narrowed, String.join(", ", windows));
  }

  /** Times of day of a value that is known. */
  Outcome windows(Pointer place, List<String> windows) {
    boolean fits =
        Places.at(Vocabulary.real(place)).filter(found -> isWindows(found.kind())).isPresent();
    List<ClockWindow> times =
        windows.stream().map(w -> ClockWindow.parse(w).orElseThrow()).toList();
    return fits ? new Outcome.Taken(place, Optional.of(times), "") : new Outcome.None();
  }

  private static boolean isWindows(FieldKind kind) {
    return kind instanceof FieldKind.Many many && many.of() instanceof FieldKind.Text;
  }

  private static Outcome askPlaces(List<Meaning> meanings, String value) {
    return meanings.isEmpty() || meanings.size() > MOST_CHOICES
        ? new Outcome.None()
        : new Outcome.Ask(
            meanings.stream()
                .map(m -> PasteReader.shown(m.entry().pointer()) + " " + value)
                .toList());
  }

  /** Words beside a label: yes, no, a choice, a name, or that it is not known. */
  Outcome words(Set<String> terms, String written, boolean linked, Context context) {
    String plain = Vocabulary.plain(written);
    List<Meaning> meanings = vocabulary.meanings(terms, context.sections());
    if (UNKNOWN.contains(plain) || written.strip().matches("\\?+")) {
      List<Meaning> all = narrowed(meanings, context);
      return all.size() == 1
          ? new Outcome.Taken(all.get(0).entry().pointer(), Optional.empty(), "")
          : new Outcome.None();
    }
    List<Meaning> fitting =
        meanings.stream()
            .filter(m -> value(m.entry(), plain, written, linked).isPresent())
            .toList();
    List<Meaning> narrowed = narrowed(fitting, context);
    if (narrowed.size() == 1) {
      Entry entry = narrowed.get(0).entry();
      return new Outcome.Taken(
          entry.pointer(), value(entry, plain, written, linked), entry.unit().printed());
    }
    Optional<Outcome> fitted = narrowed.isEmpty() ? fitted(terms, plain) : Optional.empty();
    return fitted.orElseGet(
        () -> askPlaces(narrowed.isEmpty() ? fitting : narrowed, written.strip()));
  }

  /** What is written beside a place named as the file names it. */
  Outcome valueOf(Entry entry, String written) {
    String plain = Vocabulary.plain(written);
    if (UNKNOWN.contains(plain)) {
      return new Outcome.Taken(entry.pointer(), Optional.empty(), "");
    }
    Optional<Object> value = value(entry, plain, written, true);
    return value.isEmpty() ? new Outcome.None() : new Outcome.Taken(entry.pointer(), value, "");
  }

  private Optional<Outcome> fitted(Set<String> terms, String plain) {
    boolean yes = YES.contains(plain);
    if (!yes && !NO.contains(plain)) {
      return Optional.empty();
    }
    return vocabulary
        .equipment(terms)
        .map(section -> new Outcome.Taken(section.child("fitted"), Optional.of(yes), ""));
  }

  private static Optional<Object> value(Entry entry, String plain, String written, boolean linked) {
    Object word = entry.words().get(plain);
    if (entry.kind() instanceof FieldKind.Many many && many.of() instanceof FieldKind.Word) {
      return list(entry, plain);
    }
    if (entry.kind() instanceof FieldKind.Flag && word == null) {
      return YES.contains(plain)
          ? Optional.of(true)
          : NO.contains(plain) ? Optional.of(false) : Optional.empty();
    }
    if (entry.kind() instanceof FieldKind.Many many
        && many.of() instanceof FieldKind.Text text
        && linked) {
      return text.parse().apply(written.strip()).map(List::of);
    }
    if (entry.kind() instanceof FieldKind.Text text && linked) {
      return word == null ? text(text, entry, written.strip()) : country(word);
    }
    return Optional.ofNullable(word);
  }

  private static Optional<Object> country(Object word) {
    return CountryCode.parse(word.toString()).map(code -> code);
  }

  private static Optional<Object> text(FieldKind.Text kind, Entry entry, String written) {
    boolean name = kind.pattern().isEmpty() && !written.isEmpty() && written.length() <= 60;
    return name || (!kind.pattern().isEmpty() && entry.words().isEmpty())
        ? kind.parse().apply(written).map(value -> value)
        : Optional.empty();
  }

  private static Optional<Object> list(Entry entry, String plain) {
    List<Choice> choices = new ArrayList<>();
    for (String part : plain.split(" (?:and|und|en|et|plus|sowie) ", 0)) {
      if (!addAll(choices, entry, part.strip())) {
        return Optional.empty();
      }
    }
    return Optional.of(choices.stream().distinct().toList());
  }

  /** The longest words of the list first. */
  private static boolean addAll(List<Choice> choices, Entry entry, String part) {
    if (part.isEmpty()) {
      return !choices.isEmpty();
    }
    for (int end = part.length(); end > 0; end = part.lastIndexOf(' ', end - 1)) {
      if (entry.words().get(part.substring(0, end)) instanceof Choice choice) {
        choices.add(choice);
        return addAll(choices, entry, part.substring(end).strip());
      }
    }
    int first = part.indexOf(' ');
    boolean filler = first > 0 && Vocabulary.all().isFiller(part.substring(0, first));
    return filler && addAll(choices, entry, part.substring(first + 1));
  }

  /** What some terms state without a label: "unvented". */
  Outcome statement(Set<String> terms, Context context) {
    List<Statement> found = vocabulary.statements(terms);
    List<Statement> left = found;
    left =
        ifAny(
            left,
            left.stream()
                .filter(s -> Context.within(s.entry().pointer(), context.nearby()))
                .toList());
    left =
        ifAny(
            left,
            left.stream()
                .filter(s -> Context.within(s.entry().pointer(), context.heading()))
                .toList());
    Set<Pointer> places =
        left.stream()
            .map(s -> s.entry().pointer())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    if (places.size() == 1) {
      Statement one = left.get(0);
      return new Outcome.Taken(
          one.entry().pointer(), Optional.of(one.value()), one.entry().unit().printed());
    }
    return places.isEmpty()
        ? new Outcome.None()
        : new Outcome.Ask(
            left.stream()
                .map(s -> PasteReader.shown(s.entry().pointer()) + " " + shown(s.value()))
                .distinct()
                .toList());
  }

  /** A value with its place, as a choice. */
  static String shown(Outcome.Taken taken) {
    String value = taken.value().map(Resolver::shown).orElse("not known");
    return (PasteReader.shown(taken.pointer()) + " " + value + " " + taken.unit()).strip();
  }

  static String shown(Object value) {
    if (value instanceof Double number) {
      return plain(number);
    }
    if (value instanceof List<?> items) {
      return "[" + items.stream().map(Resolver::shown).collect(Collectors.joining(", ")) + "]";
    }
    return value instanceof Choice choice ? choice.word() : value.toString();
  }
}
