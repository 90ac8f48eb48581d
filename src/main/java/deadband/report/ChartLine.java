package deadband.report;

/**
 * How a line or an area of a chart is drawn: set apart by dashes, weight and pattern first, by
 * colour besides.
 */
enum ChartLine {
  PV("#7a5c00", 1, "", Fill.LIGHT),
  COUNTED("#161616", 1.6, "", Fill.NONE),
  THRESHOLD("#5b2a86", 1.4, "8 3", Fill.NONE),
  HEAT_PUMP("#17507e", 1.2, "", Fill.HATCH),
  IMMERSION("#a33a10", 1.2, "", Fill.DOTS),
  BACKUP("#4c4c00", 1.2, "", Fill.CROSS),
  IMPORT("#3c3c3c", 1, "", Fill.DARK),
  TOP("#9c1631", 2, "", Fill.NONE),
  SENSOR("#161616", 1.4, "7 3", Fill.NONE),
  BOTTOM("#17507e", 1.8, "1.5 2.5", Fill.NONE),
  LIMIT("#5b2a86", 1.4, "12 3 2 3", Fill.NONE),
  BAND("#5f5f5f", 0.6, "2 2", Fill.PALE);

  private final String colour;
  private final double width;
  private final String dashes;
  private final Fill fill;

  ChartLine(String colour, double width, String dashes, Fill fill) {
    this.colour = colour;
    this.width = width;
    this.dashes = dashes;
    this.fill = fill;
  }

  /** What an area is filled with: a ground, and on some lines or dots of the line's own colour. */
  enum Fill {
    NONE("none"),
    LIGHT("#f6e8bd"),
    PALE("#ececec"),
    DARK("#6a6a6a"),
    HATCH("#ffffff"),
    DOTS("#fbeee8"),
    CROSS("#ffffff");

    private final String ground;

    Fill(String ground) {
      this.ground = ground;
    }

    String ground() {
      return ground;
    }

    boolean isPatterned() {
      return this == HATCH || this == DOTS || this == CROSS;
    }
  }

  String colour() {
    return colour;
  }

  double width() {
    return width;
  }

  /** Its dashes; none for a solid line. */
  String dashes() {
    return dashes.isEmpty() ? "none" : dashes;
  }

  Fill fill() {
    return fill;
  }
}
