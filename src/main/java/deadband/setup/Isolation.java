package deadband.setup;

/** What was isolated and proved dead. */
public record Isolation(
    Part part,
    @Described("whether the heat pump was isolated") Entered<Boolean> heatPumpIsolated,
    @Described("whether the immersion heater was isolated") Entered<Boolean> immersionIsolated,
    @Described("whether the demand signal was isolated") Entered<Boolean> demandSignalIsolated,
    @Described("whether every conductor was proved dead") Entered<Boolean> provedDead) {}
