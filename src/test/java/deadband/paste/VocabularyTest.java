package deadband.paste;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Pointer;
import deadband.document.Source;
import deadband.paste.Vocabulary.Entry;
import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.setup.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The lists of words: every value can be named, and no name leads to two without a rule. */
class VocabularyTest {

  private final Vocabulary vocabulary = Vocabulary.all();

  @Test
  void noWordStandsForTwoTerms() {
    assertThat(vocabulary.writtenTwice()).isEmpty();
  }

  @Test
  void noPhraseNamesTwoValuesThatNothingTellsApart() {
    List<String> same = new ArrayList<>();
    List<Entry> entries = vocabulary.entries();
    for (int i = 0; i < entries.size(); i++) {
      for (Entry other : entries.subList(i + 1, entries.size())) {
        Entry one = entries.get(i);
        one.phrases().stream()
            .filter(other.phrases()::contains)
            .filter(phrase -> !toldApart(one, other))
            .forEach(phrase -> same.add(phrase + ": " + one.pointer() + " and " + other.pointer()));
      }
    }

    assertThat(same).isEmpty();
  }

  /** By the unit, by the kind of value, or by a section that has a name of its own. */
  private boolean toldApart(Entry one, Entry other) {
    boolean kinds = !one.kind().getClass().equals(other.kind().getClass());
    boolean units = one.unit() != other.unit();
    Pointer here = one.pointer().parent().orElseThrow();
    Pointer there = other.pointer().parent().orElseThrow();
    boolean sections =
        !here.equals(there) && isNamed(here) && isNamed(there) && !sameNames(here, there);
    return kinds || units || sections;
  }

  private boolean isNamed(Pointer section) {
    return !vocabulary.sections().getOrDefault(section, Set.of()).isEmpty();
  }

  private boolean sameNames(Pointer here, Pointer there) {
    return vocabulary.sections().get(here).equals(vocabulary.sections().get(there));
  }

  @Test
  void everyValueIsReadByTheNameTheFileHasForIt() {
    List<String> unread = new ArrayList<>();
    walk(Pointer.root(), Shape.of(Setup.class), unread);

    assertThat(unread).isEmpty();
  }

  private static void walk(Pointer at, Shape shape, List<String> unread) {
    for (Field field : shape.fields()) {
      Pointer place = at.child(field.name());
      FieldKind kind = field.kind();
      if (kind instanceof FieldKind.Many many && many.of() instanceof FieldKind.Section) {
        place = place.child(0);
        kind = many.of();
      }
      if (field.name().equals("confirmed") || field.name().equals("equipment")) {
        // says nothing of the home itself
        continue;
      }
      if (kind instanceof FieldKind.Section section) {
        // the settings found are a setup again
        if (!section.type().equals(Setup.class)) {
          walk(place, section.shape(), unread);
        }
      } else if (!isRead(place, example(place, kind))) {
        unread.add(place + " = " + example(place, kind));
      }
    }
  }

  private static boolean isRead(Pointer place, String value) {
    String text = place.dotted().replaceAll("\\[(\\d+)]", ".$1") + ": " + value;
    return PasteReader.read(Source.of("x.txt", text)).understood().stream()
        .anyMatch(one -> one.pointer().equals(place));
  }

  /** A value that is possible and usual. */
  private static String example(Pointer place, FieldKind kind) {
    if (kind instanceof FieldKind.Num) {
      Pointer named = Pointer.parse(place.toString().replace("/outlets/0", "/outlets/bath"));
      double most = UsualRanges.of(named).most();
      return Double.isInfinite(most) ? "1" : Resolver.plain(most);
    }
    if (kind instanceof FieldKind.Word word) {
      return word.choices().get(0).word();
    }
    if (kind instanceof FieldKind.Text text) {
      return text.example();
    }
    return kind instanceof FieldKind.Many many ? example(place, many.of()) : "yes";
  }

  @Test
  void aWordIsAFillerOrATermOrADangerAndNotTwoOfThem() throws IOException {
    List<String> words =
        Files.readAllLines(Path.of("src/main/resources/deadband/words/fillers.txt")).stream()
            .filter(line -> !line.startsWith("#") && !line.isBlank())
            .flatMap(
                line -> Arrays.stream(line.substring(line.indexOf(':') + 1).strip().split(" ", 0)))
            .map(Scanner::normal)
            .toList();

    assertThat(words).noneMatch(word -> vocabulary.isFiller(word) && vocabulary.isDanger(word));
    assertThat(words).noneMatch(word -> !vocabulary.concept(List.of(word)).isEmpty());
  }

  @Test
  void everyUsualRangeIsPossible() {
    assertThat(vocabulary.entries())
        .filteredOn(
            entry -> entry.unit() != Unit.NONE && !entry.usual().equals(UsualRanges.Range.ANY))
        .allSatisfy(
            entry -> {
              FieldKind.Num kind = (FieldKind.Num) entry.kind();
              assertThat(entry.usual().least()).isLessThan(entry.usual().most());
              assertThat(kind.admits(entry.usual().least())).as("%s", entry.pointer()).isTrue();
              assertThat(kind.admits(entry.usual().most())).as("%s", entry.pointer()).isTrue();
            });
  }
}
