package deadband.report;

/** The record of a job as one page of HTML: no network, no script, everything escaped. */
public final class RecordPage {

  private RecordPage() {}

  /** The page, ending in a line end. */
  public static String of(JobRecord job) {
    return new RecordModelRenderer(String::valueOf, Svg::escaped).execute(RecordParts.of(job));
  }
}
