package deadband.report;

import deadband.document.Printable;
import deadband.setup.Choice;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
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

  /** A value, indented, without a line end. */
  static String of(Object value) {
    return of(true, json -> value(json, value));
  }

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

  /**
   * An object.
   *
   * @param members names and values in turn
   */
  static Map<String, Object> object(Object... members) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int at = 0; at < members.length; at += 2) {
      object.put(members[at].toString(), members[at + 1]);
    }
    return object;
  }

  /** A member that holds a value. */
  static void member(JsonGenerator json, String name, @Nullable Object value) {
    json.writeName(name);
    value(json, value);
  }

  /** A value of a setup, or lists and maps of such; null where there is none. */
  static void value(JsonGenerator json, @Nullable Object value) {
    if (value == null) {
      json.writeNull();
    } else if (value instanceof Number number) {
      json.writeNumber(new BigDecimal(Words.number(number.doubleValue())));
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof Collection<?> items) {
      json.writeStartArray();
      items.forEach(item -> value(json, item));
      json.writeEndArray();
    } else if (value instanceof Map<?, ?> members) {
      json.writeStartObject();
      members.forEach((name, member) -> member(json, name.toString(), member));
      json.writeEndObject();
    } else {
      json.writeString(value instanceof Choice choice ? choice.word() : value.toString());
    }
  }
}
