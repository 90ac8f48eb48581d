package deadband.topics.disinfection;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How long a day anything but surplus may heat the store, against what keeps it warm. */
public record EverydayHeating(Matter matter, double runs_min, double least_min) implements Case {}
