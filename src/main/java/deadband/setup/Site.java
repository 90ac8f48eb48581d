package deadband.setup;

/** The home and who lives in it. */
public record Site(
    Part part,
    @Described("name of the job") Entered<String> reference,
    @Described("country, ISO 3166-1 alpha-2") Entered<CountryCode> country,
    @Described("whether young children, old or ill people use the hot water")
        Entered<Boolean> vulnerableOccupants,
    @Described("whether the dwelling is new, or new by change of use") Entered<Boolean> newDwelling,
    @Described("disinfection cycle required, where it is not the country's own")
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
