package deadband.setup;

import java.util.List;

/** The battery. */
@Equipment
public record Battery(
    Part part,
    @Described("usable capacity") Told<Double> capacity_kWh,
    @Described("maximum charge and discharge power") Told<Double> power_kW,
    @Described("what it charges before") Told<List<Consumer>> chargesBefore,
    @Described("what it may discharge into") Told<List<Consumer>> mayDischargeInto) {}
