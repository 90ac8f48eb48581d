package deadband.setup;

import java.util.List;

/** The battery. */
@Equipment
public record Battery(
    Part part,
    @Described("usable capacity")
        @Asked(
            value = "What is the usable capacity of the battery?",
            where = Asked.Where.DATA_PLATE,
            usual = "5 to 15")
        Entered<Double> capacity_kWh,
    @Described("maximum charge and discharge power")
        @Asked(
            value = "What is the maximum power of the battery?",
            where = Asked.Where.DATA_PLATE,
            usual = "3 to 6")
        Entered<Double> power_kW,
    @Described("what it charges before")
        @Asked(
            value = "Before which loads does the battery charge?",
            where = Asked.Where.CONTROLLER_MENU)
        Entered<List<Consumer>> chargesBefore,
    @Described("what it may discharge into")
        @Asked(
            value = "Into which loads may the battery discharge?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "house")
        Entered<List<Consumer>> mayDischargeInto) {}
