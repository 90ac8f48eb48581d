package deadband.judging;

/** A house rule that compiled failed while it was run. */
public final class HouseRuleFailure extends RuntimeException {

  private static final long serialVersionUID = 1;

  /**
   * A failure.
   *
   * @param rule the one that fired last
   */
  HouseRuleFailure(String rule, Throwable failure) {
    super(failure instanceof Error ? rule + ": " + line(failure) : sentence(failure), failure);
  }

  /** The engine wraps what went wrong; what it wrapped says it best. */
  private static String sentence(Throwable failure) {
    Throwable inmost = failure;
    while (inmost.getCause() != null) {
      inmost = inmost.getCause();
    }
    String outer =
        failure.getMessage() == null ? "" : failure.getMessage().lines().findFirst().orElse("");
    return inmost == failure ? outer : outer + ": " + line(inmost);
  }

  private static String line(Throwable failure) {
    return failure.toString().lines().findFirst().orElse("");
  }
}
