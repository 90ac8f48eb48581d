package deadband.document;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes a value out with its name and one comma. A line that holds nothing else goes too; a comment
 * stays, be it on the same line.
 */
final class Removal {

  private final String text;
  private final List<Span> siblings;
  private final int index;
  private final List<Splice> cuts = new ArrayList<>(2);

  private Removal(String text, List<Span> siblings, int index) {
    this.text = text;
    this.siblings = siblings;
    this.index = index;
  }

  static String apply(Document document, Pointer pointer) {
    Node holder =
        pointer
            .parent()
            .flatMap(document::find)
            .orElseThrow(() -> new IllegalArgumentException(refusal(document, pointer)));
    int index = index(holder, pointer.last());
    if (index < 0) {
      throw new IllegalArgumentException(refusal(document, pointer));
    }
    return new Removal(document.text(), spans(holder), index).remove();
  }

  private static String refusal(Document document, Pointer pointer) {
    return pointer.isRoot()
        ? "the whole file cannot be removed"
        : document.name() + " holds no " + pointer.dotted();
  }

  private static int index(Node holder, String token) {
    if (holder instanceof Node.Sequence sequence) {
      return Document.index(sequence.items(), token);
    }
    if (holder instanceof Node.Section section) {
      return section.member(token).map(section.members()::indexOf).orElse(-1);
    }
    return -1;
  }

  private static List<Span> spans(Node holder) {
    return holder instanceof Node.Section section
        ? section.members().stream().map(Member::span).toList()
        : ((Node.Sequence) holder).items().stream().map(Node::span).toList();
  }

  private String remove() {
    Span value = siblings.get(index);
    int comma = Gap.next(text, value.end());
    if (text.charAt(comma) == ',') {
      cutWithCommaAfter(value, comma);
    } else if (index > 0) {
      cutWithCommaBefore(value, Gap.next(text, siblings.get(index - 1).end()));
    } else {
      cutTidily(value.start(), value.end());
    }
    return Splice.all(text, cuts);
  }

  private void cutWithCommaAfter(Span value, int comma) {
    if (Gap.isBlank(text, value.end(), comma)) {
      cutTidily(value.start(), comma + 1);
      return;
    }
    cuts.add(Splice.cut(comma, comma + 1));
    cutTidily(value.start(), value.end());
  }

  private void cutWithCommaBefore(Span value, int comma) {
    boolean blank = Gap.isBlank(text, comma + 1, value.start());
    boolean oneLine = !Gap.hasLineEnd(text, comma, value.start());
    if (blank && (oneLine || isLineDone(value.end()))) {
      cuts.add(Splice.cut(comma, value.end()));
      return;
    }
    cuts.add(Splice.cut(comma, comma + 1));
    cutTidily(value.start(), value.end());
  }

  /** Cuts a stretch with its line where nothing else stands on it, else with the blanks by it. */
  private void cutTidily(int start, int end) {
    int line = Gap.lineStart(text, start);
    boolean startsLine = Gap.isBlank(text, line, start);
    if (startsLine && isLineDone(end)) {
      cuts.add(Splice.cut(line, Gap.afterLineEnd(text, Gap.lineEnd(text, end))));
    } else if (isLineDone(end)) {
      cuts.add(Splice.cut(blanksBefore(start, line), end));
    } else {
      cuts.add(Splice.cut(start, blanksAfter(end)));
    }
  }

  /** Whether only blanks follow on the line. */
  private boolean isLineDone(int from) {
    return Gap.isBlank(text, from, Gap.lineEnd(text, from));
  }

  private int blanksBefore(int start, int line) {
    int at = start;
    while (at > line && Gap.isBlank(text.charAt(at - 1))) {
      at--;
    }
    return at;
  }

  private int blanksAfter(int end) {
    int at = end;
    while (at < text.length() && Gap.isBlank(text.charAt(at)) && !Gap.isLineEnd(text.charAt(at))) {
      at++;
    }
    return at;
  }
}
