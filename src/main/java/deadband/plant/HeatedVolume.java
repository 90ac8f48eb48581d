package deadband.plant;

import deadband.provenance.Derived;
import deadband.setup.Setup;
import deadband.setup.Tank;
import deadband.setup.Unit;

/** The share of the tank that a heater at a certain height can heat: all that lies above it. */
public final class HeatedVolume {

  private final Tank tank;

  public HeatedVolume(Setup setup) {
    this.tank = setup.tank();
  }

  /** Volume above the lower end of the coil. */
  public Derived<Double> aboveCoil_L() {
    return above_L(Derived.of(tank.coil().bottom_mm()));
  }

  /** Volume above a height. */
  public Derived<Double> above_L(Derived<Double> height_mm) {
    return height_mm
        .with(Derived.of(tank.height_mm()), HeatedVolume::shareAbove)
        .with(Derived.of(tank.volume_L()), (share, volume) -> Unit.LITRE.round(share * volume));
  }

  /** Share above a height; nothing in a tank without one. */
  private static double shareAbove(double height_mm, double whole_mm) {
    return height_mm < whole_mm ? 1 - height_mm / whole_mm : 0;
  }
}
