package deadband.setup;

/** A tank sensor. */
@Equipment
public record TankSensor(
    Part part,
    @OfType
        @Described("sensing element")
        @Asked(
            value = "Which sensing element does the diverter's tank sensor have?",
            where = Asked.Where.PAPERS,
            usual = "Pt1000")
        Entered<Element> element,
    @OfType
        @Described(value = "tolerance class, IEC 60751", assumed = "B", because = "common practice")
        @Asked(
            value = "Of which tolerance class is the diverter's tank sensor?",
            where = Asked.Where.PAPERS,
            usual = "B")
        Entered<ToleranceClass> toleranceClass,
    @OfType
        @Described(
            value = "tolerance either way, where its data sheet states it",
            least = 0,
            most = 20)
        @Asked(
            value = "What tolerance does the data sheet of the diverter's tank sensor state?",
            where = Asked.Where.PAPERS)
        Entered<Double> tolerance_K,
    @Described("height above the base of the tank")
        @Asked(
            value = "How high above the base is the diverter's tank sensor?",
            where = Asked.Where.MEASURE)
        Entered<Double> height_mm,
    @Described("whether it sits in a pocket")
        @Asked(value = "Does the diverter's tank sensor sit in a pocket?", where = Asked.Where.LOOK)
        Entered<Boolean> inPocket,
    @Described("resistance measured at its ends")
        @Asked(
            value = "What resistance was measured at the diverter's tank sensor?",
            where = Asked.Where.MEASURE,
            usual = "1155 at 40 °C for Pt1000")
        Entered<Double> measured_ohm,
    @Described(value = "resistance of its leads", least = 0, most = 1000)
        @Asked(
            value = "What is the resistance of the leads of the diverter's tank sensor?",
            where = Asked.Where.MEASURE,
            usual = "0 to 1")
        Entered<Double> lead_ohm,
    @Described("temperature displayed at the same time")
        @Asked(
            value = "Which tank temperature did the diverter display at that time?",
            where = Asked.Where.CONTROLLER_MENU)
        Entered<Double> displayed_C,
    @Described("whether it is declared on the form of the installation")
        @Asked(
            value = "Is the diverter's tank sensor declared on the form of the installation?",
            where = Asked.Where.PAPERS)
        Entered<Boolean> declared) {

  /** The sensing element. */
  public enum Element implements Choice {
    PT100("Pt100"),
    PT1000("Pt1000"),
    NTC("NTC"),
    OTHER("other");

    private final String word;

    Element(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  /** Tolerance class of a platinum sensor. */
  public enum ToleranceClass implements Choice {
    AA("AA"),
    A("A"),
    B("B"),
    C("C");

    private final String word;

    ToleranceClass(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }
}
