package deadband.setup;

import java.util.List;

/** A temperature programme: heats from start to stop. */
public record Programme(
    Part part,
    @Described("tank temperature at which it starts") Told<Double> start_C,
    @Described("tank temperature at which it stops") Told<Double> stop_C,
    @Described("times of day at which it may not start") Told<List<ClockWindow>> blocked,
    @Described("whether it runs") Told<Boolean> enabled,
    @Described("times of day at which its clock starts it, where it has one")
        Told<List<ClockWindow>> timed) {}
