package deadband.setup;

/** One of the linked surplus controllers. */
public record LinkedController(
    Part part,
    @Described("name of the controller") Entered<String> name,
    @Described("whether it leads or follows") Entered<Role> role,
    @Described("whether it falls to zero when the link is lost") Entered<Boolean> zeroOnLinkLoss) {

  /** The part a linked controller plays. */
  public enum Role implements Choice {
    LEAD,
    FOLLOWER
  }
}
