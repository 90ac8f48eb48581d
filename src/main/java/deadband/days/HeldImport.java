package deadband.days;

import deadband.facts.Measure;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.setup.Setup;
import deadband.setup.Unit;
import java.util.Optional;

/** What a relay lets be bought while it still holds the call of the heat pump. */
public final class HeldImport {

  private HeldImport() {}

  /** The most that is bought at the stop; empty where nothing is, or where it is not known. */
  public static Optional<Measure> of(Setup setup) {
    RelayLoop loop = new RelayLoop(setup);
    Derived<Boolean> calls = Derived.all(loop.fitted(), loop.drivesHeatPump(), loop.countsExport());
    Derived<Double> bought = loop.importWhileHeld_kW();
    return calls.is(does -> does) && bought.is(power_kW -> power_kW > 0)
        ? Optional.of(Measure.of("import while the call is held", bought.get(), Unit.KILOWATT))
        : Optional.empty();
  }
}
