package deadband.setup;

/** The settings as they were found, before anything was changed. */
public record AsFound(
    Part part,
    @Described("whether every setting was photographed")
        @Asked(value = "Was every setting photographed as found?", where = Asked.Where.PAPERS)
        Entered<Boolean> photographed,
    @Described("the settings found, in the same shape")
        @Asked(value = "Which settings were found?", where = Asked.Where.PAPERS)
        Entered<Setup> settings) {}
