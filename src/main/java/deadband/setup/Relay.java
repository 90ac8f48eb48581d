package deadband.setup;

import java.util.List;

/** The surplus relay. */
@Equipment
public record Relay(
    Part part,
    @Described("what it calls")
        @Asked(value = "What does the relay call?", where = Asked.Where.LOOK, usual = "heat pump")
        Entered<Drives> drives,
    @Described("powers it counts as surplus")
        @Asked(
            value = "Which powers does the relay count as surplus?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "export, immersion")
        Entered<List<Counts>> counts,
    @OfType
        @Described("whether it compares the instantaneous value or a mean")
        @Asked(
            value = "Does the relay compare the instantaneous value or a mean?",
            where = Asked.Where.PAPERS)
        Entered<Reads> reads,
    @Described(value = "surplus at which it closes", least = -100, most = 100)
        @Asked(
            value = "At what surplus does the relay close?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "above the power input of the heat pump")
        Entered<Double> start_kW,
    @Described(value = "surplus at which it opens", least = -100, most = 100)
        @Asked(value = "At what surplus does the relay open?", where = Asked.Where.CONTROLLER_MENU)
        Entered<Double> stop_kW,
    @Described("time above the start before it closes")
        @Asked(
            value = "How long must the surplus last before the relay closes?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "5 to 10")
        Entered<Double> startDelay_min,
    @Described("time below the stop before it opens")
        @Asked(
            value = "How long must surplus be too low before the relay opens?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "3 to 10")
        Entered<Double> stopDelay_min,
    @OfType
        @Described("contact at rest")
        @Asked(
            value = "Is the relay contact normally open or normally closed?",
            where = Asked.Where.PAPERS,
            usual = "normally open")
        Entered<Contact> contact,
    @OfType
        @Described("whether the contact is volt-free")
        @Asked(value = "Is the relay contact volt-free?", where = Asked.Where.PAPERS)
        Entered<Boolean> voltFree,
    @Described("whether its wiring is separated from mains")
        @Asked(value = "Is the relay's wiring separated from mains?", where = Asked.Where.LOOK)
        Entered<Boolean> segregated,
    @Described("whether it is declared on the form of the installation")
        @Asked(
            value = "Is the relay declared on the form of the installation?",
            where = Asked.Where.PAPERS)
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
