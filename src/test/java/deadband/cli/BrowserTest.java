package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The pages in a real browser; each test is skipped, and counted as skipped, where none is found.
 */
class BrowserTest {

  private static final String FAULTY = "sample-configs/faulty/bath-as-hot-as-the-tank.json";
  private static final String AXE_RUN =
      """
      const done = arguments[arguments.length - 1];
      axe.run({runOnly: ["wcag2a","wcag2aa","wcag21a","wcag21aa","wcag22aa"]}).then(
        r => done(r.violations.map(v => v.id + " " + v.nodes.map(n => n.target).slice(0, 3))),
        e => done(["failed " + e]));
      """;

  @TempDir private static Path folder;
  private static Browser browser;

  @BeforeAll
  static void open() throws Exception {
    if (Browser.isInstalled()) {
      browser = Browser.open(Files.createDirectory(folder.resolve("profile")));
    }
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static Browser browser() {
    assumeTrue(browser != null, "no chromium with chromedriver is installed");
    return browser;
  }

  private static String axe() throws Exception {
    try (var file = BrowserTest.class.getResourceAsStream("axe/axe.min.js")) {
      return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static Path page(String name, String... arguments) {
    Path page = folder.resolve(name);
    CommandLineRun.of(
        Stream.concat(Stream.of(arguments), Stream.of("--out=" + page, "--overwrite"))
            .toArray(String[]::new));
    return page;
  }

  private static List<Path> samples() throws Exception {
    Path out = folder.resolve("records");
    CommandLineRun.of(
        "check", "--no-day-run", "--format=html", "--out=" + out, "--overwrite", "sample-configs");
    try (Stream<Path> pages = Files.list(out)) {
      return pages.sorted().toList();
    }
  }

  private static List<Path> all() throws Exception {
    List<Path> pages = new ArrayList<>(samples());
    assertThat(pages).as("a page for each sample").hasSizeGreaterThan(60);
    pages.add(page("full.html", "check", "--format=html", FAULTY));
    pages.add(page("sheet.html", "sheet", "--format=html", FAULTY));
    pages.add(
        page(
            "compare.html",
            "compare",
            "--no-year",
            "--format=html",
            "sample-configs/good/mill-cottage.json"));
    return pages;
  }

  @Test
  void axeFindsNothingOnAnyPageAndNoneAsksForAnything() throws Exception {
    Browser chromium = browser();
    String axe = axe();
    List<String> wrong = new ArrayList<>();
    for (Path page : all()) {
      chromium.show(page);
      chromium.run(axe);
      String said = chromium.await(AXE_RUN);
      String console = chromium.console();
      String asked = chromium.run("return performance.getEntriesByType('resource').length");
      if (!said.equals("{\"value\":[]}")
          || !console.equals("{\"value\":[]}")
          || !asked.equals("{\"value\":0}")) {
        wrong.add(page.getFileName() + " " + said + " " + console + " " + asked);
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void axeWouldFindAFault() throws Exception {
    Browser chromium = browser();
    Path bad =
        Files.writeString(
            folder.resolve("bad.html"), "<html><body><img src='data:,'></body></html>");
    chromium.show(bad);
    chromium.run(axe());

    assertThat(chromium.await(AXE_RUN)).contains("image-alt");
  }

  @Test
  void noPageIsWiderThanItsWindow() throws Exception {
    Browser chromium = browser();
    Path full = page("wide.html", "check", "--format=html", FAULTY);
    for (int width : new int[] {1200, 800, 500}) {
      chromium.size(width, 900);
      chromium.show(full);
      assertThat(chromium.run("return document.documentElement.scrollWidth <= window.innerWidth"))
          .as("at %d", width)
          .isEqualTo("{\"value\":true}");
      assertThat(chromium.run("return window.find('Tank water can exceed the mixing valve')"))
          .isEqualTo("{\"value\":true}");
    }
    chromium.size(1200, 900);
  }

  @Test
  void aHostileFileRunsNothing() throws Exception {
    Browser chromium = browser();
    String name =
        "</title></style><script>window.ran=1</script><img src=x onerror='window.ran=1'>\\u202E"
            + "x".repeat(400);
    String text = Files.readString(Path.of(FAULTY)).replace("Sorrel House", name);
    Path file = Files.writeString(folder.resolve("hostile.json"), text);
    chromium.console();
    chromium.show(page("hostile.html", "check", "--no-day-run", "--format=html", file.toString()));

    assertThat(chromium.run("return [window.ran, document.images.length, document.scripts.length]"))
        .isEqualTo("{\"value\":[null,0,0]}");
    assertThat(chromium.run("return document.querySelector('h1').textContent"))
        .contains("u003Cscript>window.ran=1");
    assertThat(chromium.run("return document.documentElement.scrollWidth <= window.innerWidth"))
        .isEqualTo("{\"value\":true}");
    assertThat(chromium.console()).isEqualTo("{\"value\":[]}");
  }
}
