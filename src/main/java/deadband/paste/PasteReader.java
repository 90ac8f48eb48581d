package deadband.paste;

import deadband.document.Pointer;
import deadband.document.Source;
import deadband.document.Span;
import deadband.paste.Pasted.Ambiguous;
import deadband.paste.Pasted.NotUnderstood;
import deadband.paste.Pasted.Understood;
import deadband.paste.Token.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Reads settings out of text as people send it: an email, a chat, a form, rows of a spreadsheet.
 *
 * <pre>{@code
 * Pasted pasted = PasteReader.read(Source.of("mail.txt", text));
 * pasted.understood();      // line, words, place in the setup file, value, unit
 * pasted.notUnderstood();   // lines with a number or a term of the trade that say nothing certain
 * pasted.ambiguous();       // lines that can mean several things, with the choices
 * }</pre>
 *
 * <p>A label must be exactly a phrase of the {@link Vocabulary}, and its number must be possible
 * and usual there; whatever is left over, or can mean two things, is asked about and never taken.
 */
public final class PasteReader {

  private static final int MOST_HEADING_WORDS = 6;
  private static final int MOST_STRANGE_WORDS = 3;

  /** What a mail program writes above a mail and above what it quotes. */
  private static final Pattern MAIL_HEAD =
      Pattern.compile(
          "(?i)\\s*(?:(?:from|to|cc|sent|von|an|van|aan|de|à|reply-to) ?:.*@.*"
              + "|(?:date|sent|gesendet|datum|verzonden|envoyé|date) ?:.*\\d{4}.*\\d:\\d\\d.*"
              + "|(?:on|am|op|le) .*\\d{4}.*(?:wrote|schrieb|schreef|a écrit)[^:]*:\\s*)");

  private static final Pointer FOUND = Pointer.parse("/asFound/settings");

  private final Source source;
  private final CleanText clean;
  private final String text;
  private final List<Understood> understood = new ArrayList<>();
  private final List<NotUnderstood> notUnderstood = new ArrayList<>();
  private final List<Ambiguous> ambiguous = new ArrayList<>();
  private final boolean doubleSpaced;
  private int otherLines;

  private Context context = Context.NONE;
  private boolean asFound;
  private int taken;
  private boolean blankBefore;
  private List<Term> label = List.of();
  private String labelText = "";

  private PasteReader(Source source) {
    this.source = source;
    this.clean = CleanText.of(source.text());
    this.text = SoftWraps.joined(clean.text());
    long lines = clean.text().lines().count();
    long blank = clean.text().lines().filter(String::isBlank).count();
    this.doubleSpaced = blank * 5 >= lines * 2;
  }

  /** What a text says of a setup. */
  public static Pasted read(Source source) {
    return read(source, List.of());
  }

  /**
   * What a text says, where it is known what it is about.
   *
   * @param about sections in which a label is looked for first, as if they stood above it
   */
  public static Pasted read(Source source, List<Pointer> about) {
    PasteReader reader = new PasteReader(source);
    reader.context = new Context(List.of(), about, false);
    reader.lines();
    return reader.pasted();
  }

  private void lines() {
    int start = 0;
    while (start < text.length()) {
      int end = text.indexOf('\n', start);
      end = end < 0 ? text.length() : end;
      line(start, end);
      start = end + 1;
    }
  }

  private void line(int start, int end) {
    String line = text.substring(start, end);
    if (line.isBlank()) {
      label = List.of();
      blankBefore = true;
      return;
    }
    if (blankBefore) {
      afterBlank();
    }
    blankBefore = false;
    if (MAIL_HEAD.matcher(line).matches()) {
      otherLines++;
      return;
    }
    List<Token> tokens = Scanner.of(text, start, end);
    Map<Integer, Term> terms = Terms.of(tokens);
    if (isHeading(line, tokens, terms)) {
      return;
    }
    boolean alone = !tokens.isEmpty() && isValue(tokens.get(0)) && terms.isEmpty();
    Line read = new Line(text, tokens, terms, context, alone ? label : List.of());
    LineReader reader = new LineReader(read);
    String above = alone && !label.isEmpty() ? labelText : "";
    int before = understood.size() + ambiguous.size();
    reader.read();
    String shown = shownText(above + " " + line);
    int number = lineOf(start);
    read.taken().forEach(found -> add(lineOf(found.start()), above, found));
    read.asked()
        .forEach(
            ask ->
                ambiguous.add(
                    new Ambiguous(lineOf(ask.start()), shownText(ask.text()), ask.choices())));
    reader
        .left()
        .forEach(
            left ->
                notUnderstood.add(new NotUnderstood(lineOf(left.start()), shownText(left.text()))));
    boolean nothing = understood.size() + ambiguous.size() == before && reader.left().isEmpty();
    if (!above.isEmpty() && !nothing) {
      notUnderstood.removeIf(one -> one.line() == number - 1);
    }
    remember(line, terms, nothing && tokens.stream().noneMatch(PasteReader::isValue));
    if (nothing && reader.saysSomething()) {
      notUnderstood.add(new NotUnderstood(number, shown));
    } else if (nothing) {
      otherLines++;
    }
    taken += read.taken().size();
  }

  /** A line of words alone may be the label of a value on the next. */
  private void remember(String line, Map<Integer, Term> terms, boolean words) {
    List<Term> all = List.copyOf(terms.values());
    label = words && Term.isKnown(all) ? all : List.of();
    labelText = shownText(line);
  }

  /** A heading holds for the block of lines below it. */
  private void afterBlank() {
    if (taken > 0 && !doubleSpaced) {
      context = Context.NONE;
      asFound = false;
      taken = 0;
    }
  }

  private void add(int line, String above, Line.Found found) {
    String text = shownText(above + " " + writtenLine(found.start()));
    Outcome.Taken value = found.outcome();
    Pointer pointer = asFound || found.asFound() ? FOUND.append(value.pointer()) : value.pointer();
    Span span = clean.original(found.start(), found.end());
    understood.add(new Understood(line, text, pointer, value.value(), value.unit(), span));
  }

  /** The line of the text as it was pasted in which this place of the clean text lies. */
  private String writtenLine(int offset) {
    String clean = this.clean.text();
    int end = clean.indexOf('\n', offset);
    return clean.substring(clean.lastIndexOf('\n', offset) + 1, end < 0 ? clean.length() : end);
  }

  private int lineOf(int offset) {
    return source.place(clean.original(offset, offset + 1).start()).line();
  }

  private static String shownText(String line) {
    return line.replace('\t', ' ').replaceAll(" {2,}", " ").replaceFirst("^ ?[-*•·] ", "").strip();
  }

  /** A line that names a section and says nothing more: what follows belongs to it. */
  private boolean isHeading(String line, List<Token> tokens, Map<Integer, Term> terms) {
    if (tokens.isEmpty() || tokens.stream().anyMatch(PasteReader::isValue)) {
      return false;
    }
    List<Term> words = List.copyOf(terms.values());
    boolean marked =
        tokens.get(tokens.size() - 1).is(Kind.LINK)
            || line.strip().matches("#+ .*|[=*_-]{2,}.*|.*[=*_-]{2,}|\\[.*\\]");
    boolean ended =
        tokens.get(tokens.size() - 1).is(Kind.QUESTION)
            || tokens.get(tokens.size() - 1).is(Kind.STOP);
    if (words.isEmpty() || words.size() > MOST_HEADING_WORDS || ended) {
      return false;
    }
    Set<String> all = new TreeSet<>(Term.all(words));
    boolean found = all.remove("asfound");
    List<Pointer> sections = Vocabulary.all().sectionsNamed(all);
    boolean known =
        Term.isKnown(words) && (found ? all.isEmpty() || !sections.isEmpty() : !sections.isEmpty());
    boolean strange = marked && words.size() <= MOST_STRANGE_WORDS && !Term.isKnown(words);
    if (!known && !strange) {
      return false;
    }
    label = List.of();
    context = new Context(List.of(), known ? sections : List.of(), strange);
    asFound = found && known;
    taken = 0;
    return true;
  }

  private static boolean isValue(Token token) {
    return token.is(Kind.AMOUNT)
        || token.is(Kind.WINDOW)
        || token.is(Kind.PLACE)
        || token.is(Kind.OPAQUE);
  }

  private Pasted pasted() {
    List<Understood> settled = new ArrayList<>();
    for (Understood one : understood) {
      List<Understood> same =
          understood.stream().filter(other -> other.pointer().equals(one.pointer())).toList();
      if (same.stream().allMatch(other -> other.value().equals(one.value()))) {
        settled.add(one);
      } else {
        ambiguous.add(new Ambiguous(one.line(), one.text(), contradicting(same)));
      }
    }
    ambiguous.sort(Comparator.comparingInt(Ambiguous::line));
    SetupTree tree = new SetupTree(source);
    List<Understood> real = settled.stream().map(tree::add).toList();
    return new Pasted(
        tree.document(),
        real,
        List.copyOf(notUnderstood),
        List.copyOf(ambiguous),
        otherLines,
        false);
  }

  private static List<String> contradicting(List<Understood> same) {
    return same.stream()
        .map(
            one ->
                (shown(one.pointer())
                            + " "
                            + one.value().map(Resolver::shown).orElse("not known")
                            + " "
                            + one.unit())
                        .strip()
                    + " (line "
                    + one.line()
                    + ")")
        .distinct()
        .toList();
  }

  /** A place as it is shown: outlets by their kind, since they have no name in the file. */
  static String shown(Pointer pointer) {
    return pointer.dotted();
  }

  /** The value as it is shown. */
  public static Optional<String> shown(Optional<Object> value) {
    return value.map(Resolver::shown);
  }
}
