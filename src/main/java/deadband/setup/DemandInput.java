package deadband.setup;

/** The input through which another device calls for the immersion heater. */
@Equipment
public record DemandInput(
    Part part,
    @Described("device that sends the demand")
        @Asked(value = "Which device requests the immersion heater?", where = Asked.Where.LOOK)
        Entered<From> from,
    @Described("kind of signal that arrives")
        @Asked(
            value = "What kind of signal arrives at the demand input?",
            where = Asked.Where.MEASURE)
        Entered<Signal> signal,
    @OfType
        @Described("kind of signal the input accepts")
        @Asked(
            value = "What kind of signal does the demand input accept?",
            where = Asked.Where.PAPERS)
        Entered<Signal> accepts,
    @Described("phase the signal comes from")
        @Asked(value = "From which phase does the demand signal come?", where = Asked.Where.LOOK)
        Entered<Phase> phase,
    @Described("what the diverter does on a demand")
        @Asked(
            value = "What does the diverter do on a demand?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "full power")
        Entered<Action> action) {

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
