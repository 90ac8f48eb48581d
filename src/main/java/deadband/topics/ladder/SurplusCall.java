package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The start of the surplus programme, and where the everyday one leaves the tank. */
public record SurplusCall(Matter matter, double start_C, double everydayStop_C) implements Case {}
