package deadband.reading;

import deadband.meterlog.Meaning;
import java.util.Map;
import java.util.Optional;

/**
 * What is said about a log beside it.
 *
 * @param meanings of columns, by their name in the file
 * @param meter which meter to read where the file has several
 */
public record LogOptions(Map<String, Meaning> meanings, Optional<String> meter) {

  public LogOptions {
    meanings = Map.copyOf(meanings);
  }

  /** Nothing is said. */
  public static LogOptions none() {
    return new LogOptions(Map.of(), Optional.empty());
  }
}
