package deadband.topics.thresholds;

import deadband.facts.Case;
import deadband.facts.Evidence;
import deadband.facts.Quantity;

/**
 * How long a phase of the relay is held without a delay of its own, and how often that lets the
 * compressor start.
 */
public record ShortestPhase(
    Evidence evidence,
    Quantity delay_min,
    Quantity held_min,
    Quantity startsPerHour,
    Quantity allowedPerHour)
    implements Case {}
