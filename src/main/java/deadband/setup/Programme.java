package deadband.setup;

import java.util.List;

/** A temperature programme: heats from start to stop. */
public record Programme(
    Part part,
    @Described(value = "tank temperature at which it starts", least = 0, most = 100)
        @Asked(
            value = "At what tank temperature does {it} start?",
            where = Asked.Where.HEAT_PUMP_MENU)
        Entered<Double> start_C,
    @Described(value = "tank temperature at which it stops", least = 0, most = 100)
        @Asked(
            value = "At what tank temperature does {it} stop?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "45 to 60")
        Entered<Double> stop_C,
    @Described("times of day at which it may not start")
        @Asked(
            value = "At what times may {it} not start?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "none")
        Entered<List<ClockWindow>> blocked,
    @Described("whether it runs")
        @Asked(value = "Is {it} switched on?", where = Asked.Where.HEAT_PUMP_MENU)
        Entered<Boolean> enabled,
    @Described("times of day at which its clock starts it, where it has one")
        @Asked(
            value = "At what times does a clock start {it}?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "none")
        Entered<List<ClockWindow>> timed) {}
