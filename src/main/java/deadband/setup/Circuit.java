package deadband.setup;

/** The circuit of the immersion heater. */
public record Circuit(
    Part part,
    @Described(value = "rating of the breaker", least = 1, most = 400) Entered<Double> breaker_A,
    @Described(value = "conductor size of the cable", least = 0.5, most = 400)
        Entered<Double> cable_mm2,
    @Described("reference method of installation") Entered<Method> method,
    @Described("length of the cable") Entered<Double> length_m,
    @Described("whether nothing else is on the circuit") Entered<Boolean> ownCircuit,
    @Described(value = "conductor size of the flexible cord", least = 0.2, most = 50)
        Entered<Double> flex_mm2,
    @Described("whether the flexible cord is heat-resistant") Entered<Boolean> flexHeatResistant,
    @Described("whether a second switch can feed the element around the diverter")
        Entered<Boolean> secondSwitch,
    @Described("type of the residual-current device") Entered<RcdType> rcdType,
    @Described(
            value =
                "current-carrying capacity of the cable as installed, by the tables that apply there",
            least = 1,
            most = 1000)
        Entered<Double> cableRating_A,
    @Described(
            value =
                "current-carrying capacity of the flexible cord, by the tables that apply there",
            least = 1,
            most = 200)
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
