package deadband.setup;

/** The input of the heat pump that takes the surplus call. */
@Equipment
public record SurplusInput(
    Part part,
    @Described("terminal, as its instructions name it") Told<String> terminal,
    @Described("whether the input was tested and found to work") Told<Boolean> confirmed,
    @Described("how the call is made") Told<Via> via,
    @Described("what a closed contact means to it") Told<ClosedMeans> closedMeans,
    @Described("signal it expects") Told<Signal> expects,
    @Described("minimum time of a call") Told<Double> hold_min,
    @Described("whether the call also raises room heating") Told<Boolean> alsoHeatsRooms,
    @Described(value = "SG Ready state the call selects", least = 1, most = 4, whole = true)
        Told<Double> sgReadyState,
    @Described("whether a call over the network ends when the link is lost")
        Told<Boolean> endsOnLinkLoss) {

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
