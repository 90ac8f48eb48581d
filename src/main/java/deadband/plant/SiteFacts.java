package deadband.plant;

import deadband.facts.Answer;
import deadband.facts.Condition;
import deadband.facts.Facts;
import deadband.facts.Says;
import deadband.loop.SensedPhases;
import deadband.provenance.Derived;
import deadband.setup.Setup;
import deadband.setup.Supply;

/** What rules join about the site: its supply, and how that is billed. */
public final class SiteFacts {

  private SiteFacts() {}

  @Says("The supply has more than one phase.")
  public record SupplyHasSeveralPhases(Answer answer) implements Condition {}

  @Says("The meter bills each phase by itself.")
  public record BilledPerPhase(Answer answer) implements Condition {}

  public static void derive(Setup setup, Facts facts) {
    Derived<Boolean> perPhase =
        Derived.of(setup.supply().billing()).map(billing -> billing == Supply.Billing.PER_PHASE);
    facts.add(new SupplyHasSeveralPhases(facts.answer(new SensedPhases(setup).several())));
    facts.add(new BilledPerPhase(facts.answer(perPhase)));
  }
}
