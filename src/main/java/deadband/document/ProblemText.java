package deadband.document;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Problems as a text for people: where, what is wrong, the line with a caret under the exact value,
 * what was found and what would be right.
 *
 * <pre>
 * line 12, column 18  /relay/start_kW
 * A comma is used as the decimal point
 *     "start_kW": 3,2,
 *                 ^^^
 * found  3,2
 * right  3.2
 * </pre>
 *
 * <p>What comes from the file is made {@linkplain Printable printable} first.
 */
public final class ProblemText {

  private static final String INDENT = "    ";
  private static final int LABEL = 7;
  private static final int MOST_PLACES = 20;
  private static final int NARROWEST = 30;

  private final StringBuilder out = new StringBuilder();
  private final int width;

  private ProblemText(int width) {
    this.width = Math.max(width, NARROWEST);
  }

  /**
   * One problem, without the name of its file.
   *
   * @param width cells a line may have
   */
  public static String of(Problem problem, int width) {
    ProblemText text = new ProblemText(width);
    text.write(List.of(problem));
    return text.out.toString();
  }

  /** Problems grouped by file, each group under the file's name, in the order given. */
  public static String of(List<Problem> problems, int width) {
    Map<String, List<Problem>> byName = new LinkedHashMap<>();
    for (Problem problem : problems) {
      byName.computeIfAbsent(problem.source().name(), name -> new ArrayList<>()).add(problem);
    }
    ProblemText text = new ProblemText(width);
    byName.forEach(text::writeGroup);
    return text.out.toString();
  }

  private void writeGroup(String name, List<Problem> problems) {
    out.append(out.isEmpty() ? "" : "\n").append(Printable.of(name)).append('\n');
    for (List<Problem> same : mistakes(problems)) {
      out.append('\n');
      write(same);
    }
  }

  /** The same mistake at several places once, in the order given. */
  private static Collection<List<Problem>> mistakes(List<Problem> problems) {
    Map<List<?>, List<Problem>> mistakes = new LinkedHashMap<>();
    for (Problem problem : problems) {
      boolean form = problem.kind().isOfSyntax() || problem.correction() != null;
      boolean same = form && problem.span() != null;
      List<?> mistake = same ? List.of(problem.kind(), problem.earlierPlace()) : List.of(problem);
      mistakes.computeIfAbsent(mistake, key -> new ArrayList<>()).add(problem);
    }
    return mistakes.values();
  }

  private void write(List<Problem> same) {
    Problem problem = same.get(0);
    problem.place().ifPresent(place -> writePlace(place, problem.pointer()));
    String places = same.size() > 1 ? ", in " + same.size() + " places" : "";
    out.append(problem.says()).append(places).append('\n');
    Span span = problem.span();
    if (span != null) {
      out.append(CaretLine.of(problem.source(), span, width - INDENT.length()).text(INDENT));
    }
    label("found", problem.found());
    label("right", problem.right());
    label("near", problem.nearest());
    problem
        .earlierPlace()
        .ifPresent(place -> label(earlierLabel(problem.kind()), place.toString()));
    label("also", alsoAt(problem, same.subList(1, same.size())));
  }

  private static String alsoAt(Problem first, List<Problem> others) {
    String places =
        others.stream()
            .limit(MOST_PLACES)
            .map(other -> other.place().map(Place::toString).orElse("") + right(other, first))
            .collect(Collectors.joining("; "));
    int more = others.size() - MOST_PLACES;
    return more > 0 ? places + "; and " + more + " more" : places;
  }

  /** What is right there, where it is another value than at the first place. */
  private static String right(Problem other, Problem first) {
    return other.correction() == null || other.right().equals(first.right())
        ? ""
        : " " + other.found() + ": " + other.right();
  }

  private static String earlierLabel(Problem.Kind kind) {
    return switch (kind) {
      case NAME_TWICE -> "first";
      case BRACKET_MISMATCHED -> "opened";
      case TEXT_AFTER_END -> "closed";
      default -> "see";
    };
  }

  private void writePlace(Place place, @Nullable Pointer pointer) {
    out.append(place);
    if (pointer != null && !pointer.isRoot()) {
      int room = width - place.toString().length() - 2;
      out.append("  ").append(fitted(Printable.of(pointer.toString()), room));
    }
    out.append('\n');
  }

  private void label(String label, @Nullable String value) {
    if (value == null || value.isEmpty()) {
      return;
    }
    out.append(label).append(" ".repeat(LABEL - label.length()));
    int room = width - LABEL;
    int used = 0;
    for (String whole : Printable.of(value).split(" ", -1)) {
      String word = fitted(whole, room);
      int cells = Printable.width(word);
      if (used > 0 && used + 1 + cells > room) {
        out.append('\n').append(" ".repeat(LABEL));
        used = 0;
      }
      out.append(used > 0 ? " " : "").append(word);
      used += cells + (used > 0 ? 1 : 0);
    }
    out.append('\n');
  }

  /** A word that is too long for its line loses its middle. */
  private static String fitted(String word, int room) {
    if (Printable.width(word) <= room) {
      return word;
    }
    boolean narrow = Printable.width(word) == word.length();
    return Source.shortened(word, Math.max(4, narrow ? room : room / 2));
  }
}
