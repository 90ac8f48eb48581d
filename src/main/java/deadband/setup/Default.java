package deadband.setup;

/**
 * The documented default of a value that is not entered.
 *
 * @param value what is assumed
 * @param because where it comes from
 */
public record Default<T>(T value, String because) {}
