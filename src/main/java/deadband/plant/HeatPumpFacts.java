package deadband.plant;

import deadband.facts.Answer;
import deadband.facts.Condition;
import deadband.facts.Facts;
import deadband.facts.Says;
import deadband.provenance.Derived;
import deadband.setup.Setup;

/** What rules join about the heat pump's hot water programmes. */
public final class HeatPumpFacts {

  private HeatPumpFacts() {}

  @Says("The heat pump's everyday programme is switched on.")
  public record EverydayProgrammeOn(Answer answer) implements Condition {}

  @Says("The relay calls the surplus programme, or relay.drives is not entered.")
  public record SurplusProgrammeCalled(Answer answer) implements Condition {}

  public static void derive(Setup setup, Facts facts) {
    Derived<Boolean> on = Derived.of(setup.heatPump().everyday().enabled());
    facts.add(new EverydayProgrammeOn(facts.answer(on)));
    facts.add(new SurplusProgrammeCalled(facts.answer(new Programmes(setup).surplusIsCalled())));
  }
}
