package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/**
 * The mixing valve of a home with vulnerable occupants.
 *
 * @param type3 whether it is of the type for them
 */
public record VulnerableSupply(Matter matter, boolean type3) implements Case {}
