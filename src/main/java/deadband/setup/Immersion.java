package deadband.setup;

import java.util.List;

/** The immersion heater. */
@Equipment
public record Immersion(
    Part part,
    @Described(value = "rated power", least = 0, most = 50)
        @Asked(
            value = "What is the rated power of the immersion heater?",
            where = Asked.Where.DATA_PLATE,
            usual = "3")
        Entered<Double> power_kW,
    @Described("voltage its power is rated at")
        @Asked(
            value = "At which voltage is the power of the immersion heater rated?",
            where = Asked.Where.DATA_PLATE,
            usual = "230 or 240")
        Entered<Double> ratedAt_V,
    @Described("height of the element above the base of the tank")
        @Asked(
            value = "How high above the base of the tank is the element?",
            where = Asked.Where.DATA_PLATE,
            usual = "100 to 300")
        Entered<Double> height_mm,
    @Described(value = "setting of its own thermostat", least = 5, most = 100)
        @Asked(
            value = "To what temperature is the immersion heater's own thermostat set?",
            where = Asked.Where.LOOK,
            usual = "60 to 70")
        Entered<Double> thermostat_C,
    @Described(value = "non-self-resetting cut-out of the element", least = 30, most = 110)
        @Asked(
            value = "At what temperature does the immersion heater's cut-out open?",
            where = Asked.Where.DATA_PLATE,
            usual = "80 to 85")
        Entered<Double> cutOut_C,
    @Described("the circuit that feeds it")
        @Asked(value = "Which circuit feeds the immersion heater?", where = Asked.Where.LOOK)
        Circuit circuit,
    @Described("whether it has a non-self-resetting cut-out of its own")
        @Asked(
            value = "Does the immersion heater have a non-self-resetting cut-out of its own?",
            where = Asked.Where.LOOK)
        Entered<Boolean> ownCutOut,
    @Described("times of day at which a timer feeds it from the grid")
        @Asked(
            value = "At what times does a timer feed the immersion heater from the grid?",
            where = Asked.Where.LOOK,
            usual = "none")
        Entered<List<ClockWindow>> timed) {}
