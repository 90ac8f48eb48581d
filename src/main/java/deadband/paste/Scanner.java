package deadband.paste;

import deadband.paste.Token.Amount;
import deadband.paste.Token.Kind;
import deadband.setup.Unit;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Takes one line apart: words, numbers with their units, times of day, and what parts them. */
final class Scanner {

  private static final Pattern OPAQUE =
      Pattern.compile(
          "https?://\\S+|www\\.\\S+|\\S+@\\S+\\.\\S+|\\d{1,2}[./]\\d{1,2}[./]\\d{2,4}(?!\\d)|\\d{4}-\\d{2}-\\d{2}(?:T\\S+)?|\\+\\d[\\d"
              + " ()/-]{7,}\\d|0\\d{2,5}[ /-]\\d[\\d -]{4,}\\d|\\d+(?:\\.\\d+){2,}|#\\d+");

  private static final Pattern CHAT =
      Pattern.compile(
          "\\s*\\[?(?:\\d{1,2}[./]\\d{1,2}[./]\\d{2,4},? )?\\d{1,2}:\\d{2}(?::\\d{2})?\\]?"
              + " (?:- )?\\p{Lu}[\\p{L} .]{0,24}: ");

  private static final Pattern WINDOW =
      Pattern.compile(
          "(?:between |from |von |van |de |zwischen |tussen |entre )?(\\d{1,2})[:h](\\d{2})(?:"
              + " ?(?:h|uhr|uur))? ?(?:-|to|until|till|and|bis|tot|und|en|à|et)"
              + " ?(\\d{1,2})[:h](\\d{2})(?: ?(?:h|uhr|uur)(?![a-z]))?",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern TIME = Pattern.compile("\\d{1,2}:\\d{2}(?::\\d{2})?(?: ?[ap]m)?");

  private static final Pattern PLACE =
      Pattern.compile(
          "/?[a-z][A-Za-z]*(?:[./](?:[a-z][A-Za-z]*|\\d+))*[./][a-z][A-Za-z]*(?:_[A-Za-z0-9]+)*"
              + "(?![\\p{L}\\p{N}_./])|[a-z][A-Za-z]*(?:_[A-Za-z0-9]+)+(?![\\p{L}\\p{N}_])");

  private static final Pattern PHASES =
      Pattern.compile(
          "(?:(1|one|single|ein|een|eén|mono|1x|3|three|drei|drie|tri|3x)["
              + " -]?(?:phased?|ph|phasig|phasige|phasiger|phasiges"
              + "|fasige?|fase|phasé|phasée))(?![\\p{L}])",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<sign>[-+±~≈]"
              + " ?|)(?<digits>\\d{1,3}(?:'\\d{3})+(?:[.,]\\d+)?|\\d{1,3}(?:[.,]\\d{3}){2,}|\\d{1,3}(?:"
              + " \\d{3})+(?!\\d)|\\d+(?:[.,]\\d+)?(?:[.,]\\d+)?)");

  private static final Map<String, String> NUMBERS =
      Map.ofEntries(
          Map.entry("half an", "0.5"),
          Map.entry("half a", "0.5"),
          Map.entry("a", "1"),
          Map.entry("an", "1"),
          Map.entry("one", "1"),
          Map.entry("two", "2"),
          Map.entry("three", "3"),
          Map.entry("four", "4"),
          Map.entry("five", "5"),
          Map.entry("six", "6"),
          Map.entry("seven", "7"),
          Map.entry("fourteen", "14"),
          Map.entry("eight", "8"),
          Map.entry("ten", "10"),
          Map.entry("twelve", "12"),
          Map.entry("fifteen", "15"),
          Map.entry("twenty", "20"),
          Map.entry("thirty", "30"),
          Map.entry("sixty", "60"));

  /** "five minutes", "half an hour", "two people". */
  private static final Pattern NUMBER_WORD =
      Pattern.compile(
          "(half an?|an?|one|two|three|four|five|six|seven|eight|ten|twelve|fourteen"
              + "|fifteen|twenty|thirty|sixty)["
              + " -](?=(?:min|mins|minutes?|hours?|hrs?|secs?|seconds?|kw|kilowatts?|(days)|(people|persons|occupants|residents|of"
              + " us))(?!\\p{L}))",
          Pattern.CASE_INSENSITIVE);

  /** After these words "a minute" is a time; "starts an hour" is a rate. */
  private static final Set<String> BEFORE_ONE =
      Set.of("is", "of", "for", "after", "delay", "hold", "holds", "waits", "wait", "about");

  private static final Pattern ACCENTS = Pattern.compile("\\p{M}");

  private static final Pattern WORD =
      Pattern.compile(
          "[A-Za-z]&[A-Za-z](?![A-Za-z])|\\p{L}[\\p{L}\\p{M}\\p{N}_]*(?:'\\p{L}+)?|[✓✔✗✘]");

  private static final Pattern RANGE =
      Pattern.compile("(?: ?(?:-|\\.\\.|~) ?| (?:to|bis|tot|à|or|oder|of|ou) )(?=[-+]?\\d)");

  private static final Set<String> ABBREVIATIONS =
      Set.of(
          "min", "max", "approx", "ca", "no", "nr", "temp", "elec", "std", "resp", "ref", "sek",
          "sec", "hrs", "ltr", "el", "incl", "mind", "maxi", "mini", "env", "ltrs", "amp", "t", "p",
          "n", "o", "c");

  private static final Set<String> JOINS =
      Set.of(
          "and", "but", "then", "while", "und", "aber", "dann", "sowie", "en", "maar", "et", "mais",
          "puis", "plus");

  private final String text;
  private final int end;
  private final List<Token> tokens = new ArrayList<>();
  private int at;

  private Scanner(String text, int start, int end) {
    this.text = text;
    this.at = start;
    this.end = end;
  }

  /** The pieces of a stretch that lies within one line. */
  static List<Token> of(String text, int start, int end) {
    Scanner scanner = new Scanner(text, start, end);
    scanner.bullet();
    while (scanner.at < end) {
      scanner.next();
    }
    return List.copyOf(scanner.tokens);
  }

  /** Who wrote a line of a chat and when, a bullet, or the number of a list item. */
  private void bullet() {
    Matcher chat = CHAT.matcher(text).region(at, end);
    if (chat.lookingAt()) {
      at = chat.end();
    }
    Matcher bullet =
        Pattern.compile(
                "\\s*(?:[-*•·▪◦○●►‣#]+\\s+|[•·▪◦○●►‣]|\\(?\\d{1,2}[.)]\\s+|\\(?[a-z][.)]\\s+)+")
            .matcher(text)
            .region(at, end);
    if (bullet.lookingAt()) {
      at = bullet.end();
    }
  }

  private void next() {
    char c = text.charAt(at);
    if (c == ' ' || isHyphen(c)) {
      at++;
    } else if (take(OPAQUE, Kind.OPAQUE) || window() || take(TIME, Kind.OPAQUE)) {
      return;
    } else if (phases() || place() || unitInBrackets() || numberWord() || number() || word()) {
      return;
    } else {
      mark(c);
    }
  }

  /** Whether a hyphen stands within a word: cut-out. */
  private boolean isHyphen(char c) {
    return c == '-'
        && at > 0
        && at + 1 < end
        && Character.isLetter(text.charAt(at - 1))
        && Character.isLetter(text.charAt(at + 1));
  }

  private @Nullable Matcher looking(Pattern pattern) {
    Matcher matcher = pattern.matcher(text).region(at, end).useTransparentBounds(true);
    return matcher.lookingAt() ? matcher : null;
  }

  private boolean take(Pattern pattern, Kind kind) {
    Matcher matcher = startsToken() ? looking(pattern) : null;
    if (matcher == null) {
      return false;
    }
    add(kind, matcher.group(), matcher.end(), null);
    return true;
  }

  /** Whether no letter or digit stands right before. */
  private boolean startsToken() {
    return at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1));
  }

  private boolean window() {
    Matcher window = startsToken() ? looking(WINDOW) : null;
    if (window == null) {
      return false;
    }
    String from = clock(window.group(1), window.group(2));
    String until = clock(window.group(3), window.group(4));
    boolean right = !from.isEmpty() && !until.isEmpty();
    add(right ? Kind.WINDOW : Kind.OPAQUE, from + "-" + until, window.end(), null);
    return true;
  }

  private static String clock(String hours, String minutes) {
    int hour = Integer.parseInt(hours);
    int minute = Integer.parseInt(minutes);
    return hour > 24 || minute > 59
        ? ""
        : String.format(Locale.ROOT, "%02d:%02d", hour % 24, minute);
  }

  private boolean phases() {
    Matcher phases = startsToken() ? looking(PHASES) : null;
    if (phases == null) {
      return false;
    }
    boolean three = phases.group(1).matches("(?iu)3x?|three|drei|drie|tri");
    add(Kind.WORD, three ? "threephase" : "singlephase", phases.end(), null);
    return true;
  }

  private boolean place() {
    Matcher place = startsToken() ? looking(PLACE) : null;
    if (place == null || !Places.isKnown(place.group())) {
      return false;
    }
    add(Kind.PLACE, place.group(), place.end(), null);
    return true;
  }

  /** A unit alone in round or square brackets, or in a cell of a table. */
  private boolean unitInBrackets() {
    char c = text.charAt(at);
    boolean bracket = c == '(' || c == '[';
    boolean cell = !tokens.isEmpty() && last().is(Kind.CELL);
    if (!bracket && !cell) {
      return false;
    }
    Matcher unit =
        looking(
            Pattern.compile(
                "[(\\[]? *(?:in )?(" + UnitWord.PATTERN.pattern() + ") *[)\\]]?",
                UnitWord.PATTERN.flags()));
    if (unit == null || (bracket != (")]".indexOf(text.charAt(unit.end() - 1)) >= 0))) {
      return false;
    }
    boolean alone = bracket || unit.end() >= end || "\t|;".indexOf(text.charAt(unit.end())) >= 0;
    if (!alone || UnitWord.of(unit.group(1)).isEmpty()) {
      return false;
    }
    add(Kind.UNIT, unit.group(1), unit.end(), null);
    return true;
  }

  private boolean number() {
    Matcher number = startsToken() ? looking(NUMBER) : null;
    if (number == null) {
      return false;
    }
    String sign = number.group("sign").strip();
    if (sign.equals("-") && (number.group("sign").length() > 1 || !mayBeSigned())) {
      return false;
    }
    List<BigDecimal> readings = readings(number.group("digits"), sign.equals("-"));
    int start = at;
    at = number.end();
    UnitWord unit = unit();
    if (at < end
        && Character.isLetterOrDigit(text.charAt(at))
        && Character.isLetterOrDigit(text.charAt(at - 1))) {
      int word = at;
      while (word < end && Character.isLetterOrDigit(text.charAt(word))) {
        word++;
      }
      at = start;
      add(Kind.OPAQUE, text.substring(start, word), word, null);
      return true;
    }
    BigDecimal second = unit == null ? second() : null;
    UnitWord after = unit == null ? unit() : unit;
    BigDecimal other = range();
    if (other != null) {
      readings = List.of(readings.get(0), other);
      after = after == null ? unit() : after;
    }
    Amount amount = new Amount(readings, after, other != null, second);
    int until = at;
    at = start;
    add(Kind.AMOUNT, text.substring(start, until), until, amount);
    joined();
    return true;
  }

  private boolean numberWord() {
    Matcher words = startsToken() ? looking(NUMBER_WORD) : null;
    String number = words == null ? "" : normal(words.group(1));
    boolean article = number.matches("(?:half )?an?");
    boolean half = number.startsWith("half");
    boolean after = !tokens.isEmpty() && isBeforeOne(last());
    if (words == null || (article && !half && !after)) {
      return false;
    }
    boolean people = words.group(3) != null;
    boolean days = words.group(2) != null;
    if ((article && people) || (days && (tokens.isEmpty() || !last().text().equals("every")))) {
      return false;
    }
    int start = at;
    at = words.end() - 1;
    UnitWord unit = people ? null : unit();
    int until = at;
    at = start;
    BigDecimal value = new BigDecimal(Objects.requireNonNull(NUMBERS.get(number)));
    Amount amount = new Amount(List.of(value), unit, false, null);
    add(Kind.AMOUNT, text.substring(start, until), until, amount);
    return true;
  }

  private static boolean isBeforeOne(Token token) {
    return token.is(Kind.LINK)
        || token.is(Kind.CELL)
        || (token.is(Kind.WORD) && BEFORE_ONE.contains(token.text()));
  }

  private boolean mayBeSigned() {
    return at == 0 || " \t:=;|(".indexOf(text.charAt(at - 1)) >= 0;
  }

  /** What was written: 1,500 and 1.500 and 1 500 are read in two ways. */
  private static List<BigDecimal> readings(String digits, boolean negative) {
    List<BigDecimal> readings = new ArrayList<>();
    if (digits.matches("[1-9]\\d{0,2}[.,]\\d{3}")) {
      readings.add(new BigDecimal(digits.replace(',', '.')));
      readings.add(new BigDecimal(digits.replaceAll("[.,]", "")));
    } else if (digits.matches("\\d+ \\d{3}(?: \\d{3})*")) {
      readings.add(new BigDecimal(digits.replace(" ", "")));
      readings.add(new BigDecimal(digits.substring(digits.lastIndexOf(' ') + 1)));
    } else {
      readings.add(plain(digits));
    }
    return negative ? readings.stream().map(BigDecimal::negate).toList() : List.copyOf(readings);
  }

  private static BigDecimal plain(String digits) {
    int mark = Math.max(digits.lastIndexOf(','), digits.lastIndexOf('.'));
    boolean grouped =
        digits.matches("\\d{1,3}(?:([.,'])\\d{3})(?:\\1\\d{3})+|\\d{1,3}(?:'\\d{3})+");
    if (mark < 0 || grouped) {
      return new BigDecimal(digits.replaceAll("[.,']", ""));
    }
    return new BigDecimal(
        digits.substring(0, mark).replaceAll("[.,']", "") + "." + digits.substring(mark + 1));
  }

  /** The unit that follows a number, perhaps in the next cell. */
  private @Nullable UnitWord unit() {
    int from = at;
    while (from < end && text.charAt(from) == ' ') {
      from++;
    }
    boolean joined = from == at && from + 1 < end && text.charAt(from) == '-';
    from += joined && Character.isLetter(text.charAt(from + 1)) ? 1 : 0;
    Matcher cell = Pattern.compile(" *[\t|;]+ *|,").matcher(text).region(at, end);
    boolean inCell = cell.lookingAt();
    if (inCell) {
      from = cell.end();
    }
    Matcher unit = UnitWord.PATTERN.matcher(text).region(from, end).useTransparentBounds(true);
    if (!unit.lookingAt()) {
      return null;
    }
    if (inCell
        && unit.end() < end
        && !text.substring(unit.end(), end).matches("(?s) *[\t|;,].*| *")) {
      return null;
    }
    String written = unit.group();
    Optional<UnitWord> word = UnitWord.of(written);
    if (word.isEmpty()
        && from == at
        && written.length() == 1
        && "ad".indexOf(written.charAt(0)) < 0) {
      word = UnitWord.of(written.toUpperCase(Locale.ROOT));
    }
    if (word.isPresent()) {
      at = unit.end();
    }
    return word.orElse(null);
  }

  private @Nullable BigDecimal second() {
    Matcher pair =
        Pattern.compile(" ?/ ?(\\d+(?:[.,]\\d+)?)(?![\\d/.,]\\d)").matcher(text).region(at, end);
    if (!pair.lookingAt()) {
      return null;
    }
    at = pair.end();
    return plain(pair.group(1));
  }

  /** The other end of a range. */
  private @Nullable BigDecimal range() {
    Matcher range = looking(RANGE);
    if (range == null) {
      return null;
    }
    Matcher other =
        Pattern.compile("[-+]?\\d+(?:[.,]\\d+)?(?![\\d:])").matcher(text).region(range.end(), end);
    if (!other.lookingAt()) {
      return null;
    }
    at = other.end();
    return plain(other.group());
  }

  /** 1 min 30 s and 1 h 30 min are one time. */
  private void joined() {
    int count = tokens.size();
    if (count < 2 || !tokens.get(count - 2).is(Kind.AMOUNT)) {
      return;
    }
    Amount first = tokens.get(count - 2).amount();
    Amount second = last().amount();
    Optional<BigDecimal> one = minutes(first);
    Optional<BigDecimal> two = minutes(second);
    if (one.isEmpty()
        || two.isEmpty()
        || first == null
        || second == null
        || Objects.equals(first.unit(), second.unit())
        || one.get().compareTo(two.get()) < 0) {
      return;
    }
    Token before = tokens.get(count - 2);
    Token after = last();
    tokens.remove(count - 1);
    tokens.remove(count - 2);
    BigDecimal sum = one.get().add(two.get());
    tokens.add(
        new Token(
            Kind.AMOUNT,
            text.substring(before.start(), after.end()),
            before.start(),
            after.end(),
            new Amount(List.of(sum), UnitWord.of("min").orElseThrow(), false, null)));
  }

  private static Optional<BigDecimal> minutes(@Nullable Amount amount) {
    UnitWord unit = amount == null ? null : amount.unit();
    return amount == null || unit == null || !amount.isClear() || amount.second() != null
        ? Optional.empty()
        : unit.to(Unit.MINUTE).map(way -> way.of(amount.readings().get(0)));
  }

  private boolean word() {
    Matcher matcher = looking(WORD);
    if (matcher == null) {
      return false;
    }
    String word = matcher.group();
    int start = at;
    Unit unit = Unit.of(word);
    String stem =
        unit == Unit.NONE ? word : word.substring(0, word.length() - unit.suffix().length() - 1);
    for (String part : parts(stem)) {
      String plain = normal(part);
      Kind kind = JOINS.contains(plain) ? Kind.JOIN : Kind.WORD;
      at = start;
      add(kind, plain, matcher.end(), null);
    }
    if (unit != Unit.NONE) {
      at = start;
      add(Kind.UNIT, unit.printed(), matcher.end(), null);
    }
    at = matcher.end();
    return true;
  }

  /** "startDelay" is two words, "l'eau" too, "pump's" is one. */
  private static String[] parts(String word) {
    if (word.matches("[a-z]+(?:[A-Z][a-z0-9]+)+")) {
      return word.split("(?=[A-Z])", 0);
    }
    if (word.matches("(?i).*'s")) {
      return new String[] {word.substring(0, word.length() - 2)};
    }
    return word.matches("(?i).*n't") ? new String[] {word} : word.split("['&_]", 0);
  }

  /** In small letters, without accents. */
  static String normal(String word) {
    String small = word.toLowerCase(Locale.ROOT);
    return small.chars().allMatch(c -> c < 128)
        ? small
        : ACCENTS
            .matcher(Normalizer.normalize(small, Normalizer.Form.NFD))
            .replaceAll("")
            .replace("ß", "ss")
            .replace("œ", "oe");
  }

  private void mark(char c) {
    Kind kind =
        switch (c) {
          case ',' -> Kind.COMMA;
          case '\t', '|', ';' -> Kind.CELL;
          case ':', '=' -> Kind.LINK;
          case '/' -> Kind.SLASH;
          case '(', '[', '{' -> Kind.OPEN;
          case ')', ']', '}' -> Kind.CLOSE;
          case '?' -> Kind.QUESTION;
          case '.' -> stop();
          case '!' -> Kind.STOP;
          case '&', '+' -> Kind.JOIN;
          default -> Kind.OTHER;
        };
    if (c == '-' && spaced()) {
      kind = Kind.CELL;
    } else if (c == ';' && text.substring(at + 1, end).matches("(?s) \\p{L}.*")) {
      kind = Kind.COMMA;
    }
    add(kind, String.valueOf(c), at + 1, null);
  }

  private boolean spaced() {
    return at > 0 && text.charAt(at - 1) == ' ' && at + 1 < end && text.charAt(at + 1) == ' ';
  }

  private Kind stop() {
    boolean sentence = at + 1 >= end || text.charAt(at + 1) == ' ';
    boolean leader =
        (at > 0 && text.charAt(at - 1) == '.') || (at + 1 < end && text.charAt(at + 1) == '.');
    boolean shortened =
        !tokens.isEmpty()
            && last().is(Kind.WORD)
            && last().end() == at
            && ABBREVIATIONS.contains(last().text());
    return sentence && !leader && !shortened ? Kind.STOP : Kind.OTHER;
  }

  private Token last() {
    return tokens.get(tokens.size() - 1);
  }

  private void add(Kind kind, String what, int until, @Nullable Amount amount) {
    tokens.add(new Token(kind, what, at, until, amount));
    at = until;
  }
}
