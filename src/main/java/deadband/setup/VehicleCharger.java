package deadband.setup;

import java.util.List;

/** The vehicle charger. */
@Equipment
public record VehicleCharger(
    Part part,
    @Described("whether it follows surplus") Told<Boolean> followsSurplus,
    @Described("minimum charging power") Told<Double> minimum_kW,
    @Described("maximum charging power") Told<Double> maximum_kW,
    @Described(value = "phases it is connected to", least = 1, most = 3, whole = true)
        Told<Double> phases,
    @Described("what it takes surplus before") Told<List<Consumer>> before,
    @Described("whether a priority is set between it and the relay that calls the heat pump")
        Told<Boolean> ordered) {}
