package deadband.plant;

import deadband.facts.Answer;
import deadband.facts.Condition;
import deadband.facts.Facts;
import deadband.facts.Presence;
import deadband.facts.Says;
import deadband.provenance.Derived;
import deadband.setup.Disinfection;
import deadband.setup.Disinfection.Heater;
import deadband.setup.Setup;

/** What rules join about the hot water tank: what heats it, and what takes heat from it. */
public final class TankFacts {

  private TankFacts() {}

  @Says("A diverter, a heat pump or an immersion heater is fitted.")
  public record TankHeaterFitted(Answer answer) implements Presence {}

  @Says("Hot water circulates through the pipes of the house.")
  public record WaterCirculates(Answer answer) implements Condition {}

  @Says("The immersion heater carries the disinfection.")
  public record ImmersionDisinfects(Answer answer) implements Condition {}

  public static void derive(Setup setup, Facts facts) {
    facts.add(new TankHeaterFitted(facts.answer(new TankTop(setup).fitted())));
    facts.add(new WaterCirculates(facts.answer(Derived.of(setup.tank().circulation()))));
    facts.add(new ImmersionDisinfects(facts.answer(immersionDisinfects(setup))));
  }

  private static Derived<Boolean> immersionDisinfects(Setup setup) {
    Disinfection disinfection = setup.heatPump().disinfection();
    return Derived.all(
        Derived.of(disinfection.enabled()),
        Derived.of(disinfection.heater()).map(heater -> heater == Heater.IMMERSION));
  }
}
