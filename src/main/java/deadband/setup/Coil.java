package deadband.setup;

/** The coil in the tank, heights above the base of the tank. */
@Equipment
public record Coil(
    Part part,
    @Described("surface of the coil")
        @Asked(
            value = "What is the surface of the coil?",
            where = Asked.Where.DATA_PLATE,
            usual = "2 to 3")
        Entered<Double> area_m2,
    @Described("lower end of the coil")
        @Asked(
            value = "How high above the base is the lower end of the coil?",
            where = Asked.Where.DATA_PLATE)
        Entered<Double> bottom_mm,
    @Described("upper end of the coil")
        @Asked(
            value = "How high above the base is the upper end of the coil?",
            where = Asked.Where.DATA_PLATE)
        Entered<Double> top_mm,
    @Described(value = "non-self-resetting cut-out of the coil", least = 30, most = 110)
        @Asked(
            value = "At what temperature does the cut-out of the coil open?",
            where = Asked.Where.DATA_PLATE,
            usual = "80 to 85")
        Entered<Double> cutOut_C,
    @Described("whether it has a non-self-resetting cut-out of its own")
        @Asked(
            value = "Does the coil have a non-self-resetting cut-out of its own?",
            where = Asked.Where.LOOK)
        Entered<Boolean> ownCutOut) {}
