package deadband.plant;

import deadband.dayrun.Profile;
import deadband.dayrun.Surroundings;
import deadband.days.DayModel;
import deadband.document.Pointer;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.provenance.Provenance;
import deadband.setup.Relay.Counts;
import deadband.setup.Setup;
import deadband.setup.Unit;
import java.util.List;
import java.util.stream.Stream;

/**
 * The most that a relay can ever see: sun or export limit, less the house, less a heater that
 * always stands first.
 *
 * <p>Each value entered can only lower it, so what is entered bounds it from above and the values
 * not entered are open only where a start was found within reach.
 */
public final class SurplusReach {

  private final Setup setup;
  private final RelayLoop loop;

  public SurplusReach(Setup setup, RelayLoop loop) {
    this.setup = setup;
    this.loop = loop;
  }

  /** The lowest bound that follows from what is entered; not known where nothing bounds it. */
  public Derived<Double> most_kW() {
    return lowest(sun_kW(), export_kW());
  }

  /**
   * The highest surplus of a clear day in spring with the house's own load, or {@link #most_kW}
   * where that is lower; that alone where no day of this home can be run.
   */
  public Derived<Double> clearDay_kW() {
    Derived<DayModel> model = DayModel.of(setup);
    return model.isKnown()
        ? lowest(most_kW(), less(model.map(SurplusReach::peakOfClearDay_kW), heaterFirst_kW()))
        : most_kW();
  }

  private static double peakOfClearDay_kW(DayModel model) {
    Surroundings surroundings = model.surroundings();
    Profile day = surroundings.clear(surroundings.springDate()).profile();
    double inverter_kW = model.installation().generator().inverter_kW();
    double peak_kW = 0;
    for (int minute = 0; minute < day.length(); minute++) {
      double surplus_kW = Math.min(day.pv_kW(minute), inverter_kW) - day.house_kW(minute);
      peak_kW = Math.max(peak_kW, surplus_kW);
    }
    return Unit.KILOWATT.round(peak_kW);
  }

  /** What must be entered before a start is sure to lie within reach. */
  public List<Pointer> open(double start_kW) {
    List<Pointer> open =
        Stream.of(peak_kW(), inverter_kW(), house_kW(), export_kW())
            .flatMap(part -> part.provenance().missing().stream())
            .toList();
    return Provenance.union(open, openHeater(start_kW));
  }

  private List<Pointer> openHeater(double start_kW) {
    Derived<Double> first = heaterFirst_kW();
    boolean settled = first.isKnown() || !most_kW().isKnown();
    boolean withinAnyway =
        loop.heater_kW().is(heater -> most_kW().is(most -> start_kW <= most - heater));
    return settled || withinAnyway ? List.of() : first.provenance().missing();
  }

  private Derived<Double> sun_kW() {
    Derived<Double> sun = lowest(peak_kW(), inverter_kW());
    return less(less(sun, house_kW()), heaterFirst_kW());
  }

  /** What the export limit lets the relay see: with heater and battery counted, theirs on top. */
  private Derived<Double> export_kW() {
    Derived<Double> limit = Derived.of(setup.solar().exportLimit_kW());
    Derived<Double> heater =
        counted(loop.heaterFitted(), Counts.IMMERSION).then(seen -> onTop(seen, loop.heater_kW()));
    Derived<Double> battery =
        counted(Derived.of(setup.battery().part().isFitted()), Counts.BATTERY)
            .then(seen -> onTop(seen, Derived.of(setup.battery().power_kW())));
    return Derived.sum(Unit.KILOWATT, Derived.sum(Unit.KILOWATT, limit, heater), battery);
  }

  private Derived<Boolean> counted(Derived<Boolean> fitted, Counts power) {
    return Derived.all(loop.counts(power), fitted);
  }

  private static Derived<Double> onTop(boolean seen, Derived<Double> power_kW) {
    return seen ? power_kW : Derived.constant(0.0);
  }

  /**
   * What a heater takes before the relay sees it. A start below what the diverter leaves to export
   * is seen before the heater begins.
   */
  private Derived<Double> heaterFirst_kW() {
    return loop.heaterRunsAtStart().then(first -> onTop(first, loop.heater_kW()));
  }

  private Derived<Double> peak_kW() {
    return Derived.of(setup.solar().peak_kW());
  }

  private Derived<Double> inverter_kW() {
    return Derived.of(setup.solar().inverter_kW());
  }

  private Derived<Double> house_kW() {
    return Derived.of(setup.house().baseLoad_kW());
  }

  private static Derived<Double> less(Derived<Double> power, Derived<Double> taken) {
    return taken.isKnown()
        ? power.with(taken, (most, part) -> Unit.KILOWATT.round(Math.max(0, most - part)))
        : power;
  }

  private static Derived<Double> lowest(Derived<Double> one, Derived<Double> other) {
    return one.isKnown() && other.isKnown() ? one.with(other, Math::min) : one.or(other);
  }
}
