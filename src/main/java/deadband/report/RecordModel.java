package deadband.report;

import io.jstach.jstache.JStache;
import io.jstach.jstache.JStacheConfig;
import io.jstach.jstache.JStachePartial;
import io.jstach.jstache.JStachePartials;
import io.jstach.jstache.JStacheType;
import java.util.List;

/**
 * The record of a job as its page shows it: plain text throughout, which the template escapes;
 * pictures and style sheet alone are taken as they are.
 */
@JStache(path = "deadband/report/record.html")
@JStachePartials({
  @JStachePartial(name = "head", path = "deadband/report/head.html"),
  @JStachePartial(name = "effect", path = "deadband/report/effect.html")
})
@JStacheConfig(type = JStacheType.STACHE)
record RecordModel(
    Sheet sheet,
    String title,
    String file,
    String verdict,
    String verdictWord,
    String counts,
    String after,
    List<Found> findings,
    List<Setting> changes,
    String noChange,
    String tried,
    List<Quantity> effect,
    List<Work> work,
    List<Question> questions,
    List<Rung> rungs,
    Picture ladder,
    List<Day> days,
    List<String> dayLines,
    List<Assumed> assumed,
    List<String> overrides,
    List<String> notes,
    List<LimitRow> limits,
    List<String> safety,
    List<Accepted> accepted,
    Made made) {

  /**
   * What every page has.
   *
   * @param policy hash of the style sheet, for the policy that forbids all else
   */
  record Sheet(String title, String style, String policy) {}

  /**
   * A finding.
   *
   * @param id anchor in the page
   * @param kind its class, a word
   */
  record Found(
      int rank,
      String id,
      String kind,
      String headline,
      String check,
      String toDo,
      List<FindingLines.Line> lines,
      List<Quantity> effect) {

    boolean hasEffect() {
      return !effect.isEmpty();
    }
  }

  record Setting(String setting, String means, String line, String from, String to) {}

  record Work(int rank, String id, String headline, String what) {}

  /**
   * What was not judged waits for an answer.
   *
   * @param inShort the checks, or how many they are
   */
  record Question(String asks, String where, String name, String checks, String inShort) {

    /** Checks that no answer would open. */
    static Question none(String why, String checks) {
      return new Question(why, "", "", checks, checks);
    }

    /** The question in a line. */
    String line() {
      return name.isEmpty() ? asks : asks + " (" + where + ") " + name;
    }
  }

  record Rung(String device, String kind, String temperature, String source) {}

  /** A picture laid out for paper and desk, and for a telephone. */
  record Picture(String wide, String narrow) {}

  record Day(String title, Picture before, List<Picture> after, String difference) {}

  record Assumed(String setting, String means, String value, String reason) {}

  record LimitRow(String name, String value, String what, String source, String known) {}

  record Accepted(
      String check, String headline, String reason, String by, String on, String until) {}

  /** By what and from what it was made. */
  record Made(String asOf, String edition, String tool, String sha256) {}

  boolean hasEffect() {
    return !effect.isEmpty();
  }

  boolean hasSafety() {
    return !safety.isEmpty();
  }

  boolean hasFindings() {
    return !findings.isEmpty();
  }

  boolean hasChanges() {
    return !changes.isEmpty();
  }

  boolean hasWork() {
    return !work.isEmpty();
  }

  boolean hasQuestions() {
    return !questions.isEmpty();
  }

  boolean hasDays() {
    return !dayLines.isEmpty();
  }

  boolean hasAssumed() {
    return !assumed.isEmpty();
  }

  boolean hasOverrides() {
    return !overrides.isEmpty();
  }

  boolean hasNotes() {
    return !notes.isEmpty();
  }

  boolean hasAccepted() {
    return !accepted.isEmpty();
  }
}
