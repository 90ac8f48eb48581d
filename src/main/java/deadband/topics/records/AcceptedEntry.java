package deadband.topics.records;

import deadband.facts.Case;
import deadband.facts.Matter;

/**
 * One entry by which a finding was accepted.
 *
 * @param reasoned whether it gives a reason, a name and the day of acceptance
 * @param inForce whether the date of the judgement lies between its dates
 * @param matches whether there is anything for it to accept
 * @param hazard whether what it names is a hazard
 */
public record AcceptedEntry(
    Matter matter, boolean reasoned, boolean inForce, boolean matches, boolean hazard)
    implements Case {}
