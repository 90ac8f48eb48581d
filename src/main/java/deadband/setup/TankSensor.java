package deadband.setup;

/** A tank sensor. */
@Equipment
public record TankSensor(
    Part part,
    @Described("sensing element") Entered<Element> element,
    @Described(value = "tolerance class, IEC 60751", assumed = "B", because = "common practice")
        Entered<ToleranceClass> toleranceClass,
    @Described(value = "tolerance either way, where its data sheet states it", least = 0, most = 20)
        Entered<Double> tolerance_K,
    @Described("height above the base of the tank") Entered<Double> height_mm,
    @Described("whether it sits in a pocket") Entered<Boolean> inPocket,
    @Described("resistance measured at its ends") Entered<Double> measured_ohm,
    @Described(value = "resistance of its leads", least = 0, most = 1000) Entered<Double> lead_ohm,
    @Described("temperature displayed at the same time") Entered<Double> displayed_C,
    @Described("whether it is declared on the form of the installation")
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
