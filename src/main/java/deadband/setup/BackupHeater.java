package deadband.setup;

/** The electric back-up heater of the heat pump. */
@Equipment
public record BackupHeater(
    Part part,
    @Described("rated power")
        @Asked(
            value = "What is the rated power of the back-up heater?",
            where = Asked.Where.DATA_PLATE,
            usual = "3 to 9")
        Entered<Double> power_kW,
    @Described("whether it may join on a surplus call")
        @Asked(
            value = "May the back-up heater join on a surplus call?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "no")
        Entered<Boolean> allowedOnSurplus) {}
