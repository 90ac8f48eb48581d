package deadband.trade;

/** Starts that a compressor stands, where its data plate does not say. */
public final class CompressorTimes {
  /** Starts in an hour, at most. */
  public static final Figure STARTS_PER_HOUR =
      new Figure(
          "maximum starts per hour",
          3,
          "1/h",
          "German grid connection rules (second-hand); Wüllhorst et al. 2021",
          Known.READ);

  private CompressorTimes() {}
}
