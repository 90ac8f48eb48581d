package deadband.judging;

/** A house rule that compiled failed while it was run. */
public final class HouseRuleFailure extends RuntimeException {

  private static final long serialVersionUID = 1;

  HouseRuleFailure(Throwable failure) {
    super(sentence(failure), failure);
  }

  /** The engine wraps what went wrong; what it wrapped says it best. */
  private static String sentence(Throwable failure) {
    Throwable inmost = failure;
    while (inmost.getCause() != null) {
      inmost = inmost.getCause();
    }
    String outer =
        failure.getMessage() == null ? "" : failure.getMessage().lines().findFirst().orElse("");
    return inmost == failure ? outer : outer + ": " + inmost;
  }
}
