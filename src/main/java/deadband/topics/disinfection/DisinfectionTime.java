package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How long a disinfection takes from the everyday start, against the time it may take. */
public record DisinfectionTime(Matter matter, double needed_min, double allowed_min)
    implements Case {}
