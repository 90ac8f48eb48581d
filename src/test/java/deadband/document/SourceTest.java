package deadband.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class SourceTest {

  @Test
  void countsLinesAndColumnsFromOne() {
    Source source = Source.of("x.json", "ab\ncd\n");
    assertThat(source.place(0)).isEqualTo(new Place(1, 1, 0));
    assertThat(source.place(1)).isEqualTo(new Place(1, 2, 1));
    assertThat(source.place(2)).isEqualTo(new Place(1, 3, 2));
    assertThat(source.place(3)).isEqualTo(new Place(2, 1, 3));
    assertThat(source.place(6)).isEqualTo(new Place(3, 1, 6));
    assertThat(source.place(99)).isEqualTo(new Place(3, 1, 6));
    assertThat(source.lines()).isEqualTo(3);
  }

  @Test
  void countsCharactersWhateverTheyTake() {
    // e with an accent is one code point, the flame two chars of a Java string, e + accent two
    Source source = Source.of("x.json", "é🔥e\u0301x");
    assertThat(source.place(source.text().indexOf('x')).column()).isEqualTo(5);
    assertThat(source.place(3).column()).isEqualTo(3);
  }

  @Test
  void knowsTheThreeLineEnds() {
    Source source = Source.of("x.json", "a\r\nb\rc\nd");
    assertThat(source.lines()).isEqualTo(4);
    assertThat(source.line(1)).isEqualTo("a");
    assertThat(source.line(2)).isEqualTo("b");
    assertThat(source.line(3)).isEqualTo("c");
    assertThat(source.line(4)).isEqualTo("d");
    assertThat(source.place(3)).isEqualTo(new Place(2, 1, 3));
    assertThat(source.place(5)).isEqualTo(new Place(3, 1, 5));
  }

  @Test
  void hasOneLineWhereThereIsNoText() {
    Source source = Source.named("gone.json");
    assertThat(source.lines()).isEqualTo(1);
    assertThat(source.line(1)).isEmpty();
    assertThat(source.place(0)).isEqualTo(new Place(1, 1, 0));
  }

  @Test
  void countsNoByteOrderMark() {
    Source source = Source.of("x.json", "\uFEFF{ }\n{");
    assertThat(source.place(1)).isEqualTo(new Place(1, 1, 1));
    assertThat(source.place(3).column()).isEqualTo(3);
    assertThat(source.line(1)).isEqualTo("{ }");
    assertThat(source.place(0)).isEqualTo(new Place(1, 1, 0));
  }

  @Test
  void refusesALineItHasNot() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Source.of("x", "a\nb").line(3))
        .withMessageContaining("line 3")
        .withMessageContaining("1 to 2");
    assertThatIllegalArgumentException().isThrownBy(() -> Source.of("x", "a").line(0));
  }

  @Test
  void findsPlacesInManyLines() {
    Source source = Source.of("x", "é\n".repeat(1000));
    assertThat(source.place(2 * 500 + 1)).isEqualTo(new Place(501, 2, 1001));
    assertThat(source.lines()).isEqualTo(1001);
  }

  @Test
  void shortensInTheMiddle() {
    assertThat(Source.shortened("x".repeat(40))).hasSize(40);
    String shortened = Source.shortened("a".repeat(50) + "🔥" + "b".repeat(50));
    assertThat(shortened.codePointCount(0, shortened.length())).isEqualTo(40);
    assertThat(shortened).startsWith("aaa").contains("…").endsWith("bbb");
    assertThat(Source.of("x", "abc").excerpt(new Span(1, 2))).isEqualTo("b");
  }

  @Test
  void placesAreOrderedAsTheTextGoes() {
    Source source = Source.of("x", "ab\ncd");
    assertThat(source.place(1)).isLessThan(source.place(3));
    assertThat(source.place(3)).hasToString("line 2, column 1");
  }

  @Test
  void spansGoForward() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Span(2, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Span(-1, 1));
    assertThat(new Span(1, 3).contains(1)).isTrue();
    assertThat(new Span(1, 3).contains(3)).isFalse();
    assertThat(new Span(1, 3).length()).isEqualTo(2);
    assertThat(Span.at(4).isEmpty()).isTrue();
    assertThat(new Span(4, 5).isEmpty()).isFalse();
  }
}
