package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether an outlet at which people wash is listed. */
public record WashingOutlet(Matter matter, boolean listed) implements Case {}
