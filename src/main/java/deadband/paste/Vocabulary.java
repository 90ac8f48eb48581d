package deadband.paste;

import deadband.document.Pointer;
import deadband.setup.Choice;
import deadband.setup.FieldKind;
import deadband.setup.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people write for each value of the setup file. The lists are data, in {@code words/}: the
 * terms of the trade ({@code concepts.txt}), the phrases made of them for each value ({@code
 * values.txt}), and the words that say nothing or forbid to take a number ({@code fillers.txt}).
 *
 * <p>A phrase is a set of terms: their order does not count. A value is meant where the terms of a
 * label are exactly one of its phrases, with or without names of the sections around it.
 */
final class Vocabulary {

  /** A value of the setup file that can be named. */
  record Entry(
      Pointer pointer,
      FieldKind kind,
      Set<Set<String>> phrases,
      boolean needsSection,
      UsualRanges.Range usual,
      Map<String, Object> words) {

    Unit unit() {
      return kind instanceof FieldKind.Num number ? number.unit() : Unit.NONE;
    }
  }

  /** Terms that state a value without a label. */
  record Statement(Entry entry, Set<String> terms, Object value) {}

  /**
   * What a label can mean.
   *
   * @param explicit whether it can be told without what stands around it
   * @param own whether it names the section that the value stands in
   */
  record Meaning(Entry entry, boolean explicit, boolean own) {}

  private static final Pattern LINE =
      Pattern.compile(
          "(?<place>/\\S*?)(?<section>!?)(?: \\[[^\\]]*\\])?"
              + "(?: (?<equals>==?) (?<word>[^:]+))?:(?: (?<phrases>.*))?");

  private static final Pattern MARKS = Pattern.compile("[^\\p{L}\\p{N}/]+");
  private static final int LONGEST = 8;

  /** Terms that many things have: they name a value only together with its section. */
  private static final Set<String> GENERAL =
      Set.of(
          "start",
          "stop",
          "delay",
          "minimum",
          "maximum",
          "limit",
          "target",
          "height",
          "volume",
          "capacity",
          "rating",
          "hysteresis",
          "hold",
          "every",
          "sensor",
          "class",
          "area",
          "bottom",
          "upper",
          "length",
          "phases",
          "phase",
          "cable",
          "breaker",
          "flex",
          "rcd",
          "thermostat",
          "cutout",
          "own",
          "output",
          "input",
          "mixed",
          "voltage",
          "run",
          "pause",
          "contact",
          "blocked",
          "timer",
          "position",
          "declared",
          "programme",
          "enabled",
          "state",
          "type",
          "element",
          "measured",
          "displayed",
          "loss",
          "margin",
          "priority",
          "before",
          "startsperhour",
          "base",
          "voltfree",
          "signal",
          "valve",
          "standard",
          "by",
          "from",
          "at",
          "surplus",
          "export");

  /** Read when it is first looked into: a setup file needs none of it. */
  private static final class Whole {
    static final Vocabulary ALL = new Vocabulary();
  }

  private final Map<String, List<String>> concepts = new HashMap<>();
  private final Map<String, String> twice = new LinkedHashMap<>();
  private final Map<Pointer, Entry> entries = new LinkedHashMap<>();
  private final Map<Pointer, Set<Set<String>>> sections = new LinkedHashMap<>();
  private final Map<Set<String>, Integer> uses = new HashMap<>();
  private final List<Statement> statements = new ArrayList<>();
  private final Set<String> fillers = new HashSet<>();
  private final Set<String> dangers = new HashSet<>();
  private final Set<String> trade = new HashSet<>();
  private final Set<String> known = new HashSet<>();

  private Vocabulary() {
    for (String line : WordLists.lines("fillers.txt")) {
      Set<String> words = line.startsWith("dangers:") ? dangers : fillers;
      String list = line.substring(line.indexOf(':') + 1).strip();
      Arrays.stream(list.split("\\s+", 0)).map(Scanner::normal).forEach(words::add);
    }
    WordLists.lines("concepts.txt").forEach(this::concept);
    WordLists.lines("values.txt").forEach(this::value);
    entries.values().forEach(entry -> entry.phrases().forEach(known::addAll));
    statements.forEach(statement -> known.addAll(statement.terms()));
    sections.values().forEach(names -> names.forEach(trade::addAll));
    known.addAll(trade);
    entries
        .values()
        .forEach(entry -> entry.phrases().forEach(phrase -> uses.merge(phrase, 1, Integer::sum)));
  }

  static Vocabulary all() {
    return Whole.ALL;
  }

  private void concept(String line) {
    int colon = line.indexOf(':');
    List<String> terms = List.of(line.substring(0, colon).split(" ", 0));
    known.addAll(terms);
    for (String written : line.substring(colon + 1).split(";", 0)) {
      String phrase = plain(written);
      List<String> before = concepts.putIfAbsent(phrase, terms);
      if (before != null && !before.equals(terms)) {
        twice.put(phrase, before + " and " + terms);
      }
    }
    if (terms.size() == 1) {
      concepts.putIfAbsent(terms.get(0), terms);
    }
  }

  /** What is written, word by word. */
  static String plain(String written) {
    return MARKS.matcher(Scanner.normal(written)).replaceAll(" ").strip();
  }

  private void value(String line) {
    Matcher parts = LINE.matcher(line);
    if (!parts.matches()) {
      throw new IllegalStateException("not a line of the vocabulary: " + line);
    }
    Pointer pointer = Pointer.parse(parts.group("place"));
    List<String> phrases =
        Arrays.stream(Objects.requireNonNullElse(parts.group("phrases"), "").split(";", 0))
            .map(String::strip)
            .filter(phrase -> !phrase.isEmpty())
            .toList();
    FieldKind kind = kind(pointer);
    if (kind instanceof FieldKind.Section) {
      phrases.forEach(phrase -> section(pointer).add(terms(phrase)));
    } else if (parts.group("word") != null) {
      word(pointer, kind, parts, phrases);
    } else {
      entries.put(pointer, entry(pointer, kind, parts, phrases));
    }
  }

  private Set<Set<String>> section(Pointer pointer) {
    return sections.computeIfAbsent(pointer, key -> new LinkedHashSet<>());
  }

  private Entry entry(Pointer pointer, FieldKind kind, Matcher parts, List<String> written) {
    Set<Set<String>> phrases = new LinkedHashSet<>();
    written.stream()
        .filter(phrase -> !phrase.equals("-"))
        .forEach(phrase -> phrases.add(terms(phrase)));
    phrases.add(terms(ownName(pointer.last())));
    phrases.remove(Set.<String>of());
    if (written.contains("-")) {
      phrases.add(Set.of());
    }
    phrases.forEach(trade::addAll);
    describedAs(pointer).map(this::terms).filter(set -> !set.isEmpty()).ifPresent(phrases::add);
    Map<String, Object> words = new LinkedHashMap<>();
    choices(kind).forEach(choice -> words.put(plain(choice.word()), choice));
    return new Entry(
        pointer, kind, phrases, !parts.group("section").isEmpty(), UsualRanges.of(pointer), words);
  }

  private static List<Choice> choices(FieldKind kind) {
    FieldKind of = kind instanceof FieldKind.Many many ? many.of() : kind;
    return of instanceof FieldKind.Word word ? word.choices() : List.of();
  }

  /** startDelay_min is called "start Delay". */
  static String ownName(String name) {
    Unit unit = Unit.of(name);
    String stem =
        unit == Unit.NONE ? name : name.substring(0, name.length() - unit.suffix().length() - 1);
    return String.join(" ", stem.split("(?=[A-Z])", 0));
  }

  private static Optional<String> describedAs(Pointer pointer) {
    return pointer
        .parent()
        .flatMap(parent -> Places.at(real(parent)))
        .filter(found -> found.kind() instanceof FieldKind.Section)
        .flatMap(found -> ((FieldKind.Section) found.kind()).shape().field(pointer.last()))
        .map(deadband.setup.Field::means);
  }

  private void word(Pointer pointer, FieldKind kind, Matcher parts, List<String> written) {
    Entry entry = Objects.requireNonNull(entries.get(pointer), pointer.toString());
    Object value = meant(kind, parts.group("word").strip());
    if (parts.group("equals").equals("==")) {
      Object said =
          kind instanceof FieldKind.Many && value instanceof Choice ? List.of(value) : value;
      written.forEach(phrase -> statements.add(new Statement(entry, terms(phrase), said)));
    }
    if (!(kind instanceof FieldKind.Flag)) {
      written.forEach(phrase -> entry.words().put(plain(phrase), value));
    }
  }

  private static Object meant(FieldKind kind, String word) {
    if (word.equals("none")
        && kind instanceof FieldKind.Many many
        && !(many.of() instanceof FieldKind.Word)) {
      return List.of();
    }
    if (kind instanceof FieldKind.Flag) {
      return word.equals("yes");
    }
    if (kind instanceof FieldKind.Num) {
      return Double.valueOf(word);
    }
    if (kind instanceof FieldKind.Text) {
      return word;
    }
    return choices(kind).stream()
        .filter(choice -> choice.word().equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no such choice: " + word));
  }

  private static FieldKind kind(Pointer pointer) {
    return Places.at(real(pointer))
        .map(Places.Found::kind)
        .orElseThrow(() -> new IllegalStateException("no such value: " + pointer));
  }

  /** A kind of outlet stands for an outlet of the list. */
  static Pointer real(Pointer pointer) {
    List<String> tokens = pointer.tokens();
    if (tokens.size() < 2 || !tokens.get(0).equals("outlets")) {
      return pointer;
    }
    return Pointer.parse("/outlets/0" + (tokens.size() > 2 ? "/" + tokens.get(2) : ""));
  }

  /** The terms of a phrase, fillers left out. */
  Set<String> terms(String phrase) {
    List<String> words = List.of(plain(phrase).split(" ", 0));
    Set<String> terms = new TreeSet<>();
    for (int at = 0; at < words.size(); ) {
      int length = longest(words, at);
      if (length > 0) {
        terms.addAll(
            concepts.getOrDefault(String.join(" ", words.subList(at, at + length)), List.of()));
      } else if (!fillers.contains(words.get(at))) {
        terms.add(words.get(at));
      }
      at += Math.max(1, length);
    }
    return terms;
  }

  /** How many words from here on are one term; 0 where none begins here. */
  int longest(List<String> words, int at) {
    for (int length = Math.min(LONGEST, words.size() - at); length > 0; length--) {
      if (concepts.containsKey(String.join(" ", words.subList(at, at + length)))) {
        return length;
      }
    }
    return 0;
  }

  List<String> concept(List<String> words) {
    return concepts.getOrDefault(String.join(" ", words), List.of());
  }

  boolean isFiller(String word) {
    return fillers.contains(word);
  }

  boolean isDanger(String word) {
    return dangers.contains(word);
  }

  /** Whether it is a term that names something, not a word of a description alone. */
  boolean isTrade(String term) {
    return trade.contains(term);
  }

  boolean isKnown(String term) {
    return known.contains(term);
  }

  List<Entry> entries() {
    return List.copyOf(entries.values());
  }

  Optional<Entry> entry(Pointer pointer) {
    return Optional.ofNullable(entries.get(pointer));
  }

  /** A value that has no list of its own and is named as the file names it. */
  static Entry plainEntry(Pointer pointer, FieldKind kind) {
    Map<String, Object> words = new LinkedHashMap<>();
    choices(kind).forEach(choice -> words.put(plain(choice.word()), choice));
    return new Entry(pointer, kind, Set.of(), false, UsualRanges.Range.ANY, words);
  }

  /** What is written for more than one term, for the test that there is none. */
  Map<String, String> writtenTwice() {
    return twice;
  }

  Map<Pointer, Set<Set<String>>> sections() {
    return sections;
  }

  /** The sections that these terms name and nothing else. */
  List<Pointer> sectionsNamed(Set<String> terms) {
    List<Pointer> named = new ArrayList<>();
    for (Pointer section : sections.keySet()) {
      Set<String> left = new HashSet<>(terms);
      boolean own = namesOf(section).stream().anyMatch(terms::containsAll);
      if (own && !terms.isEmpty()) {
        remove(section, terms, left);
        if (left.isEmpty()) {
          named.add(section);
        }
      }
    }
    return named;
  }

  private Set<Set<String>> namesOf(Pointer section) {
    return sections.getOrDefault(section, Set.of());
  }

  /** Takes the names of a section, and of those around it, out of the terms left. */
  private boolean remove(Pointer section, Set<String> terms, Set<String> left) {
    boolean named = false;
    for (Pointer at = section; !at.isRoot(); at = at.parent().orElseThrow()) {
      for (Set<String> name : namesOf(at)) {
        if (terms.containsAll(name)) {
          left.removeAll(name);
          named = true;
        }
      }
    }
    return named;
  }

  /** Every value that a label with these terms can mean, whatever its unit. */
  List<Meaning> meanings(Set<String> terms, List<Pointer> context) {
    List<Meaning> meanings = new ArrayList<>();
    for (Entry entry : entries.values()) {
      meaning(entry, terms, context).ifPresent(meanings::add);
    }
    return meanings;
  }

  private Optional<Meaning> meaning(Entry entry, Set<String> terms, List<Pointer> context) {
    Pointer section = entry.pointer().parent().orElseThrow();
    boolean within = context.contains(section);
    Meaning found = null;
    for (Set<String> phrase : entry.phrases()) {
      if (!terms.containsAll(phrase)) {
        continue;
      }
      Set<String> left = new HashSet<>(terms);
      left.removeAll(phrase);
      Set<String> rest = new HashSet<>(left);
      boolean named = remove(section, left, rest);
      if (!rest.isEmpty()) {
        continue;
      }
      boolean own = namesOf(section).stream().anyMatch(terms::containsAll);
      if (phrase.isEmpty() && !own && !within) {
        continue;
      }
      boolean special = uses.getOrDefault(phrase, 0) == 1 && !GENERAL.containsAll(phrase);
      if (found == null || named || special) {
        found = new Meaning(entry, named || special, own);
      }
      if (found.explicit()) {
        break;
      }
    }
    return Optional.ofNullable(found);
  }

  /** What these terms state, with or without names of the sections around the value. */
  List<Statement> statements(Set<String> terms) {
    List<Statement> found = new ArrayList<>();
    for (Statement statement : statements) {
      Set<String> left = new HashSet<>(terms);
      left.removeAll(statement.terms());
      Set<String> rest = new HashSet<>(left);
      remove(statement.entry().pointer().parent().orElseThrow(), left, rest);
      if (terms.containsAll(statement.terms()) && rest.isEmpty()) {
        found.add(statement);
      }
    }
    return found;
  }

  /** The equipment that these terms name, for "no battery". */
  Optional<Pointer> equipment(Set<String> terms) {
    List<Pointer> named =
        sectionsNamed(terms).stream()
            .filter(
                section ->
                    Places.at(real(section)).map(Places.Found::kind).orElse(null)
                            instanceof FieldKind.Section kind
                        && kind.shape().isEquipment())
            .toList();
    return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
  }
}
