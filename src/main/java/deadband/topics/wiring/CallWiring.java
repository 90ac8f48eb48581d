package deadband.topics.wiring;

import static deadband.setup.Unit.KILOWATT;
import static deadband.setup.Unit.MINUTE;

import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Condition;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.facts.Quantity;
import deadband.facts.Says;
import deadband.facts.Size;
import deadband.limits.Limit;
import deadband.limits.Limits;
import deadband.loop.RelayLoop;
import deadband.provenance.Derived;
import deadband.setup.Change;
import deadband.setup.DemandInput;
import deadband.setup.Entered;
import deadband.setup.Relay;
import deadband.setup.Relay.Contact;
import deadband.setup.Setup;
import deadband.setup.Signal;
import deadband.setup.SurplusInput;
import deadband.setup.SurplusInput.ClosedMeans;
import deadband.setup.SurplusInput.Via;
import deadband.setup.Unit;
import deadband.trade.HeaterCircuit;
import deadband.trade.SignalContact.SgReady;

/**
 * Facts about the signals between the controller and the heat pump: the call from the relay, and
 * the demand that comes back to the diverter.
 */
public final class CallWiring {

  @Says("The call reaches the heat pump over a contact.")
  public record CallByContact(Answer answer) implements Condition {}

  @Says("The call reaches the heat pump over the network.")
  public record CallByNetwork(Answer answer) implements Condition {}

  @Says("The call switches the heat pump's supply on and off.")
  public record CallBySupply(Answer answer) implements Condition {}

  @Says("The surplus input expects a volt-free contact.")
  public record InputExpectsVoltFree(Answer answer) implements Condition {}

  @Says("The surplus input expects mains voltage.")
  public record InputExpectsMains(Answer answer) implements Condition {}

  @Says("A closed contact at the surplus input blocks the heat pump.")
  public record ClosedContactBlocks(Answer answer) implements Condition {}

  @Says("The heat pump's own call reaches the diverter as mains voltage.")
  public record DemandIsMains(Answer answer) implements Condition {}

  /** Whether the relay's contact is volt-free. */
  public record CallContact(Evidence evidence, Answer voltFree) implements Case {}

  /** Whether the call selects normal running, or the contact rests where a call is meant. */
  public record CallSense(Evidence evidence, Answer selectsNormal, Answer crossed)
      implements Case {}

  /** Whether the call selects the block of the label, or its contact means one. */
  public record CallMeaning(Evidence evidence, Answer selectsBlock, Answer meansBlock)
      implements Case {}

  /** The shortest call of the relay, and the shortest that the input takes. */
  public record CallHold(Evidence evidence, Quantity shortest_min, Quantity least_min)
      implements Case {}

  /** Whether a call over the network ends when the link is lost. */
  public record NetworkCall(Evidence evidence, Answer endsOnLinkLoss) implements Case {}

  /** Whether the cable of the call runs apart from mains. */
  public record CallCable(Evidence evidence, Answer segregated) implements Case {}

  /** How the call reaches the heat pump. */
  public record CallPath(Evidence evidence) implements Case {}

  /** Whether a surplus input is called by the relay. */
  public record CallTarget(Evidence evidence, Answer called) implements Case {}

  /** Whether the heat pump's own call arrives on the phase that feeds the diverter. */
  public record DemandPhase(Evidence evidence, Answer same) implements Case {}

  /** Whether a part was declared where it has to be. */
  public record DeclaredPart(Evidence evidence, Answer declared) implements Case {}

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
    topic.conditions();
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

  private void conditions() {
    facts.add(new CallByContact(goes(Via.CONTACT)));
    facts.add(new CallByNetwork(goes(Via.NETWORK)));
    facts.add(new CallBySupply(goes(Via.SUPPLY)));
    facts.add(new InputExpectsVoltFree(is(input.expects(), Signal.VOLT_FREE)));
    facts.add(new InputExpectsMains(is(input.expects(), Signal.MAINS)));
    facts.add(new ClosedContactBlocks(facts.answer(closedBlocks())));
    facts.add(new DemandIsMains(is(setup.diverter().demandInput().signal(), Signal.MAINS)));
  }

  private Answer goes(Via way) {
    return is(input.via(), way);
  }

  private <T> Answer is(Entered<T> entered, T wanted) {
    return facts.answer(Derived.of(entered).map(wanted::equals));
  }

  private Derived<Boolean> closedBlocks() {
    return Derived.of(input.closedMeans()).map(meaning -> meaning == ClosedMeans.BLOCK);
  }

  /** A surplus input that is entered waits for a call, whatever the relay is said to drive. */
  private void target() {
    Derived<Boolean> called =
        Derived.all(Derived.of(relay.part().isFitted()), loop.drivesHeatPump());
    facts
        .into(CallTarget.class, relay.drives().pointer())
        .given(called)
        .makes(
            because ->
                new CallTarget(
                    because.explained(
                        () -> Detail.at(relay.drives().pointer(), input.part().pointer()).done()),
                    because.answer(called)));
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
    facts
        .into(CallContact.class, relay.voltFree().pointer())
        .fitted(Derived.notAbsent(input.part()))
        .given(free)
        .makes(
            because ->
                new CallContact(
                    because.explained(() -> Detail.at(relay.voltFree(), input.expects()).done()),
                    because.answer(free)));
  }

  private void sense() {
    Derived<Boolean> selectsNormal = state(SgReady.NORMAL).or(Derived.constant(false));
    Derived<Boolean> crossed = loop.senseReversed();
    facts
        .into(CallSense.class, relay.contact().pointer())
        .fitted(Derived.notAbsent(input.part()))
        .given(Derived.any(selectsNormal, crossed))
        .makes(
            because ->
                new CallSense(
                    because.explained(() -> crossedAt(selectsNormal.get())),
                    because.answer(selectsNormal),
                    because.answer(crossed)));
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
    facts
        .into(CallMeaning.class, input.closedMeans().pointer())
        .fitted(Derived.notAbsent(input.part()))
        .given(Derived.any(selectsBlock, closedBlocks()))
        .makes(
            because ->
                new CallMeaning(
                    because.explained(() -> blockedAt(selectsBlock.get())),
                    because.answer(selectsBlock),
                    because.answer(closedBlocks())));
  }

  private Detail blockedAt(boolean selectsBlock) {
    Detail.Builder detail =
        Detail.at(selectsBlock ? input.sgReadyState() : input.closedMeans(), relay.contact());
    return costing(detail, "power input blocked on surplus").done();
  }

  /** A relay may open again as soon as its stop delay is over. */
  private void hold() {
    Derived<Double> shortest = Derived.of(relay.stopDelay_min());
    Derived<Double> least = Derived.enteredOnly(input.hold_min()).or(labelHold_min());
    facts
        .into(CallHold.class, input.hold_min().pointer())
        .fitted(Derived.notAbsent(input.part()))
        .given(shortest, least)
        .makes(
            because ->
                new CallHold(
                    because.explained(() -> tooShort(shortest.get(), least.get())),
                    because.quantity(shortest),
                    because.quantity(least)));
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
            input.hold_min().isEntered()
                ? Bound.entered(asked, least_min, MINUTE, input.hold_min())
                : Bound.of(asked, least_min, limits.of(Limit.SG_READY_HOLD)))
        .cure(Change.of(relay.stopDelay_min(), least_min))
        .done();
  }

  private void network() {
    Derived<Boolean> ends = Derived.of(input.endsOnLinkLoss());
    facts
        .into(NetworkCall.class, input.endsOnLinkLoss().pointer())
        .fitted(Derived.notAbsent(input.part()))
        .given(ends)
        .makes(because -> new NetworkCall(because.explained(this::unending), because.answer(ends)));
  }

  private Detail unending() {
    return costing(Detail.at(input.endsOnLinkLoss(), input.via()), "power input without surplus")
        .cure(Change.of(input.endsOnLinkLoss(), true))
        .done();
  }

  private void cable() {
    Derived<Boolean> apart = Derived.of(relay.segregated());
    facts
        .into(CallCable.class, relay.segregated().pointer())
        .fitted(Derived.notAbsent(input.part()))
        .given(apart)
        .makes(
            because ->
                new CallCable(
                    because.explained(() -> Detail.at(relay.segregated(), input.expects()).done()),
                    because.answer(apart)));
  }

  private void path() {
    facts
        .into(CallPath.class, input.via().pointer())
        .fitted(Derived.notAbsent(input.part()))
        .makes(
            because ->
                new CallPath(
                    because.explained(
                        () ->
                            Detail.at(input.via(), relay.drives())
                                .cure(Change.of(input.via(), Via.CONTACT))
                                .done())));
  }

  private void demandPhase() {
    DemandInput demand = setup.diverter().demandInput();
    Derived<Boolean> same =
        Derived.of(demand.phase())
            .with(Derived.of(setup.diverter().phase()), (arrives, fed) -> arrives == fed);
    facts
        .into(DemandPhase.class, demand.phase().pointer())
        .given(same)
        .makes(
            because -> new DemandPhase(because.explained(this::otherPhase), because.answer(same)));
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

  private void declared(Entered<Boolean> entered, Derived<Boolean> fitted) {
    Derived<Boolean> declared = Derived.of(entered);
    facts
        .into(DeclaredPart.class, entered.pointer())
        .fitted(fitted)
        .given(declared)
        .makes(
            because ->
                new DeclaredPart(
                    because.explained(() -> Detail.at(entered).done()), because.answer(declared)));
  }
}
