package deadband.topics.wiring;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Whether a part that is fitted is declared on the form of the installation. */
public record DeclaredPart(Matter matter, boolean declared) implements Case {}
