package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Watches a run and holds it to what no installation can break. */
final class Laws implements Trace {
  private static final double STEP_KWH = 1e-9;
  private static final double ROUNDING_K = 1e-9;

  private final Installation installation;
  private final DayRun run;
  private final StepLength step;
  private final double hottest_C;
  private final String what;
  private double battery_kWh;

  private Laws(
      Installation installation, DayRun run, StepLength step, double hottest_C, String what) {
    this.installation = installation;
    this.run = run;
    this.step = step;
    this.hottest_C = hottest_C;
    this.what = what;
    battery_kWh = installation.battery().stored_kWh();
  }

  /** Runs a day under watch. */
  static Result hold(
      Installation installation, double start_C, Day day, StepLength step, String what) {
    DayRun run = DayRun.startingAt(start_C, installation, step);
    double hottest_C =
        Math.max(hottestSource_C(installation), Math.max(start_C, day.coldWater_C()));
    run.watchedBy(new Laws(installation, run, step, hottest_C, what)).through(day);
    checkBalance(run, what);
    return run.result();
  }

  /** The hottest that any source, or the room, could make a layer. */
  private static double hottestSource_C(Installation installation) {
    double hottest_C = installation.tank().room_C();
    if (installation.immersion().power_kW() > 0) {
      hottest_C = Math.max(hottest_C, installation.immersion().cutOut_C());
    }
    if (installation.heatPump().performance().hotWaterInput_kW() > 0) {
      hottest_C = Math.max(hottest_C, installation.heatPump().performance().maximumFlow_C());
    }
    if (installation.backup().power_kW() > 0) {
      hottest_C = Math.max(hottest_C, installation.tank().coilCutOut_C());
    }
    return hottest_C;
  }

  private static void checkBalance(DayRun run, String what) {
    TankModel tank = run.tank();
    double turnover_kWh =
        1 + tank.given_kWh() + Math.abs(tank.lost_kWh()) + Math.abs(tank.drawn_kWh());
    assertThat(tank.imbalance_kWh()).as(what).isCloseTo(0, within(1e-6 * turnover_kWh));
    assertThat(run.result().balanceError_kWh()).as(what).isLessThan(1e-6);
  }

  @Override
  public void step(Step now) {
    require(Math.abs(now.imbalance_kW()) * step.hours() < STEP_KWH, "power balances", now);
    checkPowers(now);
    checkMetering(now);
    checkColumn(now);
  }

  private void checkPowers(Step now) {
    double[] powers_kW = {
      now.heatPump_kW(),
      now.heatPumpHeat_kW(),
      now.immersion_kW(),
      now.backup_kW(),
      now.charge_kW(),
      now.discharge_kW(),
      now.charger_kW(),
      now.export_kW(),
      now.import_kW(),
      now.curtailed_kW()
    };
    for (double power_kW : powers_kW) {
      require(power_kW >= 0, "no power is negative", now);
    }
    require(now.immersion_kW() <= installation.immersion().power_kW(), "heater within rating", now);
    require(now.charge_kW() == 0 || now.discharge_kW() == 0, "battery one way at a time", now);
    double heat_kW = now.heatPump_kW() + now.immersion_kW() + now.backup_kW();
    require(
        now.kept_kW() <= Math.min(heat_kW, now.pv_kW()) + 1e-9, "kept sun is sun and heat", now);
    require(now.kept_kW() >= -1e-9, "kept sun is not negative", now);
    double used_kW = now.pv_kW() + now.discharge_kW() - now.export_kW() - now.curtailed_kW();
    boolean mixed = installation.supply().perPhase() && now.discharge_kW() > 0;
    require(mixed || now.kept_kW() <= used_kW + 1e-9, "what is exported is not kept", now);
    boolean runs = now.heatPump() == HeatPumpModel.State.RUNNING;
    require(runs || now.heatPump_kW() == 0, "only a running compressor draws", now);
    battery_kWh += now.charge_kW() * installation.battery().efficiency() * step.hours();
    battery_kWh -= now.discharge_kW() * step.hours();
    double capacity_kWh = installation.battery().capacity_kWh();
    require(
        battery_kWh > -1e-9 && battery_kWh < capacity_kWh + 1e-9, "battery within capacity", now);
  }

  private void checkMetering(Step now) {
    boolean oneWay = now.export_kW() == 0 || now.import_kW() == 0;
    require(installation.supply().perPhase() || oneWay, "a netting meter goes one way", now);
    double net_kW = now.export_kW() - now.import_kW();
    boolean fedByBattery = now.discharge_kW() > 0;
    double limit_kW = installation.supply().exportLimit_kW();
    require(fedByBattery || net_kW <= limit_kW + 1e-9, "export limit holds", now);
    require(now.curtailed_kW() <= now.pv_kW(), "only sun is curtailed", now);
  }

  private void checkColumn(Step now) {
    TankModel tank = run.tank();
    for (int layer = 0; layer < tank.layers(); layer++) {
      double temperature_C = tank.layer_C(layer);
      require(
          temperature_C <= hottest_C + TankModel.LEAST_ABOVE_K,
          "no layer hotter than its hottest source",
          now);
      double below_C = layer == 0 ? temperature_C : tank.layer_C(layer - 1);
      require(below_C <= temperature_C + ROUNDING_K, "no layer below another is warmer", now);
    }
  }

  /** Says nothing while all is well: a message for each of millions of steps would take minutes. */
  private void require(boolean holds, String law, Step now) {
    if (!holds) {
      throw new AssertionError(
          String.format(
              Locale.ROOT,
              "%s: broken at second %d, heat pump %.3f (heat %.3f), heater %.3f, back-up %.3f kW,"
                  + " hottest %.3f, column %s; %s, %s",
              law,
              now.secondOfDay(),
              now.heatPump_kW(),
              now.heatPumpHeat_kW(),
              now.immersion_kW(),
              now.backup_kW(),
              hottest_C,
              column(),
              what,
              installation));
    }
  }

  private String column() {
    TankModel tank = run.tank();
    return IntStream.range(0, tank.layers())
        .mapToObj(layer -> String.format(Locale.ROOT, "%.2f", tank.layer_C(layer)))
        .collect(Collectors.joining(" "));
  }
}
