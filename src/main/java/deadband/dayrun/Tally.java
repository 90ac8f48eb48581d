package deadband.dayrun;

import deadband.trade.DecimalReduction;
import deadband.trade.Hygiene;
import java.util.Optional;

/** Adds up a run, step by step. */
final class Tally {
  /** Water at the tap is hot from here on [°C]: the useful temperature of Reg. (EU) 814/2013. */
  static final double HOT_C = 40;

  private final StepLength step;
  private final double step_h;
  private final WorstHour closings;
  private final WorstHour starts;
  private final Runs runs;
  private final Extremes top;
  private final Extremes sensor;
  private final Extremes bottom;

  private long steps;
  private int endedByTimer;
  private double heatPump_kWh;
  private double heatPumpOnSurplus_kWh;
  private double heatPumpHeat_kWh;
  private double immersion_kWh;
  private double backup_kWh;
  private double import_kWh;
  private double importWhileOnSurplus_kWh;
  private double export_kWh;
  private double kept_kWh;
  private double solarHeat_kWh;
  private double solarHeatByHeatPump_kWh;
  private double diverted_kWh;
  private double divertedBought_kWh;
  private double mostCounted_kW = Double.NEGATIVE_INFINITY;
  private double coolestWhenCalled_C = Double.POSITIVE_INFINITY;
  private double curtailed_kWh;
  private double imbalance_kWh;
  private double coldDraw_L;
  private double growth_min;
  private double topReduction_log;
  private double bottomReduction_log;

  Tally(StepLength step, double top_C, double sensor_C, double bottom_C) {
    this.step = step;
    step_h = step.hours();
    closings = new WorstHour(step);
    starts = new WorstHour(step);
    runs = new Runs(step);
    top = new Extremes(top_C);
    sensor = new Extremes(sensor_C);
    bottom = new Extremes(bottom_C);
  }

  void closed() {
    closings.event(steps);
  }

  void started() {
    starts.event(steps);
  }

  void ended(int ranSteps, HeatPumpModel.End how) {
    runs.ended(ranSteps);
    endedByTimer += how == HeatPumpModel.End.TIMER ? 1 : 0;
  }

  void add(Step now, double drawnAt_C) {
    addEnergies(now);
    addTemperatures(now);
    addCall(now);
    if (drawnAt_C < HOT_C) {
      coldDraw_L += now.draw_L;
    }
    steps++;
  }

  private void addEnergies(Step now) {
    if (now.heats()) {
      addHeating(now);
    }
    import_kWh += now.import_kW * step_h;
    importWhileOnSurplus_kWh += now.onSurplus ? now.import_kW * step_h : 0;
    export_kWh += now.export_kW * step_h;
    curtailed_kWh += now.curtailed_kW * step_h;
    imbalance_kWh += now.imbalance_kW() * step_h;
  }

  private void addHeating(Step now) {
    heatPump_kWh += now.heatPump_kW * step_h;
    heatPumpOnSurplus_kWh += now.onSurplus ? now.heatPump_kW * step_h : 0;
    heatPumpHeat_kWh += now.heatPumpHeat_kW * step_h;
    immersion_kWh += now.immersion_kW * step_h;
    backup_kWh += now.backup_kW * step_h;
    kept_kWh += now.kept_kW * step_h;
    addSolarHeat(now);
    addDiverted(now);
  }

  /** Of the heat that each heater gives the tank, as much as of its electricity came from PV. */
  private void addSolarHeat(Step now) {
    double taken_kW = now.heatPump_kW + now.backup_kW;
    double share = taken_kW > 0 ? now.keptByHeatPump_kW / taken_kW : 0;
    double heatPump_kWh = share * now.heatPumpHeat_kW * step_h;
    double electric_kW = share * now.backup_kW + now.kept_kW - now.keptByHeatPump_kW;
    solarHeatByHeatPump_kWh += heatPump_kWh;
    solarHeat_kWh += heatPump_kWh + electric_kW * step_h;
  }

  /** What the diverter fed beyond PV was bought, as far as anything was. */
  private void addDiverted(Step now) {
    double fromPv_kW = now.kept_kW - now.keptByHeatPump_kW;
    diverted_kWh += now.diverted_kW * step_h;
    divertedBought_kWh +=
        Math.min(Math.max(0, now.diverted_kW - fromPv_kW), now.import_kW) * step_h;
  }

  private void addCall(Step now) {
    mostCounted_kW = Math.max(mostCounted_kW, now.counted_kW);
    if (now.relayClosed) {
      coolestWhenCalled_C = Math.min(coolestWhenCalled_C, now.heatPumpSensor_C);
    }
  }

  private void addTemperatures(Step now) {
    top.add(now.top_C);
    sensor.add(now.sensor_C);
    bottom.add(now.bottom_C);
    growth_min += Hygiene.inGrowthBand(now.sensor_C) ? step.minutes() : 0;
    topReduction_log = credited_log(topReduction_log, now.top_C);
    bottomReduction_log = credited_log(bottomReduction_log, now.bottom_C);
  }

  private double credited_log(double sofar_log, double temperature_C) {
    double most_log = DecimalReduction.MOST_CREDITED_LOG;
    if (sofar_log >= most_log || temperature_C < DecimalReduction.LEAST_CREDITED_C) {
      return sofar_log;
    }
    double credited_C = DecimalReduction.RANGE_C.clamp(temperature_C);
    double more_log = DecimalReduction.credited_log(credited_C, step.minutes());
    return Math.min(most_log, sofar_log + more_log);
  }

  Result result(TankModel tank, Optional<Result.Cycles> cycles, boolean cutOutOpened) {
    return new Result(
        steps,
        cycles,
        heatPump_kWh,
        heatPumpOnSurplus_kWh,
        heatPumpHeat_kWh,
        immersion_kWh,
        backup_kWh,
        import_kWh,
        importWhileOnSurplus_kWh,
        export_kWh,
        kept_kWh,
        solarHeat_kWh,
        solarHeatByHeatPump_kWh,
        top.span(),
        sensor.span(),
        bottom.span(),
        growth_min,
        topReduction_log,
        bottomReduction_log,
        diverted_kWh,
        divertedBought_kWh,
        mostCounted_kW,
        coolestWhenCalled_C,
        curtailed_kWh,
        coldDraw_L,
        tank.lost_kWh(),
        Math.max(Math.abs(imbalance_kWh), Math.abs(tank.imbalance_kWh())),
        cutOutOpened);
  }

  /**
   * The counts.
   *
   * @param goingOn length of the run that goes on, 0 for none
   */
  Result.Cycles cycles(int goingOn) {
    return new Result.Cycles(
        closings.count(),
        closings.worst(),
        starts.count(),
        starts.worst(),
        endedByTimer,
        runs.shortest_min(),
        runs.median_min(),
        runs.longest_min(goingOn));
  }

  /** Least, greatest and last value. */
  private static final class Extremes {
    private double min;
    private double max;
    private double end;

    Extremes(double start) {
      min = start;
      max = start;
      end = start;
    }

    void add(double value) {
      if (value < min) {
        min = value;
      }
      if (value > max) {
        max = value;
      }
      end = value;
    }

    Result.Span span() {
      return new Result.Span(min, max, end);
    }
  }
}
