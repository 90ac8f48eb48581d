package deadband.judging;

import deadband.document.Pointer;
import deadband.reading.SetupReading;
import deadband.setup.Change;
import deadband.setup.Disinfection;
import deadband.setup.Relay;
import deadband.setup.Setup;
import java.util.List;
import java.util.Random;

/** Generated homes: the good samples, with mistakes that somebody at the controls makes. */
public final class FaultyHomes {
  private static final List<SetupReading.Read> GOOD =
      Setups.good().stream().map(file -> Setups.read(file.toString(), Setups.text(file))).toList();

  /** Values that somebody at the controls gets wrong, and by what they may be wrong. */
  private static final List<Mistake> MISTAKES =
      List.of(
          new Mistake("relay.start_kW", 0.3, 8),
          new Mistake("relay.stop_kW", -1, 4),
          new Mistake("relay.stop_kW", 0.5, 3),
          new Mistake("relay.startDelay_min", 0, 40),
          new Mistake("relay.stopDelay_min", 0, 40),
          new Mistake("diverter.limit_C", 45, 85),
          new Mistake("immersion.thermostat_C", 45, 85),
          new Mistake("heatPump.everyday.start_C", 30, 62),
          new Mistake("heatPump.everyday.stop_C", 35, 66),
          new Mistake("heatPump.surplus.start_C", 35, 66),
          new Mistake("heatPump.surplus.stop_C", 40, 72),
          new Mistake("heatPump.disinfection.target_C", 40, 70),
          new Mistake("heatPump.disinfection.hold_min", 1, 120),
          new Mistake("heatPump.disinfection.every_days", 1, 40),
          new Mistake("immersion.circuit.breaker_A", 6, 32),
          new Mistake("immersion.circuit.cable_mm2", 1, 4),
          new Mistake("immersion.power_kW", 1, 6),
          new Mistake("heatPump.hotWaterInput_kW", 0.8, 6),
          new Mistake("heatPump.hotWaterOutput_kW", 2, 14),
          new Mistake("heatPump.maximumFlow_C", 50, 75),
          new Mistake("blending.hotSupplyMax_C", 55, 80),
          new Mistake("outlets[0].mixed_C", 38, 60),
          new Mistake("solar.peak_kW", 1, 12),
          new Mistake("solar.inverter_kW", 1, 10),
          new Mistake("tank.volume_L", 80, 500));

  private FaultyHomes() {}

  /** One of them. */
  private record Mistake(String name, double least, double most) {

    Setup in(Setup setup, Random random) {
      Pointer at = Pointer.ofDotted(name);
      Object was = Change.entered(setup, at);
      if (!(was instanceof Double)) {
        return setup;
      }
      double value = least + (most - least) * random.nextDouble();
      double rounded = name.endsWith("cable_mm2") ? size(value) : Math.rint(value * 10) / 10;
      return new Change(at, was, rounded).applyTo(setup);
    }

    private static double size(double value) {
      return value < 1.25 ? 1 : value < 2 ? 1.5 : value < 3.2 ? 2.5 : 4;
    }
  }

  /** Switches and choices that are wrong. */
  private static Setup wrongChoice(Setup setup, Random random) {
    Disinfection disinfection = setup.heatPump().disinfection();
    Change change =
        switch (random.nextInt(4)) {
          case 0 -> Change.of(disinfection.enabled(), false);
          case 1 -> Change.of(disinfection.heater(), Disinfection.Heater.NONE);
          case 2 -> Change.of(setup.relay().counts(), List.of(Relay.Counts.EXPORT));
          default ->
              Change.of(
                  setup.relay().counts(), List.of(Relay.Counts.EXPORT, Relay.Counts.IMMERSION));
        };
    return change.applyTo(setup);
  }

  /** A good home with one mistake or a few. */
  public static Setup faulty(Random random) {
    Setup setup = GOOD.get(random.nextInt(GOOD.size())).setup();
    for (int mistake = 0; mistake < 1 + random.nextInt(4); mistake++) {
      setup =
          random.nextInt(8) == 0
              ? wrongChoice(setup, random)
              : MISTAKES.get(random.nextInt(MISTAKES.size())).in(setup, random);
    }
    return setup;
  }
}
