package deadband.paste;

import deadband.paste.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Reads the values of one line: sentence by sentence, clause by clause. */
final class LineReader {

  private final Line line;
  private final List<Left> left = new ArrayList<>();
  private final List<List<Integer>> bracketed = new ArrayList<>();

  /** Words that were not understood, and where they begin in the clean text. */
  record Left(String text, int start) {}

  LineReader(Line line) {
    this.line = line;
  }

  /** Clauses with a value that was not taken, where others of the line were. */
  List<Left> left() {
    return left;
  }

  /** Whether the line holds a number or a term of the trade. */
  boolean saysSomething() {
    for (int at = 0; at < line.size(); at++) {
      Term term = line.term(at);
      boolean trade = term != null && isTrade(term);
      if (trade || Line.isValue(line.token(at)) || line.token(at).is(Kind.OPAQUE)) {
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
    for (int at = 0; at <= line.size(); at++) {
      if (at == line.size() || line.token(at).is(Kind.STOP) || line.token(at).is(Kind.QUESTION)) {
        boolean question =
            at < line.size() && line.token(at).is(Kind.QUESTION) && !isUnknownMark(at);
        boolean unknown = at < line.size() && line.token(at).is(Kind.QUESTION) && !question;
        sentence(from, unknown ? at + 1 : at, question);
        from = at + 1;
      }
    }
    if (!line.taken().isEmpty() || !line.asked().isEmpty()) {
      leftOver();
    }
  }

  /** "height: ?" says that it is not known. */
  private boolean isUnknownMark(int at) {
    return at > 0 && (line.token(at - 1).is(Kind.LINK) || line.token(at - 1).is(Kind.CELL));
  }

  /** Brackets hold a sentence of their own. */
  private void sentence(int from, int to, boolean question) {
    List<Integer> outside = new ArrayList<>();
    int open = -1;
    for (int at = from; at < to; at++) {
      if (line.token(at).is(Kind.OPEN) && open < 0) {
        open = at;
      } else if (line.token(at).is(Kind.CLOSE)) {
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
      line.keep(bracketed);
      new Sentence(line, outside, from == 0 ? line.above() : List.of()).read();
      line.keep(List.of());
      bracketed.forEach(this::bracketed);
    }
    bracketed.clear();
  }

  private boolean isStatement(List<Integer> inside) {
    List<Term> words = new ArrayList<>();
    inside.stream().map(at -> line.term(at)).filter(Objects::nonNull).forEach(words::add);
    return !line.resolver().statement(Term.all(words), line.context()).isNone();
  }

  /** What stands in brackets is said of the words before them. */
  private void bracketed(List<Integer> inside) {
    List<Term> before = new ArrayList<>();
    for (int at = inside.get(0) - 2;
        at >= 0 && !Line.isBreak(line.token(at)) && !Line.isValue(line.token(at));
        at--) {
      Term term = line.term(at);
      if (term != null) {
        before.add(0, term);
      }
    }
    new Sentence(line, inside, Term.label(before)).read();
  }

  /** Known words in brackets explain the label; a value in brackets has a clause of its own. */
  private void bracket(List<Integer> outside, int open, int close, boolean question) {
    List<Integer> inside = new ArrayList<>();
    boolean value = false;
    boolean known = true;
    for (int at = open + 1; at < close; at++) {
      inside.add(at);
      value |= Line.isValue(line.token(at));
      Term term = line.term(at);
      known &= term == null || term.known();
    }
    boolean statement = known && !value && isStatement(inside);
    if ((value || statement) && !question) {
      bracketed.add(inside);
    } else if (known && !value) {
      outside.addAll(inside);
    }
  }

  /** What holds a value and was not used, clause by clause. */
  private void leftOver() {
    int from = 0;
    for (int at = 0; at <= line.size(); at++) {
      boolean end =
          at == line.size()
              || line.token(at).is(Kind.STOP)
              || line.token(at).is(Kind.COMMA)
              || line.token(at).is(Kind.QUESTION)
              || line.token(at).is(Kind.JOIN);
      if (end) {
        leftOver(from, at);
        from = at + 1;
      }
    }
  }

  private void leftOver(int from, int to) {
    boolean open = false;
    int opaque = -1;
    for (int at = from; at < to; at++) {
      Term term = line.term(at);
      boolean says = term != null && isTrade(term);
      opaque = !line.isUsed(at) && line.token(at).is(Kind.OPAQUE) ? at : opaque;
      open |= !line.isUsed(at) && Line.isValue(line.token(at));
      open |= !line.isUsed(at) && says && !usedWithin(from, to);
    }
    if (open || (opaque >= 0 && !usedWithin(from, to))) {
      left(from, to - 1);
    } else if (opaque >= 0) {
      left(Math.max(from, opaque - 1), opaque);
    }
  }

  private void left(int from, int to) {
    int start = line.token(from).start();
    left.add(new Left(line.between(start, line.token(to).end()), start));
  }

  private boolean usedWithin(int from, int to) {
    for (int at = from; at < to; at++) {
      if (line.isUsed(at)) {
        return true;
      }
    }
    return false;
  }
}
