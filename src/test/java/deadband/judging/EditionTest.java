package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.limits.Limits;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

/** An edition names one set of rules and limits: whoever changes them moves it. */
class EditionTest {
  private static final Path KEPT = Path.of("src/test/resources/deadband/edition.txt");

  @Test
  void theEditionMovesWithRulesAndLimits() throws IOException {
    String now = RuleBook.EDITION + " " + fingerprint() + "\n";
    if (Boolean.getBoolean("deadband.update.golden")) {
      Files.writeString(KEPT, now);
    }

    assertThat(now)
        .as("rules or limits changed: raise RuleBook.EDITION, then -Ddeadband.update.golden=true")
        .isEqualTo(Files.readString(KEPT));
  }

  @Test
  void whatEachCheckNeedsIsListed() throws IOException {
    Path kept = Path.of("rules/NEEDS.md");
    String now = CheckNeeds.page();
    if (Boolean.getBoolean("deadband.update.golden")) {
      Files.writeString(kept, now);
    }

    assertThat(now)
        .as("the needs changed: -Ddeadband.update.golden=true")
        .isEqualTo(Files.readString(kept));
  }

  private static String fingerprint() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      Setups.files("rules", ".drl")
          .forEach(file -> digest.update(Setups.text(file).getBytes(StandardCharsets.UTF_8)));
      Limits.standard()
          .entries()
          .forEach(limit -> digest.update(limit.toString().getBytes(StandardCharsets.UTF_8)));
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
