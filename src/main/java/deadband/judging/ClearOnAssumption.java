package deadband.judging;

import deadband.document.Pointer;
import java.util.List;

/**
 * A check that found nothing, but only on a default.
 *
 * @param assumed the values whose defaults it rests on
 */
public record ClearOnAssumption(Check check, List<Pointer> assumed) {}
