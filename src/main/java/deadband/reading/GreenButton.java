package deadband.reading;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.meterlog.Assembly;
import deadband.meterlog.Heading;
import deadband.meterlog.LogUnit;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import deadband.meterlog.Readings;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * Green Button (ESPI, NAESB REQ.21) XML: the interval readings, by reading type.
 *
 * <p>A reading type gives the unit (38 W, 72 Wh), a power of ten, and the direction of flow (1 to
 * the customer, 19 from). Blocks follow their reading type in the feed, as they do in the files of
 * utilities. Times are UTC; the local clock is that of the feed's LocalTimeParameters. External
 * entities and document types are not read.
 */
final class GreenButton {

  private static final int WATT = 38;
  private static final int WATT_HOUR = 72;
  private static final int FROM_CUSTOMER = 19;
  private static final double UNKNOWN = -1;

  private final String name;
  private final Source source;
  private final Map<String, Readings> readings = new LinkedHashMap<>();
  private final LogOptions options;
  private int unit = WATT_HOUR;
  private int power = 0;
  private boolean out;
  private int clock_s;
  private long start_s;
  private double duration_s = UNKNOWN;
  private double value = Double.NaN;
  private final StringBuilder text = new StringBuilder();

  GreenButton(String name, LogOptions options) {
    this.name = name;
    this.options = options;
    this.source = Source.named(name);
  }

  LogReading read(InputStream in) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    int line = 0;
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(in);
      while (xml.hasNext()) {
        line = xml.getLocation().getLineNumber();
        take(xml.next(), xml);
      }
      xml.close();
    } catch (XMLStreamException | NumberFormatException | ArithmeticException bad) {
      return LogReading.unreadable(
          Problem.of(
              source,
              Kind.NOT_FITTING,
              "XML that cannot be read, near line " + line,
              "a Green Button (ESPI) file as the utility gives it"));
    }
    return finished();
  }

  private void take(int event, XMLStreamReader xml) {
    switch (event) {
      case XMLStreamConstants.START_ELEMENT -> {
        text.setLength(0);
        begin(xml.getLocalName());
      }
      case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
        if (text.length() < 64) {
          text.append(xml.getText());
        }
      }
      case XMLStreamConstants.END_ELEMENT -> end(xml.getLocalName());
      default -> {}
    }
  }

  private void begin(String element) {
    switch (element) {
      case "ReadingType" -> {
        unit = WATT_HOUR;
        power = 0;
        out = false;
      }
      case "IntervalReading" -> {
        value = Double.NaN;
        duration_s = UNKNOWN;
      }
      default -> {}
    }
  }

  private void end(String element) {
    switch (element) {
      case "uom" -> unit = (int) number();
      case "powerOfTenMultiplier" -> power = (int) number();
      case "flowDirection" -> out = (int) number() == FROM_CUSTOMER;
      case "tzOffset" -> clock_s = (int) number();
      case "start" -> start_s = number();
      case "duration" -> duration_s = number();
      case "value" -> value = number();
      case "IntervalReading" -> keep();
      default -> {}
    }
    text.setLength(0);
  }

  private long number() {
    return Long.parseLong(text.toString().strip());
  }

  private void keep() {
    if ((unit != WATT && unit != WATT_HOUR) || Double.isNaN(value)) {
      return;
    }
    String key = out ? "export" : "import";
    Readings all =
        readings.computeIfAbsent(
            key, direction -> new Readings(name, List.of(heading(direction)), false, true));
    double base = value * Math.pow(10, power);
    // brought to W over the reading's own duration, so that mixed lengths stay right
    double w = unit == WATT ? base : duration_s > 0 ? base * 3600 / duration_s : Double.NaN;
    all.add(start_s, clock_s, new double[] {w});
  }

  private Heading heading(String direction) {
    Meaning said = options.meanings().get(direction);
    if (said != null) {
      return new Heading(direction, said, LogUnit.W, "as said");
    }
    boolean export = direction.equals("export");
    return new Heading(
        direction, export ? Meaning.EXPORT : Meaning.IMPORT, LogUnit.W, "by its flow direction");
  }

  private LogReading finished() {
    @Nullable MeterLog all = null;
    List<String> skipped = new ArrayList<>();
    for (Readings each : readings.values()) {
      if (each.rows() > 1) {
        MeterLog log = Assembly.of(each);
        all = all == null ? log : all.with(log);
      }
    }
    return all == null
        ? LogReading.unreadable(
            Problem.of(
                source,
                Kind.MISSING,
                "XML without interval readings in W or Wh",
                "a Green Button (ESPI) file with IntervalReading entries"))
        : new LogReading.Read(name, all, skipped);
  }
}
