package deadband.report;

import deadband.document.Printable;
import deadband.setup.Choice;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.SerializableString;
import tools.jackson.core.io.CharacterEscapes;
import tools.jackson.core.io.SerializedString;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/** JSON, indented for people or on one line for programs. */
final class JsonText {

  private static final JsonFactory FACTORY =
      JsonFactory.builder().characterEscapes(new Hidden()).build();

  private JsonText() {}

  /** What the writer writes, without a line end; indented by two where it is for people. */
  static String of(boolean indented, Consumer<JsonGenerator> writer) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(context(indented), text)) {
      writer.accept(json);
    }
    return text.toString();
  }

  private static ObjectWriteContext context(boolean indented) {
    return indented ? new Indented() : ObjectWriteContext.empty();
  }

  /** Writes by its number every character that shows nothing or turns the direction of writing. */
  private static final class Hidden extends CharacterEscapes {

    private static final long serialVersionUID = 1;
    private static final int[] ASCII = standardAsciiEscapesForJSON();

    @Override
    public int[] getEscapeCodesForAscii() {
      return ASCII.clone();
    }

    @Override
    public @Nullable SerializableString getEscapeSequence(int code) {
      boolean half = code <= Character.MAX_VALUE && Character.isSurrogate((char) code);
      return half || !Printable.isHidden(code)
          ? null
          : new SerializedString(String.format(Locale.ROOT, "\\u%04X", code));
    }
  }

  private static final class Indented extends ObjectWriteContext.Base {

    private static final Separators SEPARATORS =
        Separators.createDefaultInstance()
            .withObjectNameValueSpacing(Separators.Spacing.AFTER)
            .withObjectEmptySeparator("")
            .withArrayEmptySeparator("");
    private static final DefaultIndenter LINES = new DefaultIndenter("  ", "\n");

    @Override
    public PrettyPrinter getPrettyPrinter() {
      return new DefaultPrettyPrinter(SEPARATORS)
          .withObjectIndenter(LINES)
          .withArrayIndenter(LINES);
    }

    @Override
    public boolean hasPrettyPrinter() {
      return true;
    }
  }

  /** A member that holds a text, or null. */
  static void string(JsonGenerator json, String name, @Nullable String value) {
    json.writeName(name);
    if (value == null) {
      json.writeNull();
    } else {
      json.writeString(value);
    }
  }

  /** A member that holds a list, one element at a time. */
  static <T> void list(
      JsonGenerator json, String name, List<? extends T> elements, Consumer<T> writer) {
    json.writeName(name);
    json.writeStartArray();
    elements.forEach(writer);
    json.writeEndArray();
  }

  /** A list of texts. */
  static void texts(JsonGenerator json, String name, List<?> elements) {
    list(json, name, elements, element -> json.writeString(element.toString()));
  }

  /** A member that holds a number. */
  static void number(JsonGenerator json, String name, double value) {
    json.writeName(name);
    number(json, value);
  }

  /** A member that holds a value of a setup, or null. */
  static void value(JsonGenerator json, String name, @Nullable Object value) {
    json.writeName(name);
    value(json, value);
  }

  private static void value(JsonGenerator json, @Nullable Object value) {
    if (value == null) {
      json.writeNull();
    } else if (value instanceof Double number) {
      number(json, number);
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof List<?> items) {
      json.writeStartArray();
      items.forEach(item -> value(json, item));
      json.writeEndArray();
    } else {
      json.writeString(value instanceof Choice choice ? choice.word() : value.toString());
    }
  }

  private static void number(JsonGenerator json, double value) {
    json.writeNumber(new BigDecimal(Words.number(value)));
  }
}
