package deadband.paste;

import deadband.paste.Token.Kind;
import java.util.ArrayList;
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
    if (onOff != null) {
      return new Term(Set.of(onOff), tokens.get(at).text(), at, at, true, false);
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
    Token after = at + 1 < tokens.size() ? tokens.get(at + 1) : null;
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
    return (first && label && !word.equals("an") && !word.equals("in")) || paired
        ? (on ? "start" : "stop")
        : null;
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
