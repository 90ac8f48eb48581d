package deadband.setup;

/** The electricity supply and how it is billed. */
public record Supply(
    Part part,
    @Described(value = "number of phases", least = 1, most = 3, whole = true)
        Entered<Double> phases,
    @Described("how the billing meter counts the phases") Entered<Billing> billing,
    @Described(
            value = "voltage between phase and neutral",
            least = 90,
            most = 280,
            assumed = "230",
            because = "nominal voltage, declared in GB by SI 1994/3021")
        Entered<Double> voltage_V,
    @Described("whether what is exported is paid for") Entered<Boolean> exportPaid) {

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
