package deadband.reading;

import deadband.document.Literal;
import deadband.document.Member;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Printable;
import deadband.paste.Pasted;
import deadband.paste.Pasted.Understood;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A setup file made of a pasted text: each value with the line it was read from as a comment. */
public final class PastedSetup {

  private final StringBuilder out = new StringBuilder();
  private final Map<Pointer, Understood> lines = new HashMap<>();

  private PastedSetup(Pasted pasted) {
    pasted.understood().forEach(one -> lines.putIfAbsent(one.pointer(), one));
  }

  /** The file's text; what was not understood stands at its end, as comments. */
  public static String text(Pasted pasted) {
    PastedSetup file = new PastedSetup(pasted);
    file.out.append("{\n  \"deadband\": 1,\n");
    file.members(pasted.document().root(), Pointer.root(), "  ");
    file.out.append("}\n");
    pasted.notUnderstood().forEach(one -> file.note("not understood", one.line(), one.text()));
    pasted
        .ambiguous()
        .forEach(
            one ->
                file.note(
                    "ambiguous",
                    one.line(),
                    one.text() + ": " + String.join(" or ", one.choices())));
    return file.out.toString();
  }

  private void note(String what, int line, String text) {
    out.append("// ").append(what).append(", line ").append(line).append(": ");
    out.append(Printable.of(text)).append('\n');
  }

  private void members(Node.Section section, Pointer at, String indent) {
    List<Member> members =
        section.members().stream().filter(member -> !member.name().equals("deadband")).toList();
    for (int i = 0; i < members.size(); i++) {
      Member member = members.get(i);
      out.append(indent).append(Literal.of(member.name()).json()).append(": ");
      value(member.value(), at.child(member.name()), indent, i + 1 < members.size());
    }
  }

  private void value(Node node, Pointer at, String indent, boolean comma) {
    Understood line = lines.get(at);
    if (node instanceof Node.Section section) {
      out.append("{\n");
      members(section, at, indent + "  ");
      out.append(indent).append('}');
    } else if (line == null && node instanceof Node.Sequence list && !list.items().isEmpty()) {
      out.append("[\n");
      for (int i = 0; i < list.items().size(); i++) {
        out.append(indent).append("  ");
        value(list.items().get(i), at.child(i), indent + "  ", i + 1 < list.items().size());
      }
      out.append(indent).append(']');
    } else {
      out.append(Literal.of(node).json());
    }
    out.append(comma ? "," : "");
    if (line != null) {
      out.append("  // line ").append(line.line()).append(": ").append(Printable.of(line.text()));
    }
    out.append('\n');
  }
}
