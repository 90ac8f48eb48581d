package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/**
 * The time a disinfection takes, against the longest time of day at which it may run.
 *
 * @param needed_min heating and hold, or the hold alone where the heating time is not known [min]
 * @param window_min longest window [min]
 */
public record DisinfectionWindow(Matter matter, double needed_min, double window_min)
    implements Case {}
