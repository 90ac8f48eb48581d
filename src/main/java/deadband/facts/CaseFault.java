package deadband.facts;

/** A fault of the program while it made a case. */
public final class CaseFault extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final Class<? extends Case> type;

  public CaseFault(Class<? extends Case> type, RuntimeException fault) {
    super(type.getSimpleName() + ": " + fault, fault);
    this.type = type;
  }

  /** The kind of case. */
  public Class<? extends Case> type() {
    return type;
  }
}
