package deadband.topics.@topic@;

import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.provenance.Derived;
import deadband.setup.Entered;
import deadband.setup.Setup;
import deadband.setup.Unit;

/** TODO what it is, in the words of the trade; name its quantities with their units. */
public record @fact@(Evidence evidence, Quantity value_TODO, Quantity limit_TODO) implements Case {

  /** Every setup gets one; whether the check applies is a condition of the rule. */
  public static void derive(Setup setup, Limits limits, Facts facts) {
    Entered<Double> entered = setup.TODO();
    Derived<Double> value = Derived.of(entered);
    Limits.Entry most = limits.of(Limit.TODO);
    facts
        .into(@fact@.class, entered.pointer())
        .given(value)
        .makes(
            because ->
                new @fact@(
                    because.explained(() -> detail(entered, value.get(), most)),
                    because.quantity(value),
                    because.quantity(Derived.constant(most.value()))));
  }

  private static Detail detail(Entered<Double> entered, double value, Limits.Entry most) {
    return Detail.at(entered)
        .observed(Measure.of("TODO what was found", value, Unit.TODO))
        .limit(Bound.of("TODO what it is held against", most.value(), most))
        .done();
  }
}
