package deadband.setup;

/** Something that takes power. */
public enum Consumer implements Choice {
  HEAT_PUMP,
  IMMERSION,
  CHARGER,
  HOUSE
}
