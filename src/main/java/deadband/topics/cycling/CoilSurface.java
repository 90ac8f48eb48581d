package deadband.topics.cycling;

import deadband.facts.Case;
import deadband.facts.Matter;

/** Surface of the coil against what a heat pump of that output needs. */
public record CoilSurface(Matter matter, double area_m2, double least_m2) implements Case {}
