package deadband.topics.house;

import static deadband.setup.Unit.CELSIUS;
import static deadband.setup.Unit.KILOWATT;

import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.provenance.Derived;
import deadband.setup.HeatPump;
import deadband.setup.Setup;
import deadband.trade.HeatPumpCop;

/** Facts about the powers of the heat pump: can a machine that gives and takes these be? */
public final class PumpPlate {

  /** Less than any input: keeps a ratio finite where there is none. */
  private static final double LEAST = 0.001;

  private static final double HUNDREDTHS = 100;

  private final Facts facts;
  private final HeatPump pump;

  /** Heat output against power input. */
  public record OutputOverInput(Evidence evidence, Quantity output_kW, Quantity input_kW)
      implements Case {}

  /** The COP that output and input make, against the highest at the lift. */
  public record PlateCop(Evidence evidence, Quantity cop, Quantity most) implements Case {}

  private PumpPlate(Setup setup, Facts facts) {
    this.facts = facts;
    this.pump = setup.heatPump();
  }

  public static void derive(Setup setup, Facts facts) {
    PumpPlate topic = new PumpPlate(setup, facts);
    topic.outputOverInput();
    topic.cop();
  }

  private Derived<Double> output_kW() {
    return Derived.of(pump.hotWaterOutput_kW());
  }

  private Derived<Double> input_kW() {
    return Derived.of(pump.hotWaterInput_kW());
  }

  private static double ratio(double output_kW, double input_kW) {
    return Math.rint(HUNDREDTHS * output_kW / Math.max(LEAST, input_kW)) / HUNDREDTHS;
  }

  private void outputOverInput() {
    Derived<Double> output = output_kW();
    Derived<Double> input = input_kW();
    facts
        .into(OutputOverInput.class, pump.hotWaterOutput_kW().pointer())
        .given(output, input)
        .makes(
            because ->
                new OutputOverInput(
                    because.explained(() -> noGain(output.get(), input.get())),
                    because.quantity(output),
                    because.quantity(input)));
  }

  private Detail noGain(double output_kW, double input_kW) {
    return Detail.at(pump.hotWaterOutput_kW(), pump.hotWaterInput_kW())
        .observed(Measure.of("heat output", output_kW, KILOWATT))
        .limit(Bound.entered("power input", input_kW, KILOWATT, pump.hotWaterInput_kW()))
        .evidence(new Measure("COP of the two", ratio(output_kW, input_kW), ""))
        .done();
  }

  /** The lift at the lowest stop, from a warm source: the most favourable that may be meant. */
  private void cop() {
    Derived<Double> cop = output_kW().with(input_kW(), PumpPlate::ratio);
    Derived<Double> flow =
        Derived.sum(
            CELSIUS,
            Derived.of(pump.everyday().stop_C())
                .with(Derived.of(pump.surplus().stop_C()), Math::min)
                .or(Derived.of(pump.everyday().stop_C()))
                .or(Derived.of(pump.surplus().stop_C())),
            Derived.of(pump.flowAboveTank_K()));
    Derived<Double> most =
        Derived.of(pump.source())
            .or(Derived.assumed(pump.source().pointer(), HeatPump.Source.AIR, "warmest source"))
            .with(flow, (source, flow_C) -> HeatPumpCop.best(flow_C, warm_C(source)));
    facts
        .into(PlateCop.class, pump.hotWaterOutput_kW().pointer())
        .given(cop, most)
        .makes(
            because ->
                new PlateCop(
                    because.explained(() -> tooGood(cop.get(), most.get(), flow.get())),
                    because.quantity(cop),
                    because.quantity(most)));
  }

  private static double warm_C(HeatPump.Source source) {
    return source == HeatPump.Source.AIR
        ? HeatPumpCop.WARM_AIR_C.value()
        : HeatPumpCop.GROUND_C.value();
  }

  private Detail tooGood(double cop, double most, double flow_C) {
    return Detail.at(pump.hotWaterOutput_kW(), pump.hotWaterInput_kW(), pump.source())
        .observed(new Measure("COP of output over input", cop, ""))
        .limit(
            Bound.sourced(
                new Measure("highest COP at this lift", most, ""),
                "share of the Carnot bound",
                HeatPumpCop.BEST_SHARE.source(),
                HeatPumpCop.BEST_SHARE.known()))
        .evidence(Measure.of("flow for the lowest stop", flow_C, CELSIUS))
        .basis("0.6 of the Carnot bound from a warm source to the flow")
        .done();
  }
}
