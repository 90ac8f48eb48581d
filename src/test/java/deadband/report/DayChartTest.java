package deadband.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import deadband.dayrun.HeatPumpModel;
import deadband.dayrun.Recording;
import deadband.dayrun.Recordings;
import deadband.dayrun.StepLength;
import deadband.report.DayChart.Markings;
import deadband.report.DayChart.Size;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The picture is well-formed, tells itself, and draws things where the data say. */
class DayChartTest {

  private static final String TITLE = "Heron Weir <clear> & \"quiet\" \u0007day";

  private static Markings markings() {
    return new Markings(
        "clear",
        TITLE,
        false,
        OptionalDouble.of(3.2),
        OptionalDouble.of(2.7),
        OptionalDouble.of(62),
        OptionalDouble.of(65));
  }

  private static Document drawn(Recording recording, Size size) throws Exception {
    String svg = DayChart.of(recording, markings(), size);
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
  }

  private static List<Element> all(Document svg, String name) {
    NodeList nodes = svg.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
    return IntStream.range(0, nodes.getLength()).mapToObj(at -> (Element) nodes.item(at)).toList();
  }

  private static Element textThatStarts(Document svg, String start) {
    return all(svg, "text").stream()
        .filter(text -> text.getTextContent().startsWith(start))
        .findFirst()
        .orElseThrow();
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  /** Height of a value of the first panel, from the labels of its scale. */
  private static double powerHeight(Document svg, double value) {
    List<Element> scale =
        all(svg, "text").stream()
            .filter(text -> text.getAttribute("text-anchor").equals("end"))
            .toList();
    double zero = number(first(scale, "0"), "y");
    double two = number(first(scale, "2"), "y");
    return zero + value / 2 * (two - zero);
  }

  private static Element first(List<Element> texts, String content) {
    return texts.stream()
        .filter(text -> text.getTextContent().equals(content))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @EnumSource
  void isWellFormedAndTellsItself(Size size) throws Exception {
    Document svg = drawn(Recordings.hunting(), size);
    Element root = svg.getDocumentElement();
    assertThat(root.getAttribute("role")).isEqualTo("img");
    assertThat(root.getAttribute("aria-labelledby")).isEqualTo("clear-title clear-desc");
    assertThat(all(svg, "title").get(0).getTextContent())
        .isEqualTo("Heron Weir <clear> & \"quiet\" day");
    assertThat(all(svg, "desc").get(0).getTextContent())
        .contains(
            "Relay start 3.2 kW", "relay stop 2.7 kW", "relay closed 16×", "tank limit 62 °C");
    assertThat(all(svg, "script")).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void everyIdIsItsOwn(Size size) throws Exception {
    Document svg = drawn(Recordings.cloud(), size);
    List<String> ids = new ArrayList<>();
    NodeList every = svg.getElementsByTagName("*");
    for (int at = 0; at < every.getLength(); at++) {
      String id = ((Element) every.item(at)).getAttribute("id");
      if (!id.isEmpty()) {
        ids.add(id);
      }
    }
    assertThat(ids).isNotEmpty().doesNotHaveDuplicates().allMatch(id -> id.startsWith("clear-"));
  }

  @ParameterizedTest
  @EnumSource
  void thresholdsLieWhereTheScaleSays(Size size) throws Exception {
    Document svg = drawn(Recordings.hunting(), size);
    List<Double> heights =
        all(svg, "path").stream()
            .filter(path -> path.getAttribute("stroke-dasharray").equals("8 3"))
            .map(path -> path.getAttribute("d"))
            .filter(d -> d.startsWith("M" + (size == Size.PAGE ? "30" : "26") + " "))
            .map(d -> Double.parseDouble(d.substring(d.indexOf(' '), d.indexOf('H'))))
            .toList();
    double base = powerHeight(svg, 0) - zeroLine(svg);
    assertThat(heights).hasSize(2);
    assertThat(heights.get(0)).isCloseTo(powerHeight(svg, 3.2) - base, within(0.2));
    assertThat(heights.get(1)).isCloseTo(powerHeight(svg, 2.7) - base, within(0.2));
  }

  /** Height of the first line at zero: its label's base lies a third of a letter lower. */
  private static double zeroLine(Document svg) {
    String d =
        all(svg, "path").stream()
            .filter(path -> path.getAttribute("stroke-width").equals("0.8"))
            .map(path -> path.getAttribute("d"))
            .findFirst()
            .orElseThrow();
    return Double.parseDouble(d.substring(d.indexOf(' '), d.indexOf('H')));
  }

  @ParameterizedTest
  @EnumSource
  void barsLieWhereRelayAndHeatPumpSay(Size size) throws Exception {
    Recording recording = Recordings.hunting();
    Document svg = drawn(recording, size);
    double left = size == Size.PAGE ? 30 : 26;
    double right = size == Size.PAGE ? 760 - 158 : 360 - 130;
    List<Element> bars =
        all(svg, "rect").stream().filter(rect -> rect.getAttribute("height").equals("9")).toList();
    List<Element> relay =
        bars.stream().filter(bar -> bar.getAttribute("fill").equals("#161616")).toList();
    List<Integer> closings = risings(recording.length(), recording::relayClosed);
    assertThat(relay).hasSameSizeAs(closings).hasSize(16);
    for (int at = 0; at < relay.size(); at++) {
      double x = left + closings.get(at) / 1440.0 * (right - left);
      assertThat(number(relay.get(at), "x")).isCloseTo(x, within(0.06));
    }
    List<Integer> starts =
        risings(recording.length(), at -> recording.heatPump(at) == HeatPumpModel.State.RUNNING);
    assertThat(bars).hasSize(closings.size() + starts.size());
    double closed = IntStream.range(0, 1440).filter(recording::relayClosed).count();
    double drawn = relay.stream().mapToDouble(bar -> number(bar, "width")).sum();
    assertThat(drawn).isCloseTo(closed / 1440 * (right - left), within(1.0));
  }

  private static List<Integer> risings(int length, java.util.function.IntPredicate state) {
    return IntStream.range(0, length)
        .filter(at -> state.test(at) && (at == 0 || !state.test(at - 1)))
        .boxed()
        .toList();
  }

  @ParameterizedTest
  @EnumSource
  void labelsStandApartAndInside(Size size) throws Exception {
    for (Recording recording :
        List.of(Recordings.hunting(), Recordings.cloud(), Recordings.coarse())) {
      Document svg = drawn(recording, size);
      double width = number(svg.getDocumentElement(), "width");
      double font = size == Size.PAGE ? 12 : 10.5;
      List<Element> labels =
          all(svg, "text").stream().filter(text -> !text.hasAttribute("text-anchor")).toList();
      for (Element one : labels) {
        // an ordinary letter of these fonts is about half as wide as high
        double end = number(one, "x") + 0.53 * font * one.getTextContent().length();
        assertThat(end).as(one.getTextContent()).isLessThanOrEqualTo(width);
        for (Element other : labels) {
          if (one != other && Math.abs(number(one, "x") - number(other, "x")) < 40) {
            assertThat(Math.abs(number(one, "y") - number(other, "y"))).isGreaterThan(font);
          }
        }
      }
    }
  }

  @Test
  void namesEverythingItDraws() throws Exception {
    Document svg = drawn(Recordings.hunting(), Size.PAGE);
    List<String> texts = all(svg, "text").stream().map(Element::getTextContent).toList();
    assertThat(texts)
        .contains(
            "PV",
            "counted surplus",
            "start 3.2 kW",
            "stop 2.7 kW",
            "immersion",
            "heat pump",
            "import",
            "tank top",
            "diverter sensor",
            "tank bottom",
            "tank limit 62 °C",
            "mixing valve 65 °C",
            "growth 20 to 45 °C",
            "00:00",
            "24:00")
        .doesNotContain("back-up heater");
    assertThat(textThatStarts(svg, "by the timer").getTextContent()).endsWith("11×");
  }

  @Test
  void isTheSameEachTimeAndHoldsNoOddNumber() {
    String one = DayChart.of(Recordings.cloud(), markings(), Size.PAGE);
    assertThat(one)
        .isEqualTo(DayChart.of(Recordings.cloud(), markings(), Size.PAGE))
        .doesNotContain("NaN", "Infinity", "E-", "\r");
    assertThat(one.length()).isLessThan(100_000);
  }

  @Test
  void leavesOutWhatIsNotSet() {
    OptionalDouble none = OptionalDouble.empty();
    String svg =
        DayChart.of(
            Recordings.cloud(),
            new Markings("x", "A day", false, none, none, none, none),
            Size.PAGE);
    assertThat(svg).doesNotContain("start ", "tank limit", "mixing valve");
  }

  @Test
  void refusesWhatItCannotDraw() {
    Recording nothing = Recording.of(StepLength.MINUTE, 5);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DayChart.of(nothing, markings(), Size.PAGE));
    OptionalDouble none = OptionalDouble.empty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Markings("a b", "A day", false, none, none, none, none))
        .withMessageContaining("a b");
  }

  /** {@code -Ddeadband.charts=FOLDER} leaves the pictures there, to be looked at. */
  @Test
  void canBeLookedAt() throws Exception {
    String folder = System.getProperty("deadband.charts", "");
    for (Size size : Size.values()) {
      String hunting = DayChart.of(Recordings.hunting(), markings(), size);
      String cloud = DayChart.of(Recordings.cloud(), markings(), size);
      assertThat(hunting).isNotEqualTo(cloud);
      if (!folder.isEmpty()) {
        Files.createDirectories(Path.of(folder));
        Files.writeString(Path.of(folder, "hunting-" + size + ".svg"), hunting);
        Files.writeString(Path.of(folder, "cloud-" + size + ".svg"), cloud);
      }
    }
  }
}
