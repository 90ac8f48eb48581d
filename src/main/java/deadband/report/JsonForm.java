package deadband.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;

/**
 * How a value is written as JSON, and the schema that holds for it: one description of both, so
 * that neither can know a member that the other lacks.
 *
 * @param schema of the value, or the reference to it
 * @param definitions the schemas referred to, by name
 */
record JsonForm<T>(
    BiConsumer<JsonGenerator, T> writer,
    Map<String, Object> schema,
    Map<String, Object> definitions) {

  static final JsonForm<String> TEXT = of("string");
  static final JsonForm<Double> NUMBER = of("number");
  static final JsonForm<Boolean> FLAG = of("boolean");
  static final JsonForm<Integer> COUNT =
      new JsonForm<Integer>(JsonGenerator::writeNumber, Map.of("type", "integer"), Map.of())
          .with("minimum", 0);

  /** Any value of a setup file but a section, null where it is missing. */
  static final JsonForm<Optional<Object>> VALUE =
      new JsonForm<Optional<Object>>(
              (json, value) -> JsonText.value(json, value.orElse(null)),
              Map.of("type", List.of("number", "string", "boolean", "array", "null")),
              Map.of())
          .named("value");

  private static <T> JsonForm<T> of(String type) {
    return new JsonForm<>(JsonText::value, Map.of("type", type), Map.of());
  }

  /** A number that is the same in each of these files. */
  static JsonForm<Integer> constant(int value) {
    return new JsonForm<>(JsonGenerator::writeNumber, Map.of("const", value), Map.of());
  }

  /** One of some words. */
  static JsonForm<String> oneOf(List<String> words) {
    return new JsonForm<>(JsonText::value, Map.of("enum", words), Map.of());
  }

  /** The same, of something that has it. */
  <S> JsonForm<S> of(Function<S, T> part) {
    return new JsonForm<>(
        (json, whole) -> writer.accept(json, part.apply(whole)), schema, definitions);
  }

  /** The same, with one thing more said of it in the schema. */
  JsonForm<T> with(String keyword, Object says) {
    Map<String, Object> more = new LinkedHashMap<>(schema);
    more.put(keyword, says);
    return new JsonForm<>(writer, more, definitions);
  }

  JsonForm<T> described(String means) {
    return with("description", means);
  }

  /** The same, with its schema under a name of its own. */
  JsonForm<T> named(String name) {
    Map<String, Object> all = new LinkedHashMap<>(definitions);
    all.put(name, schema);
    return new JsonForm<>(writer, Map.of("$ref", "#/$defs/" + name), all);
  }

  /** Several of it. */
  JsonForm<List<T>> list() {
    Map<String, Object> of = new LinkedHashMap<>();
    of.put("type", "array");
    of.put("items", schema);
    return new JsonForm<>(
        (json, values) -> {
          json.writeStartArray();
          values.forEach(value -> writer.accept(json, value));
          json.writeEndArray();
        },
        of,
        definitions);
  }

  /** The same, or null. */
  JsonForm<Optional<T>> orNull() {
    Map<String, Object> either = new LinkedHashMap<>(schema);
    if (schema.get("type") instanceof String type) {
      either.put("type", List.of(type, "null"));
    } else {
      either.clear();
      either.put("oneOf", List.of(schema, Map.of("type", "null")));
    }
    return new JsonForm<>(
        (json, value) ->
            value.ifPresentOrElse(there -> writer.accept(json, there), json::writeNull),
        either,
        definitions);
  }

  /** A value, without a line end. */
  String written(T value, boolean indented) {
    return JsonText.of(indented, json -> writer.accept(json, value));
  }

  /**
   * The JSON Schema of a file that holds one of these, without a line end.
   *
   * @param of what it holds, one word
   */
  static String schema(String of, int version, List<JsonForm<?>> either) {
    Map<String, Object> definitions = new LinkedHashMap<>();
    either.forEach(form -> definitions.putAll(form.definitions));
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("$id", "urn:deadband:" + of + ":" + version);
    root.put("title", "Deadband " + of + ", version " + version);
    root.put("oneOf", either.stream().map(JsonForm::schema).toList());
    root.put("$defs", definitions);
    return JsonText.of(root);
  }

  /** An object with these members and no others, each of them always there. */
  static final class Members<T> {

    private final List<Member<T, ?>> all = new ArrayList<>();

    private record Member<T, V>(String name, JsonForm<V> form, Function<T, V> value) {
      void write(JsonGenerator json, T whole) {
        json.writeName(name);
        form.writer.accept(json, value.apply(whole));
      }
    }

    /** One member more. */
    <V> Members<T> and(String name, JsonForm<V> form, Function<T, V> value) {
      all.add(new Member<>(name, form, value));
      return this;
    }

    /** One member more, null where it is not known. */
    <V> Members<T> orNull(String name, JsonForm<V> form, Function<T, @Nullable V> value) {
      return and(name, form.orNull(), whole -> Optional.ofNullable(value.apply(whole)));
    }

    /** All members of something that it holds. */
    <P> Members<T> and(Members<P> others, Function<T, P> part) {
      others.all.forEach(member -> add(member, part));
      return this;
    }

    private <P, V> void add(Member<P, V> member, Function<T, P> part) {
      and(member.name, member.form, part.andThen(member.value));
    }

    JsonForm<T> form() {
      List<Member<T, ?>> members = List.copyOf(all);
      Map<String, Object> properties = new LinkedHashMap<>();
      Map<String, Object> definitions = new LinkedHashMap<>();
      members.forEach(
          member -> {
            properties.put(member.name, member.form.schema);
            definitions.putAll(member.form.definitions);
          });
      Map<String, Object> schema = new LinkedHashMap<>();
      schema.put("type", "object");
      schema.put("required", List.copyOf(properties.keySet()));
      schema.put("additionalProperties", false);
      schema.put("properties", properties);
      return new JsonForm<>(
          (json, whole) -> {
            json.writeStartObject();
            members.forEach(member -> member.write(json, whole));
            json.writeEndObject();
          },
          schema,
          definitions);
    }
  }
}
