package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Where a control of the element opens, against the disinfection it must let through. */
public record ElementControl(Matter matter, double opens_C, double target_C) implements Case {}
