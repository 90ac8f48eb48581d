package deadband.setup;

/** The household and its use of power and water. */
public record House(
    Part part,
    @Described("base load of the home") Entered<Double> baseLoad_kW,
    @Described(value = "number of residents", least = 0, most = 1000, whole = true)
        Entered<Double> occupants,
    @Described(
            value = "temperature of the cold water",
            least = 0,
            most = 40,
            assumed = "10",
            because = "cold water as in Reg. (EU) 814/2013")
        Entered<Double> coldWater_C) {}
