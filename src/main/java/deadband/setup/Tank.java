package deadband.setup;

import java.util.List;

/** The hot water tank. */
@Equipment
public record Tank(
    Part part,
    @Described(value = "water content", least = 10, most = 5000)
        @Asked(
            value = "How much water does the tank hold?",
            where = Asked.Where.DATA_PLATE,
            usual = "150 to 300")
        Entered<Double> volume_L,
    @Described("height of the water inside")
        @Asked(
            value = "How high is the water inside the tank?",
            where = Asked.Where.DATA_PLATE,
            usual = "1000 to 1700")
        Entered<Double> height_mm,
    @Described("standing loss in 24 h")
        @Asked(
            value = "How much heat does the tank lose in 24 h?",
            where = Asked.Where.DATA_PLATE,
            usual = "1.2 to 2.5")
        Entered<Double> loss_kWh_per_day,
    @OfType
        @Described("whether it is unvented")
        @Asked(value = "Is the tank unvented?", where = Asked.Where.LOOK)
        Entered<Boolean> unvented,
    @Described(
            value = "opening temperature of the temperature and pressure relief valve",
            least = 40,
            most = 110)
        @Asked(
            value = "At what temperature does the relief valve open?",
            where = Asked.Where.DATA_PLATE,
            usual = "90")
        Entered<Double> relief_C,
    @Described("whether a secondary circulation runs")
        @Asked(value = "Does a secondary circulation run?", where = Asked.Where.LOOK)
        Entered<Boolean> circulation,
    @Described("the coil the heat pump heats through")
        @Asked(
            value = "Does the heat pump heat through a coil in the tank?",
            where = Asked.Where.DATA_PLATE)
        Coil coil,
    @Described("times of day at which the secondary circulation runs")
        @Asked(
            value = "At what times does the secondary circulation run?",
            where = Asked.Where.LOOK)
        Entered<List<ClockWindow>> circulationTimes) {}
