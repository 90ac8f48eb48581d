package deadband.topics.coordination;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How long at night the everyday programme may start. */
public record NightRun(Matter matter, double free_min) implements Case {}
