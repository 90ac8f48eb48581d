package deadband.dayrun;

/** A power that the relay counts as surplus. */
public enum Counted {
  /** What leaves through the grid sensor, negative while power is bought. */
  EXPORT,
  /** What the diverter feeds the immersion heater. */
  IMMERSION,
  /** What the compressor draws. */
  HEAT_PUMP,
  /** What the battery takes, negative while it gives. */
  BATTERY
}
