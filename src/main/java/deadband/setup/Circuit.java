package deadband.setup;

/** The circuit of the immersion heater. */
public record Circuit(
    Part part,
    @Described(value = "rating of the breaker", least = 1, most = 400)
        @Asked(
            value = "What is the rating of the immersion heater's breaker?",
            where = Asked.Where.LOOK,
            usual = "16")
        Entered<Double> breaker_A,
    @Described(value = "conductor size of the cable", least = 0.5, most = 400)
        @Asked(
            value = "What is the conductor size of the immersion heater's cable?",
            where = Asked.Where.LOOK,
            usual = "2.5")
        Entered<Double> cable_mm2,
    @Described("reference method of installation")
        @Asked(
            value = "By which reference method is the immersion heater's cable installed?",
            where = Asked.Where.LOOK,
            usual = "C: clipped to a surface")
        Entered<Method> method,
    @Described("length of the cable")
        @Asked(
            value = "How long is the immersion heater's cable?",
            where = Asked.Where.MEASURE,
            usual = "5 to 25")
        Entered<Double> length_m,
    @Described("whether nothing else is on the circuit")
        @Asked(
            value = "Is nothing else on the immersion heater's circuit?",
            where = Asked.Where.LOOK)
        Entered<Boolean> ownCircuit,
    @Described(value = "conductor size of the flexible cord", least = 0.2, most = 50)
        @Asked(
            value = "What is the conductor size of the immersion heater's flexible cord?",
            where = Asked.Where.LOOK,
            usual = "1.5")
        Entered<Double> flex_mm2,
    @Described("whether the flexible cord is heat-resistant")
        @Asked(
            value = "Is the immersion heater's flexible cord heat-resistant?",
            where = Asked.Where.LOOK)
        Entered<Boolean> flexHeatResistant,
    @Described("whether a second switch can feed the element around the diverter")
        @Asked(
            value = "Can a second switch feed the element around the diverter?",
            where = Asked.Where.LOOK)
        Entered<Boolean> secondSwitch,
    @Described("type of the residual-current device")
        @Asked(
            value = "Of which type is the residual-current device of the immersion heater?",
            where = Asked.Where.LOOK,
            usual = "A")
        Entered<RcdType> rcdType,
    @Described(
            value =
                "current-carrying capacity of the cable as installed, by the tables that apply"
                    + " there",
            least = 1,
            most = 1000)
        @Asked(
            value = "What current may the immersion heater's cable carry as installed?",
            where = Asked.Where.PAPERS)
        Entered<Double> cableRating_A,
    @Described(
            value =
                "current-carrying capacity of the flexible cord, by the tables that apply there",
            least = 1,
            most = 200)
        @Asked(
            value = "What current may the immersion heater's flexible cord carry?",
            where = Asked.Where.PAPERS)
        Entered<Double> flexRating_A) {

  /** Reference method of installation of a cable. */
  public enum Method implements Choice {
    A("A"),
    B("B"),
    C("C"),
    METHOD_100("100"),
    METHOD_101("101"),
    METHOD_102("102"),
    METHOD_103("103");

    private final String word;

    Method(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  /** Waveforms a residual-current device detects. */
  public enum RcdType implements Choice {
    AC("AC"),
    A("A"),
    F("F"),
    B("B"),
    NONE("none");

    private final String word;

    RcdType(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }
}
