package deadband.setup;

import java.util.List;

/** The hot water tank. */
@Equipment
public record Tank(
    Part part,
    @Described(value = "water content", least = 10, most = 5000) Entered<Double> volume_L,
    @Described("height of the water inside") Entered<Double> height_mm,
    @Described("standing loss in 24 h") Entered<Double> loss_kWh_per_day,
    @Described("whether it is unvented") Entered<Boolean> unvented,
    @Described(
            value = "opening temperature of the temperature and pressure relief valve",
            least = 40,
            most = 110)
        Entered<Double> relief_C,
    @Described("whether a secondary circulation runs") Entered<Boolean> circulation,
    @Described("the coil the heat pump heats through") Coil coil,
    @Described("times of day at which the secondary circulation runs")
        Entered<List<ClockWindow>> circulationTimes) {}
