package deadband.topics.metering;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a follower falls to zero once the link is lost. */
public record LinkLoss(Matter matter, boolean fallsToZero) implements Case {}
