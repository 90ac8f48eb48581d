package deadband.cases;

/** A linked controller that follows, and what it does when the link is lost. */
public record Follower(Matter matter, boolean fallsToZero) implements Case {}
