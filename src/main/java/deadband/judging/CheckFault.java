package deadband.judging;

/** A fault of the program while it judged, with the checks it was at. */
public final class CheckFault extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final String checks;

  CheckFault(String checks, RuntimeException fault) {
    super(checks + ": " + fault, fault);
    this.checks = checks;
  }

  /** The names of the checks, separated by commas. */
  public String checks() {
    return checks;
  }
}
