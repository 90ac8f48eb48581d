package deadband.topics.records;

import deadband.document.Node;
import deadband.document.Place;
import deadband.document.Pointer;
import deadband.facts.Answer;
import deadband.facts.Bound;
import deadband.facts.Case;
import deadband.facts.Detail;
import deadband.facts.Evidence;
import deadband.facts.Facts;
import deadband.facts.Measure;
import deadband.provenance.Derived;
import deadband.provenance.Provenance;
import deadband.setup.Change;
import deadband.setup.DataSheet;
import deadband.setup.FieldKind;
import deadband.setup.Question;
import deadband.setup.Setup;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** Facts about values entered for equipment of which a data sheet is named. */
public final class DataSheets {

  /** A value entered, and whether the data sheet has another. */
  public record SheetValue(Evidence evidence, Answer differs) implements Case {}

  private final Setup setup;
  private final Facts facts;

  private DataSheets(Setup setup, Facts facts) {
    this.setup = setup;
    this.facts = facts;
  }

  public static void derive(Setup setup, Facts facts) {
    new DataSheets(setup, facts).all();
  }

  private void all() {
    List<DataSheet> sheets = setup.equipment().optional().orElse(List.of());
    Map<Pointer, DataSheet> differing = new TreeMap<>();
    for (DataSheet sheet : sheets) {
      sheet.contradicted().forEach(value -> differing.putIfAbsent(value, sheet));
    }
    Pointer all = setup.equipment().pointer();
    if (sheets.isEmpty()) {
      facts.into(SheetValue.class, all).none();
    } else if (differing.isEmpty()) {
      put(all, false, Detail.at(all).done());
    }
    differing.forEach((value, sheet) -> put(value, differs(value, sheet), detail(value, sheet)));
  }

  private void put(Pointer value, boolean differs, Detail detail) {
    Derived<Boolean> entered = Derived.from(Provenance.entered(value), () -> differs);
    facts
        .into(SheetValue.class, value)
        .makes(because -> new SheetValue(because.explained(() -> detail), because.answer(entered)));
  }

  /** A change may have brought the value to that of the sheet; a part not fitted has none. */
  private boolean differs(Pointer value, DataSheet sheet) {
    return Question.about(value).isEmpty()
        || !Objects.equals(Change.entered(setup, value), Change.entered(sheet.values(), value));
  }

  private Detail detail(Pointer value, DataSheet sheet) {
    Pointer there = Question.about(value).isEmpty() ? value.parent().orElseThrow() : value;
    Detail.Builder detail = Detail.at(value).basis("comparison with " + place(there, sheet));
    Question.about(value).ifPresent(question -> numbers(question, sheet, detail));
    return detail.done();
  }

  private void numbers(Question question, DataSheet sheet, Detail.Builder detail) {
    if (question.field().kind() instanceof FieldKind.Num number
        && Change.entered(setup, question.pointer()) instanceof Double entered
        && Change.entered(sheet.values(), question.pointer()) instanceof Double stated) {
      String what = question.field().means();
      Measure limit = Measure.of(what, stated, number.unit());
      detail
          .observed(Measure.of(what, entered, number.unit()))
          .limit(new Bound(limit, sheet.file(), "data sheet", "as entered there", false));
    }
  }

  /** Where the data sheet says it, and what. */
  private static String place(Pointer value, DataSheet sheet) {
    Node node = sheet.at(value).orElseThrow();
    Place place = sheet.document().source().place(node.span().start());
    String says =
        node instanceof Node.Section
            ? "a " + value.last() + " section"
            : sheet.document().source().excerpt(node.span());
    return sheet.file() + ", line " + place.line() + ": " + says;
  }
}
