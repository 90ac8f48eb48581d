package deadband.topics.coordination;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether two that follow one surplus have an order between them. */
public record SharedSurplus(Matter matter, boolean ordered) implements Case {}
