package deadband.dayrun;

/** Watches a run step by step. */
@FunctionalInterface
public interface Trace {
  /**
   * Called at the end of each step.
   *
   * @param step what happened in it; the same object is filled anew for the next step
   */
  void step(Step step);
}
