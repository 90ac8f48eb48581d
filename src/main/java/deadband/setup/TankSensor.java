package deadband.setup;

/** A tank sensor. */
@Equipment
public record TankSensor(
    Part part,
    @Described("sensing element") Told<Element> element,
    @Described(value = "tolerance class, IEC 60751", assumed = "B", because = "common practice")
        Told<ToleranceClass> toleranceClass,
    @Described(value = "tolerance either way, where its data sheet states it", least = 0, most = 20)
        Told<Double> tolerance_K,
    @Described("height above the base of the tank") Told<Double> height_mm,
    @Described("whether it sits in a pocket") Told<Boolean> inPocket,
    @Described("resistance measured at its ends") Told<Double> measured_ohm,
    @Described(value = "resistance of its leads", least = 0, most = 1000) Told<Double> lead_ohm,
    @Described("temperature displayed at the same time") Told<Double> displayed_C,
    @Described("whether it is declared on the form of the installation") Told<Boolean> declared) {

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
