package deadband.diagnosis;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A cause in the order of likelihood, or two together.
 *
 * @param causes one or two
 * @param differs what is other than entered for it, in words; empty where the file has it
 * @param likelihood its share of the probability of all that were compared, 0 to 1
 * @param predicted what it predicts
 * @param telling what of the observation speaks for it against the one next to it, or against it,
 *     the most telling first
 * @param tellApart what would confirm or refute it against the one next to it
 * @param evidence the start or stop in the log that tells it best from nothing unusual, in words;
 *     empty where there is none
 * @param explained beginnings and ends of runs in the log that it gives a reason for
 * @param events how many there are; 0 without a log
 */
public record Ranked(
    List<Cause> causes,
    String differs,
    double likelihood,
    Prediction predicted,
    List<Feature> telling,
    String tellApart,
    String evidence,
    int explained,
    int events) {

  public Ranked {
    causes = List.copyOf(causes);
    telling = List.copyOf(telling);
  }

  public Cause first() {
    return causes.get(0);
  }

  /** Its name, or both names. */
  public String word() {
    return causes.stream().map(Cause::word).collect(Collectors.joining(" + "));
  }

  public String meaning() {
    return causes.stream().map(Cause::meaning).collect(Collectors.joining("; and: "));
  }
}
