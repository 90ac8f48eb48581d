package deadband.loop;

import deadband.provenance.Derived;
import deadband.setup.Relay;
import deadband.setup.Setup;
import deadband.trade.ControlLoop;
import java.util.Optional;

/**
 * The loop of a relay that switches an immersion heater on and off instead of calling a heat pump:
 * the same loop, with the element's power for the draw.
 */
public final class ElementLoop {

  private final Setup setup;
  private final RelayLoop loop;

  public ElementLoop(Setup setup, RelayLoop loop) {
    this.setup = setup;
    this.loop = loop;
  }

  public Derived<Boolean> fitted() {
    return Derived.all(
        Derived.of(setup.relay().part().isFitted()),
        Derived.of(setup.immersion().part().isFitted()));
  }

  public Derived<Boolean> drivesElement() {
    return Derived.of(setup.relay().drives()).map(drives -> drives == Relay.Drives.ELEMENT);
  }

  /** Whether the element has no diverter beside the relay: with one it is not the relay's alone. */
  public Derived<Boolean> isRelaysAlone() {
    return Derived.not(Derived.of(setup.diverter().part().isFitted()));
  }

  /** Whether the relay adds the element's own power back. */
  public Derived<Boolean> countsElement() {
    return loop.counts(Relay.Counts.IMMERSION);
  }

  public Derived<Double> draw_kW() {
    return loop.element_kW();
  }

  /** The loop in closed form: an element that is counted is to it what a counted heat pump is. */
  public Optional<LoopForm> form() {
    Derived<Boolean> counted = countsElement();
    boolean known =
        counted.isKnown()
            && loop.start_kW().isKnown()
            && loop.stop_kW().isKnown()
            && draw_kW().isKnown();
    return known ? Optional.of(form(counted.get())) : Optional.empty();
  }

  private LoopForm form(boolean counted) {
    ControlLoop.Counts counts = new ControlLoop.Counts(true, false, counted);
    return LoopForm.of(
        new ControlLoop(counts, loop.start_kW().get(), loop.stop_kW().get(), draw_kW().get(), 0, 0),
        0);
  }
}
