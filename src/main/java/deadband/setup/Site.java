package deadband.setup;

/** The home and who lives in it. */
public record Site(
    Part part,
    @Described("name of the job") Told<String> reference,
    @Described("country, ISO 3166-1 alpha-2") Told<CountryCode> country,
    @Described("whether young children, old or ill people use the hot water")
        Told<Boolean> vulnerableOccupants) {}
