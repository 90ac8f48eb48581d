package deadband.paste;

import deadband.document.Pointer;
import deadband.paste.Token.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One line with the terms of the trade in it, and what was taken from it so far. */
final class Line {

  private final Resolver resolver = new Resolver();
  private final String text;
  private final List<Token> tokens;
  private final Map<Integer, Term> terms;
  private final boolean[] used;
  private final Context heading;
  private final List<Term> above;
  private final List<Found> taken = new ArrayList<>();
  private final List<Asked> asked = new ArrayList<>();
  private List<Pointer> nearby = List.of();
  private List<List<Integer>> kept = List.of();
  private @Nullable Pointer last;

  /** A value and where it stands in the clean text. */
  record Found(Outcome.Taken outcome, int start, int end, boolean asFound) {}

  /** Words that can mean several things, and where they begin in the clean text. */
  record Asked(String text, int start, List<String> choices) {}

  /**
   * A line.
   *
   * @param terms by the place of their first token
   * @param above words of the line above that may belong to its first value
   */
  Line(
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

  int size() {
    return tokens.size();
  }

  Token token(int at) {
    return tokens.get(at);
  }

  @Nullable Term term(int at) {
    return terms.get(at);
  }

  /** The text between two places in it. */
  String between(int start, int end) {
    return text.substring(start, end);
  }

  List<Term> above() {
    return above;
  }

  Resolver resolver() {
    return resolver;
  }

  List<Found> taken() {
    return taken;
  }

  List<Asked> asked() {
    return asked;
  }

  /** The value taken last; null where none is yet, or where what came after it is in doubt. */
  @Nullable Pointer last() {
    return last;
  }

  Context context() {
    return new Context(nearby, heading.heading(), heading.strange());
  }

  /** The sections of which what follows speaks. */
  void near(List<Pointer> sections) {
    nearby = sections;
  }

  boolean isUsed(int at) {
    return used[at];
  }

  void use(Term term) {
    Arrays.fill(used, term.first(), term.last() + 1, true);
  }

  /** What stands in brackets is not used up with the words around it. */
  void keep(List<List<Integer>> brackets) {
    kept = brackets;
  }

  /**
   * Takes a value, or notes that it must be asked for; false where there is neither.
   *
   * @param first of the tokens of the value itself
   * @param last of them
   * @param from of the tokens that are used up by it
   * @param to of them
   */
  boolean take(Outcome outcome, int first, int last, int from, int to, boolean asFound) {
    if (outcome instanceof Outcome.Ask ask) {
      int start = token(from).start();
      asked.add(new Asked(between(start, token(to).end()), start, ask.choices()));
      // a time that follows may be that of what is in doubt
      this.last = null;
    } else if (outcome instanceof Outcome.Taken one) {
      taken.add(new Found(one, token(first).start(), token(last).end(), asFound));
      this.last = one.pointer();
      nearby = List.of(one.pointer().parent().orElseThrow());
    } else {
      return false;
    }
    for (int at = from; at <= to; at++) {
      int here = at;
      used[at] |=
          !token(at).is(Kind.OPAQUE) && kept.stream().noneMatch(inside -> inside.contains(here));
    }
    return true;
  }

  static boolean isValue(Token token) {
    return token.is(Kind.AMOUNT) || token.is(Kind.WINDOW) || token.is(Kind.PLACE);
  }

  static boolean isMark(Token token) {
    return token.is(Kind.CELL)
        || token.is(Kind.LINK)
        || token.is(Kind.OTHER)
        || token.is(Kind.COMMA)
        || token.is(Kind.SLASH);
  }

  static boolean isBreak(Token token) {
    return token.is(Kind.COMMA)
        || token.is(Kind.JOIN)
        || token.is(Kind.STOP)
        || token.is(Kind.CELL)
        || token.is(Kind.LINK)
        || token.is(Kind.OPEN);
  }
}
