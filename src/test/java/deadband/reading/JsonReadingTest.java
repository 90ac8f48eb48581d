package deadband.reading;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import deadband.document.Document;
import deadband.document.Edit;
import deadband.document.Literal;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.ProblemText;
import deadband.document.Source;
import deadband.document.Span;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonReadingTest {

  private static final String MILL =
      """
      // Mill Cottage
      { "site": { "reference": "Mühle 🔥" },
        "relay": { "counts": ["export", "immersion",], "start_kW": 3.0, "voltFree": true },
        "battery": null, }
      """;

  private static JsonReading.Read read(JsonReading reading) {
    assertThat(reading).isInstanceOf(JsonReading.Read.class);
    return (JsonReading.Read) reading;
  }

  private static Problem only(JsonReading reading) {
    assertThat(reading).isInstanceOf(JsonReading.Unreadable.class);
    assertThat(reading.problems()).hasSize(1);
    return reading.problems().get(0);
  }

  @Test
  void readsAFile(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("mill cottage é.json"), MILL);
    JsonReading.Read read = read(JsonReading.ofFile(file));
    assertThat(read.name()).isEqualTo(file.toString());
    assertThat(read.problems()).isEmpty();
    assertThat(read.document().text()).isEqualTo(MILL);
    assertThat(read(JsonReading.ofFile("mill", file)).document().name()).isEqualTo("mill");
  }

  @Test
  void givesTheSameFromBytesStreamAndText() {
    Document document = read(JsonReading.ofText("m", MILL)).document();
    byte[] bytes = MILL.getBytes(UTF_8);
    assertThat(read(JsonReading.ofBytes("m", bytes)).document().root()).isEqualTo(document.root());
    InputStream in = new ByteArrayInputStream(bytes);
    assertThat(read(JsonReading.ofStream("m", in)).document().root()).isEqualTo(document.root());
  }

  @Test
  void knowsWhereEveryValueStands() {
    Document document = read(JsonReading.ofText("m", MILL)).document();
    for (String[] row :
        new String[][] {
          {"/site", "{ \"reference\": \"Mühle 🔥\" }"},
          {"/site/reference", "\"Mühle 🔥\""},
          {"/relay/counts", "[\"export\", \"immersion\",]"},
          {"/relay/counts/1", "\"immersion\""},
          {"/relay/start_kW", "3.0"},
          {"/relay/voltFree", "true"},
          {"/battery", "null"}
        }) {
      Node node = document.find(Pointer.parse(row[0])).orElseThrow();
      assertThat(document.source().slice(node.span())).isEqualTo(row[1]);
    }
    assertThat(document.root().span()).isEqualTo(new Span(16, MILL.length() - 1));
  }

  // ---- problems after which reading goes on

  @Test
  void reportsANameThatStandsTwiceWithBothPlaces() {
    JsonReading.Read read =
        read(
            JsonReading.ofText(
                "m", "{ \"a\": 1, \"r\": { \"a\": 1,\n \"a\": 2, \"\\u0061\": 3 } }"));
    assertThat(read.problems()).extracting(Problem::kind).containsOnly(Kind.NAME_TWICE).hasSize(2);
    Problem twice = read.problems().get(0);
    assertThat(twice.pointer()).hasToString("/r/a");
    assertThat(twice.place()).get().hasToString("line 2, column 2");
    assertThat(twice.earlierPlace()).get().hasToString("line 1, column 18");
    assertThat(read.problems().get(1).found()).isEqualTo("\"\\u0061\"");
    Node.Section relay = (Node.Section) read.document().root().get("r").orElseThrow();
    assertThat(relay.members()).hasSize(3);
    assertThat(relay.get("a")).get().extracting(n -> ((Node.Numeral) n).value()).isEqualTo(1.0);
  }

  @ParameterizedTest
  @CsvSource({
    "NaN, NOT_FINITE",
    "nan, NOT_FINITE",
    "Infinity, NOT_FINITE",
    "-Infinity, NOT_FINITE",
    "+INF, NOT_FINITE",
    "-INF, NOT_FINITE",
    "1e999, NOT_FINITE",
    "-1e999, NOT_FINITE",
    "1e99999999999999999999, NOT_FINITE",
    "1e-999, TOO_SMALL_A_NUMBER",
    "-0.0001e-99999999999999999999, TOO_SMALL_A_NUMBER"
  })
  void reportsNumbersThatAreNone(String literal, Kind kind) {
    JsonReading.Read read =
        read(JsonReading.ofText("m", "{ \"a\": [1, " + literal + "], \"b\": 2 }"));
    assertThat(read.problems()).hasSize(1);
    Problem problem = read.problems().get(0);
    assertThat(problem.kind()).isEqualTo(kind);
    assertThat(problem.pointer()).hasToString("/a/1");
    assertThat(problem.found()).isEqualTo(literal);
    assertThat(problem.span()).isEqualTo(new Span(11, 11 + literal.length()));
    assertThat(read.document().root().has("b")).isTrue();
  }

  @Test
  void takesZeroAndTheSmallestNumbers() {
    String text =
        "{ \"a\": 0e-999, \"b\": -0.00e999, \"c\": 4.9e-324, \"d\": 1.7976931348623157e308 }";
    assertThat(read(JsonReading.ofText("m", text)).problems()).isEmpty();
  }

  @Test
  void reportsANumberWithTooManyDigits() {
    String digits = "1" + "0".repeat(99);
    assertThat(JsonReading.ofText("m", "{ \"a\": " + digits + " }").problems()).isEmpty();
    Problem problem = JsonReading.ofText("m", "{ \"a\": " + digits + "0 }").problems().get(0);
    assertThat(problem.kind()).isEqualTo(Kind.NUMBER_TOO_LONG);
    assertThat(problem.found()).hasSize(40).contains("…");
  }

  @Test
  void reportsHalfCharacters() {
    JsonReading.Read read =
        read(JsonReading.ofText("m", "{ \"b\": \"x\\ud83d\", \"c\": \"\\ud83d\\udd25\" }"));
    assertThat(read.problems()).extracting(Problem::kind).containsExactly(Kind.HALF_CHARACTER);
    assertThat(read.problems().get(0).pointer()).hasToString("/b");
  }

  @Test
  void readsOnAfterWhatIsNotJson() {
    JsonReading.Read read =
        read(
            JsonReading.ofText(
                "m", "{ \"a\": NaN,\n  \"a\": 1e999,\n  \"b\": yes,\n  c = 3,5 kW }"));
    assertThat(read.problems())
        .extracting(Problem::kind)
        .containsExactly(
            Kind.NOT_FINITE,
            Kind.NAME_TWICE,
            Kind.NOT_FINITE,
            Kind.OTHER_WORD,
            Kind.NAME_NOT_QUOTED,
            Kind.EQUALS_SIGN,
            Kind.DECIMAL_COMMA);
    Node.Section root = read.document().root();
    assertThat(root.get("b")).get().extracting(n -> ((Node.Truth) n).value()).isEqualTo(true);
    assertThat(root.get("c")).get().extracting(n -> ((Node.Numeral) n).value()).isEqualTo(3.5);
  }

  /** What is read under a guess may be wrong itself, so that nothing is to be said of it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{ \"a\": { \"b\": 1 ",
        "{ \"a\": [1, 2 } }",
        "{ \"a\": 1 ] }",
        "{ \"a\": 1 } , \"b\": 2 }",
        "{ \"a\": , \"b\": 2 }",
        "{ \"a\": 1.2.3 }",
        "{ \"a\": \"x\n}",
        "{ \"a\": 1 /* }",
        "{ \"a\": 1 (east) }",
        "[ 1 ]"
      })
  void givesNoDocumentWhereItHadToGuess(String text) {
    assertThat(only(JsonReading.ofText("m", text))).isNotNull();
  }

  @Test
  void givesUpOnAFileThatIsNothingButProblems() {
    for (String item : List.of("NaN,", "1 ", "}", "'a',", ",", "#\n", "\u00a0 ", "\"a")) {
      JsonReading reading = JsonReading.ofText("m", "{ \"a\": [" + item.repeat(100_000) + "] }");
      assertThat(reading).as(item).isInstanceOf(JsonReading.Unreadable.class);
      assertThat(reading.problems()).as(item).hasSizeLessThan(510);
    }
    JsonReading reading = JsonReading.ofText("m", "{ \"a\": [" + "NaN,".repeat(100_000) + "] }");
    assertThat(reading.problems()).extracting(Problem::kind).contains(Kind.TOO_MANY);
  }

  // ---- bounds

  @Test
  void saysWhereBracketsStandTooDeep() {
    String deep = "{ \"a\": " + "[".repeat(10_000);
    Problem problem = only(JsonReading.ofText("m", deep));
    assertThat(problem.kind()).isEqualTo(Kind.TOO_DEEP);
    assertThat(problem.place()).get().hasToString("line 1, column 71");
    assertThat(problem.found()).contains("64");
    String sections = "{\"a\":".repeat(10_000);
    assertThat(only(JsonReading.ofText("m", sections)).kind()).isEqualTo(Kind.TOO_DEEP);
  }

  @Test
  void takesBracketsUpToTheBound() {
    String text = "{ \"a\": " + "[".repeat(63) + "]".repeat(63) + " }";
    assertThat(read(JsonReading.ofText("m", text)).problems()).isEmpty();
    String deeper = "{ \"a\": " + "[".repeat(64) + "]".repeat(64) + " }";
    assertThat(only(JsonReading.ofText("m", deeper)).kind()).isEqualTo(Kind.TOO_DEEP);
  }

  @Test
  void stopsReadingAtTheBound() {
    Endless endless = new Endless();
    Problem problem = only(JsonReading.ofStream("m", endless));
    assertThat(problem.kind()).isEqualTo(Kind.TOO_LARGE);
    assertThat(endless.given).isEqualTo(JsonReading.MOST_BYTES + 1);
    assertThat(endless.closed).isFalse();
  }

  @Test
  void takesAFileUpToTheBound() {
    byte[] bytes = new byte[JsonReading.MOST_BYTES + 1];
    Arrays.fill(bytes, (byte) ' ');
    bytes[0] = '{';
    bytes[1] = '}';
    assertThat(only(JsonReading.ofBytes("m", bytes)).kind()).isEqualTo(Kind.TOO_LARGE);
    byte[] most = Arrays.copyOf(bytes, JsonReading.MOST_BYTES);
    assertThat(read(JsonReading.ofBytes("m", most)).problems()).isEmpty();
  }

  @Test
  void readsAHundredMegabytesOfBracketsInBoundedMemory(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("brackets.json");
    byte[] megabyte = new byte[1_000_000];
    Arrays.fill(megabyte, (byte) '[');
    for (int i = 0; i < 100; i++) {
      Files.write(
          file,
          megabyte,
          java.nio.file.StandardOpenOption.CREATE,
          java.nio.file.StandardOpenOption.APPEND);
    }
    assertThat(only(JsonReading.ofFile(file)).kind()).isEqualTo(Kind.TOO_LARGE);
  }

  @Test
  void readsManyMembersInLittleTime() {
    StringBuilder text = new StringBuilder("{");
    for (int i = 0; text.length() < 3_900_000; i++) {
      text.append("\"n").append(i).append("\":").append(i).append(',');
    }
    long before = System.nanoTime();
    JsonReading.Read read = read(JsonReading.ofText("m", text.append('}').toString()));
    assertThat(read.document().same(read.document())).isTrue();
    assertThat(System.nanoTime() - before).isLessThan(20_000_000_000L);
  }

  /** Names made to share one hash must not slow the reading or end it. */
  @Test
  void readsNamesThatShareAHash() {
    StringBuilder text = new StringBuilder("{");
    for (int i = 0; i < 1 << 14; i++) {
      text.append('"');
      for (int bit = 0; bit < 14; bit++) {
        text.append((i >> bit & 1) == 0 ? "Aa" : "BB");
      }
      text.append("\":0,");
    }
    assertThat(read(JsonReading.ofText("m", text.append('}').toString())).problems()).isEmpty();
  }

  // ---- bytes that are not UTF-8

  @ParameterizedTest
  @CsvSource({
    "UTF-16LE, 'UTF-16, low byte first'",
    "UTF-16BE, 'UTF-16, high byte first'",
    "UTF-32LE, 'UTF-32, low byte first'",
    "UTF-32BE, 'UTF-32, high byte first'"
  })
  void tellsOtherEncodingsWithAndWithoutTheirMark(String charset, String found) {
    for (String text : List.of(MILL, "\ufeff" + MILL, "{}", "\ufeff{}", "\ufeff")) {
      if (text.equals("\ufeff") && charset.equals("UTF-16LE")) {
        continue; // FF FE alone: two bytes, no letter to tell by, but entered as UTF-16 below
      }
      Problem problem = only(JsonReading.ofBytes("m", text.getBytes(Charset.forName(charset))));
      assertThat(problem.kind()).isEqualTo(Kind.OTHER_ENCODING);
      assertThat(problem.found()).isEqualTo(found);
      assertThat(problem.right()).startsWith("UTF-8").contains("save the file again");
    }
    byte[] mark = {(byte) 0xFF, (byte) 0xFE};
    assertThat(only(JsonReading.ofBytes("m", mark)).found()).isEqualTo("UTF-16, low byte first");
  }

  @Test
  void takesAByteOrderMarkAndDoesNotCountIt() {
    Document document =
        read(JsonReading.ofBytes("m", "\ufeff{ \"a\": 1 }".getBytes(UTF_8))).document();
    assertThat(document.place(Pointer.parse("/a"))).get().hasToString("line 1, column 8");
    assertThat(document.text()).startsWith("\ufeff");
    assertThat(document.source().slice(document.root().span())).isEqualTo("{ \"a\": 1 }");
  }

  @Test
  void saysWhichByteIsNotUtf8() {
    byte[] latin = "{\n  \"é\": \"Mühle\" }".replace("é", "e").getBytes(ISO_8859_1);
    Problem problem = only(JsonReading.ofBytes("m", latin));
    assertThat(problem.kind()).isEqualTo(Kind.NOT_UTF8);
    assertThat(problem.place()).get().hasToString("line 2, column 10");
    assertThat(problem.found()).contains("FC");
    assertThat(ProblemText.of(problem, 80)).contains("\"M\ufffdhle\"").contains("\n           ^\n");
  }

  /**
   * Unicode 15.0, table 3-7: well-formed UTF-8 byte sequences; the others are not (from memory).
   */
  @Tag("outside")
  @ParameterizedTest
  @ValueSource(
      strings = {
        "C080",
        "C1BF",
        "E08080",
        "EDA080",
        "EDBFBF",
        "F0808080",
        "F4908080",
        "F5808080",
        "80",
        "C3",
        "E282",
        "F09F94",
        "FF"
      })
  void refusesMalformedUtf8(String hex) {
    byte[] bad = java.util.HexFormat.of().parseHex(hex);
    byte[] text = new byte[7 + bad.length + 3];
    System.arraycopy("{\"é\":\"".getBytes(UTF_8), 0, text, 0, 7);
    System.arraycopy(bad, 0, text, 7, bad.length);
    System.arraycopy("\" }".getBytes(UTF_8), 0, text, 7 + bad.length, 3);
    Problem problem = only(JsonReading.ofBytes("m", text));
    assertThat(problem.kind()).isEqualTo(Kind.NOT_UTF8);
    assertThat(problem.place()).get().hasToString("line 1, column 7");
  }

  // ---- files that cannot be read

  @Test
  void saysThatAFolderIsNoFile(@TempDir Path folder) {
    assertThat(only(JsonReading.ofFile(folder)).kind()).isEqualTo(Kind.A_FOLDER);
  }

  @Test
  void saysThatThereIsNoSuchFile(@TempDir Path folder) {
    Problem problem = only(JsonReading.ofFile(folder.resolve("none.json")));
    assertThat(problem.kind()).isEqualTo(Kind.NO_SUCH_FILE);
    assertThat(problem.place()).isEmpty();
  }

  @Test
  void saysThatADeviceIsNoFile() {
    Path device = Path.of("/dev/zero");
    assumeTrue(Files.exists(device));
    assertThat(only(JsonReading.ofFile(device)).kind()).isEqualTo(Kind.NOT_A_FILE);
  }

  @Test
  void saysThatAFileMayNotBeRead(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("closed.json"), "{}");
    assumeTrue(file.toFile().setReadable(false) && !Files.isReadable(file));
    assertThat(only(JsonReading.ofFile(file)).kind()).isEqualTo(Kind.NO_PERMISSION);
  }

  @Test
  void saysWhyReadingFailed() {
    Source source = Source.named("m");
    assertThat(Bytes.refusal(source, new NoSuchFileException("m")).kind())
        .isEqualTo(Kind.NO_SUCH_FILE);
    assertThat(Bytes.refusal(source, new AccessDeniedException("m")).kind())
        .isEqualTo(Kind.NO_PERMISSION);
    Problem loop =
        Bytes.refusal(
            source, new FileSystemException("m", null, "Too many levels of symbolic links"));
    assertThat(loop.kind()).isEqualTo(Kind.NOT_READABLE);
    assertThat(loop.found()).isEqualTo("Too many levels of symbolic links");
    assertThat(Bytes.refusal(source, new IOException()).found())
        .isEqualTo("a failure while reading");
  }

  @Test
  void saysThatAStreamBroke() {
    InputStream broken =
        new InputStream() {
          @Override
          public int read(byte[] into, int from, int length) throws IOException {
            throw new IOException("the line went dead");
          }

          @Override
          public int read() throws IOException {
            throw new IOException("the line went dead");
          }
        };
    Problem problem = only(JsonReading.ofStream("-", broken));
    assertThat(problem.kind()).isEqualTo(Kind.NOT_READABLE);
    assertThat(problem.found()).isEqualTo("the line went dead");
    assertThat(problem.source().name()).isEqualTo("-");
  }

  // ---- edits

  @Test
  void readsAgainAfterEachEdit() {
    Document document = read(JsonReading.ofText("m", MILL)).document();
    Pointer stop = Pointer.parse("/relay/stop_kW");
    List<Edit> edits =
        List.of(new Edit.Insert(stop, Literal.of(0.3)), new Edit.Replace(stop, Literal.of(0.1)));
    Document edited = JsonReading.edited(document, edits);
    assertThat(edited.text())
        .isEqualTo(MILL.replace("\"voltFree\": true", "\"voltFree\": true, \"stop_kW\": 0.1"));
    assertThat(edited.name()).isEqualTo("m");
    assertThat(JsonReading.edited(document, List.of())).isSameAs(document);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> JsonReading.edited(document, List.of(new Edit.Remove(stop))));
  }

  /** Opening brackets without end. */
  private static final class Endless extends InputStream {

    private long given;
    private boolean closed;

    @Override
    public int read() {
      given++;
      return '[';
    }

    @Override
    public int read(byte[] into, int from, int length) {
      Arrays.fill(into, from, from + length, (byte) '[');
      given += length;
      return length;
    }

    @Override
    public void close() {
      closed = true;
    }
  }
}
