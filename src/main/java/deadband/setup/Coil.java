package deadband.setup;

/** The coil in the tank, heights above the base of the tank. */
@Equipment
public record Coil(
    Part part,
    @Described("surface of the coil") Entered<Double> area_m2,
    @Described("lower end of the coil") Entered<Double> bottom_mm,
    @Described("upper end of the coil") Entered<Double> top_mm,
    @Described(value = "non-self-resetting cut-out of the coil", least = 30, most = 110)
        Entered<Double> cutOut_C,
    @Described("whether it has a non-self-resetting cut-out of its own")
        Entered<Boolean> ownCutOut) {}
