package deadband.judging;

import deadband.days.DayRuns;
import deadband.document.Document;
import deadband.document.Edit;
import deadband.document.Literal;
import deadband.document.Pointer;
import deadband.limits.Limits;
import deadband.setup.Default;
import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Setup;
import deadband.setup.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a check needs, found by trying: the first setup of its page that fires, with one part said
 * not to be fitted, and with one value taken away at a time.
 */
final class CheckNeeds {

  private static final Judge QUICK = new Judge(Setups.JUDGE.book(), DayRuns.none());
  private static final Pattern BLOCK =
      Pattern.compile("^```jsonc\\n(.*?)^```", Pattern.MULTILINE | Pattern.DOTALL);

  private static final List<Pointer> EQUIPMENT = equipment();

  private final Check check;
  private final Document firing;
  private final TreeSet<Pointer> missing;

  private CheckNeeds(Check check, Judgement ofNothing) {
    this.check = check;
    this.firing = firing(check);
    this.missing = new TreeSet<>(missing(ofNothing));
    for (Pointer leaf : Setups.leaves(firing)) {
      missing.addAll(missing(judge(firing.without(leaf))));
    }
  }

  /** The whole page, a row a check. */
  static String page() {
    Judgement ofNothing = judge("{}");
    StringBuilder page = new StringBuilder();
    page.append("# What each check needs\n\n")
        .append("Written by a test, which tries it on the first setup under \"Fires\" of each\n")
        .append("page: which parts, entered as `\"fitted\": false`, make the check *not fitted*,\n")
        .append("and which values it waits for where they, or all values, are missing. Checks of\n")
        .append("day runs need what a day run needs beside; acceptances need their entry.\n\n")
        .append("| check | not fitted without | may wait for |\n|---|---|---|\n");
    for (Check check : Setups.JUDGE.book().checks()) {
      CheckNeeds needs = new CheckNeeds(check, ofNothing);
      page.append("| ").append(check.name()).append(" | ");
      page.append(String.join(", ", needs.notFittedWithout())).append(" | ");
      page.append(needs.waitsFor()).append(" |\n");
    }
    page.append("\n## Defaults\n\n| value | taken as | because |\n|---|---|---|\n");
    defaults(Pointer.root(), Setup.class, page);
    return page.toString();
  }

  private static void defaults(Pointer at, Class<? extends Record> type, StringBuilder page) {
    for (Field field : Shape.of(type).fields()) {
      Pointer value = at.child(field.name());
      Default<?> assumed = field.assumed();
      if (assumed != null) {
        page.append("| ").append(value.dotted()).append(" | ").append(assumed.value());
        page.append(" | ").append(assumed.because()).append(" |\n");
      }
      if (field.kind() instanceof FieldKind.Section section && !field.optional()) {
        defaults(value, section.type(), page);
      }
    }
  }

  private static Document firing(Check check) {
    Matcher block = BLOCK.matcher(RulePage.of(check).sections().getOrDefault("Fires", ""));
    return Setups.read(check.name(), block.find() ? block.group(1) : "{}").document();
  }

  private static Judgement judge(String text) {
    return QUICK.glance(Setups.read("needs", text).setup(), Limits.standard(), Setups.AS_OF);
  }

  private List<String> notFittedWithout() {
    List<String> parts = new ArrayList<>();
    for (Pointer part : EQUIPMENT) {
      if (missing.contains(part) || firing.find(part).isPresent()) {
        Document bare = without(firing, part);
        String text = Edit.set(bare, part.child("fitted"), Literal.of(false)).apply(bare);
        if (judge(text).notFitted().contains(check)) {
          parts.add(part.dotted());
        }
      }
    }
    return parts;
  }

  private static Document without(Document document, Pointer part) {
    return document.find(part).isPresent()
        ? Setups.read("needs", document.without(part)).document()
        : document;
  }

  private static List<Pointer> equipment() {
    List<Pointer> parts = new ArrayList<>();
    collect(Pointer.root(), Setup.class, parts);
    return parts;
  }

  private static void collect(Pointer at, Class<? extends Record> type, List<Pointer> into) {
    for (Field field : Shape.of(type).fields()) {
      if (field.kind() instanceof FieldKind.Section section && !field.optional()) {
        Pointer part = at.child(field.name());
        if (section.shape().isEquipment()) {
          into.add(part);
        }
        collect(part, section.type(), into);
      }
    }
  }

  private String waitsFor() {
    return missing.stream().map(Pointer::dotted).collect(Collectors.joining(", "));
  }

  private List<Pointer> missing(Judgement judgement) {
    return judgement.notJudged().stream()
        .filter(open -> open.check().equals(check))
        .flatMap(open -> open.missing().stream())
        .toList();
  }
}
