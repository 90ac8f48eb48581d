package deadband.setup;

import java.util.List;

/** The vehicle charger. */
@Equipment
public record VehicleCharger(
    Part part,
    @Described("whether it follows surplus") Entered<Boolean> followsSurplus,
    @Described("minimum charging power") Entered<Double> minimum_kW,
    @Described("maximum charging power") Entered<Double> maximum_kW,
    @Described(value = "phases it is connected to", least = 1, most = 3, whole = true)
        Entered<Double> phases,
    @Described("what it takes surplus before") Entered<List<Consumer>> before,
    @Described("whether a priority is set between it and the relay that calls the heat pump")
        Entered<Boolean> ordered) {}
