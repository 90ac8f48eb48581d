package deadband.diagnosis;

import java.util.Locale;

/** What most likely started a run. */
public enum Trigger {
  RELAY("surplus at or above the relay's start"),
  BELOW_START("surplus near the relay's start, but below it"),
  TEMPERATURE("tank at or below the programme's start"),
  DISINFECTION("tank already warm, without surplus: disinfection or another programme"),
  NONE("neither surplus nor tank temperature gives a reason"),
  NOT_SHOWN("not shown by the log");

  private final String says;

  Trigger(String says) {
    this.says = says;
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public String says() {
    return says;
  }
}
