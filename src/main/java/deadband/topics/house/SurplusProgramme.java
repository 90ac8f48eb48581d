package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether the heat pump's surplus programme may answer a call at any time of day. */
public record SurplusProgramme(Matter matter, boolean answers) implements Case {}
