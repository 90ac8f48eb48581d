package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Water content of the tank for each person in the home. */
public record StorePerPerson(Matter matter, double each_L, double least_L) implements Case {}
