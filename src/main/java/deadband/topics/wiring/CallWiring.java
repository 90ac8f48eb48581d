package deadband.topics.wiring;

import static deadband.setup.Unit.KILOWATT;
import static deadband.setup.Unit.MINUTE;

import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.loop.RelayLoop;
import deadband.loop.SensedPhases;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.DemandInput;
import deadband.setup.Relay;
import deadband.setup.Relay.Contact;
import deadband.setup.Setup;
import deadband.setup.Signal;
import deadband.setup.SurplusInput;
import deadband.setup.SurplusInput.ClosedMeans;
import deadband.setup.SurplusInput.Via;
import deadband.setup.Told;
import deadband.setup.Unit;
import deadband.trade.HeaterCircuit;
import deadband.trade.SignalContact.SgReady;

/**
 * Facts about the signals between the controller and the heat pump: the call from the relay, and
 * the demand that comes back to the diverter.
 */
public final class CallWiring {

  private final Setup setup;
  private final Limits limits;
  private final Facts facts;
  private final Relay relay;
  private final SurplusInput input;
  private final RelayLoop loop;

  private CallWiring(Setup setup, Limits limits, Facts facts) {
    this.setup = setup;
    this.limits = limits;
    this.facts = facts;
    this.relay = setup.relay();
    this.input = setup.heatPump().surplusInput();
    this.loop = new RelayLoop(setup);
  }

  public static void derive(Setup setup, Limits limits, Facts facts) {
    CallWiring topic = new CallWiring(setup, limits, facts);
    topic.contact();
    topic.sense();
    topic.meaning();
    topic.hold();
    topic.network();
    topic.cable();
    topic.path();
    topic.target();
    topic.demandPhase();
    topic.declared(topic.relay.declared(), Derived.of(topic.relay.part().isFitted()));
    topic.declared(
        setup.diverter().sensor().declared(),
        Derived.all(
            Derived.of(setup.diverter().part().isFitted()),
            Derived.notAbsent(setup.diverter().sensor().part())));
  }

  private Derived<Boolean> goes(Via way) {
    return Derived.of(input.via()).map(via -> via == way);
  }

  private Facts.Inquiry call(Class<? extends Case> type, Told<?> subject) {
    return facts
        .into(type, subject.pointer())
        .fitted(loop.fitted(), Derived.notAbsent(input.part()));
  }

  /**
   * Whether the relay may call the heat pump: entered to, or driving something not named here while
   * the heat pump's input for such a call is there. A word alone takes no wiring away.
   */
  private Derived<Boolean> mayCall() {
    Derived<Boolean> other = Derived.of(relay.drives()).map(drives -> drives == Relay.Drives.OTHER);
    return Derived.any(loop.drivesHeatPump(), Derived.all(other, inputFitted()));
  }

  private Derived<Boolean> inputFitted() {
    return Derived.of(input.part().isFitted());
  }

  /** A surplus input that is entered waits for a call, whatever the relay is said to drive. */
  private void target() {
    Derived<Boolean> called =
        Derived.all(Derived.of(relay.part().isFitted()), loop.drivesHeatPump());
    facts
        .into(CallTarget.class, relay.drives().pointer())
        .fitted(Derived.of(setup.heatPump().part().isFitted()), inputFitted())
        .given(called)
        .makes(
            because ->
                new CallTarget(
                    because.explained(
                        () -> Detail.at(relay.drives().pointer(), input.part().pointer()).done()),
                    called.get()));
  }

  /** What the heat pump draws when nothing is left over for it, or leaves to be exported. */
  private Detail.Builder costing(Detail.Builder detail, String quantity) {
    Derived<Double> draw = loop.draw_kW();
    return draw.isKnown()
        ? detail
            .size(Size.kilowatts(draw.get()))
            .evidence(Measure.of(quantity, draw.get(), KILOWATT))
        : detail;
  }

  private void contact() {
    Derived<Boolean> free = Derived.of(relay.voltFree());
    call(CallContact.class, relay.voltFree())
        .where(
            mayCall(),
            goes(Via.CONTACT),
            Derived.of(input.expects()).map(expected -> expected == Signal.VOLT_FREE))
        .given(free)
        .makes(
            because ->
                new CallContact(
                    because.explained(() -> Detail.at(relay.voltFree(), input.expects()).done()),
                    free.get()));
  }

  private void sense() {
    Derived<Boolean> selectsNormal = state(SgReady.NORMAL).or(Derived.constant(false));
    Derived<Boolean> crossed = loop.senseReversed();
    Derived<Boolean> reversed = Derived.any(selectsNormal, crossed);
    call(CallSense.class, relay.contact())
        .where(
            mayCall(),
            goes(Via.CONTACT),
            Derived.of(input.closedMeans()).map(meaning -> meaning != ClosedMeans.BLOCK))
        .given(reversed)
        .makes(
            because ->
                new CallSense(
                    because.explained(() -> crossedAt(selectsNormal.get())), reversed.get()));
  }

  private Detail crossedAt(boolean selectsNormal) {
    Detail.Builder detail =
        selectsNormal
            ? Detail.at(input.sgReadyState())
            : Detail.at(relay.contact(), input.closedMeans()).cure(otherContact());
    return costing(detail, "power input without surplus").done();
  }

  private Change otherContact() {
    boolean open = relay.contact().says(Contact.NORMALLY_OPEN);
    return Change.of(relay.contact(), open ? Contact.NORMALLY_CLOSED : Contact.NORMALLY_OPEN);
  }

  /** Whether the call selects this state of the SG Ready label. */
  private Derived<Boolean> state(SgReady selected) {
    return Derived.of(input.sgReadyState()).map(state -> state == selected.state());
  }

  private void meaning() {
    Derived<Boolean> selectsBlock = state(SgReady.BLOCK).or(Derived.constant(false));
    Derived<Boolean> blocks =
        Derived.any(
            selectsBlock,
            Derived.of(input.closedMeans()).map(meaning -> meaning == ClosedMeans.BLOCK));
    call(CallMeaning.class, input.closedMeans())
        .where(mayCall(), goes(Via.CONTACT))
        .given(blocks)
        .makes(
            because ->
                new CallMeaning(
                    because.explained(() -> blockedAt(selectsBlock.get())), blocks.get()));
  }

  private Detail blockedAt(boolean selectsBlock) {
    Detail.Builder detail =
        Detail.at(selectsBlock ? input.sgReadyState() : input.closedMeans(), relay.contact());
    return costing(detail, "power input blocked on surplus").done();
  }

  /** A relay may open again as soon as its stop delay is over. */
  private void hold() {
    Derived<Double> shortest = Derived.of(relay.stopDelay_min());
    Derived<Double> least = Derived.toldOnly(input.hold_min()).or(labelHold_min());
    call(CallHold.class, input.hold_min())
        .where(mayCall(), Derived.not(goes(Via.SUPPLY)))
        .given(shortest, least)
        .makes(
            because ->
                new CallHold(
                    because.explained(() -> tooShort(shortest.get(), least.get())),
                    shortest.get(),
                    least.get()));
  }

  private Derived<Double> labelHold_min() {
    Limits.Entry label = limits.of(Limit.SG_READY_HOLD);
    return Derived.of(input.sgReadyState())
        .then(
            state ->
                Derived.assumed(
                    input.hold_min().pointer(), label.value(), "SG Ready label, from memory"));
  }

  private Detail tooShort(double shortest_min, double least_min) {
    String asked = "minimum call of the input";
    return Detail.at(relay.stopDelay_min(), input.hold_min())
        .observed(Measure.of("shortest call of the relay", shortest_min, MINUTE))
        .limit(
            input.hold_min().isTold()
                ? Bound.told(asked, least_min, MINUTE, input.hold_min())
                : Bound.of(asked, least_min, limits.of(Limit.SG_READY_HOLD)))
        .cure(Change.of(relay.stopDelay_min(), least_min))
        .done();
  }

  private void network() {
    Derived<Boolean> ends = Derived.of(input.endsOnLinkLoss());
    call(NetworkCall.class, input.endsOnLinkLoss())
        .where(mayCall(), goes(Via.NETWORK))
        .given(ends)
        .makes(because -> new NetworkCall(because.explained(this::unending), ends.get()));
  }

  private Detail unending() {
    return costing(Detail.at(input.endsOnLinkLoss(), input.via()), "power input without surplus")
        .cure(Change.of(input.endsOnLinkLoss(), true))
        .done();
  }

  private void cable() {
    Derived<Boolean> apart = Derived.of(relay.segregated());
    call(CallCable.class, relay.segregated())
        .where(
            mayCall(),
            goes(Via.CONTACT),
            Derived.of(input.expects()).map(expected -> expected != Signal.MAINS))
        .given(apart)
        .makes(
            because ->
                new CallCable(
                    because.explained(() -> Detail.at(relay.segregated(), input.expects()).done()),
                    apart.get()));
  }

  private void path() {
    Derived<Boolean> cuts = goes(Via.SUPPLY);
    call(CallPath.class, input.via())
        .where(mayCall())
        .given(cuts)
        .makes(
            because ->
                new CallPath(
                    because.explained(
                        () ->
                            Detail.at(input.via(), relay.drives())
                                .cure(Change.of(input.via(), Via.CONTACT))
                                .done()),
                    cuts.get()));
  }

  private void demandPhase() {
    DemandInput demand = setup.diverter().demandInput();
    Derived<Boolean> same =
        Derived.of(demand.phase())
            .with(Derived.of(setup.diverter().phase()), (arrives, fed) -> arrives == fed);
    facts
        .into(DemandPhase.class, demand.phase().pointer())
        .fitted(
            Derived.of(setup.diverter().part().isFitted()), Derived.of(demand.part().isFitted()))
        .where(
            new SensedPhases(setup).several(),
            Derived.of(demand.signal()).map(signal -> signal == Signal.MAINS))
        .given(same)
        .makes(because -> new DemandPhase(because.explained(this::otherPhase), same.get()));
  }

  private double supply_V() {
    return setup.supply().voltage_V().optional().orElse(HeaterCircuit.DECLARED_VOLTAGE_V.value());
  }

  private Detail otherPhase() {
    double between_V = Math.rint(HeaterCircuit.betweenPhases_V(supply_V()));
    return Detail.at(setup.diverter().demandInput().phase(), setup.diverter().phase())
        .evidence(Measure.of("voltage between the two phases", between_V, Unit.VOLT))
        .done();
  }

  private void declared(Told<Boolean> told, Derived<Boolean> fitted) {
    Derived<Boolean> declared = Derived.of(told);
    facts
        .into(DeclaredPart.class, told.pointer())
        .fitted(fitted)
        .given(declared)
        .makes(
            because ->
                new DeclaredPart(because.explained(() -> Detail.at(told).done()), declared.get()));
  }
}
