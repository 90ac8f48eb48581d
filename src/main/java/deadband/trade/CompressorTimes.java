package deadband.trade;

/** Times and starts that a compressor stands, where its data plate does not say. */
public final class CompressorTimes {
  /** Starts in an hour, at most. */
  public static final Figure STARTS_PER_HOUR =
      new Figure(
          "starts per hour at most",
          3,
          "1/h",
          "German grid connection rules (second-hand); Wüllhorst et al. 2021",
          Known.READ);

  /** Shortest run, a conservative choice. */
  public static final Figure MINIMUM_RUN_MIN =
      new Figure("minimum run", 10, "min", "Wüllhorst et al. 2021", Known.READ);

  /** Shortest rest, a conservative choice. */
  public static final Figure MINIMUM_OFF_MIN =
      new Figure("minimum off", 20, "min", "Wüllhorst et al. 2021", Known.READ);

  /** A run this long costs nothing; shorter ones lose 2 to 5 %. */
  public static final Figure COSTLESS_RUN_MIN =
      new Figure(
          "run long enough to cost nothing",
          15,
          "min",
          "Dynamic modelling of heat pumps, 2011",
          Known.READ);

  /** What a shorter run loses, at least. */
  public static final Figure SHORT_RUN_LOSS_FROM =
      new Figure(
          "loss of a shorter run from",
          0.02,
          "",
          "Dynamic modelling of heat pumps, 2011",
          Known.READ);

  /** What a shorter run loses, at most. */
  public static final Figure SHORT_RUN_LOSS_TO =
      new Figure(
          "loss of a shorter run to",
          0.05,
          "",
          "Dynamic modelling of heat pumps, 2011",
          Known.READ);

  private CompressorTimes() {}
}
