package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import deadband.days.DayRuns;
import deadband.judging.Judge;
import deadband.judging.RuleBook;
import deadband.judging.RulePage;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.report.CommissioningSheet;
import deadband.report.Comparison;
import deadband.report.Report;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import nu.validator.validation.SimpleDocumentValidator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Records, sheets, comparisons and the index of all samples: valid HTML by a validator, and looked
 * at in a real browser. They are made once, without their days; a few whole ones stand for the
 * charts. What needs the browser is skipped where none is found, counted, and said.
 */
class PagesTest {

  private static final String FAULTY = "sample-configs/faulty/bath-as-hot-as-the-tank.json";
  private static final String GOOD = "sample-configs/good/mill-cottage.json";
  private static final LocalDate AS_OF = LocalDate.of(2026, 11, 27);

  /**
   * Looks with axe at the whole of every record, and at every sheet and comparison, too: four times
   * the rest of the build for pages that differ in their words alone.
   */
  private static final boolean EVERYTHING = Boolean.getBoolean("deadband.everyPage");

  /** Each kind of element of a page: names, classes and attributes, in what it stands. */
  private static final String KINDS =
      """
      const kind = each => each.tagName + " " + (each.getAttribute("class") || "") + " "
        + [...each.attributes].map(a => a.name).join();
      return [...new Set([...document.querySelectorAll("body *")].map(
        each => kind(each.parentElement) + " > " + kind(each)))];
      """;

  /** Of the limits, which are the same on every page, three rows are looked at. */
  private static final String AXE_RUN =
      """
      const done = arguments[arguments.length - 1];
      axe.run({exclude: [".limits tbody tr:nth-child(n+4)"]},
              {runOnly: ["wcag2a","wcag2aa","wcag21a","wcag21aa","wcag22aa"],
               resultTypes: ["violations"], rules: {"color-contrast": {enabled: %s}}}).then(
        r => done(r.violations.map(v => v.id + " " + v.nodes.map(n => n.target).slice(0, 3))),
        e => done(["failed " + e]));
      """;

  @TempDir private static Path folder;
  private static Browser browser;
  private static int skipped;

  /** The record of each sample, with the headlines of its findings. */
  private static final Map<Path, List<String>> RECORDS = new LinkedHashMap<>();

  /** Sheets and comparisons of all samples, and the index. */
  private static final List<Path> NOTES = new ArrayList<>();

  /**
   * Pages with charts, printed and looked at in every light, and a page more for each class of the
   * style sheet that they do not have: contrast, which takes axe the longest, is a matter of these.
   */
  private static final List<Path> WHOLE = new ArrayList<>();

  @BeforeAll
  static void make() throws Exception {
    Path records = folder.resolve("records");
    CommandLineRun.of(
        "check",
        "--no-day-run",
        "--as-of=" + AS_OF,
        "--format=html",
        "--out=" + records,
        "sample-configs");
    Judge judge = new Judge(RuleBook.builtIn(), DayRuns.none());
    Report last = null;
    for (Path file : samples()) {
      Report report = report(file, judge);
      String name = String.valueOf(file.getFileName()).replace(".json", ".html");
      RECORDS.put(records.resolve(name), headlines(report));
      NOTES.add(written("sheet-" + name, CommissioningSheet.html(report, "0")));
      Report before = last == null ? report : last;
      NOTES.add(
          written(
              "compare-" + name,
              new Comparison(before, report, Optional.empty(), Optional.empty(), "0").html()));
      last = report;
    }
    NOTES.add(records.resolve("index.html"));
    WHOLE.add(page("record-faulty.html", "check", "--format=html", FAULTY));
    WHOLE.add(page("record-good.html", "check", "--format=html", GOOD));
    WHOLE.add(page("sheet.html", "sheet", "--format=html", FAULTY));
    WHOLE.add(page("compare.html", "compare", "--no-year", "--format=html", GOOD));
    String log = "sample-configs/logs/gap-below-input";
    WHOLE.add(
        page("diagnosis.html", "diagnose", "--format=html", log + ".txt", "--log=" + log + ".csv"));
    WHOLE.add(records.resolve("index.html"));
    WHOLE.add(withTheMostFindings());
    Set<String> classes = new HashSet<>();
    for (Path page : WHOLE) {
      classes.addAll(classes(page));
    }
    for (Path page : RECORDS.keySet()) {
      if (classes.addAll(classes(page))) {
        WHOLE.add(page);
      }
    }
    if (Browser.isInstalled()) {
      browser = Browser.open(Files.createDirectory(folder.resolve("profile")));
    }
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
    if (skipped > 0) {
      System.err.println(
          "PagesTest: " + skipped + " tests in a browser skipped: no chromium with chromedriver");
    }
  }

  private static Browser browser() {
    skipped += browser == null ? 1 : 0;
    assumeTrue(browser != null, "no chromium with chromedriver is installed");
    return browser;
  }

  private static List<Path> samples() throws IOException {
    try (Stream<Path> good = Files.list(Path.of("sample-configs/good"));
        Stream<Path> faulty = Files.list(Path.of("sample-configs/faulty"))) {
      return Stream.concat(good, faulty)
          .filter(file -> file.toString().endsWith(".json"))
          .sorted()
          .toList();
    }
  }

  private static Report report(Path file, Judge judge) {
    SetupReading.Read read =
        (SetupReading.Read) new EquipmentOption().withSheets(SetupReading.ofFile(file), file);
    return new Report(
        read.document(), read.setup(), judge.glance(read.setup(), Limits.standard(), AS_OF));
  }

  private static List<String> headlines(Report report) {
    return report.judgement().findings().stream()
        .map(finding -> RulePage.of(finding.check()).says())
        .toList();
  }

  private static Path withTheMostFindings() {
    return RECORDS.entrySet().stream()
        .max(Map.Entry.comparingByValue((one, other) -> Integer.compare(one.size(), other.size())))
        .orElseThrow()
        .getKey();
  }

  /** The classes of a page, on which alone the style sheet's colours depend. */
  private static List<String> classes(Path page) throws IOException {
    return Pattern.compile(" class=\"([^\"]*)\"")
        .matcher(Files.readString(page))
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  private static Path written(String name, String page) throws IOException {
    return Files.writeString(folder.resolve(name), page);
  }

  private static Path page(String name, String... arguments) {
    Path page = folder.resolve(name);
    CommandLineRun.of(
        Stream.concat(
                Stream.of(arguments), Stream.of("--out=" + page, "--overwrite", "--as-of=" + AS_OF))
            .toArray(String[]::new));
    return page;
  }

  private static List<Path> all() {
    return Stream.of(RECORDS.keySet(), NOTES, WHOLE).flatMap(pages -> pages.stream()).toList();
  }

  private static String axe() throws Exception {
    try (var file = PagesTest.class.getResourceAsStream("axe/axe.min.js")) {
      return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** The texts of an answer of the browser. */
  private static List<String> texts(String answer) {
    List<String> texts = new ArrayList<>();
    for (JsonNode each : JsonMapper.shared().readTree(answer).get("value")) {
      texts.add(each.isString() ? each.asString() : each.toString());
    }
    return texts;
  }

  /** The validator, made once: it takes longer to begin than for a hundred pages. */
  private static final class Html implements ErrorHandler {
    private static final Html CHECKER = new Html();

    private final SimpleDocumentValidator validator = new SimpleDocumentValidator();
    private final List<String> said = new ArrayList<>();

    private Html() {
      try {
        validator.setUpMainSchema("http://s.validator.nu/html5-all.rnc", this);
        validator.setUpValidatorAndParsers(this, false, false);
      } catch (Exception e) {
        throw new IllegalStateException("the validator does not begin", e);
      }
    }

    List<String> complaints(String page) throws Exception {
      said.clear();
      validator.checkHtmlInputSource(
          new InputSource(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8))));
      return List.copyOf(said);
    }

    @Override
    public void warning(SAXParseException e) {
      said.add(e.getLineNumber() + ": " + e.getMessage());
    }

    @Override
    public void error(SAXParseException e) {
      warning(e);
    }

    @Override
    public void fatalError(SAXParseException e) {
      warning(e);
    }
  }

  /** What the validator says of pages; a style sheet, the same on all, is looked at once. */
  private static List<String> complaints(List<Path> pages) throws Exception {
    List<String> wrong = new ArrayList<>();
    String style = "";
    for (Path page : pages) {
      String text = Files.readString(page);
      int end = text.indexOf("</style>");
      String own = text.substring(Math.max(0, text.indexOf("<style>")), Math.max(0, end));
      List<String> said =
          Html.CHECKER.complaints(own.equals(style) ? text.replace(own, "<style>") : text);
      style = own;
      if (!said.isEmpty()) {
        wrong.add(page.getFileName() + " " + said);
      }
    }
    return wrong;
  }

  @Test
  void everyPageIsValidHtml() throws Exception {
    assertThat(RECORDS).as("a page for each sample").hasSizeGreaterThan(100);
    List<Path> pages = new ArrayList<>(all());
    Path bad = written("invalid.html", "<!DOCTYPE html><title>x</title><p id=a><p id=a><img>");
    pages.add(bad);

    List<String> wrong = complaints(pages);

    assertThat(wrong).as("only what is wrong on purpose").hasSize(1);
    assertThat(wrong.get(0)).startsWith("invalid.html").contains("Duplicate ID");
  }

  /** Looks at a page with axe; what it finds, what the console says, and what was asked for. */
  private static List<String> looked(Browser chromium, Path page, boolean contrast)
      throws Exception {
    chromium.show(page);
    List<String> said = new ArrayList<>(texts(chromium.await(axe() + AXE_RUN.formatted(contrast))));
    said.addAll(said(chromium));
    return said;
  }

  /** What the console of the page shown says, and what the page asked for. */
  private static List<String> said(Browser chromium) throws Exception {
    List<String> said = new ArrayList<>(texts(chromium.console()));
    said.addAll(
        texts(
            chromium.run(
                "return performance.getEntriesByType('resource').map(each => each.name)")));
    return said;
  }

  /** Records made of the same kinds of element are one to axe: each kind is shown to it once. */
  @Test
  void axeFindsNothingOnAnyRecordWhichAsksForNothingAndHoldsEachFinding() throws Exception {
    Browser chromium = browser();
    List<String> wrong = new ArrayList<>();
    Set<String> kinds = new HashSet<>();
    Map<Path, List<String>> pages = new LinkedHashMap<>(RECORDS);
    if (EVERYTHING) {
      NOTES.forEach(page -> pages.put(page, List.of()));
    }
    for (Map.Entry<Path, List<String>> each : pages.entrySet()) {
      chromium.show(each.getKey());
      boolean axe = kinds.addAll(texts(chromium.run(KINDS))) || EVERYTHING;
      List<String> said = axe ? looked(chromium, each.getKey(), EVERYTHING) : said(chromium);
      said.addAll(notFound(chromium, each.getValue()));
      if (!said.isEmpty()) {
        wrong.add(each.getKey().getFileName() + " " + said);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(kinds).as("kinds of element").hasSizeGreaterThan(100);
    assertThat(RECORDS.values().stream().mapToInt(List::size).sum()).isGreaterThan(100);
    assertThat(notFound(chromium, List.of("no such headline"))).hasSize(1);
  }

  /** The texts that the browser's own search does not find in the page. */
  private static List<String> notFound(Browser chromium, List<String> said) throws Exception {
    return texts(
        chromium.run(
            "return "
                + JsonMapper.shared().writeValueAsString(said)
                + ".filter(each => { getSelection().removeAllRanges(); return !find(each); })"));
  }

  @Test
  void axeFindsNothingInTheDarkOrOnATelephone() throws Exception {
    Browser chromium = browser();
    List<String> wrong = new ArrayList<>();
    for (boolean dark : new boolean[] {true, false}) {
      chromium.dark(dark);
      chromium.size(dark ? 1280 : 360, 800);
      for (Path page : WHOLE) {
        List<String> said = looked(chromium, page, true);
        if (!said.isEmpty()) {
          wrong.add(page.getFileName() + (dark ? ", dark " : ", narrow ") + said);
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void axeWouldFindAFault() throws Exception {
    Browser chromium = browser();
    Path bad = written("bad.html", "<html><body><img src='nothing.png'></body></html>");

    assertThat(looked(chromium, bad, true).toString()).contains("image-alt", "nothing.png");
  }

  @Test
  void theDarkIsDark() throws Exception {
    Browser chromium = browser();
    String ground = "return [getComputedStyle(document.body).backgroundColor]";
    chromium.dark(false);
    chromium.show(WHOLE.get(0));
    List<String> light = texts(chromium.run(ground));
    chromium.dark(true);

    assertThat(texts(chromium.run(ground))).isNotEqualTo(light);
    chromium.dark(false);
  }

  @Test
  void noPageIsWiderThanItsWindow() throws Exception {
    Browser chromium = browser();
    for (Path page : WHOLE) {
      for (int width : new int[] {1280, 768, 360}) {
        chromium.size(width, 800);
        chromium.show(page);
        assertThat(
                chromium.run(
                    "return innerWidth == "
                        + width
                        + " && document.documentElement.scrollWidth <= innerWidth"))
            .as("%s at %d", page.getFileName(), width)
            .isEqualTo("{\"value\":true}");
      }
    }
    chromium.size(1280, 800);
  }

  /** The text of a PDF without spaces, and whatever of it lies beyond the margins. */
  private static final class Printed extends PDFTextStripper {
    private static final float MARGIN = 25;
    private final StringBuilder text = new StringBuilder();
    private final StringBuilder beyond = new StringBuilder();

    static Printed of(byte[] pdf) throws IOException {
      Printed printed = new Printed();
      try (PDDocument document = Loader.loadPDF(pdf)) {
        printed.getText(document);
      }
      return printed;
    }

    @Override
    protected void processTextPosition(TextPosition glyph) {
      PDRectangle page = getCurrentPage().getMediaBox();
      float right = glyph.getXDirAdj() + glyph.getWidthDirAdj();
      boolean inside =
          glyph.getXDirAdj() >= MARGIN
              && right <= page.getWidth() - MARGIN
              && glyph.getYDirAdj() >= MARGIN
              && glyph.getYDirAdj() <= page.getHeight() - MARGIN;
      (inside ? text : beyond).append(glyph.getUnicode());
      super.processTextPosition(glyph);
    }

    boolean holds(String said) {
      return bare(text.toString()).contains(bare(said));
    }

    private static String bare(String text) {
      return text.replaceAll("[\\s\\u00a0]", "").toLowerCase(Locale.ROOT);
    }
  }

  private static final String CELLS =
      "return [...document.querySelectorAll('tr > :last-child, h1, h2, h3, dd')]"
          + ".filter(each => !each.closest('details')).map(each => each.textContent)";

  @Test
  void nothingIsCutOffInPrint() throws Exception {
    Browser chromium = browser();
    int cells = 0;
    for (Path page : WHOLE) {
      chromium.show(page);
      List<String> written = texts(chromium.run(CELLS));
      Printed pdf = Printed.of(chromium.print());
      assertThat(pdf.beyond.toString()).as("beyond the margins of %s", page).isBlank();
      assertThat(written)
          .as("the last column of each table, headings and contents of %s", page)
          .allMatch(pdf::holds);
      cells += written.size();
    }
    assertThat(cells).isGreaterThan(200);
  }

  @Test
  void printIsShortAndSmall() throws Exception {
    Browser chromium = browser();
    chromium.show(WHOLE.get(0));
    byte[] pdf = chromium.print();

    assertThat(pdf.length).as("bytes to mail").isLessThan(1_500_000);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages())
          .as("pages of a home with two hazards")
          .isBetween(4, 8);
    }
  }

  @Test
  void aTableThatIsCutOffWouldBeSeen() throws Exception {
    Browser chromium = browser();
    chromium.show(
        written(
            "wide.html",
            "<table><tr><td style='min-width:1500px'>first<td>beyond the paper</table>"));

    assertThat(texts(chromium.run(CELLS))).isNotEmpty();
    assertThat(Printed.of(chromium.print()).holds("beyond the paper")).isFalse();
  }

  private static final String HOSTILE =
      "</title></style><script>window.ran=1</script><img src=x onerror='window.ran=1'>"
          + " \\\" ' & --> ]]> {{title}} \\u202Eabc\\u202C "
          + "x".repeat(400);

  /** The sample with a text in every place where a file says something of its own. */
  private static Path saying(String name, String text) throws IOException {
    String accepted =
        "\"accepted\": [ { \"check\": \"outlet-not-blended\", \"reason\": \"%s\", \"by\": \"%s\","
            + " \"on\": \"2026-11-01\" } ]";
    return written(
        name,
        Files.readString(Path.of(FAULTY))
            .replace("Sorrel House", text)
            .replace("\"name\": \"diverter\"", "\"name\": \"" + text + "\"")
            .replace("per its instructions", text)
            .replace("\"accepted\": []", accepted.formatted(text, text)));
  }

  @Test
  void aHostileFileChangesNothing() throws Exception {
    Browser chromium = browser();
    String count =
        "return [window.ran, document.querySelectorAll('*').length, document.images.length,"
            + " document.scripts.length, document.documentElement.scrollWidth].join()";
    Path tame = saying("tame.json", "plain");
    Path hostile = saying("hostile.json", HOSTILE);
    for (String command : List.of("check", "sheet", "compare")) {
      chromium.console();
      List<String> counts = new ArrayList<>();
      for (Path file : List.of(tame, hostile)) {
        Path page =
            page(
                "hostile-" + command + ".html",
                command,
                "--no-day-run",
                "--format=html",
                file.toString());
        chromium.show(page);
        counts.add(chromium.run(count));
        assertThat(complaints(List.of(page))).as(command).isEmpty();
      }
      assertThat(counts.get(1)).as(command).isEqualTo(counts.get(0));
      assertThat(texts(chromium.run("return [document.querySelector('h1').textContent]")))
          .singleElement()
          .asString()
          .contains("</title></style><script>window.ran=1</script>", "{{title}}")
          .doesNotContain("\u202E");
      assertThat(texts(chromium.console())).isEmpty();
    }
  }
}
