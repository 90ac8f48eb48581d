package deadband.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version of this build. */
final class Version {

  private static final String NUMBER = read();

  private Version() {}

  static String number() {
    return NUMBER;
  }

  private static String read() {
    try (InputStream file = Version.class.getResourceAsStream("/deadband/version.properties")) {
      Properties properties = new Properties();
      if (file != null) {
        properties.load(file);
      }
      return properties.getProperty("version", "unknown");
    } catch (IOException e) {
      throw new UncheckedIOException("the version of this build cannot be read", e);
    }
  }
}
