package deadband.setup;

/** What was isolated and proved dead. */
public record Isolation(
    Part part,
    @Described("whether the heat pump was isolated") Told<Boolean> heatPumpIsolated,
    @Described("whether the immersion heater was isolated") Told<Boolean> immersionIsolated,
    @Described("whether the demand signal was isolated") Told<Boolean> demandSignalIsolated,
    @Described("whether every conductor was proved dead") Told<Boolean> provedDead) {}
