package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a call over the network ends when the link is lost. */
public record NetworkCall(Matter matter, boolean endsOnLinkLoss) implements Case {}
