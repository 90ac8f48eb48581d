package deadband.setup;

import java.util.List;

/** A temperature programme: heats from start to stop. */
public record Programme(
    Part part,
    @Described("tank temperature at which it starts") Told<Double> start_C,
    @Described("tank temperature at which it stops") Told<Double> stop_C,
    @Described("times of day at which it may not start") Told<List<ClockWindow>> blocked) {}
