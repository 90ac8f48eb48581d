package deadband.diagnosis;

import java.util.Locale;

/** What most likely ended a run. */
public enum Ending {
  TEMPERATURE("tank at the programme's stop"),
  LIMIT("tank at the compressor's limit, below the programme's stop"),
  SURPLUS_FELL("surplus fell below the relay's start"),
  GAP("surplus between start and stop, where the heat pump's own input opens the relay"),
  NONE("neither surplus nor tank temperature gives a reason"),
  NOT_SHOWN("not shown by the log");

  private final String says;

  Ending(String says) {
    this.says = says;
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public String says() {
    return says;
  }
}
