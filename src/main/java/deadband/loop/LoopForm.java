package deadband.loop;

import deadband.setup.Unit;
import deadband.trade.ControlLoop;
import deadband.trade.SurplusBand;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The loop in closed form, in the state of the heater in which it hunts.
 *
 * <p>A diverter that leaves a margin to export shows a relay that counts export alone that margin
 * for as long as the heater follows the surplus: the loop is the one without it, with both
 * thresholds and every surplus lower by the margin.
 *
 * @param loop the loop below the margin
 * @param margin_kW export that the diverter leaves untouched
 * @param heaterAtLimit whether it hunts only once the heater is off at the tank limit
 */
public record LoopForm(ControlLoop loop, double margin_kW, boolean heaterAtLimit) {

  public static LoopForm of(ControlLoop entered, double margin_kW) {
    ControlLoop loop =
        entered.withStart(entered.start_kW() - margin_kW).withStop(entered.stop_kW() - margin_kW);
    return loop.hunting().isEmpty() && loop.heater_kW() > 0
        ? new LoopForm(loop.withHeaterOff(), margin_kW, true)
        : new LoopForm(loop, margin_kW, false);
  }

  /** Steady surplus at which it hunts, with the margin on top. */
  public List<SurplusBand> hunting() {
    return loop.hunting().stream()
        .map(band -> new SurplusBand(shifted(band.from_kW()), shifted(band.to_kW())))
        .toList();
  }

  /** Import on starting at the lowest surplus that closes the relay; empty where none does. */
  public OptionalDouble importAtStart_kW() {
    OptionalDouble edge_kW = loop.lowestClosing_kW();
    return edge_kW.isEmpty()
        ? edge_kW
        : OptionalDouble.of(
            Math.max(0, Unit.KILOWATT.round(loop.draw_kW() - shifted(edge_kW.getAsDouble()))));
  }

  /** The most that is imported for as long as the relay still holds the call. */
  public double importWhileHeld_kW() {
    return loop.withStop(loop.stop_kW() + margin_kW).importWhileHeld_kW();
  }

  private double shifted(double surplus_kW) {
    return Double.isFinite(surplus_kW) ? Unit.KILOWATT.round(surplus_kW + margin_kW) : surplus_kW;
  }
}
