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
  private final int most;
  private final List<Problem> found = new ArrayList<>();

  /** Those of a day file, in which each row may have the same. */
  Problems(Source source) {
    this(source, MOST);
  }

  Problems(Source source, int most) {
    this.source = source;
    this.most = most;
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  /** Whether no more would be shown. */
  boolean isFull() {
    return found.size() >= most;
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
    // most files have none, and the comparator costs time at the start of a run
    if (listed.size() > 1) {
      listed.sort(Problem.inOrder());
    }
    if (isFull()) {
      listed.add(
          Problem.of(source, Kind.TOO_MANY, most + " or more", "correct these, then run again"));
    }
    return List.copyOf(listed);
  }
}
