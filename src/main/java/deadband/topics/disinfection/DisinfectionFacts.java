package deadband.topics.disinfection;

import deadband.facts.Answer;
import deadband.facts.Condition;
import deadband.facts.Facts;
import deadband.facts.Presence;
import deadband.facts.Says;
import deadband.limits.Limits;
import deadband.plant.DisinfectionDuty;
import deadband.plant.DisinfectionDuty.Worth;
import deadband.provenance.Derived;
import deadband.setup.Disinfection;
import deadband.setup.Disinfection.Heater;
import deadband.setup.Setup;

/** What the rules about the disinfection of the store join: whether it is asked for, and runs. */
public final class DisinfectionFacts {

  private DisinfectionFacts() {}

  @Says("A disinfection cycle is chosen for the site.")
  public record CycleChosen(Answer answer) implements Presence {}

  @Says("The heater of the disinfection heats a tank at a height that can be entered.")
  public record HeaterInTankFitted(Answer answer) implements Presence {}

  @Says("A disinfection programme is on, with a heater that is fitted.")
  public record DisinfectionRuns(Answer answer) implements Condition {}

  @Says("The everyday programme lets the store cool below what needs no disinfection.")
  public record StoreRestsCool(Answer answer) implements Condition {}

  @Says("The disinfection cycle of the site covers a store of this volume.")
  public record CycleCoversStore(Answer answer) implements Condition {}

  @Says("A disinfection programme is on, and the immersion heater carries it.")
  public record ImmersionDisinfects(Answer answer) implements Condition {}

  @Says("A disinfection programme is on, and the compressor carries it.")
  public record CompressorDisinfects(Answer answer) implements Condition {}

  @Says("The heat pump disinfects the store by the numbers of a national cycle.")
  public record DisinfectionSuffices(Answer answer) implements Condition {}

  @Says("The disinfection is left to the surplus.")
  public record DisinfectionLeftToSurplus(Answer answer) implements Condition {}

  @Says("A pump mixes the store during the disinfection.")
  public record StoreMixed(Answer answer) implements Condition {}

  @Says("The hold of the disinfection starts again after an interruption.")
  public record HoldRestarts(Answer answer) implements Condition {}

  public static void derive(Setup setup, Limits limits, Facts facts) {
    DisinfectionDuty duty = new DisinfectionDuty(setup, limits);
    DisinfectionHeater heater = new DisinfectionHeater(setup);
    Disinfection programme = setup.heatPump().disinfection();
    Derived<Boolean> chosen = Derived.constant(setup.site().disinfectionCycle().isEntered());
    facts.add(new CycleChosen(facts.answer(chosen)));
    facts.add(new HeaterInTankFitted(facts.answer(heater.inTheTank())));
    facts.add(new DisinfectionRuns(facts.answer(duty.runs())));
    facts.add(new StoreRestsCool(facts.answer(duty.restsCool())));
    facts.add(new CycleCoversStore(facts.answer(duty.asked())));
    facts.add(new ImmersionDisinfects(facts.answer(duty.runsOn(Heater.IMMERSION))));
    facts.add(new CompressorDisinfects(facts.answer(duty.runsOn(Heater.HEAT_PUMP))));
    facts.add(new DisinfectionLeftToSurplus(facts.answer(heater.leftToSurplus())));
    facts.add(
        new DisinfectionSuffices(
            facts.answer(
                Derived.all(
                    duty.heatPumpFitted(), duty.worth().map(worth -> worth == Worth.ENOUGH)))));
    facts.add(new StoreMixed(facts.answer(Derived.of(programme.mixesStore()))));
    facts.add(new HoldRestarts(facts.answer(Derived.of(programme.restartsHold()))));
  }
}
