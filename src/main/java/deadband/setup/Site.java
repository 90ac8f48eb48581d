package deadband.setup;

/** The home and who lives in it. */
public record Site(
    Part part,
    @Described("name of the job")
        @Asked(value = "What is the job called?", where = Asked.Where.PAPERS)
        Entered<String> reference,
    @Described("country, ISO 3166-1 alpha-2")
        @Asked(value = "In which country is the home?", where = Asked.Where.CUSTOMER)
        Entered<CountryCode> country,
    @Described("whether young children, old or ill people use the hot water")
        @Asked(
            value = "Do young children, old or ill people use the hot water?",
            where = Asked.Where.CUSTOMER)
        Entered<Boolean> vulnerableOccupants,
    @Described("whether the dwelling is new, or new by change of use")
        @Asked(
            value = "Is the home new, or a dwelling by change of use?",
            where = Asked.Where.PAPERS)
        Entered<Boolean> newDwelling,
    @Described("disinfection cycle required, where it is not the country's own")
        @Asked(
            value = "Which disinfection cycle is required, if not the country's own?",
            where = Asked.Where.PAPERS,
            usual = "none other than the country's own")
        Entered<DisinfectionCycle> disinfectionCycle) {

  /** National disinfection cycles, by the short name of the document. */
  public enum DisinfectionCycle implements Choice {
    AS_3498("AS 3498"),
    ISSO_55_1("ISSO 55.1"),
    ORDER_2005("Order of 30 Nov 2005"),
    HSE_L8("HSE L8"),
    GB_DOMESTIC("GB domestic");

    private final String word;

    DisinfectionCycle(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }
}
