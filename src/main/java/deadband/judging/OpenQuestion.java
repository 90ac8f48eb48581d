package deadband.judging;

import deadband.document.Pointer;
import deadband.setup.Question;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A question that is open, since checks could not be judged for want of its answer.
 *
 * @param question the value that is missing
 * @param opens the checks that wait for it, some of them for others too, by name
 */
public record OpenQuestion(Question question, List<Check> opens) {

  /**
   * What is to be asked so that everything can be judged, the most urgent first: what the essential
   * checks wait for, then what hazards wait for, then by the number of checks.
   */
  public static List<OpenQuestion> of(List<NotJudged> open) {
    Map<Pointer, List<Check>> waiting = new TreeMap<>();
    open.stream()
        .filter(check -> check.accepted() == null)
        .forEach(
            check ->
                outermost(check.missing())
                    .forEach(
                        at ->
                            waiting
                                .computeIfAbsent(at, each -> new ArrayList<>())
                                .add(check.check())));
    List<OpenQuestion> questions = new ArrayList<>();
    waiting.forEach(
        (at, checks) ->
            Question.about(at)
                .ifPresent(asked -> questions.add(new OpenQuestion(asked, List.copyOf(checks)))));
    questions.sort(URGENCY);
    return List.copyOf(questions);
  }

  private static final Comparator<OpenQuestion> URGENCY =
      Comparator.<OpenQuestion>comparingInt(OpenQuestion::group)
          .thenComparing(Comparator.comparingInt((OpenQuestion each) -> -each.opens.size()));

  private int group() {
    if (opens.stream().anyMatch(Check::essential)) {
      return 0;
    }
    return hazards() > 0 ? 1 : 2;
  }

  /** Of the checks that wait for it, how many are about hazards. */
  public int hazards() {
    return (int) opens.stream().filter(check -> check.consequence() == Consequence.HAZARD).count();
  }

  /** Whether sign-off waits for its answer. */
  public boolean holdsUpSignOff() {
    return opens.stream().anyMatch(Check::holdsUpSignOff);
  }

  /** What is missing, a whole section in place of what stands within it. */
  public static List<Pointer> outermost(List<Pointer> missing) {
    return missing.stream()
        .filter(at -> missing.stream().noneMatch(other -> isWithin(at, other)))
        .toList();
  }

  private static boolean isWithin(Pointer pointer, Pointer section) {
    return pointer.startsWith(section) && !pointer.equals(section);
  }
}
