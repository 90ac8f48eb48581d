package deadband.reading;

import deadband.document.Document;
import deadband.document.Member;
import deadband.document.Node;
import deadband.document.Problem;
import deadband.document.Source;
import deadband.document.Span;
import deadband.paste.CleanText;
import deadband.paste.PasteReader;
import deadband.paste.Pasted;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A text that is no setup file: an email, a chat, rows of a spreadsheet. Where JSON stands in it,
 * quoted or fenced, that is read as JSON, with its places in the text; the lines around it are
 * read, too.
 */
final class PastedText {

  private static final Pattern SETUP_FILE = Pattern.compile("(?i).*\\.jsonc?");
  private static final Pattern BEGINS_AS_JSON =
      Pattern.compile("[\\s\\uFEFF]*(?:[{\\[\"']|//|/\\*|$)", Pattern.DOTALL);
  private static final Pattern OBJECT =
      Pattern.compile("\\{(?=\\s*(?:\"[A-Za-z]|//|/\\*|[A-Za-z_]+\\s*:))");

  /** What a program exports under names of its own is not understood; the rest is read. */
  private static final Set<Problem.Kind> NAMES =
      EnumSet.of(Problem.Kind.UNKNOWN_NAME, Problem.Kind.OTHER_SECTION);

  private PastedText() {}

  /** Whether a text is not meant as a setup file: by its name, and by how it begins. */
  static boolean mayBe(Source source) {
    boolean named = SETUP_FILE.matcher(source.name()).matches();
    return !named && !BEGINS_AS_JSON.matcher(source.text()).lookingAt();
  }

  /** The settings in a text; null where it holds none. */
  static @Nullable SetupReading read(Source source) {
    CleanText clean = CleanText.of(source.text());
    Matcher object = OBJECT.matcher(clean.text());
    if (object.find()) {
      return ofJson(source, clean, object.start());
    }
    Pasted pasted = PasteReader.read(source);
    if (pasted.isEmpty()) {
      return null;
    }
    return SetupReading.of(new JsonReading.Read(pasted.document(), List.of()), pasted);
  }

  private static SetupReading ofJson(Source source, CleanText clean, int start) {
    String text = clean.text();
    int end = end(text, start);
    Source json = Source.of(source.name(), blank(text, 0, start) + text.substring(start, end));
    JsonReading reading = moved(JsonParser.read(json), source, clean);
    if (!(reading instanceof JsonReading.Read read)) {
      return SetupReading.of(reading, null);
    }
    Pasted around = around(source, clean.original(start, end));
    PastedAround both = PastedAround.of(read.document(), around);
    SetupReading setup = both.read(read.problems());
    boolean names =
        setup instanceof SetupReading.Unreadable refused
            && refused.problems().stream().allMatch(problem -> NAMES.contains(problem.kind()));
    return names
        ? both.without(((SetupReading.Unreadable) setup).problems()).read(read.problems())
        : setup;
  }

  /** What the lines around the JSON say. */
  private static Pasted around(Source source, Span json) {
    String text = source.text();
    String outside =
        text.substring(0, json.start())
            + blank(text, json.start(), json.end())
            + text.substring(json.end());
    return PasteReader.read(Source.of(source.name(), outside));
  }

  /** As many blanks, the line ends kept. */
  private static String blank(String text, int from, int to) {
    return text.substring(from, to).replaceAll("[^\\n\\r]", " ");
  }

  /** Offset after the bracket that closes the one here; the end of the text where none does. */
  private static int end(String text, int start) {
    int depth = 0;
    boolean quoted = false;
    for (int at = start; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c == '"' && text.charAt(at - (at > 0 ? 1 : 0)) != '\\') {
        quoted = !quoted;
      } else if (!quoted && c == '{') {
        depth++;
      } else if (!quoted && c == '}' && --depth == 0) {
        return at + 1;
      } else if (c == '\n') {
        quoted = false;
      }
    }
    return text.length();
  }

  /** The same reading, its places being those of the text as it was pasted. */
  private static JsonReading moved(JsonReading reading, Source source, CleanText clean) {
    List<Problem> problems =
        reading.problems().stream().map(problem -> moved(problem, source, clean)).toList();
    if (reading instanceof JsonReading.Read read) {
      Node.Section root = (Node.Section) moved(read.document().root(), clean);
      return new JsonReading.Read(Document.of(source, root), problems);
    }
    return new JsonReading.Unreadable(reading.name(), problems);
  }

  private static Problem moved(Problem problem, Source source, CleanText clean) {
    return new Problem(
        source,
        problem.kind(),
        problem.pointer(),
        moved(problem.span(), clean),
        problem.found(),
        problem.right(),
        problem.nearest(),
        null,
        moved(problem.earlier(), clean));
  }

  private static @Nullable Span moved(@Nullable Span span, CleanText clean) {
    return span == null ? null : clean.original(span.start(), span.end());
  }

  private static Node moved(Node node, CleanText clean) {
    Span span = clean.original(node.span().start(), node.span().end());
    if (node instanceof Node.Section section) {
      List<Member> members = new ArrayList<>();
      for (Member member : section.members()) {
        Span name = clean.original(member.nameSpan().start(), member.nameSpan().end());
        members.add(new Member(name, member.name(), moved(member.value(), clean)));
      }
      return new Node.Section(span, members);
    }
    if (node instanceof Node.Sequence list) {
      return new Node.Sequence(
          span, list.items().stream().map(item -> moved(item, clean)).toList());
    }
    if (node instanceof Node.Text text) {
      return new Node.Text(span, text.value());
    }
    if (node instanceof Node.Numeral number) {
      return new Node.Numeral(span, number.literal(), number.value());
    }
    return node instanceof Node.Truth truth
        ? new Node.Truth(span, truth.value())
        : new Node.Nothing(span);
  }
}
