package deadband.cases;

/** Whether a call over the network ends when the link is lost. */
public record NetworkCall(Matter matter, boolean endsOnLinkLoss) implements Case {}
