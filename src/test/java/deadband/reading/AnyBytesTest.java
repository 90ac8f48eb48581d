package deadband.reading;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Document;
import deadband.document.Literal;
import deadband.document.Member;
import deadband.document.Node;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.ProblemText;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Whatever the bytes: an outcome and no exception, places inside the text, and the same texts taken
 * and read in the same way as by a {@link JsonJudge}, which knows nothing of our parser.
 */
class AnyBytesTest {

  private static final String SETUP =
      """
      // Mill Cottage, first visit
      {
        "deadband": 1,
        "site": { "reference": "Mühle 🔥 \\"Nord\\"", "country": "GB", "vulnerableOccupants": false },
        "outlets": [ { "at": "bath", "blended": true }, { "at": "kitchen", "blended": false }, ],
        "relay": { "counts": ["export", "immersion"], "start_kW": 3.20, "stop_kW": -0.5e-1, /* near */
                   "startDelay_min": 5, "contact": null },
        "asFound": { "settings": { "relay": { "start_kW": 1e1 } } },
        "accepted": [], "observed": {},
      }
      """;

  private static final String INK =
      "{}[]\",:;='#/*\\\n\r\t 0123456789.eE+-truefalsnNaIity“”’−\u00a0\ufeffé🔥kW%°_$";

  private static final String[] PIECES = {
    "/*",
    "*/",
    "//",
    "null",
    "true ",
    "NaN",
    "-Infinity",
    "1e999",
    "\\ud83d",
    "\\udd25",
    "\\u00e9",
    "\"a\": ",
    "{ ",
    " }",
    "[",
    "],",
    "3,5",
    "1 000",
    "3 kW",
    "'",
    "=",
    ":"
  };

  @Test
  void takesRandomBytes() {
    Random random = new Random(1);
    for (int i = 0; i < 20_000; i++) {
      byte[] bytes = new byte[random.nextInt(60)];
      random.nextBytes(bytes);
      check(JsonReading.ofBytes("m", bytes));
    }
  }

  @Test
  void takesRandomInk() {
    Random random = new Random(2);
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder(random.nextInt(4) == 0 ? "" : "{ \"a\": ");
      for (int length = random.nextInt(14); length > 0; length--) {
        text.append(piece(random));
      }
      checkText(text.toString());
    }
  }

  @Test
  void takesMutationsOfASetup() {
    Random random = new Random(3);
    for (int i = 0; i < 10_000; i++) {
      StringBuilder text = new StringBuilder(SETUP);
      for (int slips = 1 + random.nextInt(3); slips > 0; slips--) {
        mutate(text, random);
      }
      checkText(text.toString());
    }
  }

  @Test
  void takesMutationsOfItsBytes() {
    Random random = new Random(4);
    for (int i = 0; i < 5_000; i++) {
      byte[] bytes = SETUP.getBytes(UTF_8);
      for (int slips = 1 + random.nextInt(3); slips > 0; slips--) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      check(JsonReading.ofBytes("m", bytes));
    }
  }

  @Test
  void takesEveryBeginningOfASetup() {
    for (int end = 0; end <= SETUP.length(); end++) {
      checkText(SETUP.substring(0, end));
    }
  }

  private static void mutate(StringBuilder text, Random random) {
    int at = random.nextInt(text.length());
    switch (random.nextInt(4)) {
      case 0 -> text.replace(at, at + 1, piece(random));
      case 1 -> text.insert(at, piece(random));
      case 2 -> text.deleteCharAt(at);
      default -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(20)));
    }
  }

  private static String piece(Random random) {
    int ink = random.nextInt(INK.length() + PIECES.length);
    return ink < INK.length() ? INK.substring(ink, ink + 1) : PIECES[ink - INK.length()];
  }

  private static void checkText(String text) {
    JsonReading reading = JsonReading.ofText("m", text);
    check(reading);
    if (isLeftToUs(reading)) {
      return;
    }
    Optional<List<String>> judged = JsonJudge.tokens(text);
    boolean taken = reading.problems().stream().noneMatch(AnyBytesTest::isRefusal);
    assertThat(taken).as(text + " " + reading.problems()).isEqualTo(judged.isPresent());
    if (reading instanceof JsonReading.Read read && taken) {
      assertThat(JsonJudge.tokens(read.document().root())).isEqualTo(judged.orElseThrow());
    }
  }

  /** What JSON allows and we do not, on which the judge has no say. */
  private static boolean isLeftToUs(JsonReading reading) {
    return reading.problems().stream()
        .anyMatch(p -> p.kind() == Kind.HALF_CHARACTER || p.kind() == Kind.TOO_DEEP);
  }

  /** Whether JSON itself does not allow it; a number may be as large as it likes there. */
  private static boolean isRefusal(Problem problem) {
    return switch (problem.kind()) {
      case NAME_TWICE, TOO_SMALL_A_NUMBER, NUMBER_TOO_LONG -> false;
      case NOT_FINITE -> !Character.isDigit(problem.found().charAt(problem.found().length() - 1));
      default -> true;
    };
  }

  private static void check(JsonReading reading) {
    for (Problem problem : reading.problems()) {
      check(problem);
    }
    if (reading instanceof JsonReading.Read read
        && read.problems().stream().noneMatch(AnyBytesTest::isRefusal)) {
      // each value is read again, which takes its time: of every so many files one
      if (read.document().text().hashCode() % 8 == 0) {
        check(read.document(), read.document().root());
      }
    } else {
      assertThat(reading.problems()).isNotEmpty();
    }
  }

  private static void check(Problem problem) {
    int length = problem.source().text().length();
    if (problem.span() != null) {
      assertThat(problem.span().end()).isLessThanOrEqualTo(length);
    }
    assertThat(problem.right()).as(problem.toString()).isNotEmpty();
    String shown = ProblemText.of(problem, 80);
    boolean driving =
        shown.chars().anyMatch(c -> Character.getType(c) == Character.CONTROL && c != '\n');
    assertThat(driving).as(shown).isFalse();
  }

  /** Each value, cut out of the text by its span and read alone, is the same value. */
  private static void check(Document document, Node node) {
    String alone = "{ \"v\": " + document.source().slice(node.span()) + " }";
    JsonReading reading = JsonReading.ofText("m", alone);
    assertThat(reading).as(alone).isInstanceOf(JsonReading.Read.class);
    Node again = ((JsonReading.Read) reading).document().root().get("v").orElseThrow();
    assertThat(Literal.of(again)).isEqualTo(Literal.of(node));
    if (node instanceof Node.Section section) {
      for (Member member : section.members()) {
        assertThat(document.source().slice(member.nameSpan())).startsWith("\"").endsWith("\"");
        check(document, member.value());
      }
    }
    if (node instanceof Node.Sequence sequence) {
      sequence.items().forEach(item -> check(document, item));
    }
  }

  @Test
  void readsTheSetupItMutates() {
    JsonReading reading = JsonReading.ofText("m", SETUP);
    assertThat(reading.problems()).isEmpty();
    Document document = ((JsonReading.Read) reading).document();
    check(document, document.root());
  }
}
