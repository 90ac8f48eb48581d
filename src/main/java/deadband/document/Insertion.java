package deadband.document;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes a value where none stands, in the layout of its siblings. */
final class Insertion {

  private static final String STEP = "  ";

  private final Document document;
  private final String text;

  private Insertion(Document document) {
    this.document = document;
    this.text = document.text();
  }

  static String apply(Document document, Pointer pointer, Literal value) {
    return new Insertion(document).insert(pointer, value);
  }

  private String insert(Pointer pointer, Literal value) {
    List<String> tokens = pointer.tokens();
    Node holder = document.root();
    for (int i = 0; i < tokens.size(); i++) {
      Node inside = Document.child(holder, tokens.get(i));
      List<String> rest = tokens.subList(i + 1, tokens.size());
      if (inside instanceof Node.Nothing) {
        return Splice.one(text, inside.span(), nested(pointer, rest, value).json());
      }
      if (inside == null) {
        return into(holder, tokens.get(i), nested(pointer, rest, value), pointer);
      }
      holder = inside;
    }
    throw new IllegalArgumentException(
        document.name() + " already holds " + pointer.dotted() + "; replace it");
  }

  /** The value inside the sections and lists that are missing around it. */
  private static Literal nested(Pointer pointer, List<String> missing, Literal value) {
    Literal nested = value;
    for (int i = missing.size() - 1; i >= 0; i--) {
      String token = missing.get(i);
      if (token.equals("0") || token.equals("-")) {
        nested = Literal.list(List.of(nested));
      } else if (Pointer.isIndex(token)) {
        throw new IllegalArgumentException(
            pointer.dotted() + ": a list that is not there yet begins with item 0");
      } else {
        nested = Literal.section(Map.of(token, nested));
      }
    }
    return nested;
  }

  private String into(Node holder, String token, Literal value, Pointer pointer) {
    if (holder instanceof Node.Section section) {
      List<Member> members = section.members();
      Member last = members.isEmpty() ? null : members.get(members.size() - 1);
      Member before = members.size() < 2 ? null : members.get(members.size() - 2);
      String written = Literal.of(token).json() + ": " + value.json();
      return last == null
          ? first(section, written, " ")
          : after(section, last.span(), before == null ? null : before.span(), written);
    }
    if (holder instanceof Node.Sequence sequence) {
      List<Node> items = sequence.items();
      check(token.equals("-") || token.equals(Integer.toString(items.size())), pointer);
      Node last = items.isEmpty() ? null : items.get(items.size() - 1);
      Node before = items.size() < 2 ? null : items.get(items.size() - 2);
      return last == null
          ? first(sequence, value.json(), "")
          : after(sequence, last.span(), before == null ? null : before.span(), value.json());
    }
    throw new IllegalArgumentException(
        pointer.dotted() + " cannot be written: what should hold it is " + holder.kind());
  }

  private static void check(boolean appends, Pointer pointer) {
    if (!appends) {
      throw new IllegalArgumentException(
          pointer.dotted() + " cannot be written: a list takes a new item only at its end");
    }
  }

  private String after(Node holder, Span last, @Nullable Span before, String written) {
    int comma = Gap.next(text, last.end());
    boolean trailing = text.charAt(comma) == ',';
    int from = trailing ? comma + 1 : last.end();
    int at = Gap.lastWritten(text, from, holder.span().end() - 1);
    String item = separator(last, before, from, at) + written;
    return trailing
        ? Splice.all(text, List.of(Splice.put(at, item + ",")))
        : Splice.all(text, List.of(Splice.put(last.end(), ","), Splice.put(at, item)));
  }

  /** What goes before the new item: a line of its own, or the blanks its siblings have. */
  private String separator(Span last, @Nullable Span before, int from, int at) {
    int line = Gap.lineStart(text, last.start());
    if (Gap.isBlank(text, line, last.start())) {
      return lineEnd() + text.substring(line, last.start());
    }
    if (endsInLineComment(from, at)) {
      return lineEnd() + indent(last.start());
    }
    return before == null ? " " : blanksBetween(before, last);
  }

  private String blanksBetween(Span before, Span last) {
    int after = Gap.next(text, before.end()) + 1;
    boolean copy =
        Gap.isBlank(text, after, last.start()) && !Gap.hasLineEnd(text, after, last.start());
    return copy ? text.substring(after, last.start()) : " ";
  }

  private boolean endsInLineComment(int from, int at) {
    for (int i = from; i < at; ) {
      int after = Gap.afterComment(text, i);
      if (after == at && text.startsWith("//", i)) {
        return true;
      }
      i = Math.max(after, i + 1);
    }
    return false;
  }

  /** The first item of an empty section or list; the file itself is laid out in lines. */
  private String first(Node holder, String written, String pad) {
    int open = holder.span().start();
    int close = holder.span().end() - 1;
    int at = Gap.lastWritten(text, open + 1, close);
    boolean lines = holder == document.root() || Gap.hasLineEnd(text, open, close);
    if (!lines) {
      String lead = at > open + 1 ? " " : pad;
      return Splice.one(text, Span.at(at), lead + written + (at == close ? pad : ""));
    }
    String base = indent(open);
    String tail = Gap.hasLineEnd(text, at, close) ? "" : lineEnd() + base;
    return Splice.one(text, Span.at(at), lineEnd() + base + step(base) + written + tail);
  }

  private static String step(String base) {
    return base.startsWith("\t") ? "\t" : STEP;
  }

  /** The blanks at the start of the line that holds a place. */
  private String indent(int at) {
    int line = Gap.lineStart(text, at);
    int end = line;
    while (end < at && Gap.isBlank(text.charAt(end))) {
      end++;
    }
    return text.substring(line, end);
  }

  /** The line end this file uses. */
  private String lineEnd() {
    int first = Gap.lineEnd(text, 0);
    int after = Gap.afterLineEnd(text, first);
    return after > first ? text.substring(first, after) : "\n";
  }
}
