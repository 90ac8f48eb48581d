package deadband.report;

/** One of the pictures above each other. */
interface ChartPanel {

  /** What it shows, with the unit; empty for a panel without a heading. */
  String title();

  /** Height of what is drawn. */
  double room();

  /** The least value on its scale. */
  double least();

  /** The greatest. */
  double most();

  void draw(ChartPaper paper);
}
