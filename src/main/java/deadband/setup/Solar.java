package deadband.setup;

/** The solar generator and its inverter. */
@Equipment
public record Solar(
    Part part,
    @Described("peak power of the modules")
        @Asked(
            value = "What is the peak power of the PV modules?",
            where = Asked.Where.PAPERS,
            usual = "4 to 10")
        Entered<Double> peak_kW,
    @Described("rated power of the inverter")
        @Asked(
            value = "What is the rated power of the inverter?",
            where = Asked.Where.DATA_PLATE,
            usual = "3 to 10")
        Entered<Double> inverter_kW,
    @Described(value = "phases the inverter feeds", least = 1, most = 3, whole = true)
        @Asked(
            value = "How many phases does the inverter feed?",
            where = Asked.Where.DATA_PLATE,
            usual = "1, or 3")
        Entered<Double> phases,
    @Described("phase the inverter feeds where it feeds one")
        @Asked(value = "Which phase does the inverter feed?", where = Asked.Where.LOOK)
        Entered<Phase> phase,
    @Described("maximum export permitted")
        @Asked(value = "What is the maximum export permitted?", where = Asked.Where.PAPERS)
        Entered<Double> exportLimit_kW,
    @Described(value = "latitude, north positive", least = -90, most = 90)
        @Asked(
            value = "At which latitude is the home?",
            where = Asked.Where.PAPERS,
            usual = "48 to 56 in most of Europe")
        Entered<Double> latitude_deg,
    @Described(value = "tilt of the modules from level", least = 0, most = 90)
        @Asked(
            value = "How far are the modules tilted from level?",
            where = Asked.Where.MEASURE,
            usual = "20 to 45")
        Entered<Double> tilt_deg,
    @Described(value = "orientation of the modules, clockwise from north", least = 0, most = 360)
        @Asked(
            value = "Which way do the modules face, clockwise from north?",
            where = Asked.Where.MEASURE,
            usual = "180 for south")
        Entered<Double> azimuth_deg) {}
