package deadband.setup;

import java.util.List;

/** The surplus relay. */
@Equipment
public record Relay(
    Part part,
    @Described("what it calls") Entered<Drives> drives,
    @Described("powers it counts as surplus") Entered<List<Counts>> counts,
    @Described("whether it compares the instantaneous value or a mean") Entered<Reads> reads,
    @Described(value = "surplus at which it closes", least = -100, most = 100)
        Entered<Double> start_kW,
    @Described(value = "surplus at which it opens", least = -100, most = 100)
        Entered<Double> stop_kW,
    @Described("time above the start before it closes") Entered<Double> startDelay_min,
    @Described("time below the stop before it opens") Entered<Double> stopDelay_min,
    @Described("contact at rest") Entered<Contact> contact,
    @Described("whether the contact is volt-free") Entered<Boolean> voltFree,
    @Described("whether its wiring is separated from mains") Entered<Boolean> segregated,
    @Described("whether it is declared on the form of the installation")
        Entered<Boolean> declared) {

  /** What the relay calls. */
  public enum Drives implements Choice {
    HEAT_PUMP,
    ELEMENT,
    OTHER
  }

  /** A power that the relay counts as surplus. */
  public enum Counts implements Choice {
    EXPORT,
    IMMERSION,
    HEAT_PUMP,
    BATTERY
  }

  /** Whether the relay compares the instant or a mean. */
  public enum Reads implements Choice {
    INSTANT,
    MEAN
  }

  /** The contact at rest. */
  public enum Contact implements Choice {
    NORMALLY_OPEN,
    NORMALLY_CLOSED
  }
}
