package deadband.setup;

import deadband.document.Pointer;
import java.util.List;
import java.util.Optional;

/** One proposed installation: everything a setup file can tell. */
public record Setup(
    Part part,
    @OfType
        @Described(value = "version of the format", least = 1, most = 1, whole = true)
        @Asked(
            value = "Which version of the format is the file?",
            where = Asked.Where.PAPERS,
            usual = "1")
        Entered<Double> deadband,
    @Described("data sheets of the equipment, as files in the equipment folder")
        @Asked(
            value = "Which data sheets of the firm describe the equipment?",
            where = Asked.Where.PAPERS)
        Entered<List<DataSheet>> equipment,
    @Described("the home")
        @Asked(value = "Where is the home, and who lives there?", where = Asked.Where.CUSTOMER)
        Site site,
    @Described("the electricity supply")
        @Asked(value = "How is the home supplied with electricity?", where = Asked.Where.LOOK)
        Supply supply,
    @Described("the solar generator") @Asked(value = "Is PV fitted?", where = Asked.Where.LOOK)
        Solar solar,
    @Described("the household")
        @Asked(value = "How much power and water does the home use?", where = Asked.Where.CUSTOMER)
        House house,
    @Described("the hot water tank")
        @Asked(value = "Is a hot water tank fitted?", where = Asked.Where.LOOK)
        Tank tank,
    @Described("the outlets the tank feeds")
        @Asked(
            value = "Which outlets does the tank feed?",
            where = Asked.Where.LOOK,
            usual = "bath, shower, basin, kitchen")
        Entered<List<Outlet>> outlets,
    @Described("the thermostatic mixing valve")
        @Asked(
            value = "Is there a thermostatic mixing valve at the tank?",
            where = Asked.Where.LOOK)
        Blending blending,
    @Described("the immersion heater")
        @Asked(value = "Is an immersion heater fitted?", where = Asked.Where.LOOK)
        Immersion immersion,
    @Described("the controller that feeds surplus into the immersion heater")
        @Asked(
            value = "Is a surplus controller fitted that feeds the immersion heater?",
            where = Asked.Where.LOOK)
        Diverter diverter,
    @Described("the current sensor at the supply")
        @Asked(value = "Is there a current sensor at the supply?", where = Asked.Where.LOOK)
        GridSensor gridSensor,
    @Described("the linked surplus controllers")
        @Asked(
            value = "Which surplus controllers are linked, and which one leads?",
            where = Asked.Where.CONTROLLER_MENU,
            usual = "one controller, which leads")
        Entered<List<LinkedController>> group,
    @Described("the surplus relay")
        @Asked(value = "Is a surplus relay used?", where = Asked.Where.LOOK)
        Relay relay,
    @Described("the heat pump")
        @Asked(value = "Is a heat pump fitted that heats the tank?", where = Asked.Where.LOOK)
        HeatPump heatPump,
    @Described("the space-heating buffer")
        @Asked(value = "Is a buffer for space heating fitted?", where = Asked.Where.LOOK)
        Buffer buffer,
    @Described("the battery") @Asked(value = "Is a battery fitted?", where = Asked.Where.LOOK)
        Battery battery,
    @Described("the vehicle charger")
        @Asked(value = "Is a vehicle charger fitted?", where = Asked.Where.LOOK)
        VehicleCharger vehicleCharger,
    @Described("the settings as they were found")
        @Asked(value = "Which settings were found before the work?", where = Asked.Where.PAPERS)
        AsFound asFound,
    @Described("what was isolated and proved dead")
        @Asked(value = "What was isolated and proved dead?", where = Asked.Where.PAPERS)
        Isolation isolation,
    @Described("findings accepted with a reason")
        @Asked(value = "Which findings are accepted, by whom and why?", where = Asked.Where.PAPERS)
        Entered<List<Accepted>> accepted,
    @Described("what was observed on site")
        @Asked(value = "What was observed on site?", where = Asked.Where.LOOK)
        Observed observed,
    @OfType
        @Described("values far from any usual one that are right, as JSON Pointers")
        @Asked(
            value = "Which unusual values were checked and are right?",
            where = Asked.Where.PAPERS)
        Entered<List<Pointer>> confirmed) {

  /**
   * The setup with what these data sheets say wherever it enters nothing itself; every value keeps
   * the place it stands at.
   */
  public Setup with(List<DataSheet> sheets) {
    Shape shape = Shape.of(Setup.class);
    Record known = shape.allOpen(Pointer.root());
    for (DataSheet sheet : sheets) {
      known = shape.over(known, sheet.values());
    }
    Object beside = sheets.stream().distinct().map(sheet -> sheet.beside(this)).toList();
    Field equipment = shape.field("equipment").orElseThrow();
    Setup whole = (Setup) shape.over(this, known);
    return (Setup)
        shape.replacing(
            whole, whole.part, equipment, Entered.of(this.equipment.pointer(), beside, null));
  }

  /** The first data sheet that says anything at a place. */
  public Optional<DataSheet> sheetOf(Pointer place) {
    return equipment.optional().orElse(List.of()).stream()
        .filter(sheet -> sheet.at(place).isPresent())
        .findFirst();
  }

  /**
   * The installation as it was found: every setting that {@code asFound.settings} tells, in place
   * of the one proposed. What was observed on site was observed with these.
   *
   * <p>A value found keeps its place under {@code /asFound/settings}, so that a finding shows where
   * it stands. No remedy is offered for such a value: it is in force no more. Where no settings
   * found are entered, this is the setup itself.
   */
  public Setup asItWasFound() {
    Setup found = asFound.settings().value();
    return found == null ? this : (Setup) Shape.of(Setup.class).over(found, this);
  }
}
