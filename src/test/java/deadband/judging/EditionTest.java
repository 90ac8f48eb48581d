package deadband.judging;

import deadband.Snapshot;
import deadband.limits.Limits;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * An edition names one set of rules, facts, limits and pages. Where they are kept as fingerprints,
 * a change of any of them asks whether an outcome or a sentence can be another one, and the edition
 * with it. Comments, layout, packages and the examples of the pages do not count.
 */
class EditionTest {

  private static final Path KEPT = Path.of("src/test/resources/deadband/edition.txt");

  /** Packages of which no outcome and no sentence of a page hangs. */
  private static final Set<String> NO_FACTS =
      Set.of("document", "reading", "paste", "meterlog", "diagnosis", "remedy", "report", "cli");

  private static final Pattern CODE =
      Pattern.compile(
          "(\"\"\"(?s:.*?)\"\"\"|\"(?:\\\\.|[^\"\\\\])*+\"|'(?:\\\\.|[^'\\\\])*+')"
              + "|//[^\\n]*|/\\*(?s:.*?)\\*/|\\s+");

  private static final Pattern PLACE = Pattern.compile("(?m)^(package|import) [^;]*;");

  @Test
  @Tag("snapshot")
  void theEditionMovesWithRulesFactsLimitsAndPages() {
    Snapshot.isKept(
        KEPT,
        """
        # Raise RuleBook.EDITION where a released outcome or sentence can change; then: mvn -P bless test
        edition %s
        rules   %s
        facts   %s
        limits  %s
        pages   %s
        """
            .formatted(
                RuleBook.EDITION,
                fingerprint(Setups.files("rules", ".drl").stream().map(EditionTest::code)),
                fingerprint(facts().map(EditionTest::code)),
                fingerprint(Limits.standard().entries().stream().map(Object::toString)),
                fingerprint(Setups.pages().stream().map(EditionTest::said))));
  }

  @Test
  @Tag("snapshot")
  void whatEachCheckNeedsIsListed() {
    Snapshot.isKept(Path.of("rules/NEEDS.md"), CheckNeeds.page());
  }

  private static Stream<Path> facts() {
    Path root = Path.of("src/main/java/deadband");
    return Setups.files(root.toString(), ".java").stream()
        .filter(file -> !NO_FACTS.contains(root.relativize(file).getName(0).toString()));
  }

  /** A file of Java or DRL without comments, layout, and where it stands. */
  private static String code(Path file) {
    String elsewhere = PLACE.matcher(Setups.text(file)).replaceAll("");
    return CODE.matcher(elsewhere)
        .replaceAll(part -> part.group(1) == null ? "" : Matcher.quoteReplacement(part.group(1)));
  }

  /** What a page says, without its examples. */
  private static String said(Path page) {
    return Setups.text(page).split("\n## Fires", 2)[0].replaceAll("\\s+", " ");
  }

  /** One for all texts, in whatever order they come. */
  private static String fingerprint(Stream<String> texts) {
    List<String> each = texts.map(EditionTest::digest).sorted().toList();
    return digest(String.join("\n", each)).substring(0, 16);
  }

  private static String digest(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
