package deadband.setup;

/** The thermostatic mixing valve between tank and outlets. */
@Equipment
public record Blending(
    Part part,
    @Described("standard the valve is made to")
        @Asked(
            value = "To which standard is the mixing valve made?",
            where = Asked.Where.DATA_PLATE)
        Entered<Valve> valve,
    @Described(
            value = "maximum hot supply temperature, as on the valve or in its instructions",
            least = 30,
            most = 100)
        @Asked(
            value = "What is the maximum hot supply temperature of the mixing valve?",
            where = Asked.Where.DATA_PLATE,
            usual = "65, or 85 to 90 at the tank")
        Entered<Double> hotSupplyMax_C,
    @Described(
            value = "minimum difference of the hot supply above the mixed water",
            least = 0,
            most = 40,
            assumed = "10",
            because = "common practice, from memory")
        @Asked(
            value = "How far must the hot supply be above the mixed water?",
            where = Asked.Where.DATA_PLATE,
            usual = "10")
        Entered<Double> leastDifferential_K) {

  /** The standard a thermostatic mixing valve is made to. */
  public enum Valve implements Choice {
    TMV2("TMV2"),
    TMV3("TMV3"),
    EN_15092("EN 15092"),
    OTHER("other"),
    NONE("none");

    private final String word;

    Valve(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }
}
