package deadband.paste;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The files of words that lie beside the classes. */
final class WordLists {

  private WordLists() {}

  /** The lines of one of them, without blank ones and comments. */
  static List<String> lines(String name) {
    try (InputStream in = WordLists.class.getResourceAsStream("/deadband/words/" + name);
        BufferedReader reader =
            new BufferedReader(
                new InputStreamReader(Objects.requireNonNull(in, name), StandardCharsets.UTF_8))) {
      List<String> lines = new ArrayList<>();
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (!line.isBlank() && !line.startsWith("#")) {
          lines.add(line);
        }
      }
      return lines;
    } catch (IOException e) {
      throw new UncheckedIOException(name + " cannot be read", e);
    }
  }
}
