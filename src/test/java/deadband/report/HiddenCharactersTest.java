package deadband.report;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.json.Json;
import java.io.StringReader;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No text of a file turns the direction of writing or breaks a line in what is written of it. */
class HiddenCharactersTest {

  /** Unicode Standard Annex 9, explicit formatting characters; next line; line separators. */
  static IntStream hidden() {
    return Stream.of(
            IntStream.rangeClosed(0x202A, 0x202E).toArray(),
            IntStream.rangeClosed(0x2066, 0x2069).toArray(),
            new int[] {0x85, 0x200E, 0x200F, 0x2028, 0x2029, 0x9B})
        .flatMapToInt(IntStream::of);
  }

  @ParameterizedTest
  @MethodSource("hidden")
  void svgShowsItsNumber(int code) {
    String name = "Mill" + Character.toString(code) + "Cottage";
    String svg = new Svg().text("text", name, "title", name).toString();

    assertThat(svg.codePoints()).doesNotContain(code);
    assertThat(svg).contains(String.format("Mill\\u%04XCottage", code));
  }

  @ParameterizedTest
  @MethodSource("hidden")
  void jsonWritesItsNumberAndKeepsTheText(int code) {
    String name = "Mill" + Character.toString(code) + "Cottage";
    String json = JsonText.of(Map.of("name", name));

    assertThat(json.codePoints()).doesNotContain(code);
    assertThat(Json.createReader(new StringReader(json)).readObject().getString("name"))
        .isEqualTo(name);
  }
}
