package deadband.cases;

/** Whether a follower falls to zero once the link is lost. */
public record LinkLoss(Matter matter, boolean fallsToZero) implements Case {}
