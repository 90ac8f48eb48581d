package deadband.setup;

/** The solar generator and its inverter. */
@Equipment
public record Solar(
    Part part,
    @Described("peak power of the modules") Told<Double> peak_kW,
    @Described("rated power of the inverter") Told<Double> inverter_kW,
    @Described(value = "phases the inverter feeds", least = 1, most = 3, whole = true)
        Told<Double> phases,
    @Described("phase the inverter feeds where it feeds one") Told<Phase> phase,
    @Described("maximum export permitted") Told<Double> exportLimit_kW,
    @Described(value = "latitude, north positive", least = -90, most = 90)
        Told<Double> latitude_deg,
    @Described(value = "tilt of the modules from level", least = 0, most = 90)
        Told<Double> tilt_deg,
    @Described(value = "orientation of the modules, clockwise from north", least = 0, most = 360)
        Told<Double> azimuth_deg) {}
