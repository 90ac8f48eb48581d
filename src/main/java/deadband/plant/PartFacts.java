package deadband.plant;

import deadband.facts.Answer;
import deadband.facts.Facts;
import deadband.facts.Presence;
import deadband.facts.Says;
import deadband.provenance.Derived;
import deadband.setup.Part;
import deadband.setup.Setup;

/** What is fitted and what is not: a check about a thing that is not there is not made. */
public final class PartFacts {

  private final Facts facts;

  private PartFacts(Facts facts) {
    this.facts = facts;
  }

  @Says("A surplus relay is fitted.")
  public record RelayFitted(Answer answer) implements Presence {}

  @Says("A heat pump is fitted.")
  public record HeatPumpFitted(Answer answer) implements Presence {}

  @Says("A diverter is fitted.")
  public record DiverterFitted(Answer answer) implements Presence {}

  @Says("An immersion heater is fitted.")
  public record ImmersionFitted(Answer answer) implements Presence {}

  @Says("A hot water tank is fitted.")
  public record TankFitted(Answer answer) implements Presence {}

  @Says("A heating coil in the tank is fitted.")
  public record CoilFitted(Answer answer) implements Presence {}

  @Says("PV is fitted.")
  public record SolarFitted(Answer answer) implements Presence {}

  @Says("A grid sensor is fitted.")
  public record GridSensorFitted(Answer answer) implements Presence {}

  @Says("A battery is fitted.")
  public record BatteryFitted(Answer answer) implements Presence {}

  @Says("A vehicle charger is fitted.")
  public record VehicleChargerFitted(Answer answer) implements Presence {}

  @Says("A back-up heater in the heat pump is fitted.")
  public record BackupHeaterFitted(Answer answer) implements Presence {}

  @Says("An input for the surplus call on the heat pump is fitted.")
  public record SurplusInputFitted(Answer answer) implements Presence {}

  @Says("An input for the heat pump's own call on the diverter is fitted.")
  public record DemandInputFitted(Answer answer) implements Presence {}

  @Says("A tank sensor of the diverter is fitted.")
  public record TankSensorFitted(Answer answer) implements Presence {}

  @Says("A buffer is fitted.")
  public record BufferFitted(Answer answer) implements Presence {}

  public static void derive(Setup setup, Facts facts) {
    PartFacts parts = new PartFacts(facts);
    facts.add(new RelayFitted(parts.answer(setup.relay().part())));
    facts.add(new HeatPumpFitted(parts.answer(setup.heatPump().part())));
    facts.add(new DiverterFitted(parts.answer(setup.diverter().part())));
    facts.add(new ImmersionFitted(parts.answer(setup.immersion().part())));
    facts.add(new TankFitted(parts.answer(setup.tank().part())));
    facts.add(new CoilFitted(parts.answer(setup.tank().coil().part())));
    facts.add(new SolarFitted(parts.answer(setup.solar().part())));
    facts.add(new GridSensorFitted(parts.answer(setup.gridSensor().part())));
    facts.add(new BatteryFitted(parts.answer(setup.battery().part())));
    facts.add(new VehicleChargerFitted(parts.answer(setup.vehicleCharger().part())));
    facts.add(new BackupHeaterFitted(parts.answer(setup.heatPump().backupHeater().part())));
    facts.add(new SurplusInputFitted(parts.answer(setup.heatPump().surplusInput().part())));
    facts.add(new DemandInputFitted(parts.answer(setup.diverter().demandInput().part())));
    facts.add(new TankSensorFitted(parts.answer(setup.diverter().sensor().part())));
    facts.add(new BufferFitted(parts.answer(setup.buffer().part())));
  }

  private Answer answer(Part part) {
    return facts.answer(Derived.of(part.isFitted()));
  }
}
