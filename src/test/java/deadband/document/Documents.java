package deadband.document;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.reading.JsonReading;

/** Documents for tests. */
final class Documents {

  private Documents() {}

  /** A document read from a text that holds no problem. */
  static Document read(String text) {
    JsonReading reading = JsonReading.ofText("test.json", text);
    assertThat(reading.problems()).as(text).isEmpty();
    return ((JsonReading.Read) reading).document();
  }
}
