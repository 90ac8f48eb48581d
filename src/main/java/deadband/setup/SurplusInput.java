package deadband.setup;

/** The input of the heat pump that takes the surplus call. */
@Equipment
public record SurplusInput(
    Part part,
    @OfType
        @Described("terminal, as its instructions name it")
        @Asked(
            value = "At which terminal does the surplus call arrive?",
            where = Asked.Where.PAPERS)
        Entered<String> terminal,
    @Described("whether the input was tested and found to work")
        @Asked(
            value = "Was the surplus input tested and found to work?",
            where = Asked.Where.PAPERS)
        Entered<Boolean> confirmed,
    @Described("how the call is made")
        @Asked(value = "How is the surplus call made?", where = Asked.Where.LOOK, usual = "contact")
        Entered<Via> via,
    @OfType
        @Described("what a closed contact means to it")
        @Asked(
            value = "What does a closed contact mean to the heat pump?",
            where = Asked.Where.PAPERS,
            usual = "surplus")
        Entered<ClosedMeans> closedMeans,
    @OfType
        @Described("signal it expects")
        @Asked(
            value = "What signal does the surplus input expect?",
            where = Asked.Where.PAPERS,
            usual = "volt-free")
        Entered<Signal> expects,
    @Described("minimum time of a call")
        @Asked(
            value = "For how long does a surplus call hold at least?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "0 to 10")
        Entered<Double> hold_min,
    @Described("whether the call also raises room heating")
        @Asked(
            value = "Does the surplus call also raise room heating?",
            where = Asked.Where.HEAT_PUMP_MENU)
        Entered<Boolean> alsoHeatsRooms,
    @Described(value = "SG Ready state the call selects", least = 1, most = 4, whole = true)
        @Asked(
            value = "Which SG Ready state does the surplus call select?",
            where = Asked.Where.HEAT_PUMP_MENU,
            usual = "3")
        Entered<Double> sgReadyState,
    @OfType
        @Described("whether a call over the network ends when the link is lost")
        @Asked(
            value = "Does a call over the network end when the link is lost?",
            where = Asked.Where.PAPERS)
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
