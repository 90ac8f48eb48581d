package deadband.cases;

/** The highest set point and the hottest the tank gets, against the supply of the valve. */
public record TankPeak(Matter matter, double setPoint_C, double peak_C, double hotSupplyMax_C)
    implements Case {}
