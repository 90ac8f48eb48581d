package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;

/** What the relay adds up, and whether the export that makes a surplus is among it. */
public record CountedPowers(Evidence evidence) implements Case {}
