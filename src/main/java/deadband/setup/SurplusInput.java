package deadband.setup;

/** The input of the heat pump that takes the surplus call. */
@Equipment
public record SurplusInput(
    Part part,
    @Described("terminal, as its instructions name it") Entered<String> terminal,
    @Described("whether the input was tested and found to work") Entered<Boolean> confirmed,
    @Described("how the call is made") Entered<Via> via,
    @Described("what a closed contact means to it") Entered<ClosedMeans> closedMeans,
    @Described("signal it expects") Entered<Signal> expects,
    @Described("minimum time of a call") Entered<Double> hold_min,
    @Described("whether the call also raises room heating") Entered<Boolean> alsoHeatsRooms,
    @Described(value = "SG Ready state the call selects", least = 1, most = 4, whole = true)
        Entered<Double> sgReadyState,
    @Described("whether a call over the network ends when the link is lost")
        Entered<Boolean> endsOnLinkLoss) {

  /** The way a call travels. */
  public enum Via implements Choice {
    CONTACT,
    NETWORK,
    /** The relay switches the heat pump's supply instead. */
    SUPPLY
  }

  /** What the heat pump takes a closed contact for. */
  public enum ClosedMeans implements Choice {
    SURPLUS,
    BLOCK,
    NORMAL
  }
}
