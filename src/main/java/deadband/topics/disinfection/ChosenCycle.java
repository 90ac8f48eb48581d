package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the disinfection cycle chosen for a site is one for its country and its store. */
public record ChosenCycle(Matter matter, boolean covers) implements Case {}
