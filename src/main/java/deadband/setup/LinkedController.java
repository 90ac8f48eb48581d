package deadband.setup;

/** One of the linked surplus controllers. */
public record LinkedController(
    Part part,
    @Described("name of the controller")
        @Asked(value = "What is the linked controller called?", where = Asked.Where.CONTROLLER_MENU)
        Entered<String> name,
    @Described("whether it leads or follows")
        @Asked(
            value = "Does the linked controller lead or follow?",
            where = Asked.Where.CONTROLLER_MENU)
        Entered<Role> role,
    @Described("whether it falls to zero when the link is lost")
        @Asked(
            value = "Does the linked controller fall to zero when the link is lost?",
            where = Asked.Where.PAPERS)
        Entered<Boolean> zeroOnLinkLoss) {

  /** The part a linked controller plays. */
  public enum Role implements Choice {
    LEAD,
    FOLLOWER
  }
}
