package deadband.topics.ladder;

import deadband.facts.Case;
import deadband.facts.Matter;

/** How far a cut-out lies above the hottest the tank gets. */
public record CutOutMargin(Matter matter, double margin_K, double needed_K) implements Case {}
