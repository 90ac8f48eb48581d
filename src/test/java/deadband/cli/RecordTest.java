package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record to sign, as a page and as Markdown, through the command. */
class RecordTest {

  private static final String GOOD = "sample-configs/good/mill-cottage.json";
  private static final String FAULTY = "sample-configs/faulty/bath-as-hot-as-the-tank.json";
  private static final String AS_OF = "--as-of=2026-11-27";

  @TempDir private Path folder;

  private String page(String... more) throws IOException {
    Path page = folder.resolve("page.html");
    CommandLineRun.of(
        Stream.concat(
                Stream.of(
                    "check", AS_OF, "--format", "html", "--overwrite", "--out", page.toString()),
                Stream.of(more))
            .toArray(String[]::new));
    return Files.readString(page);
  }

  private static byte[] sha256(byte[] bytes) throws Exception {
    return MessageDigest.getInstance("SHA-256").digest(bytes);
  }

  @Test
  void itHoldsWhatIsSigned() throws Exception {
    String page = page(FAULTY);

    assertThat(page)
        .contains("not to be signed off", "Outlet without mixing valve", "outlet-not-blended")
        .contains("diverter.limit_C 67 (line 20)", "diverter.limit_C   67 -&gt; 63")
        .contains("UK TMV2 scheme, conditions of use", "Prepared by", "Reviewed by")
        .contains(HexFormat.of().formatHex(sha256(Files.readAllBytes(Path.of(FAULTY)))));
    assertThat(page.split("<svg", -1))
        .as("ladder, two days before and after, two sizes")
        .hasSize(11);
  }

  @Test
  void itNamesTheEquipmentFilesThatGaveValues() throws IOException {
    assertThat(page("--no-day-run", "sample-configs/good/alder-lodge.json"))
        .contains("from equipment file heat-pumps/ground-6kW.json");
  }

  @Test
  void theSameInputGivesTheSameBytes() throws IOException {
    assertThat(page("--no-day-run", FAULTY)).isEqualTo(page("--no-day-run", FAULTY));
  }

  @Test
  void itsPolicyAllowsItsOwnStyleSheetAlone() throws Exception {
    String page = page(GOOD);
    Matcher style = Pattern.compile("<style>(.*?)</style>", Pattern.DOTALL).matcher(page);
    assertThat(style.find()).isTrue();
    String hash =
        Base64.getEncoder().encodeToString(sha256(style.group(1).getBytes(StandardCharsets.UTF_8)));

    assertThat(page)
        .contains(
            "content=\"default-src 'none'; style-src 'sha256-"
                + hash
                + "'; base-uri 'none'; form-action 'none'\"")
        .doesNotContain(" style=\"", "<script", "<img", "@import", "url(http");
  }

  @Test
  void whatAFileSaysIsShownAndDoesNothing() throws IOException {
    String hostile =
        "</title></style><script>alert(1)</script><img src=x onerror=alert(2)> \\\" ' & \u202Eabc\u202C";
    String setup = Files.readString(Path.of(FAULTY)).replace("Sorrel House", hostile);
    Path file = Files.writeString(folder.resolve("hostile.json"), setup);

    assertThat(page("--no-day-run", file.toString()))
        .contains("&lt;/title&gt;&lt;/style&gt;&lt;script&gt;alert(1)")
        .doesNotContain("<script", "<img", "</title></style>", "\u202E");
    assertThat(
            CommandLineRun.of("check", AS_OF, "--format=markdown", "--no-day-run", file.toString())
                .out())
        .contains("&lt;script&gt;")
        .doesNotContain("<script", "<img", "\u202E");
  }

  @Test
  void severalFilesMakeAPageEachAndAnIndexWorstFirst() throws IOException {
    Path out = folder.resolve("records");
    Path broken = Files.writeString(folder.resolve("broken.json"), "{ \"relay\": ");

    CommandLineRun run =
        CommandLineRun.of(
            "check",
            AS_OF,
            "--no-day-run",
            "--format=html",
            "--out=" + out,
            GOOD,
            FAULTY,
            broken.toString());

    assertThat(run.exit()).isEqualTo(3);
    assertThat(out.resolve("mill-cottage.html")).exists();
    assertThat(out.resolve("bath-as-hot-as-the-tank.html")).exists();
    assertThat(Files.readString(out.resolve("index.html")))
        .containsSubsequence(List.of("broken.json", "not judged", "Sorrel House", "Mill Cottage"))
        .contains("href=\"mill-cottage.html\"");
    assertThat(
            CommandLineRun.of(
                    "check", AS_OF, "--no-day-run", "--format=html", "--out=" + out, GOOD, FAULTY)
                .exit())
        .as("nothing is overwritten unasked")
        .isEqualTo(5);
  }

  @Test
  void severalFilesNeedAFolder() {
    CommandLineRun run = CommandLineRun.of("check", "--format=html", GOOD, FAULTY);

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("several files make a page each", "--out");
  }

  @Test
  void markdownSaysTheSame() {
    CommandLineRun run = CommandLineRun.of("check", AS_OF, "--format=markdown", FAULTY);

    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out())
        .startsWith("# Sorrel House\n\n**NOT TO BE SIGNED OFF**\n")
        .contains("## Findings", "## Tank temperatures", "| Prepared by |");
  }

  @Test
  void onlyARecordGoesToAFile() {
    Path out = folder.resolve("report.txt");
    CommandLineRun run = CommandLineRun.of("check", AS_OF, "--out=" + out, GOOD);

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("--out is for --format html or markdown");
    assertThat(out).doesNotExist();
  }
}
