package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The COP that the entered powers give, against the highest that the lift allows. */
public record PlateCop(Matter matter, double cop, double most) implements Case {}
