package deadband.judging;

import java.util.List;

/**
 * What came of trying a remedy: the setup with its changes was judged afresh, and its days were run
 * again where the changes touch them, or its year.
 *
 * @param clears checks whose findings went away, by name
 * @param raises checks that found something new, by name; none of the class cured, or worse
 * @param enlarges checks whose findings stayed and grew, by name
 * @param opens checks that could be judged before and no longer can, by name
 * @param hazardsOpen checks of hazards that cannot be judged with the changes either, by name
 * @param effect on a year or on the example days
 */
public record Proof(
    List<String> clears,
    List<String> raises,
    List<String> enlarges,
    List<String> opens,
    List<String> hazardsOpen,
    Effect effect) {

  /** Safe where nothing new is found, nothing grows, nothing is left open and nothing is lost. */
  public Trust trust() {
    boolean gives =
        !raises.isEmpty()
            || !enlarges.isEmpty()
            || !opens.isEmpty()
            || !effect.known()
            || !effect.losses().isEmpty();
    return gives ? Trust.TRADE_OFF : Trust.SAFE;
  }
}
