package deadband.remedy;

import deadband.setup.Change;
import java.util.List;

/**
 * One set of settings that a search looked at, and what a year of it comes to.
 *
 * @param changes from the setup as it is, by pointer; empty for the setup itself
 * @param solarHeat_kWh heat from PV in the tank [kWh]
 * @param starts compressor starts
 * @param import_kWh bought, by the billing meter's way of counting [kWh]
 */
public record Option(List<Change> changes, double solarHeat_kWh, int starts, double import_kWh) {

  /** Better in nothing: not worth having beside the other. */
  boolean isBeatenBy(Option other) {
    boolean asGood =
        other.solarHeat_kWh >= solarHeat_kWh
            && other.starts <= starts
            && other.import_kWh <= import_kWh;
    boolean better =
        other.solarHeat_kWh > solarHeat_kWh
            || other.starts < starts
            || other.import_kWh < import_kWh;
    return asGood && (better || other.changes.size() <= changes.size());
  }
}
