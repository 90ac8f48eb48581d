package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Matter;

/** What the relay adds up, and whether the export that makes a surplus is among it. */
public record CountedPowers(Matter matter) implements Case {}
