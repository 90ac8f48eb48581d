package deadband.setup;

import java.util.List;

/** The battery. */
@Equipment
public record Battery(
    Part part,
    @Described("usable capacity") Entered<Double> capacity_kWh,
    @Described("maximum charge and discharge power") Entered<Double> power_kW,
    @Described("what it charges before") Entered<List<Consumer>> chargesBefore,
    @Described("what it may discharge into") Entered<List<Consumer>> mayDischargeInto) {}
