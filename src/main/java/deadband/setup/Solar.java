package deadband.setup;

/** The solar generator and its inverter. */
@Equipment
public record Solar(
    Part part,
    @Described("peak power of the modules") Entered<Double> peak_kW,
    @Described("rated power of the inverter") Entered<Double> inverter_kW,
    @Described(value = "phases the inverter feeds", least = 1, most = 3, whole = true)
        Entered<Double> phases,
    @Described("phase the inverter feeds where it feeds one") Entered<Phase> phase,
    @Described("maximum export permitted") Entered<Double> exportLimit_kW,
    @Described(value = "latitude, north positive", least = -90, most = 90)
        Entered<Double> latitude_deg,
    @Described(value = "tilt of the modules from level", least = 0, most = 90)
        Entered<Double> tilt_deg,
    @Described(value = "orientation of the modules, clockwise from north", least = 0, most = 360)
        Entered<Double> azimuth_deg) {}
