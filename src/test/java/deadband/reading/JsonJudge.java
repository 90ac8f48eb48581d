package deadband.reading;

import deadband.document.Literal;
import deadband.document.Member;
import deadband.document.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/**
 * An independent judge of what is JSON: the Jackson library, set to take comments and trailing
 * commas as we do, and nothing else.
 */
final class JsonJudge {

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
          .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
          .disable(TokenStreamFactory.Feature.CANONICALIZE_PROPERTY_NAMES)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNameLength(JsonReading.MOST_BYTES)
                  .maxNumberLength(JsonReading.MOST_BYTES)
                  .build())
          .build();

  private JsonJudge() {}

  /** What a text says, token by token; empty where it is not one section and nothing else. */
  static Optional<List<String>> tokens(String text) {
    String unmarked = text.startsWith("\ufeff") ? text.substring(1) : text;
    List<String> tokens = new ArrayList<>();
    int depth = 0;
    int values = 0;
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), unmarked)) {
      for (JsonToken token; (token = parser.nextToken()) != null; ) {
        tokens.add(written(token, parser));
        depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
        values += depth == 0 ? 1 : 0;
      }
    } catch (JacksonException refused) {
      return Optional.empty();
    }
    return values == 1 && tokens.get(0).equals("{") ? Optional.of(tokens) : Optional.empty();
  }

  private static String written(JsonToken token, JsonParser parser) {
    return switch (token) {
      case PROPERTY_NAME -> Literal.of(parser.currentName()).json();
      case VALUE_STRING -> Literal.of(parser.getString()).json();
      default -> parser.getString();
    };
  }

  /** The same of a value that was read by us. */
  static List<String> tokens(Node node) {
    List<String> tokens = new ArrayList<>();
    add(node, tokens);
    return tokens;
  }

  private static void add(Node node, List<String> tokens) {
    if (node instanceof Node.Section section) {
      tokens.add("{");
      for (Member member : section.members()) {
        tokens.add(Literal.of(member.name()).json());
        add(member.value(), tokens);
      }
      tokens.add("}");
    } else if (node instanceof Node.Sequence list) {
      tokens.add("[");
      list.items().forEach(item -> add(item, tokens));
      tokens.add("]");
    } else {
      tokens.add(Literal.of(node).json());
    }
  }
}
