package deadband.setup;

/** What was isolated and proved dead. */
public record Isolation(
    Part part,
    @Described("whether the heat pump was isolated")
        @Asked(value = "Was the heat pump isolated?", where = Asked.Where.PAPERS)
        Entered<Boolean> heatPumpIsolated,
    @Described("whether the immersion heater was isolated")
        @Asked(value = "Was the immersion heater isolated?", where = Asked.Where.PAPERS)
        Entered<Boolean> immersionIsolated,
    @Described("whether the demand signal was isolated")
        @Asked(value = "Was the demand signal isolated?", where = Asked.Where.PAPERS)
        Entered<Boolean> demandSignalIsolated,
    @Described("whether every conductor was proved dead")
        @Asked(value = "Was every conductor proved dead?", where = Asked.Where.PAPERS)
        Entered<Boolean> provedDead) {}
