package deadband.cli;

/** How a result is written that is read by people or by programs. */
enum TextOrJson {
  TEXT,
  JSON
}
