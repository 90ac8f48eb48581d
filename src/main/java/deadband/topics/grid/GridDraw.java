package deadband.topics.grid;

import static deadband.setup.Unit.KILOWATT;

import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.facts.Size;
import deadband.loop.RelayLoop;
import deadband.loop.SensedPhases;
import deadband.provenance.Derived;
import deadband.setup.BackupHeater;
import deadband.setup.Change;
import deadband.setup.Setup;
import deadband.setup.Supply;
import deadband.setup.SurplusInput;
import deadband.setup.Unit;
import deadband.trade.Metering;
import deadband.trade.SignalContact.SgReady;
import java.util.Optional;

/** Facts about what a surplus call brings along, and what the billing meter makes of it. */
public final class GridDraw {

  /** Whether the back-up heater may join while the call is held. */
  public record BackupOnSurplus(Evidence evidence, Answer joins) implements Case {}

  /** Whether the call is the label's start command, and whether that lets the back-up heater in. */
  public record StartCommand(Evidence evidence, Answer selected, Answer withBackup)
      implements Case {}

  /** Phases that the heat pump draws from, against those that the PV feeds. */
  public record PhaseSpread(Evidence evidence, Quantity drawn, Quantity fed) implements Case {}

  /** Whether the grid sensor measures every phase, or at least all that the heat pump is billed. */
  public record BilledPhases(Evidence evidence, Answer measuresAll, Answer measuresBilledPump)
      implements Case {}

  /** Whether the heat pump lies on the side of the grid sensor that it measures. */
  public record MeteredPump(Evidence evidence, Answer behindSensor) implements Case {}

  /** Whether the call heats rooms beside the tank. */
  public record CallScope(Evidence evidence, Answer heatsRooms) implements Case {}

  private final Setup setup;
  private final Facts facts;
  private final RelayLoop loop;
  private final SensedPhases phases;

  private GridDraw(Setup setup, Facts facts) {
    this.setup = setup;
    this.facts = facts;
    this.loop = new RelayLoop(setup);
    this.phases = new SensedPhases(setup);
  }

  public static void derive(Setup setup, Facts facts) {
    GridDraw topic = new GridDraw(setup, facts);
    topic.backup();
    topic.startCommand();
    topic.phaseSpread();
    topic.billedPhases();
    topic.meteredPump();
    topic.callScope();
  }

  private BackupHeater heater() {
    return setup.heatPump().backupHeater();
  }

  private void backup() {
    Derived<Boolean> joins = Derived.of(heater().allowedOnSurplus());
    facts
        .into(BackupOnSurplus.class, heater().part().pointer())
        .given(joins)
        .makes(
            because ->
                new BackupOnSurplus(because.explained(this::joining), because.answer(joins)));
  }

  private Detail joining() {
    return withBackup(Detail.at(heater().allowedOnSurplus(), heater().power_kW()));
  }

  /** Whatever let it join, the same setting keeps it out. */
  private Detail withBackup(Detail.Builder detail) {
    Optional<Double> power_kW = heater().power_kW().optional();
    detail.size(Size.kilowatts(power_kW)).cure(Change.of(heater().allowedOnSurplus(), false));
    power_kW.ifPresent(
        power -> detail.evidence(Measure.of("power of the back-up heater", power, KILOWATT)));
    Derived<Measure> bought = boughtOnStarting();
    return bought.isKnown() ? detail.evidence(bought.get()).done() : detail.done();
  }

  /** What pump and back-up heater draw beyond the surplus at which the relay closes. */
  private Derived<Measure> boughtOnStarting() {
    Derived<Double> both = Derived.sum(KILOWATT, loop.draw_kW(), Derived.of(heater().power_kW()));
    return Derived.difference(KILOWATT, both, loop.start_kW())
        .map(power -> Measure.of("import on starting", Math.max(0, power), KILOWATT));
  }

  private void startCommand() {
    SurplusInput input = setup.heatPump().surplusInput();
    Derived<Boolean> commands =
        Derived.of(input.sgReadyState()).map(state -> state == SgReady.START_COMMAND.state());
    Derived<Boolean> with = Derived.of(heater().allowedOnSurplus());
    facts
        .into(StartCommand.class, input.sgReadyState().pointer())
        .fitted(Derived.notAbsent(input.part()))
        .given(commands, with)
        .makes(
            because ->
                new StartCommand(
                    because.explained(
                        () ->
                            withBackup(
                                Detail.at(input.sgReadyState(), heater().allowedOnSurplus()))),
                    because.answer(commands),
                    because.answer(with)));
  }

  private Derived<Boolean> billedPerPhase() {
    return Derived.of(setup.supply().billing()).map(billing -> billing == Supply.Billing.PER_PHASE);
  }

  private void phaseSpread() {
    Derived<Double> drawn = phases.drawn();
    Derived<Double> fed = Derived.of(setup.solar().phases());
    facts
        .into(PhaseSpread.class, setup.heatPump().phases().pointer())
        .given(drawn, fed)
        .makes(
            because ->
                new PhaseSpread(
                    because.explained(() -> spread(drawn.get(), fed.get())),
                    because.quantity(drawn),
                    because.quantity(fed)));
  }

  private Detail spread(double drawn, double fed) {
    Detail.Builder detail =
        Detail.at(setup.heatPump().phases(), setup.solar().phases(), setup.supply().billing())
            .observed(Measure.of("phases with PV", fed, ""))
            .limit(
                Bound.entered(
                    "phases of the heat pump", drawn, Unit.NONE, setup.heatPump().phases()))
            .basis("balanced load, phase by phase");
    Derived<Double> bought = boughtPhaseByPhase();
    return bought.isKnown()
        ? detail
            .size(Size.kilowatts(bought.get()))
            .evidence(Measure.of("import by phase", bought.get(), KILOWATT))
            .done()
        : detail.done();
  }

  /** Even where the surplus covers the whole draw, only one phase's part of it is covered. */
  private Derived<Double> boughtPhaseByPhase() {
    Derived<Double> surplus = loop.start_kW().or(loop.draw_kW());
    return loop.draw_kW()
        .with(
            surplus,
            (draw, sun) -> KILOWATT.round(draw - Metering.balancedLoadCovered_kW(draw, sun)));
  }

  /** The sensor must see every phase, unless what it sees alone is what the meter bills. */
  private void billedPhases() {
    Derived<Boolean> all = phases.measuresAll();
    Derived<Boolean> billed = Derived.all(billedPerPhase(), phases.measuresThePump());
    facts
        .into(BilledPhases.class, setup.gridSensor().phases().pointer())
        .given(Derived.any(all, billed))
        .makes(
            because ->
                new BilledPhases(
                    because.explained(this::unseen), because.answer(all), because.answer(billed)));
  }

  private Detail unseen() {
    Derived<Double> hidden =
        loop.draw_kW()
            .with(phases.shareOfPump(), (draw, share) -> KILOWATT.round(draw * (1 - share)));
    Detail.Builder detail =
        Detail.at(setup.gridSensor().phases(), setup.supply().phases(), setup.supply().billing())
            .observed(Measure.of("phases measured", phases.measured().get(), ""))
            .limit(
                Bound.entered(
                    "phases of the supply",
                    phases.supplied().get(),
                    Unit.NONE,
                    setup.supply().phases()))
            .basis("balanced load, phase by phase");
    return hidden.is(power -> power > 0)
        ? detail
            .size(Size.kilowatts(hidden.get()))
            .evidence(Measure.of("power input on phases not measured", hidden.get(), KILOWATT))
            .done()
        : detail.done();
  }

  private void meteredPump() {
    Derived<Boolean> behind = Derived.of(setup.gridSensor().heatPumpBehind());
    facts
        .into(MeteredPump.class, setup.gridSensor().heatPumpBehind().pointer())
        .given(behind)
        .makes(
            because -> new MeteredPump(because.explained(this::elsewhere), because.answer(behind)));
  }

  private Detail elsewhere() {
    Detail.Builder detail =
        Detail.at(
            setup.gridSensor().heatPumpBehind(),
            setup.gridSensor().at(),
            setup.heatPump().hotWaterInput_kW());
    Derived<Double> draw = loop.draw_kW();
    return draw.isKnown()
        ? detail
            .size(Size.kilowatts(draw.get()))
            .evidence(Measure.of("power input not measured", draw.get(), KILOWATT))
            .done()
        : detail.done();
  }

  private void callScope() {
    SurplusInput input = setup.heatPump().surplusInput();
    Derived<Boolean> rooms = Derived.of(input.alsoHeatsRooms());
    facts
        .into(CallScope.class, input.alsoHeatsRooms().pointer())
        .given(rooms)
        .makes(
            because ->
                new CallScope(
                    because.explained(
                        () ->
                            Detail.at(input.alsoHeatsRooms(), setup.heatPump().hotWaterInput_kW())
                                .cure(Change.of(input.alsoHeatsRooms(), false))
                                .done()),
                    because.answer(rooms)));
  }
}
