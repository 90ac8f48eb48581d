package deadband.cases;

/** Whether anything disinfects a store that a national cycle asks it of. */
public record StoreDisinfection(Matter matter, boolean disinfected) implements Case {}
