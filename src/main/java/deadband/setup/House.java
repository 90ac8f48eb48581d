package deadband.setup;

/** The household and its use of power and water. */
public record House(
    Part part,
    @Described("base load of the home")
        @Asked(
            value = "What power does the home use all the time?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "0.2 to 0.6")
        Entered<Double> baseLoad_kW,
    @Described(value = "number of residents", least = 0, most = 1000, whole = true)
        @Asked(
            value = "How many people live there?",
            where = Asked.Where.CUSTOMER,
            usual = "1 to 5")
        Entered<Double> occupants,
    @Described(
            value = "temperature of the cold water",
            least = 0,
            most = 40,
            assumed = "10",
            because = "cold water as in Reg. (EU) 814/2013")
        @Asked(value = "How cold is the cold water?", where = Asked.Where.MEASURE, usual = "10")
        Entered<Double> coldWater_C) {}
