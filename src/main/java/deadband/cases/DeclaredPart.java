package deadband.cases;

/** Whether a part that is fitted is declared on the form of the installation. */
public record DeclaredPart(Matter matter, boolean declared) implements Case {}
