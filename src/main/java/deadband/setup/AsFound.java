package deadband.setup;

/** The settings as they were found, before anything was changed. */
public record AsFound(
    Part part,
    @Described("whether every setting was photographed") Entered<Boolean> photographed,
    @Described("the settings found, in the same shape") Entered<Setup> settings) {}
