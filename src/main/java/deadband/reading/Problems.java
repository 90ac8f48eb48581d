package deadband.reading;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import java.util.ArrayList;
import java.util.List;

/** The problems of one file, as many as a person may want to see at once. */
final class Problems {

  /** One file may have a problem on each of half a million lines. */
  static final int MOST = 20;

  private final Source source;
  private final List<Problem> found = new ArrayList<>();

  Problems(Source source) {
    this.source = source;
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  /** Whether no more would be shown. */
  boolean isFull() {
    return found.size() >= MOST;
  }

  void add(Kind kind, String what, String right, Span where) {
    add(Problem.of(source, kind, what, right).at(where));
  }

  /** A problem with what stands in a cell. */
  void addCell(Kind kind, String cell, String right, Span where) {
    add(kind, Source.shortened(cell), right, where);
  }

  /** A problem of the whole file. */
  void add(Kind kind, String what, String right) {
    add(Problem.of(source, kind, what, right));
  }

  void add(Problem problem) {
    if (!isFull()) {
      found.add(problem);
    }
  }

  /** In the order of the file; says so where there may be more. */
  List<Problem> listed() {
    List<Problem> listed = new ArrayList<>(found);
    listed.sort(Problem.inOrder());
    if (isFull()) {
      listed.add(
          Problem.of(
              source, Kind.TOO_MANY, MOST + " or more", "mend these first, then read again"));
    }
    return List.copyOf(listed);
  }
}
