package deadband.setup;

/** The input through which another device calls for the immersion heater. */
@Equipment
public record DemandInput(
    Part part,
    @Described("device that sends the demand") Entered<From> from,
    @Described("kind of signal that arrives") Entered<Signal> signal,
    @Described("kind of signal the input accepts") Entered<Signal> accepts,
    @Described("phase the signal comes from") Entered<Phase> phase,
    @Described("what the diverter does on a demand") Entered<Action> action) {

  /** The device a demand comes from. */
  public enum From implements Choice {
    HEAT_PUMP,
    OTHER
  }

  /** What the diverter does on a demand. */
  public enum Action implements Choice {
    NONE,
    SURPLUS_ONLY,
    FULL_POWER
  }
}
