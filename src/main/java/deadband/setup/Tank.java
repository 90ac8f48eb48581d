package deadband.setup;

import java.util.List;

/** The hot water tank. */
@Equipment
public record Tank(
    Part part,
    @Described("water content") Told<Double> volume_L,
    @Described("height of the water inside") Told<Double> height_mm,
    @Described("standing loss in 24 h") Told<Double> loss_kWh_per_day,
    @Described("whether it is unvented") Told<Boolean> unvented,
    @Described("opening temperature of the temperature and pressure relief valve")
        Told<Double> relief_C,
    @Described("whether a secondary circulation runs") Told<Boolean> circulation,
    @Described("the coil the heat pump heats through") Coil coil,
    @Described("times of day at which the secondary circulation runs")
        Told<List<ClockWindow>> circulationTimes) {}
