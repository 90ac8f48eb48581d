package deadband.topics.day;

import deadband.facts.Case;
import deadband.facts.Matter;

/**
 * What a surplus call does over the seasons.
 *
 * @param isMet whether the heat pump ran for the relay on any of the days
 * @param coolest_C coolest at its tank sensor while it was called [°C]
 * @param start_C sensor temperature at and below which a surplus call may start it [°C]
 */
public record CallInYear(Matter matter, boolean isMet, double coolest_C, double start_C)
    implements Case {}
