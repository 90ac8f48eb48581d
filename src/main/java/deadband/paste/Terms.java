package deadband.paste;

import deadband.paste.Token.Kind;
import deadband.setup.Unit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Brings the words of a line to the terms of the vocabulary, the longest match first. */
final class Terms {

  private static final Set<String> ON = Set.of("on", "ein", "an", "aan", "in");
  private static final Set<String> OFF = Set.of("off", "aus", "uit", "af");

  private static final Set<String> PUMP = Set.of("pump", "hp", "ashp", "gshp");
  private static final Set<String> PLAIN = Set.of("on", "off", "aan", "uit", "aus");
  private static final Set<String> AT = Set.of("bei", "bij", "at", "above", "below", "ab", "unter");
  private static final Set<Kind> MARKS =
      EnumSet.of(Kind.LINK, Kind.CELL, Kind.UNIT, Kind.OPEN, Kind.CLOSE);

  private final Vocabulary vocabulary = Vocabulary.all();
  private final List<Token> tokens;

  private Terms(List<Token> tokens) {
    this.tokens = tokens;
  }

  /** The terms by the index of the token at which each begins. */
  static Map<Integer, Term> of(List<Token> tokens) {
    Terms terms = new Terms(tokens);
    Map<Integer, Term> found = new TreeMap<>();
    for (int at = 0; at < tokens.size(); ) {
      Term term = terms.at(at);
      if (term != null) {
        found.put(at, term);
      }
      at = term == null ? at + 1 : term.last() + 1;
    }
    return found;
  }

  private @Nullable Term at(int at) {
    List<String> words = words(at);
    if (words.isEmpty()) {
      return null;
    }
    String onOff = onOff(at);
    String inOut = inOut(at);
    if (inOut != null) {
      return new Term(Set.of(inOut), tokens.get(at).text(), at, at, true, false);
    }
    if (onOff != null) {
      Set<String> said = isTime(at - 1) ? Set.of(onOff, "delay") : Set.of(onOff);
      int last = isAt(at + 1) ? at + 1 : at;
      return new Term(said, tokens.get(at).text(), at, last, true, false);
    }
    int length = vocabulary.longest(words, 0);
    if (length > 0) {
      List<String> concept = vocabulary.concept(words.subList(0, length));
      return new Term(
          new TreeSet<>(concept),
          String.join(" ", words.subList(0, length)),
          at,
          at + length - 1,
          true,
          false);
    }
    if (!tokens.get(at).is(Kind.WORD)) {
      return null;
    }
    String word = words.get(0);
    boolean filler = vocabulary.isFiller(word);
    boolean known = filler || vocabulary.isKnown(word);
    return new Term(
        filler ? Set.of() : Set.of(word), word, at, at, known, vocabulary.isDanger(word));
  }

  /** "On: 3.2 kW" and "on/off" mean start and stop; elsewhere "on" is a preposition. */
  private @Nullable String onOff(int at) {
    String word = tokens.get(at).text();
    boolean on = ON.contains(word);
    if (!on && !OFF.contains(word)) {
      return null;
    }
    Token after = token(at + 1);
    boolean first =
        at == 0
            || !tokens.get(at - 1).is(Kind.WORD)
            || tokens.get(at - 1).text().matches("switch|relay|relais");
    boolean power =
        after != null
            && after.amount() != null
            && after.amount().unit() != null
            && after.amount().unit().written().matches("(?i)k?w|watt|°c|c");
    boolean label =
        after != null
            && (after.is(Kind.LINK) || after.is(Kind.CELL) || after.is(Kind.SLASH) || power);
    boolean paired = at > 0 && tokens.get(at - 1).is(Kind.SLASH) && !on;
    boolean again = after != null && isAmount(after) && isPair(at);
    boolean plain = first && (label || again) && !word.equals("an") && !word.equals("in");
    return plain || paired || isLabelled(at) || isAfterAmount(at) ? (on ? "start" : "stop") : null;
  }

  private static boolean isAmount(Token token) {
    return token.amount() != null && token.unit() == null;
  }

  /** "on 3 kW off 2.5": the second number is in the unit of the first. */
  private boolean isPair(int at) {
    Token before = token(at - 1);
    Token first = token(at - 2);
    return before != null
        && before.is(Kind.AMOUNT)
        && before.unit() != null
        && first != null
        && (ON.contains(first.text()) || OFF.contains(first.text()));
  }

  private @Nullable Token token(int at) {
    return at >= 0 && at < tokens.size() ? tokens.get(at) : null;
  }

  /** "DHW off (°C) | 51", "aus bei 0,4 kW". */
  private boolean isLabelled(int at) {
    boolean preposition = isAt(at + 1);
    int next = at + 1;
    while (next < tokens.size() && MARKS.contains(tokens.get(next).kind())) {
      next++;
    }
    next += preposition ? 1 : 0;
    boolean marked = next > at + 1 && next < tokens.size() && tokens.get(next).is(Kind.AMOUNT);
    return marked && (preposition || PLAIN.contains(tokens.get(at).text()));
  }

  /** "on at", and "on >", "off <". */
  private boolean isAt(int at) {
    Token token = token(at);
    String bound = at > 0 && ON.contains(tokens.get(at - 1).text()) ? ">" : "<";
    return token != null
        && ((token.is(Kind.WORD) && AT.contains(token.text())) || token.text().equals(bound));
  }

  /** "2 kW on / 1.5 kW off", "3 min on". */
  private boolean isAfterAmount(int at) {
    Token before = token(at - 1);
    Token after = token(at + 1);
    boolean end =
        after == null
            || !(after.is(Kind.WORD)
                || after.is(Kind.AMOUNT)
                || after.is(Kind.LINK)
                || after.is(Kind.OPAQUE));
    return before != null && before.is(Kind.AMOUNT) && end && PLAIN.contains(tokens.get(at).text());
  }

  /** "1.9 kW in / 5.5 kW out": what goes into the heat pump and what it gives. */
  private @Nullable String inOut(int at) {
    String word = tokens.get(at).text();
    Token before = token(at - 1);
    Token after = token(at + 1);
    boolean power =
        before != null
            && before.amount() != null
            && before.amount().unit() != null
            && before.amount().unit().to(Unit.KILOWATT).isPresent();
    boolean end = after == null || !(after.is(Kind.WORD) || after.is(Kind.AMOUNT));
    boolean pump = tokens.subList(0, at).stream().anyMatch(token -> PUMP.contains(token.text()));
    boolean in = word.equals("in") || (pump && word.matches("electric|electrical|elec"));
    return power && end && (in || word.equals("out") || (pump && word.equals("thermal")))
        ? (in ? "input" : "output")
        : null;
  }

  private boolean isTime(int at) {
    Token token = token(at);
    return token != null
        && token.amount() != null
        && token.amount().unit() != null
        && token.amount().unit().to(Unit.MINUTE).isPresent();
  }

  /** The words from here on that no mark parts. */
  private List<String> words(int at) {
    List<String> words = new ArrayList<>();
    int next = at;
    while (next < tokens.size() && next - at < 8 && isWord(tokens.get(next), next > at)) {
      words.add(tokens.get(next).text());
      next++;
    }
    return words;
  }

  private static boolean isWord(Token token, boolean within) {
    return token.is(Kind.WORD)
        || (within && (token.is(Kind.SLASH) || token.is(Kind.JOIN)) && !token.text().equals("+"));
  }
}
