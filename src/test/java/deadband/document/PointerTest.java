package deadband.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PointerTest {

  /**
   * RFC 6901, section 5: a document with the members foo, "", a/b, c%d, e^f, g|h, i\j, k"l, " " and
   * m~n, and the pointer to each.
   */
  @Tag("outside")
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "/foo,foo",
        "/,``",
        "/a~1b,a/b",
        "/c%d,c%d",
        "/e^f,e^f",
        "/g|h,g|h",
        "/i\\j,i\\j",
        "/k\"l,k\"l",
        "/ , ",
        "/m~0n,m~n"
      })
  void pointsToTheNamesOfTheStandard(String text, String name) {
    assertThat(Pointer.parse(text)).isEqualTo(Pointer.root().child(name)).hasToString(text);
  }

  /** RFC 6901, section 5: "" is the whole document, /foo/0 the first item of foo. */
  @Tag("outside")
  @Test
  void pointsToTheWholeAndToItems() {
    assertThat(Pointer.parse("")).isEqualTo(Pointer.root()).hasToString("");
    assertThat(Pointer.parse("/foo/0")).isEqualTo(Pointer.root().child("foo").child(0));
  }

  /** RFC 6901, section 4: ~01 becomes ~1 and not /. */
  @Tag("outside")
  @Test
  void undoesTheSlashBeforeTheTilde() {
    assertThat(Pointer.parse("/~01").last()).isEqualTo("~1");
  }

  @Test
  void saysWhatIsWrong() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Pointer.parse("relay/start_kW"))
        .withMessageContaining("\"relay/start_kW\"")
        .withMessageContaining("\"/relay/start_kW\"");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Pointer.parse("/a~2b"))
        .withMessageContaining("~0");
    assertThatIllegalArgumentException().isThrownBy(() -> Pointer.parse("/a~"));
    assertThatIllegalArgumentException().isThrownBy(() -> Pointer.root().child(-1));
  }

  @Test
  void knowsItsParentAndItsLastName() {
    Pointer stop = Pointer.parse("/relay/stop_kW");
    assertThat(stop.parent()).contains(Pointer.parse("/relay"));
    assertThat(stop.last()).isEqualTo("stop_kW");
    assertThat(stop.tokens()).containsExactly("relay", "stop_kW");
    assertThat(Pointer.root().parent()).isEmpty();
    assertThat(Pointer.root().isRoot()).isTrue();
    assertThatIllegalStateException().isThrownBy(() -> Pointer.root().last());
  }

  @Test
  void isEqualByItsNames() {
    assertThat(Pointer.parse("/a/b")).isNotEqualTo(Pointer.parse("/a/c")).isNotEqualTo("/a/b");
    // two names that share a hash
    assertThat(Pointer.parse("/Aa")).isNotEqualTo(Pointer.parse("/BB"));
    assertThat(Pointer.parse("/a")).isLessThan(Pointer.parse("/b"));
    assertThat(Pointer.parse("/b")).isGreaterThan(Pointer.parse("/a"));
  }

  @Test
  void knowsWhatItIsInside() {
    Pointer stop = Pointer.parse("/relay/stop_kW");
    assertThat(stop.startsWith(Pointer.root())).isTrue();
    assertThat(stop.startsWith(Pointer.parse("/relay"))).isTrue();
    assertThat(stop.startsWith(stop)).isTrue();
    assertThat(stop.startsWith(Pointer.parse("/rel"))).isFalse();
    assertThat(Pointer.parse("/relay").startsWith(stop)).isFalse();
  }

  @Test
  void canBeContinued() {
    assertThat(Pointer.parse("/asFound/settings").append(Pointer.parse("/relay/stop_kW")))
        .hasToString("/asFound/settings/relay/stop_kW");
    assertThat(Pointer.root().append(Pointer.root())).isEqualTo(Pointer.root());
  }

  @Test
  void hasAnOrderInWhichIndexesGoByNumber() {
    List<Pointer> order =
        pointers("", "/a", "/a/2", "/a/10", "/a/10/b", "/a/01", "/a/b", "/b", "/b/99999999999999");
    List<Pointer> mixed = new ArrayList<>(order);
    java.util.Collections.shuffle(mixed, new Random(1));
    assertThat(mixed.stream().sorted().toList()).isEqualTo(order);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "/relay/start_kW,relay.start_kW",
        "/outlets/0/at,outlets[0].at",
        "/heatPump/everyday/blocked/12,heatPump.everyday.blocked[12]",
        "/0/1,[0][1]",
        "/a b/c,`[\"a b\"].c`",
        "/a/b.c,`a[\"b.c\"]`",
        "/a/say \"no\" \\ ,`a[\"say \\\"no\\\" \\\\\"]`",
        "/a/,`a[\"\"]`",
        "/01,01",
        "`/été`,été"
      })
  void readsForPeople(String pointer, String dotted) {
    assertThat(Pointer.parse(pointer).dotted()).isEqualTo(dotted);
    assertThat(Pointer.ofDotted(dotted)).isEqualTo(Pointer.parse(pointer));
  }

  @Test
  void callsTheRootTheWholeFile() {
    assertThat(Pointer.root().dotted()).isEqualTo("the whole file");
    assertThat(Pointer.ofDotted("the whole file")).isEqualTo(Pointer.root());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", ".", "a.", ".a", "a..b", "a[", "a[]", "a[01]", "a[x]", "a[0", "a b", "a[\"x\"", "a[\"x",
        "a[\"x\\", "a]", "a[0]b", "/a"
      })
  void refusesWhatIsNoPlace(String dotted) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Pointer.ofDotted(dotted))
        .withMessageContaining("\"" + dotted + "\"");
  }

  @Test
  void comesBackFromBothWaysOfWriting() {
    Random random = new Random(6901);
    for (int i = 0; i < 5000; i++) {
      Pointer pointer = Pointer.root();
      for (int depth = random.nextInt(5); depth > 0; depth--) {
        pointer = pointer.child(name(random));
      }
      assertThat(Pointer.parse(pointer.toString())).isEqualTo(pointer).hasSameHashCodeAs(pointer);
      assertThat(Pointer.ofDotted(pointer.dotted())).isEqualTo(pointer);
    }
  }

  private static String name(Random random) {
    String letters = "ab0129~/.[]\"\\ _-é🔥\n";
    StringBuilder name = new StringBuilder();
    for (int length = random.nextInt(4); length > 0; length--) {
      name.append(letters.charAt(random.nextInt(letters.length())));
    }
    return name.toString();
  }

  private static List<Pointer> pointers(String... texts) {
    return java.util.Arrays.stream(texts).map(Pointer::parse).toList();
  }
}
