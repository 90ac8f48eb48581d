package deadband.cases;

/** Whether anything heats the tank on a day without surplus. */
public record HeatWithoutSun(Matter matter, boolean heated) implements Case {}
