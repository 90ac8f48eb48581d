package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether anything disinfects a store that a national cycle asks it of. */
public record StoreDisinfection(Matter matter, boolean disinfected) implements Case {}
