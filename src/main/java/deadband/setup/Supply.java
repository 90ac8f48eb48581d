package deadband.setup;

/** The electricity supply and how it is billed. */
public record Supply(
    Part part,
    @Described(value = "number of phases", least = 1, most = 3, whole = true)
        @Asked(
            value = "How many phases does the supply have?",
            where = Asked.Where.LOOK,
            usual = "1, or 3")
        Entered<Double> phases,
    @Described("how the billing meter counts the phases")
        @Asked(
            value = "Does the billing meter net the phases, or count each by itself?",
            where = Asked.Where.PAPERS)
        Entered<Billing> billing,
    @Described(
            value = "voltage between phase and neutral",
            least = 90,
            most = 280,
            assumed = "230",
            because = "nominal voltage, declared in GB by SI 1994/3021")
        @Asked(
            value = "What is the voltage between phase and neutral?",
            where = Asked.Where.MEASURE,
            usual = "230")
        Entered<Double> voltage_V,
    @Described("whether what is exported is paid for")
        @Asked(value = "Is exported energy paid for?", where = Asked.Where.PAPERS)
        Entered<Boolean> exportPaid) {

  /** How the billing meter counts the phases. */
  public enum Billing implements Choice {
    NETTED("netted"),
    PER_PHASE("per-phase");

    private final String word;

    Billing(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }
}
