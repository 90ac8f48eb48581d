package deadband.topics.house;

import deadband.facts.Case;
import deadband.facts.Matter;

/** The hottest water at a tap, and the hottest that the settings allow. */
public record TapReading(Matter matter, double tap_C, double hottest_C) implements Case {}
