package deadband.setup;

import java.util.List;

/** A temperature programme: heats from start to stop. */
public record Programme(
    Part part,
    @Described(value = "tank temperature at which it starts", least = 0, most = 100)
        Entered<Double> start_C,
    @Described(value = "tank temperature at which it stops", least = 0, most = 100)
        Entered<Double> stop_C,
    @Described("times of day at which it may not start") Entered<List<ClockWindow>> blocked,
    @Described("whether it runs") Entered<Boolean> enabled,
    @Described("times of day at which its clock starts it, where it has one")
        Entered<List<ClockWindow>> timed) {}
