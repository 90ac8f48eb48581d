package deadband.setup;

import java.util.List;

/** The vehicle charger. */
@Equipment
public record VehicleCharger(
    Part part,
    @Described("whether it follows surplus")
        @Asked(
            value = "Does the vehicle charger follow surplus?",
            where = Asked.Where.CONTROLLER_MENU)
        Entered<Boolean> followsSurplus,
    @Described("minimum charging power")
        @Asked(
            value = "What is the minimum charging power?",
            where = Asked.Where.DATA_PLATE,
            usual = "1.4 on one phase, 4.1 on three")
        Entered<Double> minimum_kW,
    @Described("maximum charging power")
        @Asked(
            value = "What is the maximum charging power?",
            where = Asked.Where.DATA_PLATE,
            usual = "7.4 or 11")
        Entered<Double> maximum_kW,
    @Described(value = "phases it is connected to", least = 1, most = 3, whole = true)
        @Asked(
            value = "To how many phases is the vehicle charger connected?",
            where = Asked.Where.LOOK,
            usual = "1, or 3")
        Entered<Double> phases,
    @Described("what it takes surplus before")
        @Asked(
            value = "Before which loads does the charger take surplus?",
            where = Asked.Where.CONTROLLER_MENU)
        Entered<List<Consumer>> before,
    @Described("whether a priority is set between it and the relay that calls the heat pump")
        @Asked(
            value = "Is a priority set between charger and relay?",
            where = Asked.Where.CONTROLLER_MENU)
        Entered<Boolean> ordered) {}
