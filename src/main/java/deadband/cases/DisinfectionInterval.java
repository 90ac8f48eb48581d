package deadband.cases;

/** The days from one disinfection to the next, against the most the cycle allows. */
public record DisinfectionInterval(Matter matter, double every_days, double most_days)
    implements Case {}
