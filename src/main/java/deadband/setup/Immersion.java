package deadband.setup;

import java.util.List;

/** The immersion heater. */
@Equipment
public record Immersion(
    Part part,
    @Described(value = "rated power", least = 0, most = 50) Entered<Double> power_kW,
    @Described("voltage its power is rated at") Entered<Double> ratedAt_V,
    @Described("height of the element above the base of the tank") Entered<Double> height_mm,
    @Described(value = "setting of its own thermostat", least = 5, most = 100)
        Entered<Double> thermostat_C,
    @Described(value = "non-self-resetting cut-out of the element", least = 30, most = 110)
        Entered<Double> cutOut_C,
    @Described("the circuit that feeds it") Circuit circuit,
    @Described("whether it has a non-self-resetting cut-out of its own") Entered<Boolean> ownCutOut,
    @Described("times of day at which a timer feeds it from the grid")
        Entered<List<ClockWindow>> timed) {}
