package deadband.diagnosis;

import deadband.setup.Relay;
import java.util.Set;

/**
 * How relay and heat pump act: the settings in force, and what disturbs them. A cause is the home
 * as it should run with what the fault changes. A time that is infinite never comes; a threshold
 * that is not known is NaN and never reached.
 */
final class Behaviour implements Cloneable {

  /** What of the home the relay's sensor has in its reading. */
  enum Sees {
    ALL,
    NOT_THE_HEAT_PUMP,
    ONE_PHASE
  }

  Set<Relay.Counts> counts = Set.of();
  double input_kW;
  double start_kW;
  double stop_kW;
  double startDelay_min;
  double stopDelay_min;
  double lag_min;
  double minimumRun_min;
  double minimumOff_min;
  double everydayStart_C;
  double everydayStop_C;
  double surplusStart_C;
  double surplusStop_C;

  /** Tank temperature that the compressor reaches. */
  double limit_C;

  double rise_K_per_h;

  /** A fall of the surplus that passes within this does not open the relay; 0 where any does. */
  double bridged_min;

  /** Whether what the vehicle takes lowers the reading. */
  boolean vehicleSeen;

  Sees sees = Sees.ALL;
  double readsHigh_kW;
  double readsLate_min;

  /** What the heat pump's own tank sensor reads above the log's. */
  double sensorHigh_K;

  /** Mean time in which the call contact opens by itself. */
  double bounce_min = Double.POSITIVE_INFINITY;

  /** Mean times of another controller: until it calls, its calls, until it ends a relay's call. */
  double otherCalls_min = Double.POSITIVE_INFINITY;

  double otherRuns_min = Double.POSITIVE_INFINITY;
  double otherHolds_min = Double.POSITIVE_INFINITY;

  /** Pause and run of a heating circuit; NaN where none cycles. */
  double heatingPause_min = Double.NaN;

  double heatingRun_min = Double.NaN;

  /** Whether the supply goes with the call, but for a time at night. */
  boolean supplyCut;

  /** Whether it heats at night to the limit, again and again. */
  boolean disinfects;

  double retriesAfter_min = 20;
  boolean tankStaysCold;

  /** Share of the runs without surplus that the battery supplies; some is met by chance. */
  double batteryShare = 0.08;

  /** Mean time in which it ends a run that does not warm the tank. */
  double givesUp_min = Double.POSITIVE_INFINITY;

  Behaviour copy() {
    try {
      return (Behaviour) clone();
    } catch (CloneNotSupportedException e) {
      throw new AssertionError(e);
    }
  }

  /** What the relay's sensor reads at a step, without its error. */
  double read_kW(Watched log, int step) {
    if (sees == Sees.ONE_PHASE) {
      // PV on the phase that is read, the house spread over three, the heat pump on another
      double house_kW = log.pv_kW(step) - log.before_kW(step);
      return log.pv_kW(step) - house_kW / 3;
    }
    double read_kW = log.export_kW(step);
    if (counts.contains(Relay.Counts.IMMERSION)) {
      read_kW += log.heater_kW(step);
    }
    if (counts.contains(Relay.Counts.BATTERY)) {
      read_kW -= log.discharge_kW(step);
    }
    if (counts.contains(Relay.Counts.HEAT_PUMP) || sees == Sees.NOT_THE_HEAT_PUMP) {
      read_kW += log.pump_kW(step);
    }
    return vehicleSeen ? read_kW : read_kW + log.vehicle_kW(step);
  }

  /** Whether the heat pump's own power lowers what the relay reads. */
  boolean isPumpRead() {
    return sees == Sees.ALL && !counts.contains(Relay.Counts.HEAT_PUMP);
  }

  /** Whether a longer delay would have kept the relay closed: the surplus is back in time. */
  boolean isBridged(Watched log, int step) {
    if (bridged_min == 0 || log.before_kW(step) >= start_kW) {
      return false;
    }
    int last = Math.min(log.steps() - 1, step + log.steps(bridged_min));
    for (int later = step + 1; later <= last; later++) {
      if (log.before_kW(later) >= start_kW) {
        return true;
      }
    }
    return false;
  }
}
